using Recipe.Model;
using Recipe.Text.Findings;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A piece is longer than any roll that is left.</summary>
public sealed class PiecesDoNotFitRoll : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8307",
        Name = "pieces-do-not-fit-roll",
        Severity = Severity.Warning,
        Title = "Piece longer than the roll that is left",
        Reason = "The shelf holds enough in all and no roll is long enough, which is found with the scissors in the hand.",
        Remedy = "Take another roll, or plan a join in that ply.",
        Source = "common practice",
        Exceptions = """
            Speaks of cloths whose width is known and whose every roll on the shelf has an amount. Silent where the shelf does not hold enough
            at all, and where the ply says `join-lines`.
            """,
        BadExample = """
            fabric our-tape like glass-tape-200 { width 10 cm; source "measured" }

            stock {
              our-tape 1.2 m lot "T1"
              our-tape 1.2 m lot "T2"
            }

            mould tray-mould {
              surface flat 1500 mm x 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              trim 0 mm
              plies {
                outer our-tape 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            fabric our-tape like glass-tape-200 { width 10 cm; source "measured" }

            stock {
              our-tape 30 m lot "T1"
            }

            mould tray-mould {
              surface flat 1500 mm x 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              trim 0 mm
              plies {
                outer our-tape 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Dimension Metres = UnitTable.Get("m").Dimension;
    private static readonly Dimension SquareMetres = UnitTable.Get("m2").Dimension;
    private const double Slack = 1.001;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var line in context.Plan.Stack)
        {
            if (line.Item is not PlyItem { JoinLines: null, Material.Width: { Value.Meters: > 0 } width } ply
                || context.Plan.Takeoff.FirstOrDefault(t => t.Material.Name == ply.Material.Name) is not { InStock: not null, ToBuy.Si: <= 0 })
            {
                continue;
            }

            var rolls = Shelf.Of(context.Model, ply.Material.Name).Select(l => (Line: l, Length: LengthOf(l, width.Value))).ToList();
            var piece = line.Pieces.Where(p => p.Joins == 0).MaxBy(p => p.LengthOnRoll);
            if (rolls.Count == 0 || rolls.Exists(r => r.Length is null) || piece is null)
            {
                continue;
            }

            var longest = rolls.MaxBy(r => r.Length!.Value);
            if (piece.LengthOnRoll.Meters <= longest.Length!.Value.Meters * Slack)
            {
                continue;
            }

            context.Report(
                longest.Line.Where,
                $"{line.Item.Name} is cut {Say.Of(piece.LengthOnRoll)} long; the longest roll of {ply.Material.Name} on the shelf has {Say.About(longest.Length.Value)}",
                Grounds.Sure.And($"width of {ply.Material.Name}", width),
                [new FindingLabel(ply.Where, "cut for this")],
                [Edits.Fix("Allow a join in the ply", FixSafety.NeedsALook, Edits.Append(ply.Where, "join-lines 1"))]);
            return;
        }
    }

    private static Length? LengthOf(StockLine line, Length width) => line.Amount is not { } amount ? null
        : amount.Dimension == Metres ? Length.FromMeters(amount.Si)
        : amount.Dimension == SquareMetres ? Length.FromMeters(amount.Si / width.Meters)
        : null;
}
