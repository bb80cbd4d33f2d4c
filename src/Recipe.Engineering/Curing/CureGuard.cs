using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Ranges of the cure models' inputs, far outside any workshop and far inside a double.</summary>
internal static class CureGuard
{
    /// <summary>0 degC in K.</summary>
    internal const double IceKelvin = 273.15;

    /// <summary>Molar gas constant as the cited papers round it, J/(mol K).</summary>
    internal const double GasConstant = 8.314;

    /// <summary>Degree of cure: 0 to 1.</summary>
    internal static double Degree(Ratio degree, string parameter) =>
        Guard.Between(degree.DecimalFractions, 0, 1, string.Empty, parameter);

    /// <summary>Temperature in K of anything in a workshop or an oven: -150 to 500 degC.</summary>
    internal static double Kelvin(Temperature temperature, string parameter) =>
        IceKelvin + Guard.Between(temperature.DegreesCelsius, -150, 500, "degC", parameter);

    /// <summary>Frequency factor in 1/s: zero, or up to 1e30.</summary>
    internal static double Factor(Frequency value, string parameter) => Guard.Between(value.Hertz, 0, 1e30, "1/s", parameter);

    /// <summary>Activation energy over the gas constant: 0 to 50 000 K.</summary>
    internal static double Activation(TemperatureDelta value, string parameter) =>
        Guard.Between(value.Kelvins, 0, 50_000, "K", parameter);
}
