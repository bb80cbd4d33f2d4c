using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Air pressure at the altitude of the shop.</summary>
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
}
