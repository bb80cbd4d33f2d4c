using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// A flow of gas as pressure times volume per time, as leaks are measured; 1 mbar L/s is 0.1 Pa m3/s.
/// </summary>
public readonly record struct LeakRate
{
    private LeakRate(double pascalCubicMetresPerSecond) => PascalCubicMetresPerSecond = pascalCubicMetresPerSecond;

    /// <summary>The rate in Pa m3/s.</summary>
    public double PascalCubicMetresPerSecond { get; }

    /// <summary>The rate in mbar L/s.</summary>
    public double MillibarLitresPerSecond => PascalCubicMetresPerSecond * 10;

    /// <summary>Makes a rate from mbar L/s.</summary>
    /// <param name="rate">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative.</exception>
    public static LeakRate FromMillibarLitresPerSecond(double rate) =>
        new(Guard.NotNegative(rate, "mbar L/s", nameof(rate)) / 10);

    /// <summary>Makes a rate from Pa m3/s.</summary>
    /// <param name="rate">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative.</exception>
    public static LeakRate FromPascalCubicMetresPerSecond(double rate) => new(Guard.NotNegative(rate, "Pa m3/s", nameof(rate)));

    /// <summary>Leak of a closed bag from its rise in pressure: <c>V dp / dt</c>.</summary>
    /// <param name="volume">Free volume of bag, hose and trap; greater than zero.</param>
    /// <param name="rise">Rise in pressure; zero or more.</param>
    /// <param name="time">Time it took; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: the pressure-rise method of vacuum practice, ideal gas at constant temperature.</remarks>
    public static LeakRate FromRise(Volume volume, Pressure rise, Duration time)
    {
        double v = Guard.Positive(volume.CubicMeters, "m3", nameof(volume));
        double p = Guard.NotNegative(rise.Pascals, "Pa", nameof(rise));
        return new LeakRate(v * p / Guard.Positive(time.Seconds, "s", nameof(time)));
    }

    /// <summary>Air of the shop that the leak lets in: the rate over the pressure of the air around.</summary>
    /// <param name="ambient">Pressure of the air around; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is out of range.</exception>
    public VolumeFlow FreeAir(Pressure ambient) =>
        VolumeFlow.FromCubicMetersPerSecond(PascalCubicMetresPerSecond / Guard.Positive(ambient.Pascals, "Pa", nameof(ambient)));
}
