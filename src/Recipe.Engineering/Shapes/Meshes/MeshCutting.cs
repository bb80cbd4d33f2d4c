using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>Cuts a mesh by a plane. Neighbours share the points of the cut.</summary>
internal static class MeshCutting
{
    internal static TriangleMesh Cut(TriangleMesh mesh, Point3 at, Point3 normal)
    {
        double[] height = new double[mesh.Vertices.Length];
        double slack = 0;
        for (int i = 0; i < height.Length; i++)
        {
            height[i] = Point3.Dot(mesh.Vertices[i] - at, normal);
            slack = Math.Max(slack, Math.Abs(height[i]));
        }

        // Points in the plane but for rounding lie in it, or slivers would be cut off beside them.
        slack *= 1e-12;
        Builder cut = new(mesh, height, slack);
        int[] before = new int[mesh.Triangles.Length + 1];
        Span<int> corners = stackalloc int[3];
        for (int i = 0; i < mesh.Triangles.Length; i++)
        {
            (corners[0], corners[1], corners[2]) = mesh.Triangles[i];
            cut.Add(corners);
            before[i + 1] = cut.Triangles.Count;
        }

        return new TriangleMesh(cut.Points.ToImmutable(), cut.Triangles.ToImmutable(), MeshRegions.Stretches(mesh, before));
    }

    private sealed class Builder(TriangleMesh mesh, double[] height, double slack)
    {
        private readonly int[] _to = new int[height.Length];
        private readonly Dictionary<ulong, int> _cuts = [];

        internal ImmutableArray<Point3>.Builder Points { get; } = ImmutableArray.CreateBuilder<Point3>();

        internal ImmutableArray<MeshTriangle>.Builder Triangles { get; } = ImmutableArray.CreateBuilder<MeshTriangle>();

        internal void Add(ReadOnlySpan<int> corners)
        {
            // In the plane on all corners, or on the other side with none above: nothing of it has an area here.
            if (Side(corners[0]) <= 0 && Side(corners[1]) <= 0 && Side(corners[2]) <= 0)
            {
                return;
            }

            Span<int> kept = stackalloc int[4];
            int count = 0;
            for (int k = 0; k < 3; k++)
            {
                (int from, int to) = (corners[k], corners[(k + 1) % 3]);
                if (Side(from) >= 0)
                {
                    kept[count++] = Old(from);
                }

                if (Side(from) * Side(to) < 0)
                {
                    kept[count++] = Between(Math.Min(from, to), Math.Max(from, to));
                }
            }

            for (int k = 2; k < count; k++)
            {
                Triangles.Add(new MeshTriangle(kept[0], kept[k - 1], kept[k]));
            }
        }

        private int Side(int point) => Math.Abs(height[point]) <= slack ? 0 : Math.Sign(height[point]);

        private int Old(int point)
        {
            if (_to[point] == 0)
            {
                Points.Add(mesh.Vertices[point]);
                _to[point] = Points.Count;
            }

            return _to[point] - 1;
        }

        private int Between(int low, int high)
        {
            ulong edge = ((ulong)(uint)low << 32) | (uint)high;
            if (!_cuts.TryGetValue(edge, out int point))
            {
                double share = height[low] / (height[low] - height[high]);
                point = Points.Count;
                Points.Add(mesh.Vertices[low] + ((mesh.Vertices[high] - mesh.Vertices[low]) * share));
                _cuts.Add(edge, point);
            }

            return point;
        }
    }
}
