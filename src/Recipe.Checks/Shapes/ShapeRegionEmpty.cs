using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A region line leaves nothing of the surface.</summary>
public sealed class ShapeRegionEmpty : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2124",
        Name = "shape-region-empty",
        Severity = Severity.Error,
        Title = "Nothing left of the surface",
        Reason = "A part without a surface has no areas and no pieces.",
        Remedy = "Look at the axes, the size and the groups that the message tells.",
        Source = "common practice",
        Exceptions = """
            None.
            """,
        BadExample = """
            mould lid-mould {
              surface spherical-cap diameter 300 mm rise 40 mm
              region above z 50 mm
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
              region below z 50 mm
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
        if (context.Plan.Shape is not { Trouble: { Kind: ShapeTroubleKind.NoSuchGroup or ShapeTroubleKind.NothingLeft, Region: { } region } trouble })
        {
            return;
        }

        context.Report(
            region.Where,
            trouble.Kind == ShapeTroubleKind.NothingLeft
                ? $"`region {region.Written}` leaves nothing of the surface{Reach(trouble)}"
                : $"the file has no group '{((GroupOfShape)region).Name}'; {(trouble.Groups.IsDefaultOrEmpty ? "it has none" : $"it has {string.Join(", ", trouble.Groups.Take(8))}")}");
    }

    private static string Reach(ShapeTrouble trouble) => trouble is { Least: { } least, Most: { } most }
        ? $", which reaches {Along("x", least.X, most.X)}, {Along("y", least.Y, most.Y)} and {Along("z", least.Z, most.Z)}"
        : "";

    private static string Along(string axis, double from, double to) => $"in {axis} from {Say.Of(Length.FromMeters(Math.Round(from, 4)))} to {Say.Of(Length.FromMeters(Math.Round(to, 4)))}";
}
