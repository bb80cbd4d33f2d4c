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
    AreaDensity Cloth, FibreConstants Fibre, ResinConstants Resin, Ratio FibreVolumeFraction, StrainLimits? Limits = null);
