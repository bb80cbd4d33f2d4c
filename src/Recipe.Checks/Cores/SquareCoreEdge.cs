using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The edge of a core stands up square under the bag.</summary>
public sealed class SquareCoreEdge : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3204",
        Name = "square-core-edge",
        Severity = Severity.Warning,
        Title = "Square edge of the core under a bag",
        Reason = "The bag bridges a square edge: the skin there lies on air or resin, and a soft core is crushed along it.",
        Remedy = "Cut the edge to 30 to 45 degrees.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0175): a bag can collapse the edges of a core; common practice (30 to 45 degrees)",
        Exceptions = """
            Speaks of cores of 3 mm or more that end inside the part, when `chamfer` gives the angle of their edge; 90 deg is square.
            """,
        BadExample = """
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
                heart core shop-foam thickness 5 mm size 300 mm x 200 mm at "centred" chamfer 90 deg
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
                heart core shop-foam thickness 5 mm size 300 mm x 200 mm at "centred" chamfer 30 deg
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

    private static readonly Length Thin = Length.FromMillimeters(3);
    private static readonly Angle Steepest = Angle.FromDegrees(60);
    private static readonly string[] Words = ["edge", "chamfer", "bevel", "taper", "recess", "frame"];

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Bag is null)
        {
            return;
        }

        foreach (var core in part.Cores().Where(c => !c.CoversAll() && c.Thickness is { } thickness && thickness.Value >= Thin))
        {
            if (core.Chamfer is not { } chamfer)
            {
                // What the place says about the edge in words is taken for an answer.
                if (!Words.Any(w => core.At?.Contains(w, StringComparison.OrdinalIgnoreCase) == true))
                {
                    context.NotChecked($"no `chamfer` is given for the edge of {core.Name}", core.Where);
                }

                continue;
            }

            if (chamfer.Value <= Steepest)
            {
                continue;
            }

            context.Report(
                chamfer.Where ?? core.Where,
                $"the edge of {core.Name}, {Say.Of(core.Thickness!)} thick, is cut at {Say.Of(chamfer)}; 30 to 45 deg is wanted under a bag",
                Grounds.Sure.And("chamfer", chamfer),
                [new FindingLabel(core.Where, "core here")],
                [Edits.Fix("Cut it to 30 deg", FixSafety.NeedsALook, part.Rewrite(chamfer, "30 deg"))]);
            return;
        }
    }
}
