using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Cured halves are joined on faces that nothing has keyed.</summary>
public sealed class JointNotKeyed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8101",
        Name = "joint-not-keyed",
        Severity = Severity.Error,
        Title = "Joint not keyed",
        Reason = "On a cured face lie release, blush and a smooth skin of resin, and glue or wet cloth peels off it.",
        Remedy = "Pull a peel ply off the joint just before, or sand it with 80 to 120 grit and wipe it clean.",
        Source = "common practice: 80 grit where the face is older than a day",
        Exceptions = """
            Speaks of `cured-then-taped` and `cured-then-bonded`. Silent where any line of the join or of the finish sands or pulls the peel
            ply, and where a peel ply is in the bag.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              join {
                manner cured-then-taped
                align dowels
                overlap 20 mm
                seam 1400 mm
                tape glass-tape-200 width 50 mm x1
                vent 3 mm
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              join {
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 1400 mm
                tape glass-tape-200 width 50 mm x1
                vent 3 mm
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.JoinLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Join is not { Manner: { Value: JoinManner.CuredThenTaped or JoinManner.CuredThenBonded } manner } join
            || join.Preparation.Concat(part.Finish).Any(s => s.Keys() || s.IsOfPeelPly() || s.IsWhileGreen())
            || HasPeelPly(part)
            || (!join.Parts.IsEmpty && Joined(context, join).All(p => HasPeelPly(p) || p.Finish.Any(s => s.Keys() || s.IsOfPeelPly()))))
        {
            return;
        }

        context.Report(
            manner.Where ?? join.Where,
            $"the halves are cured and then {(manner.Value == JoinManner.CuredThenTaped ? "taped" : "bonded")}, and no line sands the joint or pulls a peel ply off it",
            fixes: [Edits.Fix("Sand it", FixSafety.NeedsALook, Edits.Last(join.Where, "abrade 80 grit"))]);
    }

    private static bool HasPeelPly(Part part) => part.Bag?.Layers.Any(l => l.Class == LayerClass.PeelPly) == true;

    private static IEnumerable<Part> Joined(CheckContext context, Join join) => join.Parts.Select(context.Model.PartNamed).OfType<Part>();
}
