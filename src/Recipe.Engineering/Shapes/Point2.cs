namespace Recipe.Engineering;

/// <summary>A point, or a step from one point to another, in a plane. Coordinates are metres: shapes have too many points for quantity types.</summary>
/// <param name="X">Along the first direction, m.</param>
/// <param name="Y">Across it, counter-clockwise, m.</param>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>Distance from the origin, m.</summary>
    public double Norm => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Whether both coordinates are numbers.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y);

    /// <summary>The sum of two steps.</summary>
    public static Point2 operator +(Point2 a, Point2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>The step from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static Point2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>A step made longer.</summary>
    public static Point2 operator *(Point2 a, double factor) => new(a.X * factor, a.Y * factor);

    /// <summary>The scalar product, m2.</summary>
    public static double Dot(Point2 a, Point2 b) => (a.X * b.X) + (a.Y * b.Y);

    /// <summary>Twice the area that the two steps span, positive when <paramref name="b"/> lies counter-clockwise of <paramref name="a"/>, m2.</summary>
    public static double Cross(Point2 a, Point2 b) => (a.X * b.Y) - (a.Y * b.X);
}
