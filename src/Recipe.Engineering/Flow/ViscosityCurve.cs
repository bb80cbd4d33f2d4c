using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Viscosity of a mixed resin against the time since it was mixed: one that doubles in equal times, or one that stays.</summary>
/// <remarks>
/// The integral of <c>dt/mu</c> is then a closed form. Viscosity depends on temperature above all: a curve holds for one temperature and pot.
/// </remarks>
public sealed class ViscosityCurve
{
    private readonly double _start;

    // Growth of the logarithm, 1/s.
    private readonly double _growth;

    private ViscosityCurve(double start, double growth) => (_start, _growth) = (start, growth);

    /// <summary>Viscosity when mixed.</summary>
    public DynamicViscosity Start => DynamicViscosity.FromPascalSeconds(_start);

    /// <summary>
    /// Time in which it doubles, whenever that begins; null for a viscosity that stays. An infusion is planned to end within it (common
    /// practice, from memory).
    /// </summary>
    public Duration? DoublesIn => _growth > 0 ? Duration.FromSeconds(Math.Log(2) / _growth) : null;

    /// <summary>A viscosity that stays.</summary>
    /// <param name="viscosity">Viscosity; 1e-6 to 1e9 Pa s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The viscosity is out of range.</exception>
    public static ViscosityCurve Constant(DynamicViscosity viscosity) => new(FlowGuard.Viscosity(viscosity, nameof(viscosity)), 0);

    /// <summary>A viscosity that doubles in equal times, for ever.</summary>
    /// <param name="start">Viscosity when mixed; 1e-6 to 1e9 Pa s.</param>
    /// <param name="doubling">Time in which it doubles; 1e-9 to 1e12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static ViscosityCurve Doubling(DynamicViscosity start, Duration doubling) =>
        new(FlowGuard.Viscosity(start, nameof(start)), Math.Log(2) / FlowGuard.PositiveTime(doubling, nameof(doubling)));

    /// <summary>Viscosity at a time since mixing.</summary>
    /// <param name="time">Time since mixing; 0 to 1e12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of range.</exception>
    public DynamicViscosity At(Duration time) => DynamicViscosity.FromPascalSeconds(After(FlowGuard.Time(time, nameof(time))));

    /// <summary>The curve of the same resin with its clock started anew at an age, so that small differences of great sums never arise.</summary>
    internal ViscosityCurve Aged(Duration age, string parameter) => new(After(FlowGuard.Time(age, parameter)), _growth);

    /// <summary>Integral of time over viscosity from mixing to a time, 1/Pa.</summary>
    internal double FluidityAt(double time) => (_growth == 0 ? time : -SmallNumbers.ExpM1(-_growth * time) / _growth) / _start;

    /// <summary>Time at which the integral of time over viscosity has come to a value, or positive infinity when it never does.</summary>
    internal double TimeAtFluidity(double fluidity)
    {
        double plain = fluidity * _start;
        return _growth * plain >= 1 ? double.PositiveInfinity
            : _growth == 0 ? plain
            : -SmallNumbers.LogP1(-_growth * plain) / _growth;
    }

    /// <summary>Integral of time over viscosity from mixing until flow ends for good, 1/Pa; infinite for a viscosity that stays.</summary>
    internal double WholeFluidity => 1 / (_start * _growth);

    // Resin long gone off: a number beyond any measure, but a number.
    private double After(double time) => Math.Min(1e300, _start * Math.Exp(_growth * time));
}
