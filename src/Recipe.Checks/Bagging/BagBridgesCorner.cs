using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A bag without pleats over a sharp inside corner.</summary>
public sealed class BagBridgesCorner : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5103",
        Name = "bag-bridges-corner",
        Severity = Severity.Warning,
        Title = "Bag bridges a sharp corner",
        Reason = "The film spans the corner instead of pressing into it, and the corner fills with resin and air.",
        Remedy = "Fold a pleat at each end of the corner, lay a pressure strip into it, or give the mould a larger radius.",
        Source = "common practice: pleats, tucks or a pressure strip at inside corners below a radius of 10 mm",
        Exceptions = """
            Speaks only where `pleats 0` is written and the mould has sides. Silent for a film that stretches; a mould deeper than 50 mm has a
            finding of its own.
            """,
        BadExample = """
            mould tray-mould {
              surface box 300 mm x 200 mm x 40 mm
              made-of epoxy-glass-tooling
              radius 5 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 0
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
            mould tray-mould {
              surface box 300 mm x 200 mm x 40 mm
              made-of epoxy-glass-tooling
              radius 5 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 4
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

    private static readonly Length Sharp = Length.FromMillimeters(10);
    private static readonly Length Shallow = Length.FromMillimeters(10);
    private static readonly Length Deep = Length.FromMillimeters(50);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { Pleats: { Value: 0 } pleats } bag
            || context.Part.Mould is not { InsideRadius: { } radius, IsMandrel: false } mould
            || radius.Value >= Sharp
            || BagStuff.Stretches(bag)
            || context.Plan.Geometry is not { } shape
            || shape.Depth < Shallow
            || shape.Depth > Deep)
        {
            return;
        }

        context.Report(
            pleats.Where ?? bag.Where,
            $"the bag has no pleat and the inside radius is {Say.Of(radius)}; below {Say.Of(Sharp)} a film bridges",
            Grounds.Sure.And("inside radius", radius).And("number of pleats", pleats),
            [new FindingLabel(radius.Where ?? mould.Where, "radius here")],
            [Edits.Fix("Fold 4 pleats", FixSafety.NeedsALook, FigureEdits.Rewrite(pleats, "4"))]);
    }
}
