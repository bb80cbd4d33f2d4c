using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A surface closes on itself.</summary>
public sealed class ShapeClosed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2125",
        Name = "shape-closed",
        Severity = Severity.Error,
        Title = "Surface without a rim",
        Reason = "Cloth is laid on the face of a mould and ends at its rim. A closed body has no rim: it is the whole mould or the whole part.",
        Remedy = "Keep the face only: `region patch`, `region group` or `region above`.",
        Source = "common practice",
        Exceptions = """
            None.
            """,
        BadExample = """
            mould lid-mould {
              surface revolved {
                point radius 0 mm height 0 mm
                point radius 100 mm height 50 mm
                point radius 0 mm height 100 mm
              }
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part lid {
              mould lid-mould
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
            mould lid-mould {
              surface revolved {
                point radius 0 mm height 0 mm
                point radius 100 mm height 50 mm
              }
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part lid {
              mould lid-mould
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shape is { Trouble.Kind: ShapeTroubleKind.Closed, Surface: { } figure })
        {
            context.Report(figure.Where ?? context.Part.Where, "the surface closes on itself and has no rim to trim at; keep the face that cloth is laid on with a `region` line");
        }
    }
}
