using Recipe.Engineering;

namespace Recipe.Planning;

/// <summary>Finds places on a mesh.</summary>
internal static class MeshPlaces
{
    /// <summary>The point of the surface over or under the middle of its area, seen along a direction; else the centre of the nearest triangle.</summary>
    public static Point3 Middle(TriangleMesh mesh, Point3 along)
    {
        var (sum, weight) = (default(Point3), 0.0);
        foreach (var triangle in mesh.Triangles)
        {
            var area = Point3.Cross(B(mesh, triangle) - A(mesh, triangle), C(mesh, triangle) - A(mesh, triangle)).Norm;
            sum += Centre(mesh, triangle) * area;
            weight += area;
        }

        return weight > 0 ? Under(mesh, sum * (1 / weight), along) : default;
    }

    /// <summary>The point of the surface that a line through a point meets, of several the nearest; else the centre of the nearest triangle.</summary>
    /// <param name="mesh">The surface.</param>
    /// <param name="point">A point on the line.</param>
    /// <param name="along">Direction of the line.</param>
    public static Point3 Under(TriangleMesh mesh, Point3 point, Point3 along)
    {
        var ray = along.Unit();
        var (met, best) = ((Point3?)null, double.PositiveInfinity);
        var (nearest, least) = (default(Point3), double.PositiveInfinity);
        foreach (var triangle in mesh.Triangles)
        {
            var centre = Centre(mesh, triangle);
            var distance = (centre - point).Norm;
            if (distance < least)
            {
                (nearest, least) = (centre, distance);
            }

            if (Meet(mesh, triangle, point, ray) is { } t && Math.Abs(t) < best)
            {
                (met, best) = (point + (ray * t), Math.Abs(t));
            }
        }

        return met ?? nearest;
    }

    /// <summary>The normal of the triangle whose centre is nearest, on the side that cloth is laid on.</summary>
    public static Point3 NormalNear(TriangleMesh mesh, Point3 point)
    {
        var (normal, least) = (new Point3(0, 0, 1), double.PositiveInfinity);
        foreach (var triangle in mesh.Triangles)
        {
            var distance = (Centre(mesh, triangle) - point).Norm;
            if (distance < least)
            {
                (normal, least) = (Point3.Cross(B(mesh, triangle) - A(mesh, triangle), C(mesh, triangle) - A(mesh, triangle)).Unit(), distance);
            }
        }

        return normal;
    }

    /// <summary>How far along the line from the point it meets the triangle, or null.</summary>
    /// <remarks>Source: Möller and Trumbore, "Fast, minimum storage ray-triangle intersection", J. Graphics Tools 2 (1997) 21-28.</remarks>
    private static double? Meet(TriangleMesh mesh, MeshTriangle triangle, Point3 point, Point3 ray)
    {
        var (a, first, second) = (A(mesh, triangle), B(mesh, triangle) - A(mesh, triangle), C(mesh, triangle) - A(mesh, triangle));
        var across = Point3.Cross(ray, second);
        var scale = Point3.Dot(first, across);
        if (Math.Abs(scale) < 1e-30)
        {
            return null;
        }

        const double slack = 1e-9;
        var from = point - a;
        var u = Point3.Dot(from, across) / scale;
        var turned = Point3.Cross(from, first);
        var v = Point3.Dot(ray, turned) / scale;
        return u >= -slack && v >= -slack && u + v <= 1 + slack ? Point3.Dot(second, turned) / scale : null;
    }

    private static Point3 Centre(TriangleMesh mesh, MeshTriangle triangle) => (A(mesh, triangle) + B(mesh, triangle) + C(mesh, triangle)) * (1.0 / 3);

    private static Point3 A(TriangleMesh mesh, MeshTriangle triangle) => mesh.Vertices[triangle.A];

    private static Point3 B(TriangleMesh mesh, MeshTriangle triangle) => mesh.Vertices[triangle.B];

    private static Point3 C(TriangleMesh mesh, MeshTriangle triangle) => mesh.Vertices[triangle.C];
}
