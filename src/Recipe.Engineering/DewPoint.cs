using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The temperature at which air lets go of its water.</summary>
public static class DewPoint
{
    private const double A = 17.625;
    private const double B = 243.04;

    /// <summary>
    /// Dew point by the Magnus formula over water, with the constants of O. A. Alduchov and R. E. Eskridge, "Improved Magnus form
    /// approximation of saturation vapor pressure", J. Appl. Meteor. 35 (1996); good to 0.4 % of vapour pressure from -40 to 50 degC.
    /// </summary>
    /// <param name="air">Temperature of the air, -40 to 60 degC.</param>
    /// <param name="humidity">Relative humidity, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static Temperature Of(Temperature air, double humidity)
    {
        double celsius = Guard.Between(air.DegreesCelsius, -40, 60, "degC", nameof(air));
        double share = Guard.Positive(Guard.Between(humidity, 0, 1, string.Empty, nameof(humidity)), string.Empty, nameof(humidity));
        double gamma = Math.Log(share) + (A * celsius / (B + celsius));
        return Temperature.FromDegreesCelsius(B * gamma / (A - gamma));
    }
}
