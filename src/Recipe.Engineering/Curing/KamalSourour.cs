using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Cure of epoxies with amines, and the like, that speeds itself up: <c>da/dt = (K1 + K2 a^m) (1 - a)^n</c> with
/// <c>Ki = Ai exp(-(Ei/R)/T)</c>.
/// </summary>
/// <remarks>
/// Source: Kamal and Sourour, Polym. Eng. Sci. 13 (1973) 59. Barral et al., J. Appl. Polym. Sci. 56 (1995) 1029, give m + n of about
/// 2.5 to 3 and activation energies of 44 to 57 kJ/mol (Ei/R of 5300 to 6900 K) for an epoxy with a cycloaliphatic diamine. The form
/// knows no vitrification: cold cures need a <see cref="DiffusionBrake"/>.
/// </remarks>
public sealed class KamalSourour : CureKinetics
{
    private readonly double _a1;
    private readonly double _e1;
    private readonly double _a2;
    private readonly double _e2;
    private readonly double _m;
    private readonly double _n;

    /// <summary>A model from its constants. It answers from -20 to 300 degC; where it was fitted is for its author to say.</summary>
    /// <param name="a1">A1, 1/s; 0 to 1e30. With 0 a cure never starts from degree 0.</param>
    /// <param name="e1OverR">E1/R; 0 to 50 000 K.</param>
    /// <param name="a2">A2, 1/s; 0 to 1e30.</param>
    /// <param name="e2OverR">E2/R; 0 to 50 000 K.</param>
    /// <param name="m">Order m; 0 to 5.</param>
    /// <param name="n">Order n; 0.5 to 5.</param>
    /// <exception cref="ArgumentOutOfRangeException">A constant is out of range, or both factors are zero.</exception>
    public KamalSourour(Frequency a1, TemperatureDelta e1OverR, Frequency a2, TemperatureDelta e2OverR, double m, double n)
        : base(-20, 300)
    {
        _a1 = CureGuard.Factor(a1, nameof(a1));
        _e1 = CureGuard.Activation(e1OverR, nameof(e1OverR));
        _a2 = CureGuard.Factor(a2, nameof(a2));
        _e2 = CureGuard.Activation(e2OverR, nameof(e2OverR));
        _m = Guard.Between(m, 0, 5, string.Empty, nameof(m));
        _n = Guard.Between(n, 0.5, 5, string.Empty, nameof(n));
        Guard.Positive(_a1 + _a2, "1/s", nameof(a2));
    }

    internal override double Rate(double degree, double kelvin, int stretch)
    {
        if (degree >= 1)
        {
            return 0;
        }

        double a = degree > 0 ? degree : 0;
        double k1 = _a1 == 0 ? 0 : _a1 * Math.Exp(-_e1 / kelvin);
        double k2 = _a2 == 0 ? 0 : _a2 * Math.Exp(-_e2 / kelvin);
        return (k1 + (k2 * Power(a, _m))) * Power(1 - a, _n);
    }

    // The whole orders that are commonest, without a logarithm.
    private static double Power(double value, double order) =>
        order == 1 ? value
        : order == 2 ? value * value
        : Math.Pow(value, order);
}
