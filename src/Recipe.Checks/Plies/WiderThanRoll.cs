using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A piece is wider than the roll it is cut from.</summary>
public sealed class WiderThanRoll : Check
{
    private const double Straight = 0.02;

    /// <summary>Twice the largest trim allowance in use (25 mm a side): a piece too wide without it rests on no default.</summary>
    private static readonly Length Allowances = Length.FromMillimeters(2 * 25);

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3002",
        Name = "wider-than-roll",
        Severity = Severity.Error,
        Title = "Ply wider than the roll",
        Reason = "It cannot be cut in one piece, and that is found with the shears in the hand.",
        Remedy = "Allow join lines in the ply, take a wider roll, or turn the cloth.",
        Source = "common practice",
        Exceptions = """
            Silent when the ply allows its `join-lines`, when a balanced cloth fits turned by a right angle, and for unidirectional cloth,
            mat and veil, which are laid side by side anyway. A piece cut askew is taken as a rectangle and makes only a warning.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 1600 mm x 1400 mm
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
              surface flat 1600 mm x 1400 mm
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
                outer glass-twill-163 0/90 join-lines 1
                inner glass-twill-163 0/90 join-lines 1
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
        var wide = new List<Wide>();
        foreach (var line in context.Plan.Stack)
        {
            if (line.Item is not PlyItem { Material.Form: ReinforcementForm.Fabric } ply || line.Pieces.IsEmpty)
            {
                continue;
            }

            if (line.Pieces.All(p => p.RollWidth is null))
            {
                context.NotChecked($"no roll width is given for {ply.Material.Name}", ply.MaterialWhere);
            }
            else if (line.Pieces.Where(p => IsTooWide(ply, p)).MaxBy(p => p.WidthOnRoll.Meters) is { } piece)
            {
                wide.Add(new Wide(ply, piece, line));
            }
        }

        if (wide.MaxBy(w => w.Piece.WidthOnRoll.Meters - w.Piece.RollWidth!.Value.Meters) is not { Ply: { } worst } found)
        {
            return;
        }

        var isAskew = Math.Abs(Math.Sin(2 * found.Piece.RollAngle * Math.PI / 180)) > Straight;
        var written = worst.Material.Width?.Written;
        var across = Say.Of(found.Piece.WidthOnRoll, written);
        var roll = Say.Of(found.Piece.RollWidth!.Value, written);
        var grounds = Grounds.Sure.And($"roll width of {worst.Material.Name}", worst.Material.Width);
        context.Report(
            worst.Where,
            $"{worst.Name}{(isAskew ? $", cut at {Say.Number(found.Piece.RollAngle)} deg," : "")} is {across} across the roll, "
            + $"which is {roll} wide{Say.More(wide.Count - 1)}",
            IsTooWideEvenNet(found.Piece) ? grounds : grounds.And(found.Line.CutArea, except: LapOf(context.Plan.Geometry)),
            [new FindingLabel(worst.MaterialWhere, $"roll of {roll}")],
            [AllowJoins(wide)],
            isAskew ? Severity.Warning : Severity.Error);
    }

    private static bool IsTooWide(PlyItem ply, PiecePlan piece) =>
        piece.RollWidth is { } roll
        && piece.Joins > (ply.JoinLines ?? 0)
        && piece.WidthOnRoll > roll
        && !(IsBalanced(ply.Material) && piece.LengthOnRoll <= roll);

    private static bool IsBalanced(Reinforcement cloth) => cloth.WarpShare is not { } share || Math.Abs(share.Value - 0.5) <= 0.05;

    // How far joined strips lie over each other has no part in the width of the piece, except where it goes round a tube.
    private static string? LapOf(GeometryPlan? geometry) => geometry?.Shape is CylinderShape ? null : Defaults.Overlap.Key;

    private static bool IsTooWideEvenNet(PiecePlan piece) => piece.WidthOnRoll - Allowances > piece.RollWidth!.Value;

    private static Fix? AllowJoins(List<Wide> wide)
    {
        var edits = wide.Select(w => AllowJoins(w.Ply, w.Line.Pieces.Max(p => p.Joins))).OfType<TextEdit>().ToImmutableArray();
        var title = wide.Count == 1 ? $"Allow join lines in {wide[0].Ply.Name}" : $"Allow join lines in {wide.Count} plies";
        return edits.Length == wide.Count ? new Fix(title, FixSafety.NeedsALook, edits) : null;
    }

    // Null where another value than a number stands there.
    private static TextEdit? AllowJoins(PlyItem ply, int joins)
    {
        const string word = "join-lines ";
        var text = FormattableString.Invariant($"{joins}");
        var at = ply.Where.Text.LastIndexOf(word, StringComparison.Ordinal);
        if (at < 0)
        {
            return Edits.Append(ply.Where, word + text);
        }

        var start = ply.Where.Span.Start + at + word.Length;
        var digits = ply.Where.Text[(at + word.Length)..].TakeWhile(char.IsAsciiDigit).Count();
        return digits == 0 ? null : Edits.Replace(new SourceSpan(ply.Where.Source, new TextSpan(start, digits)), text);
    }

    private sealed record Wide(PlyItem Ply, PiecePlan Piece, StackPlan Line);
}
