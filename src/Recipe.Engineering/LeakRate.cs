using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// A flow of gas as pressure times volume per time, as leaks are measured; 1 mbar L/s is 0.1 Pa m3/s.
/// </summary>
public readonly record struct LeakRate
{
    // One standard cubic centimetre a minute, at 0 degC and 101325 Pa, in Pa m3/s.
    private const double PascalCubicMetresPerSccm = 101325e-6 / 60;

    private LeakRate(double pascalCubicMetresPerSecond) => PascalCubicMetresPerSecond = pascalCubicMetresPerSecond;

    /// <summary>No leak.</summary>
    public static LeakRate None => default;

    /// <summary>The rate in Pa m3/s.</summary>
    public double PascalCubicMetresPerSecond { get; }

    /// <summary>The rate in mbar L/s.</summary>
    public double MillibarLitresPerSecond => PascalCubicMetresPerSecond * 10;

    /// <summary>
    /// The rate in standard cubic centimetres of air a minute (0 degC, 1013.25 mbar), for gas that is at 0 degC as the
    /// convention has it; 1 sccm is 0.016888 mbar L/s.
    /// </summary>
    public double StandardCubicCentimetresPerMinute => PascalCubicMetresPerSecond / PascalCubicMetresPerSccm;

    /// <summary>Makes a rate from mbar L/s.</summary>
    /// <param name="rate">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative.</exception>
    public static LeakRate FromMillibarLitresPerSecond(double rate) =>
        new(Guard.NotNegative(rate, "mbar L/s", nameof(rate)) / 10);

    /// <summary>Makes a rate from standard cubic centimetres a minute.</summary>
    /// <param name="rate">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative.</exception>
    public static LeakRate FromStandardCubicCentimetresPerMinute(double rate) =>
        new(Guard.NotNegative(rate, "sccm", nameof(rate)) * PascalCubicMetresPerSccm);

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

    /// <summary>Rise in pressure that the leak brings to a closed volume in a time: the inverse of <see cref="FromRise"/>.</summary>
    /// <param name="volume">Free volume; greater than zero.</param>
    /// <param name="time">Time; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public Pressure RiseIn(Volume volume, Duration time)
    {
        double v = Guard.Positive(volume.CubicMeters, "m3", nameof(volume));
        double t = Guard.NotNegative(time.Seconds, "s", nameof(time));
        return Pressure.FromPascals(PascalCubicMetresPerSecond * t / v);
    }

    /// <summary>Air of the shop that the leak lets in: the rate over the pressure of the air around.</summary>
    /// <param name="ambient">Pressure of the air around; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is out of range.</exception>
    public VolumeFlow FreeAir(Pressure ambient) =>
        VolumeFlow.FromCubicMetersPerSecond(PascalCubicMetresPerSecond / Guard.Positive(ambient.Pascals, "Pa", nameof(ambient)));
}
