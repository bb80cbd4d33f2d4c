namespace Recipe.Engineering;

/// <summary>
/// First fit by decreasing height: the longest piece opens a shelf across the roll, each next one goes onto the first shelf that has room.
/// </summary>
/// <remarks>
/// Source: Coffman, Garey, Johnson, Tarjan, "Performance bounds for level-oriented two-dimensional packing algorithms", SIAM J. Comput.
/// 9 (1980) 808-826: never longer than 1.7 times the shortest layout plus the longest piece.
/// </remarks>
internal static class ShelfPacking
{
    /// <summary>Lays the boxes out, each turned as told; boxes that do not fit otherwise are turned anyway.</summary>
    /// <param name="boxes">The boxes.</param>
    /// <param name="turned">Whether each lies a quarter turn round.</param>
    internal static NestLayout Pack(NestBoxes boxes, bool[] turned)
    {
        int[] order = NestOrders.By(boxes, box => boxes.AlongOf(box, turned[box]), box => boxes.AcrossOf(box, turned[box]));
        var layout = new NestLayout(boxes.Count);
        var starts = new List<double>();
        var filled = new List<double>();
        foreach (int box in order)
        {
            double across = boxes.AcrossOf(box, turned[box]);
            int shelf = 0;
            while (shelf < filled.Count && filled[shelf] + across > boxes.Width)
            {
                shelf++;
            }

            if (shelf == filled.Count)
            {
                starts.Add(layout.Length);
                filled.Add(0);
            }

            layout.Place(boxes, box, filled[shelf], starts[shelf], turned[box]);
            filled[shelf] += across;
        }

        return layout;
    }
}
