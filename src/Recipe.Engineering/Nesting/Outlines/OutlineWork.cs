using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>A roll in the order in which they are tried, m.</summary>
internal readonly record struct OutlineRoll(int Index, double Width, double Length)
{
    internal bool Holds(OutlinePosition position) =>
        position.Across <= Width + OutlineObstacles.Slack && position.Along <= Length + OutlineObstacles.Slack;
}

/// <summary>What a search is given, and how much of its work is done.</summary>
internal sealed class OutlineWork(OutlineItems items, ImmutableArray<OutlineRoll> rolls, NoFitTable table, ulong seed, long steps, CancellationToken stop)
{
    private ulong _random = seed;

    internal OutlineItems Items => items;

    internal ImmutableArray<OutlineRoll> Rolls => rolls;

    internal NoFitTable Table => table;

    internal OutlineObstacles Obstacles { get; } = new();

    /// <summary>Whether the search is over, so far.</summary>
    internal bool IsOver => Obstacles.Steps >= steps || stop.IsCancellationRequested;

    /// <summary>Whether it was stopped from outside before its work was done.</summary>
    internal bool IsStopped => Obstacles.Steps < steps && stop.IsCancellationRequested;

    internal int Next(int below) => NestOrders.Next(ref _random, below);

    internal OutlinePosition Position(OutlineLayout layout, int item) => items.Allowed[item][layout.Pose[item]].Position;

    internal double End(OutlineLayout layout, int item) => layout.X[item] + Position(layout, item).Along;

    /// <summary>Length used of a roll, m.</summary>
    internal double Length(OutlineLayout layout, int roll)
    {
        double length = 0;
        for (int item = 0; item < items.Count; item++)
        {
            length = layout.Stock[item] == roll ? Math.Max(length, End(layout, item)) : length;
        }

        return length;
    }

    /// <summary>
    /// Whether a layout is better: less cloth of pieces that lie nowhere; then less used of the roll that is tried last, and so on to
    /// the first; then pieces of one ply nearer together and in the order of the plies.
    /// </summary>
    internal bool IsBetter(OutlineLayout layout, OutlineLayout than)
    {
        const double equal = 1e-9;
        double missing = Missing(layout) - Missing(than);
        if (Math.Abs(missing) > equal)
        {
            return missing < 0;
        }

        for (int roll = rolls.Length - 1; roll >= 0; roll--)
        {
            double longer = Length(layout, roll) - Length(than, roll);
            if (Math.Abs(longer) > equal)
            {
                return longer < 0;
            }
        }

        return KitOrders.Disorder(this, layout) < KitOrders.Disorder(this, than);
    }

    private double Missing(OutlineLayout layout)
    {
        double area = 0;
        for (int item = 0; item < items.Count; item++)
        {
            area += layout.Stock[item] < 0 ? items.Area[item] : 0;
        }

        return area;
    }
}
