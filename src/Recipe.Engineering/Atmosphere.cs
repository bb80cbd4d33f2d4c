using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Air pressure at the altitude of the shop, and vacuum given below ambient or absolute.</summary>
/// <remarks>
/// Source: ISO 2533 Standard Atmosphere (identical with ICAO Doc 7488 and the U.S. Standard Atmosphere 1976 in this layer),
/// geopotential height; at shop altitudes it differs from the height on a map by less than 0.1 %.
/// </remarks>
public static class Atmosphere
{
    private const double SeaLevelPascals = 101325;
    private const double SeaLevelKelvins = 288.15;
    private const double LapseKelvinsPerMetre = 0.0065;
    private const double GasConstant = 287.05287;
    private const double Gravity = 9.80665;

    /// <summary>Lowest altitude of the layer, -2000 m.</summary>
    public static Length LowestAltitude { get; } = Length.FromMeters(-2000);

    /// <summary>Highest altitude of the layer, 11000 m.</summary>
    public static Length HighestAltitude { get; } = Length.FromMeters(11000);

    /// <summary>How far the weather may lift the barometer above the standard: 2 % (common practice).</summary>
    public static Ratio WeatherAllowance { get; } = Ratio.FromPercent(2);

    /// <summary>Standard pressure: <c>101325 Pa (1 - 0.0065 H / 288.15)^5.25588</c>.</summary>
    /// <param name="altitude">Geopotential altitude above sea level; -2000 to 11000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside the layer.</exception>
    public static Pressure AtAltitude(Length altitude)
    {
        double height = Guard.Between(
            altitude.Meters, LowestAltitude.Meters, HighestAltitude.Meters, "m", nameof(altitude));
        double ratio = 1 - (LapseKelvinsPerMetre * height / SeaLevelKelvins);
        return Pressure.FromPascals(
            SeaLevelPascals * Math.Pow(ratio, Gravity / (GasConstant * LapseKelvinsPerMetre)));
    }

    /// <summary>
    /// Deepest vacuum below ambient that a pump can draw on a standard day: the standard pressure less the pump's ultimate pressure.
    /// </summary>
    /// <param name="altitude">Altitude; -2000 to 11000 m.</param>
    /// <param name="pumpUltimate">Absolute pressure that the pump reaches on a closed inlet; zero up to the ambient pressure.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Pressure MostVacuum(Length altitude, Pressure pumpUltimate = default)
    {
        double ambient = AtAltitude(altitude).Pascals;
        return Pressure.FromPascals(
            ambient - Guard.Between(pumpUltimate.Pascals, 0, ambient, "Pa", nameof(pumpUltimate)));
    }

    /// <summary>
    /// Limit of belief for a stated vacuum: the standard pressure plus the weather allowance. A figure beyond it is a mistake
    /// in the gauge, the unit or the altitude.
    /// </summary>
    /// <param name="altitude">Altitude; -2000 to 11000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is out of range.</exception>
    public static Pressure MostVacuumInAnyWeather(Length altitude) =>
        Pressure.FromPascals(AtAltitude(altitude).Pascals * (1 + WeatherAllowance.DecimalFractions));

    /// <summary>Absolute pressure from a vacuum below ambient.</summary>
    /// <param name="belowAmbient">Vacuum as a positive figure; zero up to the ambient pressure.</param>
    /// <param name="ambient">Pressure of the air around; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The vacuum is negative or deeper than the air pressure.</exception>
    public static Pressure ToAbsolute(Pressure belowAmbient, Pressure ambient) =>
        Pressure.FromPascals(Complement(belowAmbient, ambient, nameof(belowAmbient)));

    /// <summary>Vacuum below ambient, as a positive figure, from an absolute pressure.</summary>
    /// <param name="absolute">Absolute pressure; zero up to the ambient pressure.</param>
    /// <param name="ambient">Pressure of the air around; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is negative or above the air pressure.</exception>
    public static Pressure ToBelowAmbient(Pressure absolute, Pressure ambient) =>
        Pressure.FromPascals(Complement(absolute, ambient, nameof(absolute)));

    private static double Complement(Pressure given, Pressure ambient, string parameter)
    {
        double air = Guard.Positive(ambient.Pascals, "Pa", nameof(ambient));
        return air - Guard.Between(given.Pascals, 0, air, "Pa", parameter);
    }
}
