namespace Recipe.Engineering;

/// <summary>Looks for better layouts while there is work left: pieces in other orders first, then rolls made shorter.</summary>
internal sealed class OutlineSearch(OutlineWork work, OutlineLayout first, Action<OutlineLayout> better)
{
    // Share of the work for orders; the rest goes into shortening.
    private const double ShareOfOrders = 0.65;
    private const double FirstCut = 0.005;
    private const double LastCut = 0.0005;

    /// <summary>The best layout so far.</summary>
    internal OutlineLayout Best { get; private set; } = first;

    internal void Run()
    {
        Orders();
        Shorten();
    }

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

    private void Orders()
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
        while (items.Count > 1 && work.Obstacles.Steps < work.Steps * ShareOfOrders && !work.IsOver)
        {
            int[] next = [.. current];
            (int i, int j) = (work.Next(next.Length), work.Next(next.Length));
            (next[i], next[j]) = (next[j], next[i]);
            OutlineLayout layout = OutlineBottomLeft.Lay(work, next, its!, Math.Min(i, j));
            Offer(layout);
            (current, its) = work.IsBetter(its!, layout) ? (current, its) : (next, layout);
        }
    }

    private void Shorten()
    {
        double cut = FirstCut;
        OutlineLayout? from = null;
        while (!work.IsOver && Last() is { } roll)
        {
            int[] items = [.. Enumerable.Range(0, work.Items.Count).Where(item => Best.Stock[item] == roll)];
            double least = OutlineBounds.Least(work, roll, items);
            double length = work.Length(Best, roll);
            if (items.Length < 2 || length <= least * (1 + 1e-9))
            {
                return;
            }

            double target = Math.Max(length * (1 - cut), least);
            OutlineLayout layout = (from ?? Best).Copy();
            Squeeze(layout, items, length, target);
            if (new OutlineSeparation(work, roll, items).Separate(layout, target) && Offer(Pushed(layout, roll)))
            {
                from = null;
            }
            else
            {
                // Less is tried next, from a layout that is mixed a little.
                cut = cut > LastCut * 1.5 ? cut / 2 : FirstCut / 2;
                from = Mixed(items);
            }
        }
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

    // Everything behind a line across the roll comes forward; what sticks out then is moved in.
    private void Squeeze(OutlineLayout layout, int[] items, double length, double target)
    {
        double line = length * work.Share();
        foreach (int item in items)
        {
            double along = work.Position(layout, item).Along;
            double x = layout.X[item] + (along / 2) > line ? layout.X[item] - (length - target) : layout.X[item];
            layout.X[item] = Math.Clamp(x, 0, Math.Max(target - along, 0));
        }
    }

    // Two pieces that are unlike change places, middle on middle.
    private OutlineLayout Mixed(int[] items)
    {
        OutlineLayout mixed = Best.Copy();
        for (int tries = 1 + work.Next(3); tries > 0; tries--)
        {
            (int a, int b) = (items[work.Next(items.Length)], items[work.Next(items.Length)]);
            (OutlinePosition first, OutlinePosition second) = (work.Position(mixed, a), work.Position(mixed, b));
            double width = work.Rolls[mixed.Stock[a]].Width;
            (double ax, double ay) = (mixed.X[a] + ((first.Along - second.Along) / 2), mixed.Y[a] + ((first.Across - second.Across) / 2));
            (double bx, double by) = (mixed.X[b] + ((second.Along - first.Along) / 2), mixed.Y[b] + ((second.Across - first.Across) / 2));
            (mixed.X[b], mixed.Y[b]) = (Math.Max(ax, 0), Math.Clamp(ay, 0, Math.Max(width - second.Across, 0)));
            if (a != b)
            {
                (mixed.X[a], mixed.Y[a]) = (Math.Max(bx, 0), Math.Clamp(by, 0, Math.Max(width - first.Across, 0)));
            }
        }

        return mixed;
    }

    // Each piece, from the cut end on, as far forward as its own line allows.
    private OutlineLayout Pushed(OutlineLayout layout, int roll)
    {
        int[] order = [.. Enumerable.Range(0, work.Items.Count).Where(item => layout.Stock[item] == roll).OrderBy(item => layout.X[item])];
        foreach (int item in order)
        {
            work.Obstacles.Clear();
            OutlinePosition moved = work.Position(layout, item);
            foreach (int other in order)
            {
                if (other != item)
                {
                    work.Obstacles.Add(work.Table.Of(work.Position(layout, other), moved), layout.X[other], layout.Y[other]);
                }
            }

            work.Obstacles.All.Sort(static (a, b) => a.XMin.CompareTo(b.XMin));
            layout.X[item] = Math.Min(layout.X[item], work.Obstacles.Along(layout.Y[item], layout.X[item]));
        }

        return layout;
    }
}
