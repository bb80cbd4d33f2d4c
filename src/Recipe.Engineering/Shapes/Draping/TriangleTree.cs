namespace Recipe.Engineering;

/// <summary>Finds the nearest point of a surface with a tree of boxes round its triangles. May be asked from several threads.</summary>
internal sealed class TriangleTree
{
    private const int LeafSize = 4;

    // Rounding must not hide a triangle.
    private const double Slack = 1 + 1e-9;

    // Twice the depth of a tree over all triangles that an array can hold.
    private const int MostWaiting = 64;

    private readonly MeshTopology _mesh;
    private readonly int[] _order;
    private readonly Node[] _boxes;
    private readonly Ball[] _balls;
    private int _filled;

    internal TriangleTree(MeshTopology mesh)
    {
        _mesh = mesh;
        _order = [.. Enumerable.Range(0, mesh.Count)];
        var centres = new Point3[mesh.Count];
        for (int i = 0; i < centres.Length; i++)
        {
            centres[i] = (mesh.At(i, 0) + mesh.At(i, 1) + mesh.At(i, 2)) * (1.0 / 3);
        }

        _boxes = new Node[NodesOf(centres.Length)];
        Build(centres, 0, _order.Length);
        _balls = new Ball[centres.Length];
        for (int i = 0; i < centres.Length; i++)
        {
            Point3 centre = centres[i];
            double radius = 0;
            for (int k = 0; k < 3; k++)
            {
                radius = Math.Max(radius, (mesh.At(_order[i], k) - centre).Norm);
            }

            _balls[i] = new Ball(centre, radius * Slack);
        }
    }

    /// <summary>The nearest point, looked for from a triangle that may be close.</summary>
    internal SurfacePlace Nearest(Point3 point, int hint = 0)
    {
        int best = hint;
        (Point3 foot, int feature) = Foot(point, hint);
        Point3 step = point - foot;
        double least = Point3.Dot(step, step);
        double reach = Math.Sqrt(least) * Slack;
        Span<(int Index, double Distance)> stack = stackalloc (int, double)[MostWaiting];
        int top = 0;
        stack[top++] = (0, _boxes[0].Distance(point));
        while (top > 0)
        {
            (int index, double away) = stack[--top];
            if (away >= least)
            {
                continue;
            }

            ref readonly Node node = ref _boxes[index];
            if (node.Right > 0)
            {
                // The nearer one is looked at first, and neither when it is too far already.
                (int Index, double Distance) near = (index + 1, _boxes[index + 1].Distance(point));
                (int Index, double Distance) far = (node.Right, _boxes[node.Right].Distance(point));
                (near, far) = near.Distance <= far.Distance ? (near, far) : (far, near);
                if (far.Distance < least)
                {
                    stack[top++] = far;
                }

                if (near.Distance < least)
                {
                    stack[top++] = near;
                }

                continue;
            }

            for (int i = node.First; i < node.End; i++)
            {
                if (!_balls[i].Reaches(point, reach))
                {
                    continue;
                }

                (Point3 found, int where) = Foot(point, _order[i]);
                step = point - found;
                double distance = Point3.Dot(step, step);
                if (distance < least)
                {
                    (least, foot, feature, best) = (distance, found, where, _order[i]);
                    reach = Math.Sqrt(least) * Slack;
                }
            }
        }

        return Placed(point, foot, best, feature);
    }

    private SurfacePlace Placed(Point3 point, Point3 foot, int triangle, int feature)
    {
        Point3 normal = _mesh.FaceNormal(triangle);
        Point3 step = point - foot;
        int half = (3 * triangle) + (feature % 3);
        if (feature < 3 || (feature < 6 && _mesh.Twin(half) >= 0))
        {
            // Within a face, and on an edge, where either face has the same side.
            return new SurfacePlace(foot, triangle, normal, Point3.Dot(step, normal), 0);
        }

        if (feature < 6)
        {
            double along = (foot - _mesh.From(half)).Norm / (_mesh.To(half) - _mesh.From(half)).Norm;
            normal = ((_mesh.CornerNormal(half) * (1 - along)) + (_mesh.CornerNormal(MeshTopology.Next(half)) * along)).Unit();
        }
        else if (_mesh.OnRim(_mesh.Vertex(half)))
        {
            normal = _mesh.CornerNormal(half);
        }
        else
        {
            normal = _mesh.VertexNormal(_mesh.Vertex(half));
            return new SurfacePlace(foot, triangle, normal, Point3.Dot(step, normal), 0);
        }

        double height = Point3.Dot(step, normal);
        return new SurfacePlace(foot, triangle, normal, height, (step - (normal * height)).Norm);
    }

    private (Point3 Foot, int Feature) Foot(Point3 point, int triangle) =>
        NearestPoint.OnTriangle(point, _mesh.At(triangle, 0), _mesh.At(triangle, 1), _mesh.At(triangle, 2));

    // Halves differ by one triangle at most, so all leaves lie in the last two rows.
    private static int NodesOf(int triangles)
    {
        int rows = 1;
        for (long most = LeafSize; most < triangles; most *= 2)
        {
            rows++;
        }

        return (1 << rows) - 1;
    }

    private int Build(Span<Point3> centres, int first, int end)
    {
        int index = _filled++;
        if (end - first <= LeafSize)
        {
            _boxes[index] = Leaf(first, end);
            return index;
        }

        (Point3 low, Point3 high) = (centres[first], centres[first]);
        foreach (ref readonly Point3 centre in centres[first..end])
        {
            (low, high) = (Least(low, centre), Most(high, centre));
        }

        Point3 span = high - low;
        int middle = (first + end) / 2;
        Part(centres[first..end], _order.AsSpan(first, end - first), middle - first, span.X >= span.Y && span.X >= span.Z ? 0 : span.Y >= span.Z ? 1 : 2);
        int left = Build(centres, first, middle);
        int right = Build(centres, middle, end);
        _boxes[index] = new Node(Least(_boxes[left].Low, _boxes[right].Low), Most(_boxes[left].High, _boxes[right].High), first, end, right);
        return index;
    }

    private Node Leaf(int first, int end)
    {
        Point3 low = new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        Point3 high = low * -1;
        for (int i = first; i < end; i++)
        {
            for (int k = 0; k < 3; k++)
            {
                (low, high) = (Least(low, _mesh.At(_order[i], k)), Most(high, _mesh.At(_order[i], k)));
            }
        }

        return new Node(low, high, first, end, 0);
    }

    /// <summary>
    /// Orders centres so far that the ones before a place lie no further along an axis than the ones from it on.
    /// Source: C. A. R. Hoare, Algorithm 65: find, Communications of the ACM 4 (1961) 321.
    /// </summary>
    private static void Part(Span<Point3> centres, Span<int> order, int place, int axis)
    {
        int first = 0;
        int last = centres.Length - 1;
        while (first < last)
        {
            double pivot = Along(centres[first + ((last - first) / 2)], axis);
            int i = first;
            int j = last;
            while (i <= j)
            {
                while (Along(centres[i], axis) < pivot)
                {
                    i++;
                }

                while (pivot < Along(centres[j], axis))
                {
                    j--;
                }

                if (i <= j)
                {
                    (centres[i], centres[j]) = (centres[j], centres[i]);
                    (order[i], order[j]) = (order[j], order[i]);
                    i++;
                    j--;
                }
            }

            if (place <= j)
            {
                last = j;
            }
            else if (place >= i)
            {
                first = i;
            }
            else
            {
                return;
            }
        }
    }

    private static double Along(in Point3 at, int axis) => axis == 0 ? at.X : axis == 1 ? at.Y : at.Z;

    private static Point3 Least(Point3 a, Point3 b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Point3 Most(Point3 a, Point3 b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));

    /// <summary>A ball round a triangle: asked first, since it takes a fraction of the time of the triangle.</summary>
    private readonly record struct Ball(Point3 Centre, double Radius)
    {
        /// <summary>Whether a part of it may be nearer to a point than a distance, m.</summary>
        internal bool Reaches(Point3 point, double distance)
        {
            Point3 apart = point - Centre;
            double both = Radius + distance;
            return Point3.Dot(apart, apart) <= both * both;
        }
    }

    private readonly record struct Node(Point3 Low, Point3 High, int First, int End, int Right)
    {
        /// <summary>Square of the distance from the box, m2.</summary>
        internal double Distance(Point3 at)
        {
            double x = Math.Max(0, Math.Max(Low.X - at.X, at.X - High.X));
            double y = Math.Max(0, Math.Max(Low.Y - at.Y, at.Y - High.Y));
            double z = Math.Max(0, Math.Max(Low.Z - at.Z, at.Z - High.Z));
            return (x * x) + (y * y) + (z * z);
        }
    }
}
