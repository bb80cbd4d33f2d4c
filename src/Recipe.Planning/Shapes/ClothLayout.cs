using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>The pieces of one cloth and what they may be cut from, offcuts first.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Pieces">Its pieces; mirror images stand for themselves.</param>
/// <param name="Stock">The offcuts on the shelf, smallest first, then the roll.</param>
/// <param name="Gap">Least distance of two pieces.</param>
public sealed record ClothLayout(Reinforcement Cloth, ImmutableArray<PieceToCut> Pieces, ImmutableArray<RollStock> Stock, Length Gap)
{
    /// <summary>What is to be laid out for a part: one entry for each cloth whose roll has a known width, in the order of the cut list.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="model">What is around it: the shelf.</param>
    /// <param name="pieces">Its pieces; see <see cref="PiecesToCut"/>.</param>
    /// <param name="parts">How many parts are cut at once; 1 or more.</param>
    /// <param name="offcuts">Whether the offcuts of the shop are used.</param>
    public static ImmutableArray<ClothLayout> Of(Plan plan, RecipeModel model, ImmutableArray<PieceToCut> pieces, int parts, bool offcuts)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(model);
        ArgumentOutOfRangeException.ThrowIfLessThan(parts, 1);
        var layouts = ImmutableArray.CreateBuilder<ClothLayout>();
        foreach (var nest in plan.Nests)
        {
            if (nest.Material is not Reinforcement cloth || nest.UsableWidth is not { } width)
            {
                continue;
            }

            ImmutableArray<PieceToCut> own = [.. pieces.Where(piece => piece.Cloth.Name == cloth.Name).SelectMany(piece => Sides(piece, parts))];
            if (!own.IsEmpty)
            {
                layouts.Add(new ClothLayout(cloth, own, [.. offcuts ? Offcuts(model, cloth) : [], new RollStock(cloth.Name, width.Value)], nest.Gap?.Value ?? Defaults.NestGap.Value));
            }
        }

        return layouts.ToImmutable();
    }

    /// <summary>Lays the pieces out.</summary>
    /// <param name="seed">Start of the random numbers.</param>
    /// <param name="steps">How much work; see <see cref="OutlineNestSettings"/>.</param>
    /// <param name="progress">Hears of each better layout; may be null.</param>
    /// <param name="stop">Ends the search; the best layout so far is returned.</param>
    /// <exception cref="ArgumentException">There are more pieces than anybody would cut from a drawing.</exception>
    public OutlineNest Lay(ulong seed, long steps, IProgress<OutlineNest>? progress = null, CancellationToken stop = default) => OutlineNesting.Nest(
        [.. Pieces.Select(piece => new OutlinePiece(piece.Outline, piece.Count, piece.Turn, piece.Cloth.Form is ReinforcementForm.Mat or ReinforcementForm.Veil, piece.StackLine))],
        Stock,
        new OutlineNestSettings(Gap, seed, steps),
        progress,
        stop);

    private static IEnumerable<PieceToCut> Sides(PieceToCut piece, int parts)
    {
        var mirrored = piece.MirrorImages * parts;
        var straight = (piece.Count * parts) - mirrored;
        if (straight > 0)
        {
            yield return piece with { Count = straight, MirrorImages = 0 };
        }

        if (mirrored > 0)
        {
            static Point2 Flip(Point2 at) => new(at.X, -at.Y);
            yield return piece with
            {
                Mark = piece.Mark + "*",
                Count = mirrored,
                MirrorImages = mirrored,
                Outline = piece.Outline.Mirrored(),
                Notches = [.. piece.Notches.Select(notch => new PieceNotch(Flip(notch.At), Flip(notch.Inward), (360 - notch.Degrees) % 360))],
                Warp = piece.Warp is { } warp ? (Flip(warp.Tail), Flip(warp.Head)) : null,
                Label = Flip(piece.Label),
            };
        }
    }

    private static IEnumerable<RollStock> Offcuts(RecipeModel model, Reinforcement cloth) => model.Stock
        .Where(line => line.Material == cloth.Name && line.Offcut is { Along.Meters: > 0, Across.Meters: > 0 })
        .OrderBy(line => line.Offcut!.Value.Along.Meters * line.Offcut.Value.Across.Meters)
        .Select(line => new RollStock(line.Lot is { } lot ? $"offcut, lot {lot}" : "offcut", line.Offcut!.Value.Across, line.Offcut.Value.Along));
}
