using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Fibre and resin content of a laminate: fractions by mass and by volume, thickness, resin per area, density.
/// Fractions lie strictly between 0 and 1, densities and areal weights are greater than zero.
/// </summary>
/// <remarks>
/// Source: ASTM D3171 (Test Method II, content from thickness and areal weight) and ISO 14127 (thickness method);
/// the relations between mass and volume fractions are identities for a laminate without voids. Plans go from cloth and resin to thickness; the
/// way back, from a measured thickness or density, is the standard's own and what its figures are held to.
/// </remarks>
public static class FibreContent
{
    /// <summary>Largest volume fraction of round parallel fibres at all, pi / (2 sqrt 3).</summary>
    public static Ratio HexagonalPacking { get; } = Ratio.FromDecimalFractions(Math.PI / (2 * Math.Sqrt(3)));

    /// <summary>Fibre volume fraction from fibre mass fraction: <c>(w/rf) / (w/rf + (1-w)/rm)</c>.</summary>
    /// <param name="fibreMassFraction">Mass of fibre in the mass of laminate.</param>
    /// <param name="fibre">Density of the fibre.</param>
    /// <param name="resin">Density of the cured resin.</param>
    /// <exception cref="ArgumentOutOfRangeException">A fraction or density is out of range.</exception>
    public static Ratio VolumeFraction(Ratio fibreMassFraction, Density fibre, Density resin)
    {
        double w = Guard.OpenFraction(fibreMassFraction, nameof(fibreMassFraction));
        double f = w / Rho(fibre, nameof(fibre));
        double m = (1 - w) / Rho(resin, nameof(resin));
        return Ratio.FromDecimalFractions(f / (f + m));
    }

    /// <summary>Fibre mass fraction from fibre volume fraction: <c>Vf rf / (Vf rf + (1-Vf) rm)</c>.</summary>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate.</param>
    /// <param name="fibre">Density of the fibre.</param>
    /// <param name="resin">Density of the cured resin.</param>
    /// <exception cref="ArgumentOutOfRangeException">A fraction or density is out of range.</exception>
    public static Ratio MassFraction(Ratio fibreVolumeFraction, Density fibre, Density resin)
    {
        double v = Guard.OpenFraction(fibreVolumeFraction, nameof(fibreVolumeFraction));
        double f = v * Rho(fibre, nameof(fibre));
        double m = (1 - v) * Rho(resin, nameof(resin));
        return Ratio.FromDecimalFractions(f / (f + m));
    }

    /// <summary>Fibre volume fraction from the fibre's areal weight and the thickness it fills: <c>FAW / (rf h)</c>.</summary>
    /// <param name="fibreArealWeight">Dry fibre per area, all plies together.</param>
    /// <param name="fibre">Density of the fibre.</param>
    /// <param name="thickness">Cured thickness; greater than zero and enough to hold the fibre.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An input is out of range, or the thickness is less than that of the solid fibre alone.
    /// </exception>
    public static Ratio VolumeFractionFromThickness(AreaDensity fibreArealWeight, Density fibre, Length thickness)
    {
        double solid = Faw(fibreArealWeight, nameof(fibreArealWeight)) / Rho(fibre, nameof(fibre));
        double h = Guard.Positive(thickness.Meters, "m", nameof(thickness));
        return solid < h
            ? Ratio.FromDecimalFractions(solid / h)
            : throw Guard.Refuse(h, "m", nameof(thickness), "must be greater than the thickness of the fibre alone");
    }

    /// <summary>Cured thickness of a ply or stack: <c>FAW / (rf Vf)</c>.</summary>
    /// <param name="fibreArealWeight">Dry fibre per area.</param>
    /// <param name="fibre">Density of the fibre.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Length PlyThickness(AreaDensity fibreArealWeight, Density fibre, Ratio fibreVolumeFraction)
    {
        double solid = Faw(fibreArealWeight, nameof(fibreArealWeight)) / Rho(fibre, nameof(fibre));
        return Length.FromMeters(solid / Guard.OpenFraction(fibreVolumeFraction, nameof(fibreVolumeFraction)));
    }

    /// <summary>Resin in the laminate per area from the resin's share by mass: <c>FAW w / (1-w)</c>.</summary>
    /// <param name="fibreArealWeight">Dry fibre per area.</param>
    /// <param name="resinMassFraction">Mass of resin in the mass of laminate; 0 or more and less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static AreaDensity ResinPerArea(AreaDensity fibreArealWeight, Ratio resinMassFraction)
    {
        double w = Guard.FractionBelowOne(resinMassFraction, nameof(resinMassFraction));
        double faw = Faw(fibreArealWeight, nameof(fibreArealWeight));
        return AreaDensity.FromKilogramsPerSquareMeter(faw * w / (1 - w));
    }

    /// <summary>Resin in the laminate per area from the fibre volume fraction: <c>FAW (rm/rf) (1-Vf)/Vf</c>.</summary>
    /// <param name="fibreArealWeight">Dry fibre per area.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate.</param>
    /// <param name="fibre">Density of the fibre.</param>
    /// <param name="resin">Density of the cured resin.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static AreaDensity ResinPerAreaAtVolumeFraction(
        AreaDensity fibreArealWeight, Ratio fibreVolumeFraction, Density fibre, Density resin)
    {
        double v = Guard.OpenFraction(fibreVolumeFraction, nameof(fibreVolumeFraction));
        double solid = Faw(fibreArealWeight, nameof(fibreArealWeight)) / Rho(fibre, nameof(fibre));
        return AreaDensity.FromKilogramsPerSquareMeter(solid * (1 - v) / v * Rho(resin, nameof(resin)));
    }

    /// <summary>Density of the laminate: <c>(Vf rf + (1-Vf) rm) (1-voids)</c>.</summary>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of fibre and resin.</param>
    /// <param name="fibre">Density of the fibre.</param>
    /// <param name="resin">Density of the cured resin.</param>
    /// <param name="voids">Volume of voids in the volume of laminate; 0 or more and less than 1; none by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Density CompositeDensity(Ratio fibreVolumeFraction, Density fibre, Density resin, Ratio voids = default)
    {
        double v = Guard.OpenFraction(fibreVolumeFraction, nameof(fibreVolumeFraction));
        double solid = (v * Rho(fibre, nameof(fibre))) + ((1 - v) * Rho(resin, nameof(resin)));
        return Density.FromKilogramsPerCubicMeter(solid * (1 - Guard.FractionBelowOne(voids, nameof(voids))));
    }

    private static double Rho(Density density, string parameter) =>
        Guard.Positive(density.KilogramsPerCubicMeter, "kg/m3", parameter);

    private static double Faw(AreaDensity weight, string parameter) =>
        Guard.Positive(weight.KilogramsPerSquareMeter, "kg/m2", parameter);
}
