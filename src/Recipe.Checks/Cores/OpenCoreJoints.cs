using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Resin of an infusion runs along wide joints of the core.</summary>
public sealed class OpenCoreJoints : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3207",
        Name = "open-core-joints",
        Severity = Severity.Warning,
        Title = "Open joints between the pieces of the core",
        Reason = "Resin runs ahead along an open joint, closes round the dry middle of the part, and fills the joint with dead weight.",
        Remedy = "Fit the pieces to 1 mm, or fill or tape the joints.",
        Source = "common practice (gaps of up to 1 mm)",
        Exceptions = """
            Speaks of infusions with a core of more than one piece whose `gap` is given.
            """,
        BadExample = """
            core shop-foam like pvc-foam-75 {
              cut grooved
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-foam thickness 5 mm gap 4 mm x2 size 190 mm x 290 mm at "side by side" chamfer 30 deg
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            core shop-foam like pvc-foam-75 {
              cut grooved
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-foam thickness 5 mm gap 0.5 mm x2 size 190 mm x 290 mm at "side by side" chamfer 30 deg
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private static readonly Length Widest = Length.FromMillimeters(1);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value != Process.Infused)
        {
            return;
        }

        foreach (var line in context.Plan.Stack)
        {
            if (line.Item is not CoreItem core || !(core.Count > 1 || line.Pieces.Any(p => p.Joins > 0)))
            {
                continue;
            }

            if (core.Gap is not { } gap)
            {
                context.NotChecked($"no `gap` is given between the pieces of {core.Name}", core.Where);
                continue;
            }

            if (gap.Value.Meters <= Widest.Meters + 1e-6)
            {
                continue;
            }

            context.Report(
                gap.Where ?? core.Where,
                $"the pieces of {core.Name} lie {Say.Of(gap)} apart in an infusion; {Say.Of(Widest, gap.Written)} is the most",
                Grounds.Sure.And("gap", gap),
                [new FindingLabel(core.Where, "core here")],
                [Edits.Fix("Fit them to 1 mm", FixSafety.NeedsALook, part.Rewrite(gap, "1 mm"))]);
            return;
        }
    }
}
