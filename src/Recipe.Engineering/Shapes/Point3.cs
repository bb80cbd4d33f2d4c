namespace Recipe.Engineering;

/// <summary>A point, or a step from one point to another, in space. Coordinates are metres: meshes have too many points for quantity types.</summary>
/// <param name="X">First coordinate, m.</param>
/// <param name="Y">Second coordinate, m.</param>
/// <param name="Z">Third coordinate, m.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Distance from the origin, m.</summary>
    public double Norm => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    /// <summary>Whether all coordinates are numbers.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    /// <summary>The sum of two steps.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The step from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>A step made longer.</summary>
    public static Point3 operator *(Point3 a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    /// <summary>The scalar product, m2.</summary>
    public static double Dot(Point3 a, Point3 b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    /// <summary>The vector product, m2.</summary>
    public static Point3 Cross(Point3 a, Point3 b) => new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    /// <summary>The step of length 1 in this direction; zero for a step of no length.</summary>
    public Point3 Unit()
    {
        double norm = Norm;
        return norm > 0 ? this * (1 / norm) : default;
    }
}
