namespace Recipe.Engineering;

/// <summary>Finds the nearest point of a surface with a tree of boxes round its triangles.</summary>
internal sealed class TriangleTree
{
    private const int LeafSize = 4;
    private readonly MeshTopology _mesh;
    private readonly int[] _order;
    private readonly Node[] _boxes;
    private readonly int[] _stack = new int[128];

    internal TriangleTree(MeshTopology mesh)
    {
        _mesh = mesh;
        _order = [.. Enumerable.Range(0, mesh.Count)];
        var centres = new Point3[mesh.Count];
        for (int i = 0; i < centres.Length; i++)
        {
            centres[i] = (mesh.At(i, 0) + mesh.At(i, 1) + mesh.At(i, 2)) * (1.0 / 3);
        }

        List<Node> nodes = [];
        Build(nodes, centres, 0, _order.Length);
        _boxes = [.. nodes];
    }

    /// <summary>The nearest point, looked for from a triangle that may be close.</summary>
    internal SurfacePlace Nearest(Point3 point, int hint = 0)
    {
        int best = hint;
        (Point3 foot, int feature) = Foot(point, hint);
        Point3 step = point - foot;
        double least = Point3.Dot(step, step);
        int top = 0;
        _stack[top++] = 0;
        while (top > 0)
        {
            int index = _stack[--top];
            ref readonly Node node = ref _boxes[index];
            if (node.Distance(point) >= least)
            {
                continue;
            }

            if (node.Right > 0)
            {
                int left = index + 1;
                bool leftFirst = _boxes[left].Distance(point) <= _boxes[node.Right].Distance(point);
                int right = node.Right;
                _stack[top++] = leftFirst ? right : left;
                _stack[top++] = leftFirst ? left : right;
                continue;
            }

            for (int i = node.First; i < node.End; i++)
            {
                (Point3 found, int where) = Foot(point, _order[i]);
                step = point - found;
                double distance = Point3.Dot(step, step);
                if (distance < least)
                {
                    (least, foot, feature, best) = (distance, found, where, _order[i]);
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

    private int Build(List<Node> nodes, Point3[] centres, int first, int end)
    {
        int index = nodes.Count;
        Point3 low = new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        Point3 high = low * -1;
        (Point3 lowCentre, Point3 highCentre) = (low, high);
        for (int i = first; i < end; i++)
        {
            for (int k = 0; k < 3; k++)
            {
                (low, high) = (Least(low, _mesh.At(_order[i], k)), Most(high, _mesh.At(_order[i], k)));
            }

            (lowCentre, highCentre) = (Least(lowCentre, centres[_order[i]]), Most(highCentre, centres[_order[i]]));
        }

        nodes.Add(new Node(low, high, first, end, 0));
        if (end - first <= LeafSize)
        {
            return index;
        }

        Point3 span = highCentre - lowCentre;
        Func<Point3, double> axis = span.X >= span.Y && span.X >= span.Z ? at => at.X : span.Y >= span.Z ? at => at.Y : at => at.Z;
        var keys = new double[end - first];
        for (int i = first; i < end; i++)
        {
            keys[i - first] = axis(centres[_order[i]]);
        }

        keys.AsSpan().Sort(_order.AsSpan(first, end - first));
        int middle = (first + end) / 2;
        Build(nodes, centres, first, middle);
        int right = Build(nodes, centres, middle, end);
        nodes[index] = new Node(low, high, first, end, right);
        return index;
    }

    private static Point3 Least(Point3 a, Point3 b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Point3 Most(Point3 a, Point3 b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));

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
