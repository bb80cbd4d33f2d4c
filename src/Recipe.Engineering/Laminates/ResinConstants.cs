using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Elastic constants of a cured resin, alike in all directions.</summary>
/// <param name="Modulus">Young's modulus; 1 Pa to 10 000 GPa.</param>
/// <param name="Poisson">Poisson's ratio; more than -1, at most 0.5.</param>
/// <param name="Density">Density; 0.1 to 30 000 kg/m3.</param>
/// <param name="Expansion">Thermal expansion, or null when it is not known.</param>
public sealed record ResinConstants(
    Pressure Modulus, double Poisson, Density Density, CoefficientOfThermalExpansion? Expansion = null)
{
    /// <summary>Shear modulus, <c>E / (2 (1 + nu))</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The modulus or Poisson's ratio is out of range.</exception>
    public Pressure Shear => LaminateMath.IsotropicShear(Modulus, Poisson);
}
