namespace Recipe.Engineering;

/// <summary>
/// A full 3 x 3 matrix over the in-plane components 1, 2 and 6, in SI units: the part b of a laminate's compliance (1/N), which
/// gives mid-plane strains from moments and, transposed, curvatures from in-plane forces. It is not symmetric in general.
/// </summary>
/// <param name="M11">Row x, column x.</param>
/// <param name="M12">Row x, column y.</param>
/// <param name="M16">Row x, column shear.</param>
/// <param name="M21">Row y, column x.</param>
/// <param name="M22">Row y, column y.</param>
/// <param name="M26">Row y, column shear.</param>
/// <param name="M61">Row shear, column x.</param>
/// <param name="M62">Row shear, column y.</param>
/// <param name="M66">Row shear, column shear.</param>
public readonly record struct CouplingMatrix(
    double M11, double M12, double M16, double M21, double M22, double M26, double M61, double M62, double M66)
{
    /// <summary>Product with a triple.</summary>
    /// <param name="a">The matrix.</param>
    /// <param name="v">The triple.</param>
    public static PlaneVector operator *(CouplingMatrix a, PlaneVector v) =>
        new(
            (a.M11 * v.X) + (a.M12 * v.Y) + (a.M16 * v.XY),
            (a.M21 * v.X) + (a.M22 * v.Y) + (a.M26 * v.XY),
            (a.M61 * v.X) + (a.M62 * v.Y) + (a.M66 * v.XY));

    /// <summary>Product; the named form of the operator.</summary>
    /// <param name="vector">The triple.</param>
    public PlaneVector Multiply(PlaneVector vector) => this * vector;

    /// <summary>Product of the transposed matrix with a triple.</summary>
    /// <param name="vector">The triple.</param>
    public PlaneVector TransposeMultiply(PlaneVector vector) =>
        new(
            (M11 * vector.X) + (M21 * vector.Y) + (M61 * vector.XY),
            (M12 * vector.X) + (M22 * vector.Y) + (M62 * vector.XY),
            (M16 * vector.X) + (M26 * vector.Y) + (M66 * vector.XY));

    /// <summary>The product of two symmetric matrices.</summary>
    internal static CouplingMatrix Product(PlaneMatrix a, PlaneMatrix b) =>
        FromColumns(
            a * new PlaneVector(b.M11, b.M12, b.M16),
            a * new PlaneVector(b.M12, b.M22, b.M26),
            a * new PlaneVector(b.M16, b.M26, b.M66));

    /// <summary>This matrix times a symmetric one, with the sign changed.</summary>
    internal CouplingMatrix NegativeTimes(PlaneMatrix b) =>
        FromColumns(
            this * new PlaneVector(-b.M11, -b.M12, -b.M16),
            this * new PlaneVector(-b.M12, -b.M22, -b.M26),
            this * new PlaneVector(-b.M16, -b.M26, -b.M66));

    /// <summary>The transposed of this matrix times another, where the caller knows that the result is symmetric.</summary>
    internal PlaneMatrix SymmetricTransposeTimes(PlaneMatrix b)
    {
        PlaneVector first = TransposeMultiply(new PlaneVector(b.M11, b.M12, b.M16));
        PlaneVector second = TransposeMultiply(new PlaneVector(b.M12, b.M22, b.M26));
        PlaneVector third = TransposeMultiply(new PlaneVector(b.M16, b.M26, b.M66));
        return new PlaneMatrix(first.X, second.X, third.X, second.Y, third.Y, third.XY);
    }

    /// <summary>This matrix times the transposed of another, where the caller knows that the result is symmetric.</summary>
    internal PlaneMatrix SymmetricTimesTranspose(CouplingMatrix b)
    {
        PlaneVector first = this * new PlaneVector(b.M11, b.M12, b.M16);
        PlaneVector second = this * new PlaneVector(b.M21, b.M22, b.M26);
        PlaneVector third = this * new PlaneVector(b.M61, b.M62, b.M66);
        return new PlaneMatrix(first.X, second.X, third.X, second.Y, third.Y, third.XY);
    }

    private static CouplingMatrix FromColumns(PlaneVector x, PlaneVector y, PlaneVector xy) =>
        new(x.X, y.X, xy.X, x.Y, y.Y, xy.Y, x.XY, y.XY, xy.XY);
}
