namespace Recipe.Engineering;

/// <summary>
/// Three in-plane components, in SI units: forces per length (N/m), moments per length (N), stresses (Pa), strains (no unit) or
/// curvatures (1/m). In the axes of a ply, <c>X</c> lies along the fibre, <c>Y</c> across it.
/// </summary>
/// <param name="X">Component along the first axis.</param>
/// <param name="Y">Component along the second axis, counter-clockwise from the first.</param>
/// <param name="XY">
/// Shear component. A strain is the engineering shear strain (twice the tensor's), a curvature the engineering twist.
/// </param>
public readonly record struct PlaneVector(double X, double Y, double XY)
{
    /// <summary>Sum, component by component.</summary>
    /// <param name="a">One triple.</param>
    /// <param name="b">Another of the same unit.</param>
    public static PlaneVector operator +(PlaneVector a, PlaneVector b) => new(a.X + b.X, a.Y + b.Y, a.XY + b.XY);

    /// <summary>Difference, component by component.</summary>
    /// <param name="a">One triple.</param>
    /// <param name="b">Another of the same unit.</param>
    public static PlaneVector operator -(PlaneVector a, PlaneVector b) => new(a.X - b.X, a.Y - b.Y, a.XY - b.XY);

    /// <summary>Every component times a factor.</summary>
    /// <param name="factor">The factor.</param>
    /// <param name="a">The triple.</param>
    public static PlaneVector operator *(double factor, PlaneVector a) => new(factor * a.X, factor * a.Y, factor * a.XY);

    /// <summary>Sum; the named form of the operator.</summary>
    /// <param name="other">Another triple of the same unit.</param>
    public PlaneVector Add(PlaneVector other) => this + other;

    /// <summary>Difference; the named form of the operator.</summary>
    /// <param name="other">Another triple of the same unit.</param>
    public PlaneVector Subtract(PlaneVector other) => this - other;

    /// <summary>Multiple; the named form of the operator.</summary>
    /// <param name="factor">The factor.</param>
    public PlaneVector Multiply(double factor) => factor * this;

    /// <summary>A strain (or curvature) seen in axes turned counter-clockwise by an angle whose double has this cosine and sine.</summary>
    /// <remarks>Source: rotation of plane strain with engineering shear, e.g. Jones, Mechanics of Composite Materials, ch. 2 (from memory).</remarks>
    internal PlaneVector StrainTurned(double cos2, double sin2)
    {
        double mean = (X + Y) / 2;
        double half = (((X - Y) * cos2) + (XY * sin2)) / 2;
        return new PlaneVector(mean + half, mean - half, (XY * cos2) - ((X - Y) * sin2));
    }
}
