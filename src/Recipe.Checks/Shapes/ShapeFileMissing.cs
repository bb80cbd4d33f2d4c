using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The file of a surface is not there.</summary>
public sealed class ShapeFileMissing : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2121",
        Name = "shape-file-missing",
        Severity = Severity.Error,
        Title = "File of the shape not found",
        Reason = "Without the surface there are no areas, no pieces and no masses.",
        Remedy = "Put the file beside the recipe, or write its path from there.",
        Source = "common practice",
        Exceptions = """
            Silent as long as the unit of the file is not said.
            """,
        BadExample = """
            mould lid-mould {
              surface mesh "lid.stl" unit mm
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
        if (context.Plan.Shape is { Trouble.Kind: ShapeTroubleKind.NoFile, Surface: { Value: MeshShape mesh } figure } && !ShapeUnitNotSaid.IsMissing(mesh))
        {
            context.Report(figure.Where ?? context.Part.Where, $"there is no file {mesh.Written} that can be read; its path counts from the folder of this recipe");
        }
    }
}
