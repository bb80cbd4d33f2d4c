using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Ranges of the laminate's inputs. They lie far outside anything that is laid up, and far inside a double, so that no sum or
/// product of accepted figures can overflow or turn into a number that is none.
/// </summary>
internal static class LaminateGuard
{
    /// <summary>Modulus in Pa: from 1 Pa (softer than any core) to 10 000 GPa (above any fibre).</summary>
    internal static double Modulus(Pressure value, string parameter) => Guard.Between(value.Pascals, 1, 1e13, "Pa", parameter);

    /// <summary>Thickness in m: from 1e-12 m, for the thinnest share of a light cloth, to 10 m.</summary>
    internal static double Thickness(Length value, string parameter) => Guard.Between(value.Meters, 1e-12, 10, "m", parameter);

    /// <summary>Density in kg/m3: from 0.1 to 30 000.</summary>
    internal static double Density(Density value, string parameter) =>
        Guard.Between(value.KilogramsPerCubicMeter, 0.1, 30_000, "kg/m3", parameter);

    /// <summary>Thermal expansion in 1/K, either sign.</summary>
    internal static double Expansion(CoefficientOfThermalExpansion value, string parameter) =>
        Guard.Between(value.PerKelvin, -0.01, 0.01, "1/K", parameter);

    /// <summary>Poisson's ratio of an isotropic solid: more than -1, at most 0.5.</summary>
    internal static double IsotropicPoisson(double value, string parameter) => Guard.Between(value, -0.999, 0.5, string.Empty, parameter);

    /// <summary>Angle in degrees, up to a full turn either way.</summary>
    internal static double Degrees(Angle value, string parameter) => Guard.Between(value.Degrees, -360, 360, "deg", parameter);

    /// <summary>Change of temperature in K, up to 1000 K either way.</summary>
    internal static double Kelvins(TemperatureDelta value, string parameter) =>
        Guard.Between(value.Kelvins, -1000, 1000, "K", parameter);

    /// <summary>Load or moment per length, up to 1e12 N/m or N either way.</summary>
    internal static double Load(double value, string unit, string parameter) => Guard.Between(value, -1e12, 1e12, unit, parameter);

    /// <summary>Refuses a triple with a component that is not a finite number.</summary>
    internal static void Finite(PlaneVector value, string parameter)
    {
        double sum = value.X + value.Y + value.XY;
        if (!double.IsFinite(sum))
        {
            throw Guard.Refuse(sum, string.Empty, parameter, "must be finite");
        }
    }

    /// <summary>Cosine and sine of an angle, exact at whole quarter turns.</summary>
    internal static (double Cos, double Sin) CosSin(Angle angle, string parameter)
    {
        double halfTurns = Degrees(angle, parameter) / 180;
        return (double.CosPi(halfTurns), double.SinPi(halfTurns));
    }
}
