using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Engineering constants of one layer in its own axes: 1 along the fibre, 2 across it in the plane. Plane stress.
/// They are checked when the lamina is made, so that everything computed from it is finite.
/// </summary>
/// <remarks>
/// A computed stiffness is an estimate from the figures that were put in. It certifies nothing: parts that carry people, fly or
/// hold pressure need measured values and licensed practice.
/// </remarks>
public sealed class Lamina
{
    // Wider apart, the sums of the rotated stiffness would lose the smaller modulus in the rounding of the larger.
    private const double Spread = 1e6;

    private readonly double _u1;
    private readonly double _u2;
    private readonly double _u3;
    private readonly double _u4;
    private readonly double _u5;

    private Lamina(
        double e1, double e2, double nu12, double g12, CoefficientOfThermalExpansion? alpha1, CoefficientOfThermalExpansion? alpha2)
    {
        (Along, Across, Shear) = (Pressure.FromPascals(e1), Pressure.FromPascals(e2), Pressure.FromPascals(g12));
        (Poisson, MinorPoisson) = (nu12, nu12 * e2 / e1);
        (ExpansionAlong, ExpansionAcross) = (alpha1, alpha2);

        double scale = 1 - (nu12 * MinorPoisson);
        PlaneMatrix q = new(e1 / scale, nu12 * e2 / scale, 0, e2 / scale, 0, g12);
        ReducedStiffness = q;
        _u1 = ((3 * q.M11) + (3 * q.M22) + (2 * q.M12) + (4 * q.M66)) / 8;
        _u2 = (q.M11 - q.M22) / 2;
        _u3 = (q.M11 + q.M22 - (2 * q.M12) - (4 * q.M66)) / 8;
        _u4 = (q.M11 + q.M22 + (6 * q.M12) - (4 * q.M66)) / 8;
        _u5 = (_u1 - _u4) / 2;
    }

    /// <summary>Young's modulus along the fibre, E1.</summary>
    public Pressure Along { get; }

    /// <summary>Young's modulus across the fibre, E2.</summary>
    public Pressure Across { get; }

    /// <summary>In-plane shear modulus, G12.</summary>
    public Pressure Shear { get; }

    /// <summary>Contraction across over stretch along, nu12.</summary>
    public double Poisson { get; }

    /// <summary>Contraction along over stretch across, <c>nu21 = nu12 E2 / E1</c>.</summary>
    public double MinorPoisson { get; }

    /// <summary>Thermal expansion along the fibre, or null when it is not known.</summary>
    public CoefficientOfThermalExpansion? ExpansionAlong { get; }

    /// <summary>Thermal expansion across the fibre, or null when it is not known.</summary>
    public CoefficientOfThermalExpansion? ExpansionAcross { get; }

    /// <summary>Reduced stiffness Q in the ply's own axes, Pa.</summary>
    /// <remarks>Source: plane stress, <c>Q11 = E1/(1 - nu12 nu21)</c> and so on; e.g. Kaw, Mechanics of Composite Materials, ch. 2.</remarks>
    public PlaneMatrix ReducedStiffness { get; }

    /// <summary>The stiffness's parts that do not depend on the ply's angle, U1 to U5, Pa.</summary>
    /// <remarks>Source: Tsai and Hahn, Introduction to Composite Materials (1980). A planar isotropic mix of the lamina has
    /// <c>E = (U1^2 - U4^2)/U1</c>, <c>nu = U4/U1</c> and <c>G = U5</c>.</remarks>
    public (double U1, double U2, double U3, double U4, double U5) Invariants => (_u1, _u2, _u3, _u4, _u5);

    /// <summary>A layer with different constants along and across.</summary>
    /// <param name="along">E1; 1 Pa to 10 000 GPa.</param>
    /// <param name="across">E2; the same range, and within a million times E1 either way.</param>
    /// <param name="poisson">nu12; its square less than E1/E2, or the layer would gain energy from nothing.</param>
    /// <param name="shear">G12; as E2.</param>
    /// <param name="expansionAlong">Thermal expansion along, at most 0.01/K either way; null when it is not known.</param>
    /// <param name="expansionAcross">Thermal expansion across; null when it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A constant is out of range.</exception>
    public static Lamina Orthotropic(
        Pressure along,
        Pressure across,
        double poisson,
        Pressure shear,
        CoefficientOfThermalExpansion? expansionAlong = null,
        CoefficientOfThermalExpansion? expansionAcross = null)
    {
        double e1 = LaminateGuard.Modulus(along, nameof(along));
        double e2 = Guard.Between(LaminateGuard.Modulus(across, nameof(across)), e1 / Spread, e1 * Spread, "Pa", nameof(across));
        double g12 = Guard.Between(LaminateGuard.Modulus(shear, nameof(shear)), e1 / Spread, e1 * Spread, "Pa", nameof(shear));

        // A hair below the bound, so that 1 - nu12 nu21 keeps its digits.
        double most = 0.999999 * Math.Sqrt(e1 / e2);
        double nu12 = Guard.Between(poisson, -most, most, string.Empty, nameof(poisson));
        CheckExpansion(expansionAlong, nameof(expansionAlong));
        CheckExpansion(expansionAcross, nameof(expansionAcross));
        return new Lamina(e1, e2, nu12, g12, expansionAlong, expansionAcross);
    }

    /// <summary>A layer that is alike in all directions, such as foam, resin or metal: <c>G = E/(2(1 + nu))</c>.</summary>
    /// <param name="modulus">Young's modulus; 1 Pa to 10 000 GPa.</param>
    /// <param name="poisson">Poisson's ratio; more than -1, at most 0.5.</param>
    /// <param name="expansion">Thermal expansion; null when it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A constant is out of range.</exception>
    public static Lamina Isotropic(Pressure modulus, double poisson, CoefficientOfThermalExpansion? expansion = null) =>
        Orthotropic(modulus, modulus, poisson, LaminateMath.IsotropicShear(modulus, poisson), expansion, expansion);

    /// <summary>Stiffness in the laminate's axes when the fibre lies at an angle, Q-bar, Pa.</summary>
    /// <param name="angle">From the laminate's x axis to the fibre, counter-clockwise looking at the tool face; at most 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    /// <remarks>Source: multiple-angle form with the invariants, Tsai and Hahn (1980); exact at multiples of 45 degrees.</remarks>
    public PlaneMatrix StiffnessAt(Angle angle)
    {
        double halfTurns = LaminateGuard.Degrees(angle, nameof(angle)) / 180;
        double c2 = _u2 * double.CosPi(2 * halfTurns);
        double s2 = _u2 * double.SinPi(2 * halfTurns) / 2;
        double c4 = _u3 * double.CosPi(4 * halfTurns);
        double s4 = _u3 * double.SinPi(4 * halfTurns);
        return new PlaneMatrix(_u1 + c2 + c4, _u4 - c4, s2 + s4, _u1 - c2 + c4, s2 - s4, _u5 - c4);
    }

    /// <summary>Compliance in the laminate's axes when the fibre lies at an angle, S-bar, 1/Pa.</summary>
    /// <param name="angle">As for the stiffness.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    public PlaneMatrix ComplianceAt(Angle angle)
    {
        double e1 = Along.Pascals;
        PlaneMatrix own = new(1 / e1, -Poisson / e1, 0, 1 / Across.Pascals, 0, 1 / Shear.Pascals);
        return own.ComplianceInAxesTurnedBy(-angle);
    }

    private static void CheckExpansion(CoefficientOfThermalExpansion? expansion, string parameter)
    {
        if (expansion is { } value)
        {
            LaminateGuard.Expansion(value, parameter);
        }
    }
}
