using System.Runtime.InteropServices;

namespace Recipe.Engineering;

/// <summary>The normals and areas of the triangles of a mesh, worked out once.</summary>
internal sealed class MeshFaces
{
    internal MeshFaces(TriangleMesh mesh)
    {
        Mesh = mesh;
        Count = mesh.Triangles.Length;
        Normals = new Point3[Count];
        Areas = new double[Count];
        ReadOnlySpan<Point3> points = mesh.Vertices.AsSpan();
        ReadOnlySpan<MeshTriangle> triangles = mesh.Triangles.AsSpan();
        Point3 total = default;
        for (int i = 0; i < Count; i++)
        {
            (int a, int b, int c) = triangles[i];
            Point3 twice = Point3.Cross(points[b] - points[a], points[c] - points[a]);
            double norm = twice.Norm;
            Areas[i] = norm / 2;
            Area += norm / 2;
            total += twice;
            Normals[i] = norm > 0 ? twice * (1 / norm) : default;
        }

        NormalSum = total * 0.5;
        (Least, Most) = MeshBox.Of(points);
    }

    internal TriangleMesh Mesh { get; }

    internal int Count { get; }

    /// <summary>Normals of length 1; zero for a triangle without area.</summary>
    internal Point3[] Normals { get; }

    internal double[] Areas { get; }

    internal double Area { get; }

    /// <summary>Sum of the normals by area: where the surface faces on the whole.</summary>
    internal Point3 NormalSum { get; }

    internal Point3 Least { get; }

    internal Point3 Most { get; }

    /// <summary>The corners one after the other: of half-edge h, the start is number h.</summary>
    internal ReadOnlySpan<int> Corners => MemoryMarshal.Cast<MeshTriangle, int>(Mesh.Triangles.AsSpan());

    internal Point3 Middle(int face)
    {
        (int a, int b, int c) = Mesh.Triangles[face];
        return (Mesh.Vertices[a] + Mesh.Vertices[b] + Mesh.Vertices[c]) * (1.0 / 3);
    }

    /// <summary>Volume by the divergence theorem, from the middle of the box so that little cancels.</summary>
    internal double Volume()
    {
        Point3 origin = (Least + Most) * 0.5;
        double six = 0;
        foreach ((int a, int b, int c) in Mesh.Triangles)
        {
            six += Point3.Dot(Mesh.Vertices[a] - origin, Point3.Cross(Mesh.Vertices[b] - origin, Mesh.Vertices[c] - origin));
        }

        return six / 6;
    }
}
