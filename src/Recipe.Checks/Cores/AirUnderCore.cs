using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Air cannot get out from under a large plain sheet of core.</summary>
public sealed class AirUnderCore : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3201",
        Name = "air-under-core",
        Severity = Severity.Warning,
        Title = "Air shut in under the core",
        Reason = "Under a plain sheet the air has no way out sideways through wet cloth, so the core is bonded in patches.",
        Remedy = "Drill the sheet with holes of 1.5 mm every 25 mm, or take a slit or grooved one.",
        Source = "common practice (holes of about 1.5 mm on a grid of 25 mm)",
        Exceptions = """
            Speaks of closed cores that are more than 200 mm wide, in wet lay-ups, when `cut` says that the sheet is plain. Silent for
            honeycomb and for infusion.
            """,
        BadExample = """
            core shop-foam like pvc-foam-75 {
              cut plain
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-foam thickness 5 mm
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            core shop-foam like pvc-foam-75 {
              cut perforated
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-foam thickness 5 mm
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private static readonly Length Wide = Length.FromMillimeters(200);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (!part.IsLaidWet())
        {
            return;
        }

        foreach (var line in context.Plan.Stack)
        {
            if (line.Item is not CoreItem { Material: var sheet } core || sheet.IsHoneycomb()
                || line.Pieces.Where(p => p.Length > Wide && p.Width > Wide).Select(p => p.Length < p.Width ? p.Length : p.Width).DefaultIfEmpty().Max() is not { Meters: > 0 } width)
            {
                continue;
            }

            if (sheet.Cut is not { } cut)
            {
                context.NotChecked($"no `cut` in the declaration of {sheet.Name} says whether it is drilled or slit", core.MaterialWhere);
                continue;
            }

            if (cut.Value != CoreCut.Plain)
            {
                continue;
            }

            context.Report(
                core.MaterialWhere,
                $"{core.Name} of plain {sheet.Name} is {Say.About(width)} wide; over {Say.Of(Wide)} air stays under it",
                Grounds.Sure.And("cut", cut),
                [new FindingLabel(part.Here(cut, core.Where), "said here")],
                [Edits.Fix("Take it perforated", FixSafety.NeedsALook, part.Rewrite(cut, "perforated"))]);
            return;
        }
    }
}
