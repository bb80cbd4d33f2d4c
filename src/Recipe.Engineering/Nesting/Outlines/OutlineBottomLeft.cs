namespace Recipe.Engineering;

/// <summary>Lays pieces one after the other, each where its far edge comes to lie nearest the cut end.</summary>
/// <remarks>
/// Source: the bottom-left rule (Baker, Coffman, Rivest, SIAM J. Comput. 9 (1980) 846-855) on no-fit polygons, as Gomes, Oliveira, EJOR 141
/// (2002) 359-370, with holes filled: a piece may lie wherever there is room.
/// </remarks>
internal static class OutlineBottomLeft
{
    internal static OutlineLayout Lay(OutlineWork work, int[] order)
    {
        var layout = new OutlineLayout(work.Items.Count);
        for (int i = 0; i < order.Length; i++)
        {
            Lay(work, layout, order.AsSpan(0, i), order[i]);
        }

        return layout;
    }

    // On the first roll that holds it.
    private static void Lay(OutlineWork work, OutlineLayout layout, ReadOnlySpan<int> before, int item)
    {
        for (int roll = 0; roll < work.Rolls.Length; roll++)
        {
            double best = double.PositiveInfinity;
            OutlinePose[] poses = work.Items.Allowed[item];
            for (int pose = 0; pose < poses.Length; pose++)
            {
                OutlinePosition position = poses[pose].Position;
                if (!work.Rolls[roll].Holds(position))
                {
                    continue;
                }

                Gather(work, layout, before, roll, position);
                double limit = Math.Min(work.Rolls[roll].Length, best - (2 * OutlineObstacles.Slack)) - position.Along;
                limit = Math.Max(limit, double.IsInfinity(best) ? 0 : limit);
                if (work.Obstacles.First(Math.Max(work.Rolls[roll].Width - position.Across, 0), limit) is { } place)
                {
                    best = place.X + position.Along;
                    layout.Place(item, pose, roll, place.X, place.Y);
                }
            }

            if (!double.IsInfinity(best))
            {
                return;
            }
        }
    }

    private static void Gather(OutlineWork work, OutlineLayout layout, ReadOnlySpan<int> before, int roll, OutlinePosition moved)
    {
        work.Obstacles.Clear();
        foreach (int other in before)
        {
            if (layout.Stock[other] == roll)
            {
                work.Obstacles.Add(work.Table.Of(work.Position(layout, other), moved), layout.X[other], layout.Y[other]);
            }
        }
    }
}
