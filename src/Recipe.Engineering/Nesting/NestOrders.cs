namespace Recipe.Engineering;

/// <summary>Orders in which boxes are laid, and the random numbers that shuffle them.</summary>
internal static class NestOrders
{
    /// <summary>From the largest key to the smallest, then by the second key, then as given.</summary>
    internal static int[] By(NestBoxes boxes, Func<int, double> first, Func<int, double> second)
    {
        int[] order = new int[boxes.Count];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (a, b) =>
        {
            int result = first(b).CompareTo(first(a));
            result = result != 0 ? result : second(b).CompareTo(second(a));
            return result != 0 ? result : a.CompareTo(b);
        });
        return order;
    }

    /// <summary>
    /// A whole number from 0 to below <paramref name="below"/>. SplitMix64 (Steele, Lea, Flood, OOPSLA 2014), so that no version of the
    /// runtime can change a layout.
    /// </summary>
    internal static int Next(ref ulong state, int below)
    {
        state += 0x9E3779B97F4A7C15;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        z ^= z >> 31;
        return (int)(z % (ulong)below);
    }
}
