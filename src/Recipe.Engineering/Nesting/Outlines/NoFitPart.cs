namespace Recipe.Engineering;

/// <summary>
/// Where a convex part of a piece may not come to lie, relative to a convex part of another: the Minkowski sum of the one with the
/// mirror image of the other, set off by the gap. A convex region, as half planes.
/// </summary>
/// <remarks>
/// Source: the no-fit polygon of two convex polygons, e.g. Bennell, Oliveira, "The geometry of nesting problems: a tutorial", EJOR 184
/// (2008) 397-415. The half planes touch the exact region, so that they hold all of it; at a corner the gap is kept by straight lines
/// instead of an arc.
/// </remarks>
internal sealed class NoFitPart
{
    // Corners sharper than this are cut off by further half planes.
    private const double WidestTurn = 95 * Math.PI / 180;

    private readonly double[] _x, _y, _d;

    internal NoFitPart(Point2[] still, Point2[] moved, double gap)
    {
        List<double> angles = [.. Normals(still, 1), .. Normals(moved, -1)];
        angles.Sort();
        var normals = new List<double>();
        for (int i = 0; i < angles.Count; i++)
        {
            double next = i + 1 < angles.Count ? angles[i + 1] : angles[0] + (2 * Math.PI);
            double turn = next - angles[i];
            if (turn < 1e-11)
            {
                continue;
            }

            normals.Add(angles[i]);
            if (gap > 0 && turn > WidestTurn)
            {
                int pieces = (int)Math.Ceiling(turn / WidestTurn * 2);
                for (int k = 1; k < pieces; k++)
                {
                    normals.Add(angles[i] + (turn * k / pieces));
                }
            }
        }

        (_x, _y, _d) = (new double[normals.Count], new double[normals.Count], new double[normals.Count]);
        for (int i = 0; i < normals.Count; i++)
        {
            Point2 normal = Direction(normals[i]);
            (_x[i], _y[i]) = (normal.X, normal.Y);
            _d[i] = Reach(still, normal) + Reach(moved, normal * -1) + gap;
        }

        XMin = -(Reach(still, new(-1, 0)) + Reach(moved, new(1, 0)) + gap);
        XMax = Reach(still, new(1, 0)) + Reach(moved, new(-1, 0)) + gap;
        YMin = -(Reach(still, new(0, -1)) + Reach(moved, new(0, 1)) + gap);
        YMax = Reach(still, new(0, 1)) + Reach(moved, new(0, -1)) + gap;
    }

    internal double XMin { get; }

    internal double XMax { get; }

    internal double YMin { get; }

    internal double YMax { get; }

    internal int Size => _d.Length;

    /// <summary>The forbidden stretch along X at a height; empty when the second end is not above the first.</summary>
    internal (double From, double To) Stretch(double y)
    {
        (double from, double to) = (XMin, XMax);
        double[] nx = _x, ny = _y, d = _d;
        for (int i = 0; i < nx.Length; i++)
        {
            double room = d[i] - (ny[i] * y);
            if (nx[i] > 1e-12)
            {
                to = Math.Min(to, room / nx[i]);
            }
            else if (nx[i] < -1e-12)
            {
                from = Math.Max(from, room / nx[i]);
            }
            else if (room <= 0)
            {
                return (0, 0);
            }
        }

        return (from, to);
    }

    private static IEnumerable<double> Normals(Point2[] points, int sign)
    {
        for (int i = 0; i < points.Length; i++)
        {
            Point2 edge = (points[(i + 1) % points.Length] - points[i]) * sign;
            double angle = Math.Atan2(-edge.X, edge.Y);
            yield return angle < 0 ? angle + (2 * Math.PI) : angle;
        }
    }

    // Quarter turns are exact, so that rectangles touch exactly.
    private static Point2 Direction(double angle)
    {
        double quarters = angle / (Math.PI / 2);
        double whole = Math.Round(quarters);
        return Math.Abs(quarters - whole) < 1e-12
            ? ((int)whole % 4) switch { 0 => new(1, 0), 1 => new(0, 1), 2 => new(-1, 0), _ => new(0, -1) }
            : new(Math.Cos(angle), Math.Sin(angle));
    }

    private static double Reach(Point2[] points, Point2 direction)
    {
        double most = double.NegativeInfinity;
        foreach (Point2 at in points)
        {
            most = Math.Max(most, Point2.Dot(at, direction));
        }

        return most;
    }
}
