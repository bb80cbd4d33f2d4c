namespace Recipe.Engineering;

/// <summary>Lays one triangle down and unfolds each neighbour about the edge it shares.</summary>
internal static class HingeUnfolding
{
    /// <summary>Places of the vertices in the plane, m.</summary>
    /// <param name="mesh">A connected surface.</param>
    /// <param name="torn">Greatest distance between the places that two triangles want for a vertex, as a share of the root of the area.</param>
    internal static Point2[] Of(MeshTopology mesh, out double torn)
    {
        var flat = new Point2[mesh.Places.Length];
        var placed = new bool[flat.Length];
        var seen = new bool[mesh.Count];
        int first = Middle(mesh);
        flat[mesh.Vertex((3 * first) + 1)] = new Point2((mesh.At(first, 1) - mesh.At(first, 0)).Norm, 0);
        placed[mesh.Vertex(3 * first)] = placed[mesh.Vertex((3 * first) + 1)] = true;
        torn = 0;
        Queue<int> open = new([3 * first]);
        seen[first] = true;
        while (open.TryDequeue(out int edge))
        {
            // The corner opposite to the edge, by its place along the edge and beside it.
            (Point3 from, Point3 to, Point3 apex) = (mesh.From(edge), mesh.To(edge), mesh.From(MeshTopology.Before(edge)));
            (Point2 flatFrom, Point2 flatTo) = (flat[mesh.Vertex(edge)], flat[mesh.Vertex(MeshTopology.Next(edge))]);
            double length = (to - from).Norm;
            double along = Point3.Dot(apex - from, to - from) / length;
            double beside = Point3.Cross(to - from, apex - from).Norm / length;
            Point2 way = flatTo - flatFrom;
            way *= way.Norm > 0 ? 1 / way.Norm : 0;
            Point2 wanted = flatFrom + (way * along) + (new Point2(-way.Y, way.X) * beside);
            int vertex = mesh.Vertex(MeshTopology.Before(edge));
            if (placed[vertex])
            {
                torn = Math.Max(torn, (flat[vertex] - wanted).Norm);
            }
            else
            {
                (flat[vertex], placed[vertex]) = (wanted, true);
            }

            for (int half = 3 * (edge / 3); half < (3 * (edge / 3)) + 3; half++)
            {
                int twin = mesh.Twin(half);
                if (twin >= 0 && !seen[twin / 3])
                {
                    seen[twin / 3] = true;
                    open.Enqueue(twin);
                }
            }
        }

        torn /= Math.Sqrt(mesh.Area);
        return flat;
    }

    private static int Middle(MeshTopology mesh)
    {
        Point3 sum = default;
        for (int half = 0; half < 3 * mesh.Count; half++)
        {
            sum += mesh.From(half);
        }

        Point3 middle = sum * (1.0 / (3 * mesh.Count));
        return Enumerable.Range(0, mesh.Count).MinBy(triangle => (mesh.At(triangle, 0) + mesh.At(triangle, 1) + mesh.At(triangle, 2) - (middle * 3)).Norm);
    }
}
