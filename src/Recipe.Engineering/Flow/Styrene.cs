using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How deep a vacuum a resin with styrene bears before it boils.</summary>
/// <remarks>
/// The vapour of styrene burns and harms: keep to the maker's data sheet, the local exposure limits and ventilation. Styrene in a
/// resin has less vapour pressure than pure styrene, so the floor here is on the careful side. Below 58 degC what practice keeps is the
/// higher, so that checks need only that; the vapour pressure is what says so.
/// </remarks>
public static class Styrene
{
    // Antoine's constants in K: slope and shift of the published fit for 30 to 145 degC (from memory); the level is anchored below.
    private const double Slope = 1459.909;
    private const double Shift = -59.551;
    private const double AnchorKelvins = 293.15;
    private const double AnchorPascals = 5 * 133.322368;

    /// <summary>Lowest temperature of <see cref="VapourPressure"/>, -10 degC.</summary>
    public static Temperature Coldest { get; } = Temperature.FromDegreesCelsius(-10);

    /// <summary>Highest temperature of <see cref="VapourPressure"/>, 145 degC, where styrene boils in open air.</summary>
    public static Temperature Hottest { get; } = Temperature.FromDegreesCelsius(145);

    /// <summary>Absolute bag pressure that practice keeps for polyester and vinyl ester: 50 mbar or more (from memory).</summary>
    public static Pressure PracticeFloor { get; } = Pressure.FromMillibars(50);

    /// <summary>Vapour pressure of pure styrene: 5 mmHg at 20 degC, carried to other temperatures by Antoine's equation.</summary>
    /// <param name="temperature">Temperature of the resin; -10 to 145 degC.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    /// <remarks>
    /// Source: 5 mmHg at 20 degC from the NIOSH Pocket Guide; the way it rises from Antoine's equation
    /// <c>log10 p = A - 1459.909/(T - 59.551 K)</c> (fit for 30 to 145 degC, from memory; below that carried on).
    /// </remarks>
    public static Pressure VapourPressure(Temperature temperature)
    {
        double kelvins = Guard.Between(temperature.Kelvins, Coldest.Kelvins, Hottest.Kelvins, "K", nameof(temperature));
        double decades = (Slope / (AnchorKelvins + Shift)) - (Slope / (kelvins + Shift));
        return Pressure.FromPascals(AnchorPascals * Math.Pow(10, decades));
    }
}
