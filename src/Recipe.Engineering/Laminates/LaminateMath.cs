using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Small relations that several of the laminate's calculations share.</summary>
internal static class LaminateMath
{
    /// <summary>Shear modulus of an isotropic solid, <c>E / (2 (1 + nu))</c>.</summary>
    internal static Pressure IsotropicShear(Pressure modulus, double poisson) =>
        Pressure.FromPascals(
            LaminateGuard.Modulus(modulus, nameof(modulus))
                / (2 * (1 + LaminateGuard.IsotropicPoisson(poisson, nameof(poisson)))));
}
