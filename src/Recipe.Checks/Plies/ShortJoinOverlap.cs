using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Two pieces of one woven ply meet with hardly any overlap.</summary>
public sealed class ShortJoinOverlap : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3107",
        Name = "short-join-overlap",
        Severity = Severity.Warning,
        Title = "Pieces of a ply hardly overlap",
        Reason = "No fibre crosses the join, so the ply carries there only what the resin carries.",
        Remedy = "Overlap woven pieces by 13 to 25 mm.",
        Source = "common practice (half an inch at the least; unidirectional strips lie edge to edge, torn mat edges blend)",
        Exceptions = """
            Advice for a part that is only looked at. Silent for unidirectional cloth, mat and veil, and for plies of one piece.
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
                outer glass-twill-163 0/90 overlap 5 mm join-lines 1
                inner glass-twill-163 0/90
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
                outer glass-twill-163 0/90 overlap 20 mm join-lines 1
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Length Least = Length.FromInches(0.5);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var cut = context.Plan.Stack.Where(s => s.Pieces.Any(p => p.Joins > 0)).Select(s => s.Item.Name).ToHashSet();
        var shortest = part.Plies()
            .Where(p => p.Material.Form == ReinforcementForm.Fabric && (p.JoinLines > 0 || cut.Contains(p.Name)))
            .Where(p => p.Overlap is { } lap && lap.Value.Meters < Least.Meters - 0.0005)
            .OrderBy(p => p.Overlap!.Value.Meters)
            .ToList();
        if (shortest is not [var ply, ..])
        {
            return;
        }

        var overlap = ply.Overlap!;
        context.Report(
            overlap.Where ?? ply.Where,
            $"pieces of {ply.Name} overlap by {Say.Of(overlap)}; woven cloth wants {Say.Of(Least, overlap.Written)} or more{Say.More(shortest.Count - 1)}",
            Grounds.Sure.And("overlap", overlap),
            [new FindingLabel(ply.Where, "ply here")],
            [Wider(part, shortest)],
            part.Use?.Value == PartUse.Cosmetic ? Severity.Advice : Severity.Warning);
    }

    private static Fix? Wider(Part part, List<PlyItem> plies)
    {
        var edits = plies.Select(p => part.Rewrite(p.Overlap, "20 mm")).DistinctBy(e => e?.Where.Span.Start).ToList();
        return edits.Contains(null) ? null : new Fix("Overlap them by 20 mm", FixSafety.NeedsALook, [.. edits.OfType<TextEdit>()]);
    }
}
