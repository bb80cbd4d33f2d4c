using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// A face under a lamp or in the sun, its back insulated, in balance: <c>abs G = eps sigma (Ts^4 - Ta^4) + h (Ts - Ta)</c>.
/// </summary>
/// <remarks>
/// Source: Stefan and Boltzmann's law, CODATA 2018 sigma 5.670374419e-8 W/(m2 K4), and Newton's law of cooling; e.g. Incropera and DeWitt.
/// Absorptivity and the coefficient h are seldom known, a draught halves the rise, and lamps heat unevenly: always measure, with the
/// thermocouple beside the repair on the side of the heat (US Army TM 1-1500-204-23-11), and never leave a lamp alone.
/// </remarks>
public static class RadiantHeat
{
    /// <summary>Stefan and Boltzmann's constant, W/(m2 K4).</summary>
    private const double Sigma = 5.670374419e-8;

    /// <summary>Temperature that the face settles at.</summary>
    /// <param name="irradiance">Radiation on the face; 0 to 1 MW/m2. The sun at noon has about 1000 W/m2.</param>
    /// <param name="ambient">Temperature of air and walls; -60 to 500 degC.</param>
    /// <param name="face">What the face takes in and gives off.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Temperature SteadyTemperature(Irradiance irradiance, Temperature ambient, RadiantFace face)
    {
        double g = Guard.Between(irradiance.WattsPerSquareMeter, 0, 1e6, "W/m2", nameof(irradiance));
        double air = Air(ambient);
        (double taken, double emitted, double h) = Constants(face);

        // The balance rises with the temperature and bends upwards: Newton from above never leaves the root's upper side.
        double t = air + Math.Cbrt(1e9 * (taken * g + 1)) + 1000;
        for (int i = 0; i < 200; i++)
        {
            double excess = (emitted * Sigma * ((t * t * t * t) - (air * air * air * air))) + (h * (t - air)) - (taken * g);
            double step = excess / ((4 * emitted * Sigma * t * t * t) + h);
            t -= step;
            if (Math.Abs(step) < 1e-10 * t)
            {
                break;
            }
        }

        return Temperature.FromKelvins(t);
    }

    /// <summary>Irradiance that holds a face at a temperature.</summary>
    /// <param name="surface">Temperature of the face; not below the ambient one, to 1500 degC.</param>
    /// <param name="ambient">Temperature of air and walls; -60 to 500 degC.</param>
    /// <param name="face">What the face takes in and gives off.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Irradiance ToHold(Temperature surface, Temperature ambient, RadiantFace face)
    {
        double air = Air(ambient);
        double t = Guard.Between(surface.Kelvins, air, 1500 + CureGuard.IceKelvin, "K", nameof(surface));
        (double taken, double emitted, double h) = Constants(face);
        return Irradiance.FromWattsPerSquareMeter(
            ((emitted * Sigma * ((t * t * t * t) - (air * air * air * air))) + (h * (t - air))) / taken);
    }

    /// <summary>The band of temperatures that the unsure figures leave: coolest with the least taken in and the most lost, hottest the other way round.</summary>
    /// <param name="irradiance">As for the steady temperature.</param>
    /// <param name="ambient">Temperature of air and walls.</param>
    /// <param name="face">The likeliest figures.</param>
    /// <param name="absorptivity">How far the absorptivity may be off either way; 0.1 is usual (assumed). It is cut at 0.01 and 1.</param>
    /// <param name="convection">How far h may be off, relative to it; 0.5 is usual (assumed: still air or a draught); 0 or more, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static TemperatureBand Band(
        Irradiance irradiance, Temperature ambient, RadiantFace face, Ratio absorptivity, Ratio convection)
    {
        (double taken, double _, double h) = Constants(face);
        double off = Guard.Between(absorptivity.DecimalFractions, 0, 1, string.Empty, nameof(absorptivity));
        double draught = Guard.FractionBelowOne(convection, nameof(convection));
        RadiantFace With(double sign) => face with
        {
            Absorptivity = Ratio.FromDecimalFractions(Math.Clamp(taken + (sign * off), 0.01, 1)),
            Convection = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h * (1 - (sign * draught))),
        };
        return new TemperatureBand(
            SteadyTemperature(irradiance, ambient, face),
            SteadyTemperature(irradiance, ambient, With(-1)),
            SteadyTemperature(irradiance, ambient, With(1)));
    }

    private static double Air(Temperature ambient) =>
        CureGuard.IceKelvin + Guard.Between(ambient.DegreesCelsius, -60, 500, "degC", nameof(ambient));

    private static (double Taken, double Emitted, double H) Constants(RadiantFace face)
    {
        ArgumentNullException.ThrowIfNull(face);
        return (
            Guard.Between(face.Absorptivity.DecimalFractions, 0.01, 1, string.Empty, nameof(face.Absorptivity)),
            Guard.Between(face.Emissivity.DecimalFractions, 0.01, 1, string.Empty, nameof(face.Emissivity)),
            HeatGuard.Transfer(face.Convection, nameof(face.Convection)));
    }
}
