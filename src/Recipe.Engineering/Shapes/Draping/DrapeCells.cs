using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>The cells between the crossings of a net, and where a point lies in them.</summary>
internal sealed class DrapeCells
{
    private const int Samples = 6;
    private readonly DrapeNodes _nodes;
    private readonly double _step;
    private readonly Dictionary<(int I, int J), Corners> _corners = [];

    internal DrapeCells(DrapeNodes nodes, TriangleTree tree, double step)
    {
        (_nodes, _step) = (nodes, step);
        List<DrapeCell> cells = new(nodes.Count);
        for (int index = 0; index < nodes.Count; index++)
        {
            (int i, int j) = (nodes[index].I, nodes[index].J);
            (int b, int c, int d) = (nodes.Find(i + 1, j), nodes.Find(i + 1, j + 1), nodes.Find(i, j + 1));
            if (b < 0 || c < 0 || d < 0)
            {
                continue;
            }

            Corners corners = new(nodes[index].Place, nodes[b].Place, nodes[c].Place, nodes[d].Place);
            _corners.Add((i, j), corners);
            bool whole = On(index) && On(b) && On(c) && On(d);
            double area = corners.Area * (whole ? 1 : Share(corners, i, j, tree, nodes[index].Triangle));
            if (area > 0)
            {
                cells.Add(new DrapeCell(i, j, corners.Shear, whole, area));
            }
        }

        Cells = [.. cells.OrderBy(cell => cell.I).ThenBy(cell => cell.J)];
    }

    internal ImmutableArray<DrapeCell> Cells { get; }

    /// <summary>Where a point of the surface lies in the cloth's plane, in steps; null where no cell is close.</summary>
    /// <param name="point">The point, m.</param>
    /// <param name="near">A point of the cloth's plane that is close, in steps: its cell and those round it are tried first.</param>
    internal Point2? Flat(Point3 point, Point2? near)
    {
        if (near is { } at)
        {
            (int i, int j) = ((int)Math.Floor(at.X), (int)Math.Floor(at.Y));
            for (int k = 0; k < 9; k++)
            {
                // The middle one first.
                int way = (k + 4) % 9;
                if (TryCell((i + (way % 3) - 1, j + (way / 3) - 1), point, out Point2 found, out double off) && off < 1e-3)
                {
                    return found;
                }
            }
        }

        (double least, Point2? best) = (0.5, null);
        foreach (int index in _nodes.Around(point))
        {
            for (int k = 0; k < 4; k++)
            {
                if (TryCell((_nodes[index].I - (k & 1), _nodes[index].J - (k >> 1)), point, out Point2 found, out double off) && off < least)
                {
                    (least, best) = (off, found);
                }
            }
        }

        return best;
    }

    /// <summary>The place of a point of the cloth's plane, given in steps; null where there is no cell.</summary>
    internal Point3? Place(Point2 flat)
    {
        (double i, double j) = (Math.Floor(flat.X), Math.Floor(flat.Y));
        return Math.Abs(i) < int.MaxValue && Math.Abs(j) < int.MaxValue && _corners.TryGetValue(((int)i, (int)j), out Corners corners)
            ? corners.At(flat.X - i, flat.Y - j)
            : null;
    }

    private bool On(int index) => _nodes[index].Kind == DrapeNodeKind.OnSurface;

    private double Share(Corners corners, int i, int j, TriangleTree tree, int hint)
    {
        int on = 0;
        for (int k = 0; k < Samples * Samples; k++)
        {
            Point3 at = corners.At(((k % Samples) + 0.5) / Samples, ((k / Samples) + 0.5) / Samples);
            SurfacePlace place = tree.Nearest(at, hint);
            hint = place.Triangle;
            on += place.PastRim <= 1e-9 * _step && !_nodes.Laps(i, j, at, place.Normal) ? 1 : 0;
        }

        return on / (double)(Samples * Samples);
    }

    private bool TryCell((int I, int J) cell, Point3 point, out Point2 flat, out double off)
    {
        (flat, off) = (default, double.PositiveInfinity);
        if (!_corners.TryGetValue(cell, out Corners corners))
        {
            return false;
        }

        (double s, double t) = corners.Nearest(point);
        const double edge = 1e-6;
        if (!(s >= -edge && s <= 1 + edge && t >= -edge && t <= 1 + edge))
        {
            return false;
        }

        flat = new Point2(cell.I + s, cell.J + t);
        off = (corners.At(s, t) - point).Norm / _step;
        return true;
    }

    /// <summary>The corners in the order of an outline.</summary>
    private readonly record struct Corners(Point3 A, Point3 B, Point3 C, Point3 D)
    {
        internal double Area =>
            (Point3.Cross(B - A, D - A).Norm + Point3.Cross(D - C, B - C).Norm + Point3.Cross(A - B, C - B).Norm + Point3.Cross(C - D, A - D).Norm) / 4;

        internal double Shear => (Angle(B - C, D - C) + Angle(B - A, D - A) - Angle(A - B, C - B) - Angle(A - D, C - D)) / -4;

        internal Point3 At(double s, double t) => (A * ((1 - s) * (1 - t))) + (B * (s * (1 - t))) + (C * (s * t)) + (D * ((1 - s) * t));

        // Gauss-Newton on the doubly ruled surface through the four corners.
        internal (double S, double T) Nearest(Point3 point)
        {
            (double s, double t) = (0.5, 0.5);
            for (int round = 0; round < 12; round++)
            {
                Point3 off = point - At(s, t);
                Point3 along = ((B - A) * (1 - t)) + ((C - D) * t);
                Point3 across = ((D - A) * (1 - s)) + ((C - B) * s);
                (double aa, double ab, double bb) = (Point3.Dot(along, along), Point3.Dot(along, across), Point3.Dot(across, across));
                (double oa, double ob) = (Point3.Dot(off, along), Point3.Dot(off, across));
                double scale = (aa * bb) - (ab * ab);
                if (!(scale > 1e-12 * aa * bb))
                {
                    return (double.NaN, double.NaN);
                }

                double ds = ((oa * bb) - (ob * ab)) / scale;
                double dt = ((ob * aa) - (oa * ab)) / scale;
                (s, t) = (s + ds, t + dt);
                if (Math.Abs(ds) + Math.Abs(dt) < 1e-12 || Math.Abs(s) + Math.Abs(t) > 20)
                {
                    break;
                }
            }

            return (s, t);
        }

        private static double Angle(Point3 a, Point3 b) => Math.Atan2(Point3.Cross(a, b).Norm, Point3.Dot(a, b));
    }
}
