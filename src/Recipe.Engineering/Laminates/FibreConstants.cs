using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Elastic constants of a fibre, the same in every direction across it. Carbon and aramid are far softer across than along;
/// a figure along the fibre must not stand in for one across.
/// </summary>
/// <param name="Along">Young's modulus along the fibre; 1 Pa to 10 000 GPa.</param>
/// <param name="Across">Young's modulus across the fibre; the same range.</param>
/// <param name="Shear">Shear modulus along and across; the same range.</param>
/// <param name="Poisson">Contraction across over stretch along; 0 or more and less than 1.</param>
/// <param name="Density">Density; 0.1 to 30 000 kg/m3.</param>
/// <param name="ExpansionAlong">Thermal expansion along the fibre, or null when it is not known.</param>
/// <param name="ExpansionAcross">Thermal expansion across the fibre, or null when it is not known.</param>
public sealed record FibreConstants(
    Pressure Along,
    Pressure Across,
    Pressure Shear,
    double Poisson,
    Density Density,
    CoefficientOfThermalExpansion? ExpansionAlong = null,
    CoefficientOfThermalExpansion? ExpansionAcross = null)
{
    /// <summary>A fibre that is alike in all directions, such as glass: <c>G = E / (2 (1 + nu))</c>.</summary>
    /// <param name="modulus">Young's modulus; 1 Pa to 10 000 GPa.</param>
    /// <param name="poisson">Poisson's ratio; more than -1, at most 0.5.</param>
    /// <param name="density">Density; 0.1 to 30 000 kg/m3.</param>
    /// <param name="expansion">Thermal expansion, or null when it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The modulus or Poisson's ratio is out of range.</exception>
    public static FibreConstants Isotropic(
        Pressure modulus, double poisson, Density density, CoefficientOfThermalExpansion? expansion = null) =>
        new(modulus, modulus, LaminateMath.IsotropicShear(modulus, poisson), poisson, density, expansion, expansion);
}
