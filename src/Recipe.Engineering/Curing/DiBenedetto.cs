using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Glass transition over the degree of cure: <c>Tg = Tg0 + (TgInf - Tg0) L a / (1 - (1 - L) a)</c>. Immutable.
/// </summary>
/// <remarks>Source: DiBenedetto's equation in the form of Pascault and Williams, J. Polym. Sci. B 28 (1990) 85 (from memory).</remarks>
public sealed class DiBenedetto
{
    private readonly double _uncured;
    private readonly double _span;
    private readonly double _lambda;

    /// <summary>A curve from its three constants.</summary>
    /// <param name="uncured">Tg0, of the mix before it cures; -150 to 500 degC.</param>
    /// <param name="limit">TgInf, of the full cure; above the uncured one, to 500 degC.</param>
    /// <param name="lambda">L; 0.05 to 1 (1 is a straight line).</param>
    /// <exception cref="ArgumentOutOfRangeException">A constant is out of range.</exception>
    public DiBenedetto(Temperature uncured, Temperature limit, double lambda = UsualLambda)
    {
        _uncured = CureGuard.Kelvin(uncured, nameof(uncured));
        double full = CureGuard.Kelvin(limit, nameof(limit));
        _span = full > _uncured
            ? full - _uncured
            : throw Guard.Refuse(limit.DegreesCelsius, "degC", nameof(limit), "must be above the uncured glass transition");
        _lambda = Guard.Between(lambda, 0.05, 1, string.Empty, nameof(lambda));
    }

    /// <summary>Constant L where nobody gives one: 0.5 (assumed, from memory; epoxies with amines 0.3 to 0.6).</summary>
    public const double UsualLambda = 0.5;

    /// <summary>Glass transition of a liquid epoxy mixed with its amine where nobody gives one: -35 degC (assumed, from memory; -60 to -15 degC).</summary>
    public static Temperature UsualUncured { get; } = Temperature.FromDegreesCelsius(-35);

    /// <summary>Glass transition of the mix before it cures, Tg0.</summary>
    public Temperature Uncured => Temperature.FromKelvins(_uncured);

    /// <summary>Glass transition of the full cure, TgInf.</summary>
    public Temperature Limit => Temperature.FromKelvins(_uncured + _span);

    /// <summary>Glass transition at a degree of cure.</summary>
    /// <param name="degree">Degree of cure; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The degree is out of range.</exception>
    public Temperature At(Ratio degree) => Temperature.FromKelvins(KelvinAt(CureGuard.Degree(degree, nameof(degree))));

    /// <summary>Degree of cure that has a glass transition: <c>a = r / (L + (1 - L) r)</c>, r the share of the way from Tg0 to TgInf.</summary>
    /// <param name="glassTransition">Glass transition; from <see cref="Uncured"/> to <see cref="Limit"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">No degree of cure has it.</exception>
    public Ratio DegreeAt(Temperature glassTransition)
    {
        double kelvin = glassTransition.Kelvins;
        if (!(kelvin >= _uncured - 1e-9) || kelvin > _uncured + _span + 1e-9)
        {
            throw Guard.Refuse(
                glassTransition.DegreesCelsius,
                "degC",
                nameof(glassTransition),
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"must be from the uncured to the limiting glass transition, {Uncured.DegreesCelsius:G6} to {Limit.DegreesCelsius:G6}"));
        }

        double share = Math.Clamp((kelvin - _uncured) / _span, 0, 1);
        return Ratio.FromDecimalFractions(share / (_lambda + ((1 - _lambda) * share)));
    }

    internal double KelvinAt(double degree) => _uncured + (_span * _lambda * degree / (1 - ((1 - _lambda) * degree)));
}
