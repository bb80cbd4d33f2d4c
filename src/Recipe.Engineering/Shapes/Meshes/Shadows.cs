namespace Recipe.Engineering;

/// <summary>Finds faces that have others above them along a direction, with a flat grid of the faces seen along it.</summary>
internal static class Shadows
{
    /// <summary>Comparisons of a middle with a face, after which the question is left open.</summary>
    private const long MostComparisons = 200_000_000;

    private const int MostCellsPerFace = 16;

    internal static double? Area(MeshFaces faces, Point3 pull, bool[] asked)
    {
        (Point3 u, Point3 v) = RimPlane.Axes(pull);
        ReadOnlySpan<Point3> points = faces.Mesh.Vertices.AsSpan();
        Point3[] seen = new Point3[points.Length];
        for (int i = 0; i < seen.Length; i++)
        {
            seen[i] = new Point3(Point3.Dot(points[i], u), Point3.Dot(points[i], v), Point3.Dot(points[i], pull));
        }

        (Point3 least, Point3 most) = MeshBox.Of(seen);
        double slack = 1e-9 * (most - least).Norm;
        Grid grid = Grid.Of(faces, seen, least, most);
        double area = 0;
        long comparisons = 0;
        for (int i = 0; i < faces.Count; i++)
        {
            if (!asked[i])
            {
                continue;
            }

            (int a, int b, int c) = faces.Mesh.Triangles[i];
            Point3 middle = (seen[a] + seen[b] + seen[c]) * (1.0 / 3);
            foreach (int other in grid.At(middle))
            {
                if (++comparisons > MostComparisons)
                {
                    return null;
                }

                if (other != i && IsUnder(middle, faces.Mesh.Triangles[other], seen, slack))
                {
                    area += faces.Areas[i];
                    break;
                }
            }
        }

        return area;
    }

    private static bool IsUnder(Point3 at, MeshTriangle triangle, Point3[] seen, double slack)
    {
        (Point3 a, Point3 b, Point3 c) = (seen[triangle.A], seen[triangle.B], seen[triangle.C]);
        double ab = ((b.X - a.X) * (at.Y - a.Y)) - ((b.Y - a.Y) * (at.X - a.X));
        double bc = ((c.X - b.X) * (at.Y - b.Y)) - ((c.Y - b.Y) * (at.X - b.X));
        double ca = ((a.X - c.X) * (at.Y - c.Y)) - ((a.Y - c.Y) * (at.X - c.X));
        double total = ab + bc + ca;
        if (total == 0 || !((ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0)))
        {
            return false;
        }

        double height = ((a.Z * bc) + (b.Z * ca) + (c.Z * ab)) / total;
        return height > at.Z + slack;
    }

    private sealed class Grid
    {
        private readonly int _across;
        private readonly int _up;
        private readonly Point3 _least;
        private readonly double _cell;
        private readonly int[] _starts;
        private readonly int[] _faces;

        private Grid(int across, int up, Point3 least, double cell, int[] starts, int[] faces) =>
            (_across, _up, _least, _cell, _starts, _faces) = (across, up, least, cell, starts, faces);

        internal static Grid Of(MeshFaces faces, Point3[] seen, Point3 least, Point3 most)
        {
            (double width, double height) = (most.X - least.X, most.Y - least.Y);
            double cell = Math.Max(Math.Sqrt(width * height / faces.Count), Math.Max(width, height) / 4096);
            cell = cell > 0 ? cell : 1;
            while (true)
            {
                (int across, int up) = ((int)(width / cell) + 1, (int)(height / cell) + 1);
                int[] starts = new int[(across * up) + 1];
                Grid grid = new(across, up, least, cell, starts, []);
                long entries = 0;
                for (int i = 0; i < faces.Count && entries <= (long)MostCellsPerFace * faces.Count; i++)
                {
                    (int left, int right, int low, int high) = grid.Under(faces.Mesh.Triangles[i], seen);
                    entries += (long)(right - left + 1) * (high - low + 1);
                    for (int row = low; row <= high; row++)
                    {
                        for (int at = (row * across) + left; at <= (row * across) + right; at++)
                        {
                            starts[at + 1]++;
                        }
                    }
                }

                if (entries <= (long)MostCellsPerFace * faces.Count || across * up == 1)
                {
                    return grid.Filled(faces, seen, (int)entries);
                }

                cell *= 2;
            }
        }

        internal ReadOnlySpan<int> At(Point3 place)
        {
            int at = (Row(place.Y) * _across) + Column(place.X);
            return _faces.AsSpan(_starts[at], _starts[at + 1] - _starts[at]);
        }

        private Grid Filled(MeshFaces faces, Point3[] seen, int entries)
        {
            for (int i = 1; i < _starts.Length; i++)
            {
                _starts[i] += _starts[i - 1];
            }

            int[] fill = _starts.AsSpan(0, _starts.Length - 1).ToArray();
            int[] sorted = new int[entries];
            for (int i = 0; i < faces.Count; i++)
            {
                (int left, int right, int low, int high) = Under(faces.Mesh.Triangles[i], seen);
                for (int row = low; row <= high; row++)
                {
                    for (int at = (row * _across) + left; at <= (row * _across) + right; at++)
                    {
                        sorted[fill[at]++] = i;
                    }
                }
            }

            return new Grid(_across, _up, _least, _cell, _starts, sorted);
        }

        // The cells round a face: loops over them stand where they are used, since a million faces mind a call for each.
        private (int Left, int Right, int Low, int High) Under(MeshTriangle triangle, Point3[] seen)
        {
            (Point3 a, Point3 b, Point3 c) = (seen[triangle.A], seen[triangle.B], seen[triangle.C]);
            return (
                Column(Math.Min(a.X, Math.Min(b.X, c.X))),
                Column(Math.Max(a.X, Math.Max(b.X, c.X))),
                Row(Math.Min(a.Y, Math.Min(b.Y, c.Y))),
                Row(Math.Max(a.Y, Math.Max(b.Y, c.Y))));
        }

        private int Column(double x) => Math.Clamp((int)((x - _least.X) / _cell), 0, _across - 1);

        private int Row(double y) => Math.Clamp((int)((y - _least.Y) / _cell), 0, _up - 1);
    }
}
