namespace Recipe.Engineering;

/// <summary>Finds places on a mesh.</summary>
public static class MeshPlaces
{
    /// <summary>The point of the surface over or under the middle of its area, seen along a direction; else the point nearest to that middle.</summary>
    /// <param name="mesh">The surface, with at least one triangle.</param>
    /// <param name="along">The direction, of any length but zero.</param>
    /// <returns>The point, m; the origin for a mesh without area.</returns>
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

    /// <summary>The point of the surface that a line through a point meets, of several the nearest; else the point nearest to it.</summary>
    /// <param name="mesh">The surface.</param>
    /// <param name="point">A point on the line, m.</param>
    /// <param name="along">Direction of the line, of any length but zero.</param>
    public static Point3 Under(TriangleMesh mesh, Point3 point, Point3 along)
    {
        var ray = along.Unit();
        var (met, best) = ((Point3?)null, double.PositiveInfinity);
        var (nearest, least) = (default(Point3), double.PositiveInfinity);
        foreach (var triangle in mesh.Triangles)
        {
            var (foot, _) = NearestPoint.OnTriangle(point, A(mesh, triangle), B(mesh, triangle), C(mesh, triangle));
            var distance = (foot - point).Norm;
            if (distance < least)
            {
                (nearest, least) = (foot, distance);
            }

            if (Meet(mesh, triangle, point, ray) is { } t && Math.Abs(t) < best)
            {
                (met, best) = (point + (ray * t), Math.Abs(t));
            }
        }

        return met ?? nearest;
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
