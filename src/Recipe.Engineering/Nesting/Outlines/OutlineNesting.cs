using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Lays true outlines out on rolls and offcuts so that little cloth is used.</summary>
/// <remarks>
/// Pieces lie where convex parts of them stay out of the no-fit polygons of the others; first one after the other from the cut end
/// (bottom-left), in several orders, then in orders of which two pieces have changed places: see <see cref="OutlineNestSettings.Steps"/> for how long. The
/// rectangles round the pieces, laid out by <see cref="RollNesting"/>, are one of the layouts when there is one long roll. What has a
/// length is filled first, in the order given, then the long rolls; a piece lies on the first that has room. A layout is better when
/// less cloth of pieces is left over, then when less is used of the roll that is tried last, and so on to the first; of layouts
/// equal in that, the one in which the plies are met more nearly in their order. Pieces that look alike change places so that the
/// earlier ply is met first. Each layout is checked against the true outlines before it is taken. The same input gives the same
/// layout, unless the search is stopped.
/// </remarks>
public static class OutlineNesting
{
    /// <summary>The most pieces that are laid out.</summary>
    public const int MostPieces = 1000;

    /// <summary>Lays pieces out.</summary>
    /// <param name="pieces">The pieces, <see cref="MostPieces"/> at the most in all.</param>
    /// <param name="stock">The rolls and offcuts.</param>
    /// <param name="settings">Gap, start of the random numbers, and how much work.</param>
    /// <param name="progress">Hears of each better layout; may be null.</param>
    /// <param name="stop">Ends the search; the best layout so far is returned.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or a count is out of range.</exception>
    /// <exception cref="ArgumentException">There are too many pieces, or an outline crosses itself.</exception>
    public static OutlineNest Nest(
        ImmutableArray<OutlinePiece> pieces,
        ImmutableArray<RollStock> stock,
        OutlineNestSettings settings,
        IProgress<OutlineNest>? progress = null,
        CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(settings);
        double gap = Guard.NotNegative(settings.Gap.Meters, "m", nameof(settings));
        if (settings.Steps < 0)
        {
            throw Guard.Refuse(settings.Steps, string.Empty, nameof(settings), "must not be below 0");
        }

        var rolls = stock.Select((roll, i) => new OutlineRoll(
            i,
            Guard.Positive(roll.Width.Meters, "m", nameof(stock)),
            roll.Length is { } length ? Guard.Positive(length.Meters, "m", nameof(stock)) : double.PositiveInfinity));
        var work = new OutlineWork(
            new OutlineItems(pieces, MostPieces), [.. rolls.OrderBy(roll => double.IsInfinity(roll.Length))], new NoFitTable(gap), settings.Seed, settings.Steps, stop);
        var search = new OutlineSearch(work, OutlineBoxes.Lay(work, gap), better => progress?.Report(Read(work, pieces, better, endedEarly: false)));
        search.Run();
        return Read(work, pieces, search.Best, work.IsStopped);
    }

    private static OutlineNest Read(OutlineWork work, ImmutableArray<OutlinePiece> pieces, OutlineLayout layout, bool endedEarly)
    {
        OutlineItems items = work.Items;
        var placements = Enumerable.Range(0, items.Count)
            .Where(item => layout.Stock[item] >= 0)
            .OrderBy(item => work.Rolls[layout.Stock[item]].Index).ThenBy(item => layout.X[item]).ThenBy(item => layout.Y[item]).ThenBy(item => item)
            .Select(item =>
            {
                OutlinePose pose = items.Allowed[item][layout.Pose[item]];
                Point2 shift = pose.Shift + new Point2(layout.X[item], layout.Y[item]);
                Outline drawn = pieces[items.Piece[item]].Outline;
                Outline lies = (pose.IsMirrored ? drawn.Mirrored() : drawn).Turned(pose.Degrees).Moved(shift);
                return new OutlinePlacement(
                    items.Piece[item], items.Copy[item], work.Rolls[layout.Stock[item]].Index, pose.IsMirrored, pose.Degrees, shift, lies);
            });
        var uses = Enumerable.Range(0, work.Rolls.Length)
            .Select(roll => (Roll: roll, Items: Enumerable.Range(0, items.Count).Where(item => layout.Stock[item] == roll).ToArray()))
            .Where(use => use.Items.Length > 0)
            .OrderBy(use => work.Rolls[use.Roll].Index)
            .Select(use =>
            {
                double length = work.Length(layout, use.Roll);
                double waste = 1 - (use.Items.Sum(item => items.Area[item]) / (length * work.Rolls[use.Roll].Width));
                return new RollUse(
                    work.Rolls[use.Roll].Index,
                    use.Items.Length,
                    Length.FromMeters(length),
                    Length.FromMeters(Math.Min(OutlineBounds.Least(work, use.Roll, use.Items), length)),
                    Ratio.FromDecimalFractions(Math.Clamp(waste, 0, 1)));
            });
        var missing = Enumerable.Range(0, items.Count)
            .Where(item => layout.Stock[item] < 0)
            .Select(item => new OutlineMissing(
                items.Piece[item], items.Copy[item], !work.Rolls.Any(roll => items.Allowed[item].Any(pose => roll.Holds(pose.Position)))));
        return new OutlineNest([.. placements], [.. uses], [.. missing], endedEarly);
    }
}
