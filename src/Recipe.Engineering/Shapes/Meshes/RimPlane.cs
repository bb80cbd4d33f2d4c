using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The plane of a boundary by least squares.</summary>
internal static class RimPlane
{
    private const int Directions = 360;
    private const int MostPoints = 4096;

    internal static MeshRim Of(MeshBoundary boundary, MeshFaces faces)
    {
        ReadOnlySpan<Point3> points = boundary.Points.AsSpan();
        (Point3 centre, Point3 normal) = Plane(points);

        // A rim that is one line has no plane: then the surface says where it faces.
        double facing = Point3.Dot(normal, faces.NormalSum);
        normal = facing < 0 ? normal * -1 : normal;
        (double out1, double depth, double rise) = (0, 0, 0);
        foreach (Point3 point in points)
        {
            out1 = Math.Max(out1, Math.Abs(Point3.Dot(point - centre, normal)));
        }

        foreach (Point3 point in faces.Mesh.Vertices)
        {
            double height = Point3.Dot(point - centre, normal);
            (depth, rise) = (Math.Max(depth, -height), Math.Max(rise, height));
        }

        return new MeshRim(
            centre,
            normal,
            Length.FromMeters(out1),
            Length.FromMeters(depth),
            Length.FromMeters(rise),
            Length.FromMeters(Width(points, normal)));
    }

    private static (Point3 Centre, Point3 Normal) Plane(ReadOnlySpan<Point3> points)
    {
        (Point3 sum, double total) = (default, 0);
        for (int i = 0; i < points.Length; i++)
        {
            Point3 next = points[(i + 1) % points.Length];
            double length = (next - points[i]).Norm;
            sum += (points[i] + next) * (length / 2);
            total += length;
        }

        Point3 centre = total > 0 ? sum * (1 / total) : points[0];
        SymmetricMatrix moments = default;
        for (int i = 0; i < points.Length; i++)
        {
            Point3 next = points[(i + 1) % points.Length];
            double length = (next - points[i]).Norm;
            moments = moments.Plus(((points[i] + next) * 0.5) - centre, length).Plus((next - points[i]) * Math.Sqrt(1.0 / 12), length);
        }

        return (centre, moments.LeastDirection());
    }

    /// <summary>Least width over directions in the plane; a rim of very many points is taken by every few of them.</summary>
    private static double Width(ReadOnlySpan<Point3> points, Point3 normal)
    {
        (Point3 u, Point3 v) = Axes(normal);
        int stride = 1 + (points.Length / MostPoints);
        double least = double.PositiveInfinity;
        for (int k = 0; k < Directions; k++)
        {
            (double sine, double cosine) = Math.SinCos(Math.PI * k / Directions);
            Point3 along = (u * cosine) + (v * sine);
            (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
            for (int i = 0; i < points.Length; i += stride)
            {
                double at = Point3.Dot(points[i], along);
                (low, high) = (Math.Min(low, at), Math.Max(high, at));
            }

            least = Math.Min(least, high - low);
        }

        return least;
    }

    /// <summary>Two directions across a normal; the first across the coordinate axis that is most across it.</summary>
    internal static (Point3 U, Point3 V) Axes(Point3 normal)
    {
        (double x, double y, double z) = (Math.Abs(normal.X), Math.Abs(normal.Y), Math.Abs(normal.Z));
        Point3 axis = x <= y && x <= z ? new Point3(1, 0, 0) : y <= z ? new Point3(0, 1, 0) : new Point3(0, 0, 1);
        Point3 u = (axis - (normal * Point3.Dot(axis, normal))).Unit();
        return (u, Point3.Cross(normal, u));
    }
}
