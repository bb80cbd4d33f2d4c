using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Halves that are infused or laid of prepreg are to be closed wet in wet.</summary>
public sealed class DryHalvesClosed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8109",
        Name = "dry-halves-closed",
        Severity = Severity.Error,
        Title = "Wet in wet, and no half is ever wet and open",
        Reason = "An infused half is dry until its bag is on and cured when the bag comes off: there is no moment at which two wet halves could be closed on each other.",
        Remedy = "Cure the halves, then tape or bond the seam; or lay them by hand.",
        Source = "common practice",
        Exceptions = """
            Speaks of infusion and prepreg only.
            """,
        BadExample = """
            mould tube-mould {
              surface flat 300 mm x 120 mm
              halves left right
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part fin-box {
              mould tube-mould
              process infused
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 120 mm
                feed-line length 300 mm diameter 8 mm
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              join {
                manner wet-in-wet
                overlap 25 mm
                within 60 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            mould tube-mould {
              surface flat 300 mm x 120 mm
              halves left right
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part fin-box {
              mould tube-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              join {
                manner wet-in-wet
                overlap 25 mm
                within 60 min
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part is not { Process.Value: Process.Infused or Process.Prepreg, Join: { Manner: { Value: JoinManner.WetInWet } manner } join } part)
        {
            return;
        }

        context.Report(
            manner.Where ?? join.Where,
            $"the halves are {(part.Process.Value == Process.Infused ? "infused" : "of prepreg")} and are to be closed wet in wet",
            labels: part.Infusion is { } infusion ? [new FindingLabel(infusion.Where, "infused here")] : [],
            fixes: [Edits.Fix("Tape the seam once both are cured", FixSafety.NeedsALook, FigureEdits.Rewrite(manner, "cured-then-taped"))]);
    }
}
