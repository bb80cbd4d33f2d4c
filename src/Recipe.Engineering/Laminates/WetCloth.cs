using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A cloth, mat or veil with the resin that it holds when cured.</summary>
/// <param name="Cloth">Dry weight per area; greater than zero, at most 1e4 kg/m2.</param>
/// <param name="Fibre">The fibre.</param>
/// <param name="Resin">The cured resin.</param>
/// <param name="FibreVolumeFraction">
/// Volume of fibre in the volume of the cured ply, 0.1 % to 90.7 %. It is declared, never assumed: a veil or mat of random fibres
/// takes several times its own weight of resin.
/// </param>
/// <param name="Limits">Strain limits in the axes of the fibre, or null when there are none.</param>
public sealed record WetCloth(
    AreaDensity Cloth, FibreConstants Fibre, ResinConstants Resin, Ratio FibreVolumeFraction, StrainLimits? Limits = null)
{
    /// <summary>The same, from the resin's share of the mass of the cured ply.</summary>
    /// <param name="cloth">Dry weight per area; greater than zero, at most 1e4 kg/m2.</param>
    /// <param name="fibre">The fibre.</param>
    /// <param name="resin">The cured resin.</param>
    /// <param name="resinMassFraction">Mass of resin in the mass of the cured ply; more than 0 and less than 1.</param>
    /// <param name="limits">Strain limits, or null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share or a density is out of range.</exception>
    public static WetCloth ByMass(
        AreaDensity cloth, FibreConstants fibre, ResinConstants resin, Ratio resinMassFraction, StrainLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(fibre);
        ArgumentNullException.ThrowIfNull(resin);
        double w = Guard.OpenFraction(resinMassFraction, nameof(resinMassFraction));
        return new WetCloth(
            cloth,
            fibre,
            resin,
            FibreContent.VolumeFraction(Ratio.FromDecimalFractions(1 - w), fibre.Density, resin.Density),
            limits);
    }
}
