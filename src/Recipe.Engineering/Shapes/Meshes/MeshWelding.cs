namespace Recipe.Engineering;

/// <summary>Welds points of open edges that lie near each other. Points inside a surface are never moved, so fine detail stays.</summary>
internal static class MeshWelding
{
    /// <summary>For each point, the point that it goes into: itself, or an earlier one.</summary>
    internal static int[] OpenPoints(MeshSoup soup, MeshEdges edges, double rounding, double gap, out int rounded, out int gaps)
    {
        (rounded, gaps) = (0, 0);
        int[] to = new int[soup.PointCount];
        double[] reach = new double[soup.PointCount];
        for (int i = 0; i < to.Length; i++)
        {
            to[i] = i;
            reach[i] = -1;
        }

        List<int> points = [];
        for (int half = 0; half < edges.Across.Length; half++)
        {
            if (edges.Across[half] == MeshEdges.Open)
            {
                (int a, int b) = (Corner(soup, half), Corner(soup, MeshEdges.Next(half)));
                double quarter = (soup.Points[a] - soup.Points[b]).Norm / 4;
                Shorten(reach, points, a, quarter);
                Shorten(reach, points, b, quarter);
            }
        }

        points.Sort();
        Grid grid = new(soup.Points, points, 4 * gap);
        foreach (int point in points)
        {
            Point3 at = soup.Points[point];
            (int best, double nearest) = (-1, double.PositiveInfinity);
            grid.Near(at, gap, other =>
            {
                double distance = (soup.Points[other] - at).Norm;
                double allowed = Math.Min(gap, Math.Max(Math.Min(reach[point], reach[other]), 0));
                if (other < point && to[other] == other && distance <= allowed && (distance < nearest || (distance == nearest && other < best)))
                {
                    (best, nearest) = (other, distance);
                }
            });
            if (best >= 0)
            {
                to[point] = best;
                if (nearest <= rounding)
                {
                    rounded++;
                }
                else
                {
                    gaps++;
                }
            }
        }

        return to;
    }

    private static int Corner(MeshSoup soup, int half) => (half % 3) switch
    {
        0 => soup.Triangles[half / 3].A,
        1 => soup.Triangles[half / 3].B,
        _ => soup.Triangles[half / 3].C,
    };

    private static void Shorten(double[] reach, List<int> points, int point, double quarter)
    {
        if (reach[point] < 0)
        {
            points.Add(point);
            reach[point] = quarter;
        }

        reach[point] = Math.Min(reach[point], quarter);
    }

    /// <summary>Points by the cell of space that they lie in, sorted by cell.</summary>
    private sealed class Grid
    {
        private readonly double _cell;
        private readonly (ulong Cell, int Point)[] _entries;

        internal Grid(Point3[] points, List<int> chosen, double cell)
        {
            _cell = cell;
            _entries = new (ulong, int)[chosen.Count];
            for (int i = 0; i < chosen.Count; i++)
            {
                Point3 at = points[chosen[i]];
                _entries[i] = (Key(Whole(at.X), Whole(at.Y), Whole(at.Z)), chosen[i]);
            }

            Array.Sort(_entries);
        }

        /// <summary>Most points within reach looked at for one point: many more only crowd there when the file is no surface.</summary>
        private const int MostLookedAt = 256;

        internal void Near(Point3 at, double reach, Action<int> visit)
        {
            int looked = 0;
            for (long x = Whole(at.X - reach); x <= Whole(at.X + reach); x++)
            {
                for (long y = Whole(at.Y - reach); y <= Whole(at.Y + reach); y++)
                {
                    for (long z = Whole(at.Z - reach); z <= Whole(at.Z + reach); z++)
                    {
                        ulong key = Key(x, y, z);
                        for (int i = First(key); i < _entries.Length && _entries[i].Cell == key && looked < MostLookedAt; i++, looked++)
                        {
                            visit(_entries[i].Point);
                        }
                    }
                }
            }
        }

        private static ulong Key(long x, long y, long z) => ((ulong)(x & 0x1FFFFF) << 42) | ((ulong)(y & 0x1FFFFF) << 21) | (ulong)(z & 0x1FFFFF);

        private long Whole(double value) => (long)Math.Floor(value / _cell);

        private int First(ulong key)
        {
            (int low, int high) = (0, _entries.Length);
            while (low < high)
            {
                int middle = (low + high) >>> 1;
                (low, high) = _entries[middle].Cell < key ? (middle + 1, high) : (low, middle);
            }

            return low;
        }
    }
}
