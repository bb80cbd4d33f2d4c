using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A core has no ply on one of its faces.</summary>
public sealed class BareCoreFace : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3004",
        Name = "bare-core-face",
        Severity = Severity.Error,
        Title = "Core without a skin on one face",
        Reason = "A core with one skin is not a sandwich: it bends and breaks like the skin alone, and its open face drinks water.",
        Remedy = "Lay a ply on either side of the core.",
        Source = "common practice",
        Exceptions = """
            A core that is left open on purpose (a former, a filler) is accepted with a written reason. A coat on the mould is not a skin, nor is a
            patch on a core that covers the whole part. Silent on the mould side where the mould is what was laid before and stays in the part
            (`stays-in-part yes`, of a stuff that is not porous); of a core that is laid by itself there, the other face belongs to the day that lays its skin.
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
                second glass-twill-163 0/90
                stiff core pvc-foam-75 thickness 5 mm
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
                stiff core pvc-foam-75 thickness 5 mm
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    // A skin of pieces may leave the edge free, where the core is cut to a bevel.
    private const double Covered = 0.8;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var stack = context.Part.Stack;
        var cores = stack.OfType<CoreItem>().ToList();
        if (cores is not [var first, ..])
        {
            return;
        }

        var isLaidOnASkin = context.Part.Mould is { StaysInPart: true, MadeOf: null or { Porous: not true } };
        if (isLaidOnASkin && !stack.Any(s => s is PlyItem))
        {
            return;
        }

        var (below, above) = (stack.TakeWhile(s => !ReferenceEquals(s, first)), stack.Reverse().TakeWhile(s => !ReferenceEquals(s, cores[^1])));
        if (!isLaidOnASkin && Bare(context, first, below) is { } ofMould)
        {
            Report(context, first, $"{ofMould} mould side", isOnMouldSide: true);
        }
        else if (Bare(context, cores[^1], above) is { } ofBag)
        {
            Report(context, cores[^1], $"{ofBag} bag side", isOnMouldSide: false);
        }
    }

    /// <summary>What lies on a face of a core where that is no skin, in words that the face follows; null where it has one.</summary>
    private static string? Bare(CheckContext context, CoreItem core, IEnumerable<StackItem> beyond)
    {
        var plies = beyond.OfType<PlyItem>().ToList();
        if (plies is not [var pad, ..])
        {
            return "has no ply on its";
        }

        // A piece of core may lie under a piece of cloth. Pieces that together are as large as a core of the whole part are its skin.
        return core.CoversAll() && !plies.Exists(p => p.CoversAll()) && Area(context.Plan, core) is { } whole && plies.Sum(p => Area(context.Plan, p) ?? whole) < whole * Covered
            ? $"has nothing but {pad.Name}{(plies.Count > 1 ? " and other pieces" : "")} on its"
            : null;
    }

    private static double? Area(Plan plan, StackItem item) => plan.Stack.FirstOrDefault(line => ReferenceEquals(line.Item, item))?.NetArea?.Value.SquareMeters;

    private static void Report(CheckContext context, CoreItem core, string words, bool isOnMouldSide)
    {
        var plies = context.Part.FullPlies();
        var nearest = isOnMouldSide ? plies.FirstOrDefault() : plies.LastOrDefault();
        context.Report(
            core.Where,
            $"{core.Name} {words}",
            labels: nearest is null ? [] : [new FindingLabel(nearest.Where, "nearest ply here")],
            fixes: [Skin(context.Part, core, nearest, isOnMouldSide)]);
    }

    private static Fix? Skin(Part part, CoreItem core, PlyItem? nearest, bool isOnMouldSide)
    {
        if (nearest is null || !IsInTheSameList(part, core))
        {
            return null;
        }

        var name = part.FreeName(isOnMouldSide ? "outer-skin" : "inner-skin");
        var line = $"{name} {nearest.Material.Name}{(nearest.Orientation is { } lies ? " " + lies.Written : "")}";
        var edit = isOnMouldSide ? Edits.Before(core.Where, line) : Edits.After(core.Where, line);
        return new Fix($"Lay a ply of {nearest.Material.Name} on it", FixSafety.NeedsALook, edit);
    }

    private static bool IsInTheSameList(Part part, CoreItem core) =>
        part.StackWhere is { } list && ReferenceEquals(list.Source, core.Where.Source);
}
