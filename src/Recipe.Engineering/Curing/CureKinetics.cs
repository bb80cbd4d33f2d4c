using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// How fast a resin cures: the rate of its degree of cure (0 uncured, 1 fully cured) at a degree and a temperature.
/// <see cref="KamalSourour"/> or <see cref="LeeLoosSpringer"/>.
/// </summary>
/// <remarks>
/// A model fitted to one resin says nothing of another, and nothing beyond the temperatures it was fitted in. The maker's data
/// sheet wins.
/// </remarks>
public abstract class CureKinetics
{
    private readonly double _lowest;
    private readonly double _highest;

    private protected CureKinetics(double lowestCelsius, double highestCelsius)
    {
        _lowest = lowestCelsius + CureGuard.IceKelvin;
        _highest = highestCelsius + CureGuard.IceKelvin;
    }

    /// <summary>Coldest temperature the model answers for.</summary>
    public Temperature Lowest => Temperature.FromKelvins(_lowest);

    /// <summary>Hottest temperature the model answers for.</summary>
    public Temperature Highest => Temperature.FromKelvins(_highest);

    internal double LowestKelvin => _lowest;

    internal double HighestKelvin => _highest;

    /// <summary>Degrees of cure at which the rate jumps, rising; a solver has to stop there. None where it is smooth.</summary>
    internal virtual IReadOnlyList<double> JumpDegrees => [];

    /// <summary>Rate of the degree of cure, in 1/s (hertz). Where the rate jumps, the rate before the jump.</summary>
    /// <param name="degree">Degree of cure; 0 to 1.</param>
    /// <param name="temperature">Temperature; from <see cref="Lowest"/> to <see cref="Highest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The degree or the temperature is out of range.</exception>
    public Frequency RateAt(Ratio degree, Temperature temperature)
    {
        double a = CureGuard.Degree(degree, nameof(degree));
        double kelvin = Inside(temperature.Kelvins, nameof(temperature));
        int stretch = 0;
        while (stretch < JumpDegrees.Count && a > JumpDegrees[stretch])
        {
            stretch++;
        }

        return Frequency.FromHertz(Rate(a, kelvin, stretch));
    }

    /// <summary>
    /// Rate in 1/s by the piece of the model that holds after so many jumps. The piece is smooth, and answers a little beyond its
    /// own end too; never negative, and zero from full cure on.
    /// </summary>
    internal abstract double Rate(double degree, double kelvin, int stretch);

    internal double Inside(double kelvin, string parameter)
    {
        // A hair of room for 363.15 K that came about as 90 degC.
        const double hair = 1e-6;
        return kelvin >= _lowest - hair && kelvin <= _highest + hair
            ? kelvin
            : throw Guard.Refuse(
                kelvin - CureGuard.IceKelvin,
                "degC",
                parameter,
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"must be in the range of the cure model, {_lowest - CureGuard.IceKelvin:G6} to {_highest - CureGuard.IceKelvin:G6}"));
    }
}
