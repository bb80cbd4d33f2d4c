using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Constants of a layer of parallel fibres from those of fibre and resin. Perfect bond, straight fibres, no voids; the rules for
/// the direction across are estimates, good to 10 or 20 % (common practice), and no strength can be had this way.
/// </summary>
public static class Micromechanics
{
    /// <summary>Rule of mixtures, <c>Vf Pf + (1 - Vf) Pm</c>: the modulus along the fibre.</summary>
    /// <param name="fibre">The fibre's modulus; 1 Pa to 10 000 GPa.</param>
    /// <param name="resin">The resin's modulus; the same range.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: Voigt's equal strain, e.g. Kaw, Mechanics of Composite Materials, ch. 3 (from memory).</remarks>
    public static Pressure RuleOfMixtures(Pressure fibre, Pressure resin, Ratio fibreVolumeFraction)
    {
        (double f, double m, double v) = Check(fibre, resin, fibreVolumeFraction);
        return Pressure.FromPascals((v * f) + ((1 - v) * m));
    }

    /// <summary>Rule of mixtures for Poisson's ratio nu12.</summary>
    /// <param name="fibre">The fibre's ratio; 0 or more and less than 1.</param>
    /// <param name="resin">The resin's ratio; more than -1, at most 0.5.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: as the rule of mixtures for the modulus.</remarks>
    public static double Poisson(double fibre, double resin, Ratio fibreVolumeFraction)
    {
        double v = Volume(fibreVolumeFraction);
        return (v * Guard.Between(fibre, 0, 0.999, string.Empty, nameof(fibre)))
            + ((1 - v) * LaminateGuard.IsotropicPoisson(resin, nameof(resin)));
    }

    /// <summary>Inverse rule, <c>1 / (Vf/Pf + (1 - Vf)/Pm)</c>: a lower bound for the moduli across and in shear.</summary>
    /// <param name="fibre">The fibre's modulus; 1 Pa to 10 000 GPa.</param>
    /// <param name="resin">The resin's modulus; the same range.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: Reuss's equal stress, e.g. Kaw, ch. 3 (from memory).</remarks>
    public static Pressure InverseRule(Pressure fibre, Pressure resin, Ratio fibreVolumeFraction)
    {
        (double f, double m, double v) = Check(fibre, resin, fibreVolumeFraction);
        return Pressure.FromPascals(1 / ((v / f) + ((1 - v) / m)));
    }

    /// <summary>
    /// Halpin and Tsai's interpolation, <c>Pm (1 + xi eta Vf)/(1 - eta Vf)</c> with <c>eta = (Pf/Pm - 1)/(Pf/Pm + xi)</c>.
    /// It runs from the inverse rule (xi = 0) to the rule of mixtures (xi without bound).
    /// </summary>
    /// <param name="fibre">The fibre's modulus; 1 Pa to 10 000 GPa.</param>
    /// <param name="resin">The resin's modulus; the same range.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; 0 to 1.</param>
    /// <param name="xi">Measure of the reinforcement; 0 to 1e6; for round fibres 2 for E2 and 1 for G12.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: Halpin and Tsai, AFML-TR-67-423 (1969); Halpin and Kardos (1976).</remarks>
    public static Pressure HalpinTsai(Pressure fibre, Pressure resin, Ratio fibreVolumeFraction, double xi)
    {
        (double f, double m, double v) = Check(fibre, resin, fibreVolumeFraction);
        double measure = Guard.Between(xi, 0, 1e6, string.Empty, nameof(xi));
        double eta = (f - m) / (f + (measure * m));
        return Pressure.FromPascals(m * (1 + (measure * eta * v)) / (1 - (eta * v)));
    }

    /// <summary>Thermal expansion along the fibre, <c>(Vf Ef af + Vm Em am)/(Vf Ef + Vm Em)</c>; null when a figure is missing.</summary>
    /// <param name="fibre">The fibre.</param>
    /// <param name="resin">The resin.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: Schapery, Journal of Composite Materials 2 (1968) 380 (from memory).</remarks>
    public static CoefficientOfThermalExpansion? ExpansionAlong(
        FibreConstants fibre, ResinConstants resin, Ratio fibreVolumeFraction)
    {
        ArgumentNullException.ThrowIfNull(fibre);
        ArgumentNullException.ThrowIfNull(resin);
        (double ef, double em, double v) = Check(fibre.Along, resin.Modulus, fibreVolumeFraction);
        if (fibre.ExpansionAlong is not { } along || resin.Expansion is not { } ofResin)
        {
            return null;
        }

        double af = LaminateGuard.Expansion(along, nameof(fibre));
        double am = LaminateGuard.Expansion(ofResin, nameof(resin));
        double stiff = (v * ef) + ((1 - v) * em);
        return CoefficientOfThermalExpansion.FromPerKelvin(((v * ef * af) + ((1 - v) * em * am)) / stiff);
    }

    /// <summary>
    /// Thermal expansion across the fibre, <c>Vf (af2 + nuf af1) + Vm (1 + num) am - nu12 a1</c>; null when a figure is missing.
    /// </summary>
    /// <param name="fibre">The fibre.</param>
    /// <param name="resin">The resin.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>
    /// Source: Schapery (1968) for fibres alike in all directions, and its usual form for others (both from memory).
    /// </remarks>
    public static CoefficientOfThermalExpansion? ExpansionAcross(
        FibreConstants fibre, ResinConstants resin, Ratio fibreVolumeFraction)
    {
        if (ExpansionAlong(fibre, resin, fibreVolumeFraction) is not { } along || fibre.ExpansionAcross is not { } across)
        {
            return null;
        }

        double v = Volume(fibreVolumeFraction);
        double af1 = fibre.ExpansionAlong!.Value.PerKelvin;
        double af2 = LaminateGuard.Expansion(across, nameof(fibre));
        double am = resin.Expansion!.Value.PerKelvin;
        double nu12 = Poisson(fibre.Poisson, resin.Poisson, fibreVolumeFraction);
        return CoefficientOfThermalExpansion.FromPerKelvin(
            (v * (af2 + (fibre.Poisson * af1))) + ((1 - v) * (1 + resin.Poisson) * am) - (nu12 * along.PerKelvin));
    }

    /// <summary>
    /// A layer of parallel fibres: rule of mixtures for E1 and nu12, Halpin and Tsai for E2 (xi = 2) and G12 (xi = 1),
    /// Schapery for the thermal expansion where fibre and resin have one.
    /// </summary>
    /// <param name="fibre">The fibre.</param>
    /// <param name="resin">The cured resin.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; from 0.1 % to the densest packing of round fibres, 90.7 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Lamina Unidirectional(FibreConstants fibre, ResinConstants resin, Ratio fibreVolumeFraction)
    {
        ArgumentNullException.ThrowIfNull(fibre);
        ArgumentNullException.ThrowIfNull(resin);
        Packed(fibreVolumeFraction, nameof(fibreVolumeFraction));
        return Lamina.Orthotropic(
            RuleOfMixtures(fibre.Along, resin.Modulus, fibreVolumeFraction),
            HalpinTsai(fibre.Across, resin.Modulus, fibreVolumeFraction, 2),
            Poisson(fibre.Poisson, resin.Poisson, fibreVolumeFraction),
            HalpinTsai(fibre.Shear, resin.Shear, fibreVolumeFraction, 1),
            ExpansionAlong(fibre, resin, fibreVolumeFraction),
            ExpansionAcross(fibre, resin, fibreVolumeFraction));
    }

    /// <summary>
    /// A layer of the same fibres lying in all directions of the plane: <c>E = 3/8 E1 + 5/8 E2</c>, <c>G = 1/8 E1 + 1/4 E2</c>,
    /// <c>nu = E/(2 G) - 1</c>. Its thermal expansion is that of layers at evenly spread angles, which is exact in plane stress.
    /// </summary>
    /// <param name="unidirectional">The layer as it would be with all fibres parallel, at the mat's own fibre volume.</param>
    /// <remarks>Source: Tsai and Pagano (1968), the usual handbook form (from memory).</remarks>
    public static Lamina RandomInPlane(Lamina unidirectional)
    {
        ArgumentNullException.ThrowIfNull(unidirectional);
        double e1 = unidirectional.Along.Pascals;
        double e2 = unidirectional.Across.Pascals;
        double e = (0.375 * e1) + (0.625 * e2);
        double g = (0.125 * e1) + (0.25 * e2);
        CoefficientOfThermalExpansion? expansion = null;
        if (unidirectional.ExpansionAlong is { } along && unidirectional.ExpansionAcross is { } across)
        {
            PlaneMatrix q = unidirectional.ReducedStiffness;
            double stress = ((q.M11 + q.M12) * along.PerKelvin) + ((q.M12 + q.M22) * across.PerKelvin);
            expansion = CoefficientOfThermalExpansion.FromPerKelvin(stress / (q.M11 + q.M22 + (2 * q.M12)));
        }

        return Lamina.Orthotropic(
            Pressure.FromPascals(e), Pressure.FromPascals(e), (e / (2 * g)) - 1, Pressure.FromPascals(g), expansion, expansion);
    }

    /// <summary>The fraction when round parallel fibres can be packed so densely.</summary>
    internal static double Packed(Ratio fibreVolumeFraction, string parameter)
    {
        double most = FibreContent.HexagonalPacking.DecimalFractions;
        double value = fibreVolumeFraction.DecimalFractions;
        return value >= 0.001 && value <= most
            ? value
            : throw Guard.Refuse(value * 100, "%", parameter, "must be from 0.1 to 90.69, the densest packing of round fibres,");
    }

    private static double Volume(Ratio fraction) =>
        Guard.Between(fraction.DecimalFractions, 0, 1, string.Empty, "fibreVolumeFraction");

    private static (double Fibre, double Resin, double Volume) Check(Pressure fibre, Pressure resin, Ratio volume) =>
        (LaminateGuard.Modulus(fibre, nameof(fibre)), LaminateGuard.Modulus(resin, nameof(resin)), Volume(volume));
}
