using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A balanced cloth is laid along and across as if that made two plies of it.</summary>
public sealed class SameWeaveTurned : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3105",
        Name = "same-weave-turned",
        Severity = Severity.Advice,
        Title = "Balanced cloth turned without effect",
        Reason = "A balanced weave is the same along and across, so the turn costs cloth and gives nothing.",
        Remedy = "Write one orientation for both, and cut them as they fit the roll.",
        Source = "common practice; warp and fill of a balanced cloth count alike, US Army TM 1-1500-204-23-11 (page file 0108)",
        Exceptions = """
            Silent for the face ply, where the line of the weave shows, for cloth with more fibre one way, for satin, whose two sides differ,
            and for stitched cloth.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
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
                heart glass-twill-163 0/90
                back glass-twill-163 90/0
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
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
                heart glass-twill-163 0/90
                back glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double Even = 0.05;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var plies = part.FullPlies().Skip(1).Where(p => IsBalanced(p.Material) && Lies(p) is not null).ToList();
        foreach (var ply in plies.Where(p => Lies(p) == 90))
        {
            if (plies.Find(p => p.Material.Name == ply.Material.Name && Lies(p) == 0) is not { } other)
            {
                continue;
            }

            context.Report(
                ply.Orientation!.Where ?? ply.Where,
                $"{ply.Name} lies at {ply.Orientation.Written} and {other.Name} at {other.Orientation!.Written}; in {ply.Material.Name}, as heavy both ways, that is the same",
                labels: [new FindingLabel(other.Where, "the other here")],
                fixes: [Edits.Fix($"Lay both at {other.Orientation.Written}", FixSafety.NeedsALook, Same(part, plies, other))]);
            return;
        }
    }

    private static TextEdit? Same(Part part, List<PlyItem> plies, PlyItem other) =>
        plies.Where(p => p.Material.Name == other.Material.Name && Lies(p) == 90).ToList() is [var only]
            ? part.Rewrite(only.Orientation, other.Orientation!.Written)
            : null;

    private static bool IsBalanced(Reinforcement cloth) =>
        cloth.IsWoven() && cloth.Weave is "plain" or "twill" && cloth.WarpShare is { } warp && Math.Abs(warp.Value - 0.5) <= Even;

    // Where the warp runs: 0 or 90 degrees, else nothing.
    private static double? Lies(PlyItem ply)
    {
        if (ply.Orientation?.Value is not { Kind: not OrientationKind.Random } lies)
        {
            return null;
        }

        var warp = Math.Abs(PlyFacts.Turned(lies.First));
        return warp is 0 or 90 && (lies.Kind == OrientationKind.Single || Math.Abs(Math.Abs(lies.First - lies.Second) - 90) < 1) ? warp : null;
    }
}
