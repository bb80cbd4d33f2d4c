using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A deep bag is pulled down in one go.</summary>
public sealed class PulledAtOnce : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6104",
        Name = "pulled-at-once",
        Severity = Severity.Advice,
        Title = "Deep bag pulled down at once",
        Reason = "The film locks against the walls before it is tucked into the corners, and bridges there.",
        Remedy = "Draw a little, tuck film and felt into the corners by hand, then draw fully.",
        Source = "common practice",
        Exceptions = """
            Silent on shallow parts (up to 50 mm) and where no time to reach the level is given.
            """,
        BadExample = """
            mould tray-mould {
              surface box 400 mm x 300 mm x 80 mm
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
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
              }
              vacuum {
                draw 25 inHg below ambient within 1 min
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
              surface box 400 mm x 300 mm x 80 mm
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
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

    private static readonly Duration Fast = Duration.FromMinutes(2);
    private static readonly Length Shallow = Length.FromMillimeters(50);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum is not { Within: { } within } vacuum || context.Part.Bag is not { } bag
            || context.Plan.Geometry is not { } geometry || geometry.Depth <= Shallow || within.Value >= Fast)
        {
            return;
        }

        context.Report(
            within.Where ?? vacuum.Where,
            $"the level is drawn within {Say.Of(within)} on a part {Say.About(geometry.Depth)} deep; {Say.Of(Fast)} or more leave time to tuck the corners",
            Grounds.Sure.And("time to the level", within),
            [new FindingLabel(bag.Where, "bagged here")],
            [Edits.Fix("Draw it within 10 min", FixSafety.NeedsALook, FigureEdits.Rewrite(within, "10 min"))]);
    }
}
