namespace Recipe.Engineering.Tests;

/// <summary>Small meshes of surfaces whose geometry is known in closed form.</summary>
internal static class TestMeshes
{
    /// <summary>Points of a grid placed by a function of (0 to 1, 0 to 1); corners counter-clockwise in the two parameters.</summary>
    internal static TriangleMesh Grid(int along, int across, Func<double, double, Point3> place, bool closed = false)
    {
        int row = closed ? along : along + 1;
        List<Point3> points = [];
        for (int j = 0; j <= across; j++)
        {
            for (int i = 0; i < row; i++)
            {
                points.Add(place(i / (double)along, j / (double)across));
            }
        }

        List<MeshTriangle> triangles = [];
        for (int j = 0; j < across; j++)
        {
            for (int i = 0; i < along; i++)
            {
                (int a, int b) = ((j * row) + (i % row), (j * row) + ((i + 1) % row));
                (int c, int d) = (b + row, a + row);
                if ((i + j) % 2 == 0)
                {
                    triangles.Add(new(a, b, c));
                    triangles.Add(new(a, c, d));
                }
                else
                {
                    triangles.Add(new(a, b, d));
                    triangles.Add(new(b, c, d));
                }
            }
        }

        return new TriangleMesh([.. points], [.. triangles]);
    }

    /// <summary>Cap of a sphere round +Z, seen from outside, its pole a corner: rings of triangles, six more in each.</summary>
    internal static TriangleMesh Cap(double radius, double angle, int rings)
    {
        List<Point3> points = [new(0, 0, radius)];
        List<MeshTriangle> triangles = [];
        for (int ring = 1; ring <= rings; ring++)
        {
            (double sine, double cosine) = Math.SinCos(angle * ring / rings);
            int first = points.Count;
            int count = 8 * ring;
            int inner = ring == 1 ? 0 : first - (8 * (ring - 1));
            for (int k = 0; k < count; k++)
            {
                (double y, double x) = Math.SinCos(2 * Math.PI * k / count);
                points.Add(new(radius * sine * x, radius * sine * y, radius * cosine));
            }

            for (int side = 0; side < 8; side++)
            {
                for (int k = 0; k < ring; k++)
                {
                    int outer = first + (side * ring) + k;
                    int next = first + (((side * ring) + k + 1) % count);
                    int In(int at) => ring == 1 ? 0 : inner + (((side * (ring - 1)) + at) % (8 * (ring - 1)));
                    triangles.Add(new(outer, next, In(k)));
                    if (k > 0)
                    {
                        triangles.Add(new(In(k - 1), outer, In(k)));
                    }
                }
            }
        }

        return new TriangleMesh([.. points], [.. triangles]);
    }

    internal static TriangleMesh Plane(double along, double across, int parts) =>
        Grid(parts, parts, (u, v) => new(along * (u - 0.5), across * (v - 0.5), 0));

    /// <summary>Part of a cylinder about the X axis, cloth on the outside; <paramref name="arc"/> in radians, centred on +Z.</summary>
    internal static TriangleMesh CylinderArc(double radius, double length, double arc, int parts, int? along = null) =>
        Grid(along ?? parts, parts, (u, v) => new(length * (u - 0.5), -radius * Math.Sin(arc * (0.5 - v)), radius * Math.Cos(arc * (0.5 - v))));

    internal static TriangleMesh Saddle(double size, double curvature, int parts) =>
        Grid(parts, parts, (u, v) => new(size * (u - 0.5), size * (v - 0.5), curvature * size * size * (u - 0.5) * (v - 0.5)));

    internal static TriangleMesh Turned(TriangleMesh mesh, Func<Point3, Point3> turn, bool mirror = false) =>
        new([.. mesh.Vertices.Select(turn)], [.. mesh.Triangles.Select(t => mirror ? new MeshTriangle(t.A, t.C, t.B) : t)]);
}
