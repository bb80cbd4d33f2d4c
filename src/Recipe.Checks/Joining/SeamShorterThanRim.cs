using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The seam is shorter than the rim that it closes.</summary>
public sealed class SeamShorterThanRim : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8111",
        Name = "seam-shorter-than-rim",
        Severity = Severity.Warning,
        Title = "Seam shorter than the rim",
        Reason = "Tape, filler and adhesive are cut and mixed for the seam as written, and the rest of the rim stays open or is closed from a second pot.",
        Remedy = "Measure the rim of one half, and write that.",
        Source = "common practice; the rim of the surface",
        Exceptions = """
            Speaks of two halves of a dome, which meet all round: caps, half ellipsoids, paraboloids. A tube has open ends, and a shape that was drawn or scanned may have some.
            """,
        BadExample = """
            mould tray-mould {
              surface spherical-cap diameter 300 mm rise 40 mm
              made-of epoxy-glass-tooling
              halves left right
              flange 40 mm
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
              join {
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 600 mm
                vent 3 mm
                tape glass-tape-200 width 50 mm x1
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface spherical-cap diameter 300 mm rise 40 mm
              made-of epoxy-glass-tooling
              halves left right
              flange 40 mm
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
              join {
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 945 mm
                vent 3 mm
                tape glass-tape-200 width 50 mm x1
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    // A tape measure along a curve comes out a little short.
    private const double Measured = 0.95;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Join is not { Seam: { } seam, Parts.IsEmpty: true } join
            || context.Plan.Geometry is not { Sides: 2, Shape: SphericalCapShape or HalfEllipsoidShape or ParaboloidShape } shape
            || seam.Value >= shape.Rim * Measured)
        {
            return;
        }

        var rim = Say.Of(Length.FromMillimeters(Math.Ceiling(shape.Rim.Millimeters)), seam.Written);
        context.Report(
            seam.Where ?? join.Where,
            $"the seam is {Say.Of(seam)} long; the rim of each half is {rim}",
            Grounds.Sure.And("seam", seam),
            context.Part.MouldWhere is { } mould ? [new FindingLabel(mould, "halves of this mould")] : [],
            [Edits.Fix($"Write {rim}", FixSafety.NeedsALook, FigureEdits.Rewrite(seam, rim))]);
    }
}
