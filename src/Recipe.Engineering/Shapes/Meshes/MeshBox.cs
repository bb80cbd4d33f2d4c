namespace Recipe.Engineering;

/// <summary>The box round points.</summary>
internal static class MeshBox
{
    internal static (Point3 Least, Point3 Most) Of(ReadOnlySpan<Point3> points)
    {
        double infinity = double.PositiveInfinity;
        (double x, double y, double z, double right, double far, double top) = (infinity, infinity, infinity, -infinity, -infinity, -infinity);
        foreach (ref readonly Point3 point in points)
        {
            (x, y, z) = (Math.Min(x, point.X), Math.Min(y, point.Y), Math.Min(z, point.Z));
            (right, far, top) = (Math.Max(right, point.X), Math.Max(far, point.Y), Math.Max(top, point.Z));
        }

        return points.IsEmpty ? default : (new Point3(x, y, z), new Point3(right, far, top));
    }
}
