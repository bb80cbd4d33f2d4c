namespace Recipe.Engineering;

/// <summary>How a laminate deforms: the strain at height z is <c>MidPlane + z Curvature</c>.</summary>
/// <param name="MidPlane">Strains of the middle plane, no unit; the shear is the engineering one.</param>
/// <param name="Curvature">Curvatures, 1/m; positive stretches the bag side.</param>
public readonly record struct LaminateStrain(PlaneVector MidPlane, PlaneVector Curvature)
{
    /// <summary>Sum of two deformations.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    public static LaminateStrain operator +(LaminateStrain a, LaminateStrain b) =>
        new(a.MidPlane + b.MidPlane, a.Curvature + b.Curvature);

    /// <summary>Sum; the named form of the operator.</summary>
    /// <param name="other">Another deformation.</param>
    public LaminateStrain Add(LaminateStrain other) => this + other;

    /// <summary>Strain at a height (m) above the middle plane.</summary>
    internal PlaneVector At(double z) => MidPlane + (z * Curvature);
}
