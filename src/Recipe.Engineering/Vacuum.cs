using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Pump-down of a bag, and what a pump has in hand over a leak. Pressures are absolute.</summary>
/// <remarks>
/// Source: textbook vacuum practice: ideal gas at constant temperature, a constant pumping speed, no outgassing of resin.
/// Boiling styrene or moisture adds gas that these formulas do not know. Use vessels made for vacuum, and shields on glass.
/// </remarks>
public static class Vacuum
{
    /// <summary>
    /// Lowest pressure that the pump holds against a leak: <c>p_u + Q/S</c>.
    /// </summary>
    /// <param name="speed">Pumping speed; greater than zero.</param>
    /// <param name="ultimate">The pump's ultimate pressure; zero or more.</param>
    /// <param name="leak">Leak.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Pressure LowestHeld(VolumeFlow speed, Pressure ultimate, LeakRate leak) =>
        Pressure.FromPascals(Floor(Speed(speed), ultimate, leak));

    /// <summary>
    /// Time to draw a volume down: <c>(V/S) ln((p0 - p_inf)/(p1 - p_inf))</c> with <c>p_inf = p_u + Q/S</c>.
    /// </summary>
    /// <param name="volume">Free volume of bag, hose and trap; greater than zero.</param>
    /// <param name="speed">Pumping speed; greater than zero.</param>
    /// <param name="from">Pressure at the start; greater than zero.</param>
    /// <param name="to">Pressure to reach; greater than zero.</param>
    /// <param name="ultimate">The pump's ultimate pressure; zero or more; default 0.</param>
    /// <param name="leak">Leak; default none.</param>
    /// <returns>The time, zero when the volume is already there, or null when the pump never gets there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Duration? PumpDownTime(
        Volume volume, VolumeFlow speed, Pressure from, Pressure to, Pressure ultimate = default, LeakRate leak = default)
    {
        double v = Guard.Positive(volume.CubicMeters, "m3", nameof(volume));
        double s = Speed(speed);
        double start = Guard.Positive(from.Pascals, "Pa", nameof(from));
        double end = Guard.Positive(to.Pascals, "Pa", nameof(to));
        double floor = Floor(s, ultimate, leak);
        if (end >= start)
        {
            return Duration.Zero;
        }

        return end > floor ? Duration.FromSeconds(v / s * Math.Log((start - floor) / (end - floor))) : null;
    }

    /// <summary>
    /// How many times over the pump carries off the leak at a pressure: <c>S (p - p_u) / Q</c>. Common practice asks for 5.
    /// </summary>
    /// <param name="speed">Pumping speed; greater than zero.</param>
    /// <param name="level">Absolute pressure to hold; zero or more.</param>
    /// <param name="ultimate">The pump's ultimate pressure; zero or more.</param>
    /// <param name="leak">Leak.</param>
    /// <returns>The margin; zero at or below the ultimate pressure, positive infinity without a leak above it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static double PumpMargin(VolumeFlow speed, Pressure level, Pressure ultimate, LeakRate leak)
    {
        double s = Speed(speed);
        double p = Guard.NotNegative(level.Pascals, "Pa", nameof(level));
        double head = p - Guard.NotNegative(ultimate.Pascals, "Pa", nameof(ultimate));
        return head <= 0 ? 0 : s * head / leak.PascalCubicMetresPerSecond;
    }

    /// <summary>
    /// Estimate of the air to pump out: the bag's area times the mean gap that its folds and the breather keep open, plus hose and trap.
    /// </summary>
    /// <param name="bagArea">Area of bag film inside the tape; zero or more.</param>
    /// <param name="meanGap">Mean gap under the film before pumping; zero or more; about 10 mm for a bag laid down by hand (from memory).</param>
    /// <param name="hoseBore">Inner diameter of the hose; zero or more.</param>
    /// <param name="hoseLength">Length of the hose; zero or more.</param>
    /// <param name="trap">Volume of the resin trap; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    public static Volume BagFreeVolume(
        Area bagArea, Length meanGap, Length hoseBore, Length hoseLength, Volume trap)
    {
        double bag = Guard.NotNegative(bagArea.SquareMeters, "m2", nameof(bagArea))
            * Guard.NotNegative(meanGap.Meters, "m", nameof(meanGap));
        double bore = Guard.NotNegative(hoseBore.Meters, "m", nameof(hoseBore));
        double hose = Math.PI * bore * bore / 4 * Guard.NotNegative(hoseLength.Meters, "m", nameof(hoseLength));
        return Volume.FromCubicMeters(bag + hose + Guard.NotNegative(trap.CubicMeters, "m3", nameof(trap)));
    }

    private static double Speed(VolumeFlow speed) =>
        Guard.Positive(speed.CubicMetersPerSecond, "m3/s", nameof(speed));

    private static double Floor(double speed, Pressure ultimate, LeakRate leak) =>
        Guard.NotNegative(ultimate.Pascals, "Pa", nameof(ultimate)) + (leak.PascalCubicMetresPerSecond / speed);
}
