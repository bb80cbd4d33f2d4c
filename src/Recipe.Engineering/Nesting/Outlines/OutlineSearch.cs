namespace Recipe.Engineering;

/// <summary>Looks for better layouts while there is work left: the pieces laid in other orders.</summary>
internal sealed class OutlineSearch(OutlineWork work, OutlineLayout first, Action<OutlineLayout> better)
{
    /// <summary>The best layout so far.</summary>
    internal OutlineLayout Best { get; private set; } = first;

    private bool Offer(OutlineLayout layout)
    {
        OutlineLayout settled = KitOrders.Settled(work, layout);
        if (!work.IsBetter(settled, Best) || !OutlineClearance.Holds(work, settled))
        {
            return false;
        }

        Best = settled;
        better(settled);
        return true;
    }

    internal void Run()
    {
        OutlineItems items = work.Items;
        int[] all = [.. Enumerable.Range(0, items.Count)];
        double Along(int item) => items.Allowed[item][0].Position.Along;
        double Across(int item) => items.Allowed[item][0].Position.Across;
        int[][] orders =
        [
            [.. all.OrderByDescending(item => items.Area[item]).ThenBy(item => items.Kit[item])],
            [.. all.OrderByDescending(Along).ThenByDescending(item => items.Area[item])],
            [.. all.OrderByDescending(Across).ThenByDescending(item => items.Area[item])],
            [.. all.OrderBy(item => items.Kit[item]).ThenByDescending(item => items.Area[item])],
        ];
        (int[] current, OutlineLayout? its) = (orders[0], null);
        foreach (int[] order in orders)
        {
            if (its is not null && work.IsOver)
            {
                return;
            }

            OutlineLayout layout = OutlineBottomLeft.Lay(work, order);
            Offer(layout);
            (current, its) = its is null || work.IsBetter(layout, its) ? (order, layout) : (current, its);
        }

        // A step to an order that is not worse is kept, so that the search can leave a plain.
        while (items.Count > 1 && !work.IsOver && !IsAtBound())
        {
            int[] next = [.. current];
            (int i, int j) = (work.Next(next.Length), work.Next(next.Length));
            (next[i], next[j]) = (next[j], next[i]);
            OutlineLayout layout = OutlineBottomLeft.Lay(work, next, its!, Math.Min(i, j));
            Offer(layout);
            (current, its) = work.IsBetter(its!, layout) ? (current, its) : (next, layout);
        }
    }

    // No layout of all pieces on one roll is shorter than its bound.
    private bool IsAtBound()
    {
        if (Last() is not { } roll)
        {
            return true;
        }

        int[] items = [.. Enumerable.Range(0, work.Items.Count).Where(item => Best.Stock[item] == roll)];
        return items.Length == work.Items.Count && work.Length(Best, roll) <= OutlineBounds.Least(work, roll, items) * (1 + 1e-9);
    }

    // The roll that is tried last of those used.
    private int? Last()
    {
        for (int roll = work.Rolls.Length - 1; roll >= 0; roll--)
        {
            if (Best.Stock.Contains(roll))
            {
                return roll;
            }
        }

        return null;
    }
}
