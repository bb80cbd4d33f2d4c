using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Viscosity that rises exponentially with the cure, before gel: <c>mu = mu_inf exp(U/(R T) + kappa a)</c>, for degrees below 0.5.</summary>
/// <remarks>Source: Lee, Loos and Springer, J. Compos. Mater. 16 (1982) 510.</remarks>
public sealed class ExponentialViscosity : ResinViscosity
{
    private readonly double _kappa;

    /// <summary>A model from its constants.</summary>
    /// <param name="infinite">mu_inf; more than 0.</param>
    /// <param name="activationOverR">U/R; 0 to 50 000 K.</param>
    /// <param name="kappa">kappa; 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A constant is out of range.</exception>
    public ExponentialViscosity(DynamicViscosity infinite, TemperatureDelta activationOverR, double kappa)
        : base(infinite, activationOverR) => _kappa = Guard.Between(kappa, 0, 100, string.Empty, nameof(kappa));

    /// <summary>The hot-curing prepreg epoxy of the paper: 7.93e-14 Pa s, 90.8 kJ/mol, kappa 14.1 (constants from memory).</summary>
    public static ExponentialViscosity LeeLoosSpringer { get; } = new(
        DynamicViscosity.FromPascalSeconds(7.93e-14), TemperatureDelta.FromKelvins(9.08e4 / CureGuard.GasConstant), 14.1);

    /// <inheritdoc/>
    public override Ratio Limit { get; } = Ratio.FromDecimalFractions(0.5);

    private protected override double Growth(double degree) => Math.Exp(_kappa * degree);
}
