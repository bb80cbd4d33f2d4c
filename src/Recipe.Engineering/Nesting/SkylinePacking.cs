namespace Recipe.Engineering;

/// <summary>Lays boxes against the far edge of those that lie already.</summary>
internal static class SkylinePacking
{
    /// <summary>
    /// In the order given, each where its far edge comes to lie nearest the cut end, of several places nearest the selvedge.
    /// </summary>
    /// <remarks>
    /// Source: the bottom-left rule of Baker, Coffman, Rivest, "Orthogonal packings in two dimensions", SIAM J. Comput. 9 (1980) 846-855,
    /// on a skyline instead of all holes.
    /// </remarks>
    internal static NestLayout BottomLeft(NestBoxes boxes, int[] order)
    {
        var skyline = new Skyline(boxes.Width);
        var layout = new NestLayout(boxes.Count);
        foreach (int box in order)
        {
            (double best, double y, int step, bool turned) = (double.PositiveInfinity, 0, 0, false);
            for (int turn = boxes.FitsStraight(box) ? 0 : 1; turn < (boxes.CanTurn[box] ? 2 : 1); turn++)
            {
                double across = boxes.AcrossOf(box, turn == 1);
                double along = boxes.AlongOf(box, turn == 1);
                for (int i = 0; i < skyline.Count; i++)
                {
                    double rest = skyline.Rest(i, across);
                    if (rest + along < best)
                    {
                        (best, y, step, turned) = (rest + along, rest, i, turn == 1);
                    }
                }
            }

            double x = skyline.X(step);
            layout.Place(boxes, box, x, y, turned);
            skyline.Raise(x, boxes.AcrossOf(box, turned), best);
        }

        return layout;
    }

    /// <summary>
    /// The lowest step of the skyline takes a box that fits it; a step that none fits is filled up to its lower neighbour.
    /// </summary>
    /// <param name="boxes">The boxes.</param>
    /// <param name="order">Among boxes that fill the step alike, the first of this order is taken.</param>
    /// <param name="widest">
    /// Whether the box is taken that fills most of the step's width; else one that fills all of it, or the first of the order that fits.
    /// </param>
    /// <param name="againstHigher">Whether the box leans against the higher neighbour instead of the selvedge side.</param>
    /// <remarks>
    /// Source: Burke, Kendall, Whitwell, "A new placement heuristic for the orthogonal stock-cutting problem", Operations Research 52 (2004)
    /// 655-671; an order that a search may change, as Leung, Zhang, Sim, "A two-stage intelligent search algorithm for the two-dimensional
    /// strip packing problem", EJOR 215 (2011) 57-69 (their scores are not used).
    /// </remarks>
    internal static NestLayout BestFit(NestBoxes boxes, int[] order, bool widest, bool againstHigher)
    {
        var skyline = new Skyline(boxes.Width);
        var layout = new NestLayout(boxes.Count);
        var left = new List<int>(order);
        while (left.Count > 0)
        {
            int step = skyline.Lowest();
            (double x, double y) = (skyline.X(step), skyline.Y(step));
            double room = skyline.End(step) - x;
            double before = step > 0 ? skyline.Y(step - 1) : double.PositiveInfinity;
            double behind = step + 1 < skyline.Count ? skyline.Y(step + 1) : double.PositiveInfinity;
            if (Choose(boxes, left, room, skyline.Slack, widest) is not { } choice)
            {
                skyline.Raise(x, room, Math.Min(before, behind));
                continue;
            }

            int box = left[choice.Index];
            left.RemoveAt(choice.Index);
            double across = boxes.AcrossOf(box, choice.Turned);
            double at = againstHigher && behind > before ? x + room - across : x;
            layout.Place(boxes, box, at, y, choice.Turned);
            skyline.Raise(at, across, y + boxes.AlongOf(box, choice.Turned));
        }

        return layout;
    }

    private static (int Index, bool Turned)? Choose(NestBoxes boxes, List<int> left, double room, double slack, bool widest)
    {
        (int Index, bool Turned)? best = null;
        double width = 0;
        for (int i = 0; i < left.Count; i++)
        {
            int box = left[i];
            for (int turn = 0; turn < (boxes.CanTurn[box] ? 2 : 1); turn++)
            {
                double across = boxes.AcrossOf(box, turn == 1);
                bool fits = across <= room + slack;
                if (fits && across >= room - slack)
                {
                    return (i, turn == 1);
                }

                if (fits && (best is null || (widest && across > width)))
                {
                    (width, best) = (across, (i, turn == 1));
                }
            }
        }

        return best;
    }
}
