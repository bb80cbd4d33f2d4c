using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Viscosity that grows without bound at gel: <c>mu = mu_inf exp(U/(R T)) (ag / (ag - a))^(A + B a)</c>, for degrees below ag.</summary>
/// <remarks>Source: Castro and Macosko, AIChE J. 28 (1982) 250 (from memory). At and past gel it says nothing, and refuses.</remarks>
public sealed class CastroMacoskoViscosity : ResinViscosity
{
    private readonly double _gel;
    private readonly double _a;
    private readonly double _b;

    /// <summary>A model from its constants.</summary>
    /// <param name="infinite">mu_inf; more than 0.</param>
    /// <param name="activationOverR">U/R; 0 to 50 000 K.</param>
    /// <param name="gel">Degree of cure at gel, ag; more than 0, at most 1.</param>
    /// <param name="a">A; 0 to 20.</param>
    /// <param name="b">B; -20 to 20, with A + B ag not below 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A constant is out of range.</exception>
    public CastroMacoskoViscosity(DynamicViscosity infinite, TemperatureDelta activationOverR, Ratio gel, double a, double b)
        : base(infinite, activationOverR)
    {
        _gel = Guard.Positive(CureGuard.Degree(gel, nameof(gel)), string.Empty, nameof(gel));
        _a = Guard.Between(a, 0, 20, string.Empty, nameof(a));
        _b = Guard.Between(b, -20, 20, string.Empty, nameof(b));
        Guard.NotNegative(_a + (_b * _gel), string.Empty, nameof(b));
    }

    /// <inheritdoc/>
    public override Ratio Limit => Ratio.FromDecimalFractions(_gel);

    private protected override double Growth(double degree) => Math.Pow(_gel / (_gel - degree), _a + (_b * degree));
}
