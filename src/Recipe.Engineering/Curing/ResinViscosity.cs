using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Viscosity of a resin over degree of cure and temperature: <see cref="ExponentialViscosity"/> or <see cref="CastroMacoskoViscosity"/>.</summary>
public abstract class ResinViscosity
{
    private readonly double _infinite;
    private readonly double _activation;

    private protected ResinViscosity(DynamicViscosity infinite, TemperatureDelta activationOverR)
    {
        _infinite = Guard.Positive(Guard.Between(infinite.PascalSeconds, 0, 1e6, "Pa s", nameof(infinite)), "Pa s", nameof(infinite));
        _activation = CureGuard.Activation(activationOverR, nameof(activationOverR));
    }

    /// <summary>Degree of cure from which the model says nothing any more.</summary>
    public abstract Ratio Limit { get; }

    /// <summary>Viscosity at a degree and a temperature.</summary>
    /// <param name="degree">Degree of cure; 0 or more, below <see cref="Limit"/>.</param>
    /// <param name="temperature">Temperature; -50 to 500 degC.</param>
    /// <exception cref="ArgumentOutOfRangeException">The degree or the temperature is out of range.</exception>
    public DynamicViscosity At(Ratio degree, Temperature temperature)
    {
        double a = CureGuard.Degree(degree, nameof(degree));
        double limit = Limit.DecimalFractions;
        if (a >= limit)
        {
            throw Guard.Refuse(
                a,
                string.Empty,
                nameof(degree),
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"must be below {limit:G6}, where the model ends"));
        }

        double kelvin = CureGuard.IceKelvin + Guard.Between(temperature.DegreesCelsius, -50, 500, "degC", nameof(temperature));
        return DynamicViscosity.FromPascalSeconds(_infinite * Math.Exp(_activation / kelvin) * Growth(a));
    }

    /// <summary>Viscosity over that of the uncured resin at the same temperature.</summary>
    private protected abstract double Growth(double degree);
}
