using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// A symmetric matrix over the in-plane components 1, 2 and 6 (x, y and shear), in SI units: a reduced stiffness (Pa), a
/// compliance (1/Pa), or one of a laminate's A (N/m), D (N m), a (m/N), d (1/(N m)).
/// </summary>
/// <param name="M11">Entry x, x.</param>
/// <param name="M12">Entry x, y.</param>
/// <param name="M16">Entry x, shear.</param>
/// <param name="M22">Entry y, y.</param>
/// <param name="M26">Entry y, shear.</param>
/// <param name="M66">Entry shear, shear.</param>
public readonly record struct PlaneMatrix(double M11, double M12, double M16, double M22, double M26, double M66)
{
    // A pivot that is left over after losing twelve of a double's sixteen digits is rounding, not stiffness.
    private const double LeastPivot = 1e-12;

    /// <summary>Sum, entry by entry.</summary>
    /// <param name="a">One matrix.</param>
    /// <param name="b">Another of the same unit.</param>
    public static PlaneMatrix operator +(PlaneMatrix a, PlaneMatrix b) =>
        new(a.M11 + b.M11, a.M12 + b.M12, a.M16 + b.M16, a.M22 + b.M22, a.M26 + b.M26, a.M66 + b.M66);

    /// <summary>Every entry times a factor.</summary>
    /// <param name="factor">The factor.</param>
    /// <param name="a">The matrix.</param>
    public static PlaneMatrix operator *(double factor, PlaneMatrix a) =>
        new(factor * a.M11, factor * a.M12, factor * a.M16, factor * a.M22, factor * a.M26, factor * a.M66);

    /// <summary>Product with a triple.</summary>
    /// <param name="a">The matrix.</param>
    /// <param name="v">The triple.</param>
    public static PlaneVector operator *(PlaneMatrix a, PlaneVector v) =>
        new(
            (a.M11 * v.X) + (a.M12 * v.Y) + (a.M16 * v.XY),
            (a.M12 * v.X) + (a.M22 * v.Y) + (a.M26 * v.XY),
            (a.M16 * v.X) + (a.M26 * v.Y) + (a.M66 * v.XY));

    /// <summary>Sum; the named form of the operator.</summary>
    /// <param name="other">Another matrix of the same unit.</param>
    public PlaneMatrix Add(PlaneMatrix other) => this + other;

    /// <summary>Multiple; the named form of the operator.</summary>
    /// <param name="factor">The factor.</param>
    public PlaneMatrix Multiply(double factor) => factor * this;

    /// <summary>Product; the named form of the operator.</summary>
    /// <param name="vector">The triple.</param>
    public PlaneVector Multiply(PlaneVector vector) => this * vector;

    /// <summary>The inverse of a positive definite matrix, which every stiffness and compliance is.</summary>
    /// <exception cref="ArithmeticException">
    /// The matrix is not positive definite to the accuracy of a double: it is singular, or its parts differ by more than twelve powers of ten.
    /// </exception>
    /// <remarks>Source: factors L D L' of a symmetric matrix (standard linear algebra), which show a lost pivot where the rule of minors hides it.</remarks>
    public PlaneMatrix Inverse() =>
        InverseOrNull() ?? throw new ArithmeticException(
            "The matrix cannot be inverted: it is singular, or its parts differ by more than twelve powers of ten.");

    /// <summary>The inverse, or null where <see cref="Inverse"/> refuses.</summary>
    internal PlaneMatrix? InverseOrNull()
    {
        double d1 = M11;
        double l21 = M12 / d1;
        double l31 = M16 / d1;
        double d2 = M22 - (l21 * M12);
        double l32 = (M26 - (l31 * M12)) / d2;
        double d3 = M66 - (l31 * M16) - (l32 * l32 * d2);
        if (!IsPivot(d1, M11) || !IsPivot(d2, M22) || !IsPivot(d3, M66))
        {
            return null;
        }

        // Columns of the inverse of L, below its unit diagonal.
        double k31 = (l21 * l32) - l31;
        double i1 = 1 / d1;
        double i2 = 1 / d2;
        double i3 = 1 / d3;
        return new PlaneMatrix(
            i1 + (l21 * l21 * i2) + (k31 * k31 * i3),
            (-l21 * i2) - (k31 * l32 * i3),
            k31 * i3,
            i2 + (l32 * l32 * i3),
            -l32 * i3,
            i3);
    }

    /// <summary>This stiffness seen in axes that are turned counter-clockwise.</summary>
    /// <param name="turn">The turn of the axes, not of the material; any finite angle up to 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    /// <remarks>Source: <c>Q' = T' Q T</c> with the transformation of engineering strain, e.g. Jones, ch. 2 (from memory).</remarks>
    public PlaneMatrix StiffnessInAxesTurnedBy(Angle turn)
    {
        (double c, double s) = LaminateGuard.CosSin(turn, nameof(turn));

        // Strain in the old axes from strain in the new ones; stiffness takes its transpose on the left.
        PlaneVector fromX = new(c * c, s * s, 2 * c * s);
        PlaneVector fromY = new(s * s, c * c, -2 * c * s);
        PlaneVector fromXY = new(-c * s, c * s, (c * c) - (s * s));
        return Congruence(fromX, fromY, fromXY);
    }

    /// <summary>This compliance seen in axes that are turned counter-clockwise.</summary>
    /// <param name="turn">The turn of the axes, not of the material; any finite angle up to 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    /// <remarks>Source: <c>S' = T S T'</c> with the transformation of engineering strain, e.g. Jones, ch. 2 (from memory).</remarks>
    public PlaneMatrix ComplianceInAxesTurnedBy(Angle turn)
    {
        (double c, double s) = LaminateGuard.CosSin(turn, nameof(turn));

        // Rows of the transformation of engineering strain from the old axes to the new.
        PlaneVector x = new(c * c, s * s, c * s);
        PlaneVector y = new(s * s, c * c, -c * s);
        PlaneVector xy = new(-2 * c * s, 2 * c * s, (c * c) - (s * s));
        return Congruence(x, y, xy);
    }

    private PlaneMatrix Congruence(PlaneVector x, PlaneVector y, PlaneVector xy)
    {
        PlaneVector mx = this * x;
        PlaneVector my = this * y;
        PlaneVector mxy = this * xy;
        return new PlaneMatrix(Dot(x, mx), Dot(x, my), Dot(x, mxy), Dot(y, my), Dot(y, mxy), Dot(xy, mxy));
    }

    private static double Dot(PlaneVector a, PlaneVector b) => (a.X * b.X) + (a.Y * b.Y) + (a.XY * b.XY);

    private static bool IsPivot(double pivot, double diagonal) =>
        pivot > LeastPivot * diagonal && diagonal > 0 && double.IsFinite(pivot);
}
