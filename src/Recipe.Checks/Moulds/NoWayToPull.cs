using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A deep rigid cavity has nothing that helps the part off.</summary>
public sealed class NoWayToPull : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2118",
        Name = "no-way-to-pull",
        Severity = Severity.Advice,
        Title = "Nothing to pull a deep part with",
        Reason = "A deep part holds itself by suction, and levers put into a bare edge break it.",
        Remedy = "Build in an air or water port, a notch for wedges, or a split, before it is needed.",
        Source = "common practice (deeper than half of its width)",
        Exceptions = """
            Silent for flexible and split moulds and mandrels, for a draft of 3 degrees or more, and where `pull-aid` says what helps.
            """,
        BadExample = """
            mould tray-mould {
              surface box 300 mm x 200 mm x 120 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface box 300 mm x 200 mm x 120 mm
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Angle Easy = Angle.FromDegrees(3);

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.MouldLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { PullAid: null, IsFlexible: false, StaysInPart: false, IsMandrel: false, Halves.IsEmpty: true } mould
            || mould.Draft is { } draft && draft.Value >= Easy
            || (Measured(context) ?? Cavity(context.Part.Surface?.Value ?? mould.Surface?.Value)) is not var (depth, width) || depth <= width / 2)
        {
            return;
        }

        context.Report(
            mould.Surface?.Where ?? mould.Where,
            $"{mould.Name} is {Say.Of(depth)} deep and {Say.Of(width)} wide, and nothing is built in to get the part off",
            fixes: [Edits.Fix("Build in an air port", FixSafety.NeedsALook, Edits.Last(mould.Where, "pull-aid \"air port in the floor\""))]);
    }

    // Of a hollow only: what stands up is pulled off, not out.
    private static (Length Depth, Length Width)? Measured(CheckContext context) =>
        context.Plan.Shape is { IsMeasured: true, Model.Measures.Rim: { } rim } && rim.Depth > rim.Rise ? (rim.Depth, rim.Width) : null;

    private static (Length Depth, Length Width)? Cavity(SurfaceShape? shape) => shape switch
    {
        BoxShape box => (box.Height, UnitMath.Min(box.Length, box.Width)),
        HalfEllipsoidShape half => (half.Depth, UnitMath.Min(half.Length, half.Width)),
        SphericalCapShape cap => (cap.Rise, cap.Diameter),
        ParaboloidShape bowl => (bowl.Rise, bowl.Diameter),
        _ => null,
    };
}
