using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A file or a profile gives no surface.</summary>
public sealed class ShapeNotASurface : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2123",
        Name = "shape-not-a-surface",
        Severity = Severity.Error,
        Title = "No surface in the file or profile",
        Reason = "What cannot be read cannot be measured, and a guess would be cut into cloth.",
        Remedy = "Save the file anew as STL, OBJ, PLY or 3MF; put the points of a profile in order.",
        Source = "common practice; the formats themselves",
        Exceptions = """
            Silent while the file is missing or its unit is not said.
            """,
        BadExample = """
            mould lid-mould {
              surface revolved {
                point radius 80 mm height 0 mm
                point radius 80 mm height 0 mm
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
              surface spherical-cap diameter 300 mm rise 40 mm
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
        if (context.Plan.Shape is not { Trouble: { Kind: ShapeTroubleKind.Refused or ShapeTroubleKind.BadProfile } trouble, Surface: { } figure }
            || (figure.Value is MeshShape unsaid && ShapeUnitNotSaid.IsMissing(unsaid)))
        {
            return;
        }

        var what = figure.Value is MeshShape mesh ? mesh.Written : "the profile";
        context.Report(figure.Where ?? context.Part.Where, $"{what} gives no surface: {(trouble.Refusal is { } refusal ? SayShape.Of(refusal) : trouble.Reason)}");
    }
}
