using Recipe.Model;
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
            A core that is left open on purpose (a former, a filler) is accepted with a written reason. A coat on the mould is not a skin.
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

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var stack = part.Stack;
        var cores = stack.OfType<CoreItem>().ToList();
        if (cores.Count == 0)
        {
            return;
        }

        if (stack.TakeWhile(s => s is not PlyItem).OfType<CoreItem>().FirstOrDefault() is { } onMould)
        {
            Report(context, onMould, "mould side", stack.OfType<PlyItem>().FirstOrDefault(), isOnMouldSide: true);
        }
        else if (stack.Reverse().TakeWhile(s => s is not PlyItem).OfType<CoreItem>().FirstOrDefault() is { } onBag)
        {
            Report(context, onBag, "bag side", stack.OfType<PlyItem>().LastOrDefault(), isOnMouldSide: false);
        }
    }

    private static void Report(CheckContext context, CoreItem core, string side, PlyItem? nearest, bool isOnMouldSide) => context.Report(
        core.Where,
        $"{core.Name} has no ply on its {side}",
        labels: nearest is null ? [] : [new FindingLabel(nearest.Where, "nearest ply here")],
        fixes: [Skin(context.Part, core, nearest, isOnMouldSide)]);

    private static Fix? Skin(Part part, CoreItem core, PlyItem? nearest, bool isOnMouldSide)
    {
        if (nearest is null || !IsInTheSameList(part, core))
        {
            return null;
        }

        var name = isOnMouldSide ? "outer-skin" : "inner-skin";
        while (part.Stack.Any(s => s.Name == name))
        {
            name += "-2";
        }

        var line = $"{name} {nearest.Material.Name}{(nearest.Orientation is { } lies ? " " + lies.Written : "")}";
        var edit = isOnMouldSide ? Edits.Before(core.Where, line) : Edits.After(core.Where, line);
        return new Fix($"Lay a ply of {nearest.Material.Name} on it", FixSafety.NeedsALook, edit);
    }

    private static bool IsInTheSameList(Part part, CoreItem core) =>
        part.StackWhere is { } list && ReferenceEquals(list.Source, core.Where.Source);
}
