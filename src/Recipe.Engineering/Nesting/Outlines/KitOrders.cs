namespace Recipe.Engineering;

/// <summary>How far a layout keeps the order of the plies.</summary>
internal static class KitOrders
{
    /// <summary>Pairs of pieces of one roll that are met in the wrong order, going from the cut end by their middles.</summary>
    internal static long Disorder(OutlineWork work, OutlineLayout layout)
    {
        int[] order = [.. Enumerable.Range(0, work.Items.Count).Where(item => layout.Stock[item] >= 0)
            .OrderBy(item => layout.Stock[item]).ThenBy(item => Middle(work, layout, item)).ThenBy(item => item)];
        long wrong = 0;
        for (int i = 0; i < order.Length; i++)
        {
            for (int j = i + 1; j < order.Length && layout.Stock[order[j]] == layout.Stock[order[i]]; j++)
            {
                wrong += work.Items.Kit[order[j]] < work.Items.Kit[order[i]] ? 1 : 0;
            }
        }

        return wrong;
    }

    /// <summary>Exchanges pieces that look alike, as they lie, so that the earlier ply is met first: nothing else changes.</summary>
    internal static OutlineLayout Settled(OutlineWork work, OutlineLayout layout)
    {
        OutlineLayout settled = layout.Copy();
        IEnumerable<int> laid = Enumerable.Range(0, work.Items.Count).Where(item => layout.Stock[item] >= 0);
        foreach (IGrouping<int, int> alike in laid.GroupBy(item => work.Position(layout, item).Id))
        {
            int[] places = [.. alike.OrderBy(item => layout.Stock[item]).ThenBy(item => Middle(work, layout, item)).ThenBy(item => item)];
            int[] items = [.. alike.OrderBy(item => work.Items.Kit[item]).ThenBy(item => item)];
            for (int i = 0; i < items.Length; i++)
            {
                int place = places[i];
                int pose = Array.FindIndex(work.Items.Allowed[items[i]], allowed => allowed.Position.Id == alike.Key);
                settled.Place(items[i], pose, layout.Stock[place], layout.X[place], layout.Y[place]);
            }
        }

        return settled;
    }

    private static double Middle(OutlineWork work, OutlineLayout layout, int item) => layout.X[item] + (work.Position(layout, item).Along / 2);
}
