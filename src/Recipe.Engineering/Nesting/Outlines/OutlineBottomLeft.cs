namespace Recipe.Engineering;

/// <summary>Lays pieces one after the other, each where its far edge comes to lie nearest the cut end.</summary>
/// <remarks>
/// Source: the bottom-left rule (Baker, Coffman, Rivest, SIAM J. Comput. 9 (1980) 846-855) on no-fit polygons, as Gomes, Oliveira, EJOR 141
/// (2002) 359-370, with holes filled: a piece may lie wherever there is room.
/// </remarks>
internal static class OutlineBottomLeft
{
    private const long WorkOfOne = 100;

    /// <summary>All pieces, in the order given.</summary>
    internal static OutlineLayout Lay(OutlineWork work, int[] order) => Lay(work, order, new OutlineLayout(work.Items.Count), 0);

    /// <summary>All pieces, the first of the order as they lie in a layout that begins with the same ones.</summary>
    internal static OutlineLayout Lay(OutlineWork work, int[] order, OutlineLayout like, int same)
    {
        // Work even where nothing is in the way: a search that counts it ends.
        work.Obstacles.Count(order.Length * WorkOfOne);
        var layout = new OutlineLayout(work.Items.Count);
        foreach (int item in order.AsSpan(0, same))
        {
            layout.Place(item, like.Pose[item], like.Stock[item], like.X[item], like.Y[item]);
        }

        for (int i = same; i < order.Length; i++)
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
