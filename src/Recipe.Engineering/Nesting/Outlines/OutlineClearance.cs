namespace Recipe.Engineering;

/// <summary>Looks at a layout once more, at the true outlines and without what the search is made of.</summary>
internal static class OutlineClearance
{
    // Distances may fall short by this, m: rounding.
    private const double Rounding = 1e-9;

    /// <summary>Whether all pieces lie inside their rolls and no two are nearer than the gap.</summary>
    internal static bool Holds(OutlineWork work, OutlineLayout layout)
    {
        double gap = work.Table.Gap;
        int[] items = [.. Enumerable.Range(0, work.Items.Count).Where(item => layout.Stock[item] >= 0).OrderBy(item => layout.X[item])];
        for (int i = 0; i < items.Length; i++)
        {
            (int a, OutlineRoll roll) = (items[i], work.Rolls[layout.Stock[items[i]]]);
            OutlinePosition first = work.Position(layout, a);
            if (layout.X[a] < -Rounding || layout.Y[a] < -Rounding
                || layout.X[a] + first.Along > roll.Length + Rounding || layout.Y[a] + first.Across > roll.Width + (Rounding * Math.Max(roll.Width, 1)))
            {
                return false;
            }

            for (int j = i + 1; j < items.Length && layout.X[items[j]] <= layout.X[a] + first.Along + gap; j++)
            {
                int b = items[j];
                OutlinePosition second = work.Position(layout, b);
                bool near = layout.Stock[a] == layout.Stock[b]
                    && layout.Y[b] <= layout.Y[a] + first.Across + gap && layout.Y[a] <= layout.Y[b] + second.Across + gap;
                if (near && !AreApart(first.Points, second.Points, new(layout.X[b] - layout.X[a], layout.Y[b] - layout.Y[a]), gap))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static bool AreApart(Point2[] a, Point2[] b, Point2 by, double gap)
    {
        double least = Math.Max(gap - Rounding, 0);
        for (int i = 0; i < a.Length; i++)
        {
            (Point2 from, Point2 to) = (a[i], a[(i + 1) % a.Length]);
            for (int j = 0; j < b.Length; j++)
            {
                (Point2 start, Point2 end) = (b[j] + by, b[(j + 1) % b.Length] + by);
                if (Cross(from, to, start, end) || (least > 0 && Distance(from, to, start, end) < least))
                {
                    return false;
                }
            }
        }

        // No edges meet: apart, unless one lies inside the other.
        return !IsDeepIn(Middle(b) + by, a) && !IsDeepIn(Middle(a) - by, b);
    }

    // Whether two edges cross, each reaching beyond the other by more than rounding.
    private static bool Cross(Point2 a, Point2 b, Point2 c, Point2 d)
    {
        (Point2 u, Point2 v) = (b - a, d - c);
        (double lu, double lv) = (u.Norm, v.Norm);
        if (lu == 0 || lv == 0)
        {
            return false;
        }

        (double c1, double d1) = (Point2.Cross(u, c - a) / lu, Point2.Cross(u, d - a) / lu);
        (double a2, double b2) = (Point2.Cross(v, a - c) / lv, Point2.Cross(v, b - c) / lv);
        return Math.Min(c1, d1) < -Rounding && Math.Max(c1, d1) > Rounding && Math.Min(a2, b2) < -Rounding && Math.Max(a2, b2) > Rounding;
    }

    private static double Distance(Point2 a, Point2 b, Point2 c, Point2 d) =>
        Math.Min(Math.Min(Distance(a, c, d), Distance(b, c, d)), Math.Min(Distance(c, a, b), Distance(d, a, b)));

    private static double Distance(Point2 at, Point2 from, Point2 to)
    {
        Point2 edge = to - from;
        double square = Point2.Dot(edge, edge);
        double along = square == 0 ? 0 : Math.Clamp(Point2.Dot(at - from, edge) / square, 0, 1);
        return (at - (from + (edge * along))).Norm;
    }

    // A point well inside: between two points of the outline on the line through the middle of its first edge.
    private static Point2 Middle(Point2[] points)
    {
        Point2 from = points[0], to = points[1 % points.Length];
        Point2 edge = to - from;
        Point2 inward = new Point2(-edge.Y, edge.X) * (1e-6 / Math.Max(edge.Norm, 1e-12));
        return from + (edge * 0.5) + inward;
    }

    private static bool IsDeepIn(Point2 at, Point2[] points)
    {
        bool inside = false;
        for (int i = 0; i < points.Length; i++)
        {
            (Point2 a, Point2 b) = (points[i], points[(i + 1) % points.Length]);
            if (Distance(at, a, b) <= Rounding)
            {
                return false;
            }

            if ((a.Y > at.Y) != (b.Y > at.Y) && at.X < a.X + ((b.X - a.X) * (at.Y - a.Y) / (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
