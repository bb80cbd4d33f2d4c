using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Nobody says what a 1 in the file of a surface means.</summary>
public sealed class ShapeUnitNotSaid : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2122",
        Name = "shape-unit-not-said",
        Severity = Severity.Error,
        Title = "Unit of the shape not said",
        Reason = "Files of triangles hold bare numbers: a lid of 300 mm and one of 300 inches are the same file.",
        Remedy = "Write `unit mm` (or `cm`, `m`, `in`, `ft`) behind the file.",
        Source = "common practice; the STL, OBJ and PLY formats have no unit; 3MF has one",
        Exceptions = """
            Silent for 3MF files, which say their unit.
            """,
        BadExample = """
            mould lid-mould {
              surface mesh "lid.stl"
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

    internal static bool IsMissing(MeshShape mesh) => mesh.Unit is null && !mesh.Written.EndsWith(".3mf", StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shape is { Surface: { Value: MeshShape mesh } figure } && IsMissing(mesh))
        {
            context.Report(
                figure.Where ?? context.Part.Where,
                $"the numbers in {mesh.Written} have no unit",
                fixes: figure.Where is { } where ? [Edits.Fix("They are millimetres", FixSafety.NeedsALook, Edits.Append(where, "unit mm"))] : []);
        }
    }
}
