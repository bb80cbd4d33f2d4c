using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Viscosity of a mixed resin against the time since it was mixed. It never falls.</summary>
/// <remarks>
/// Between two points the logarithm of the viscosity goes straight, as a resin that doubles its viscosity in equal times has it. All
/// integrals are then closed forms. Viscosity depends on temperature above all: a curve holds for one temperature and pot.
/// </remarks>
public sealed class ViscosityCurve
{
    private readonly double[] _times;
    private readonly double[] _viscosities;
    private readonly double[] _fluidities;

    // Growth of the logarithm beyond the last point, 1/s; null where nothing is known there.
    private readonly double? _growth;

    private ViscosityCurve(double[] times, double[] viscosities, double? growth)
    {
        (_times, _viscosities, _growth) = (times, viscosities, growth);
        _fluidities = new double[_times.Length];
        for (int i = 1; i < _times.Length; i++)
        {
            double rate = Math.Log(_viscosities[i] / _viscosities[i - 1]) / (_times[i] - _times[i - 1]);
            _fluidities[i] = _fluidities[i - 1] + Fluidity(_viscosities[i - 1], rate, _times[i] - _times[i - 1]);
        }
    }

    /// <summary>Viscosity when mixed.</summary>
    public DynamicViscosity Start => DynamicViscosity.FromPascalSeconds(_viscosities[0]);

    /// <summary>Time up to which the curve is known, or null where it goes on for ever.</summary>
    public Duration? End => _growth is null ? Duration.FromSeconds(_times[^1]) : null;

    /// <summary>A viscosity that stays.</summary>
    /// <param name="viscosity">Viscosity; 1e-6 to 1e9 Pa s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The viscosity is out of range.</exception>
    public static ViscosityCurve Constant(DynamicViscosity viscosity) =>
        new([0], [FlowGuard.Viscosity(viscosity, nameof(viscosity))], 0);

    /// <summary>A viscosity that doubles in equal times, for ever.</summary>
    /// <param name="start">Viscosity when mixed; 1e-6 to 1e9 Pa s.</param>
    /// <param name="doubling">Time in which it doubles; 1e-9 to 1e12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static ViscosityCurve Doubling(DynamicViscosity start, Duration doubling) =>
        new([0], [FlowGuard.Viscosity(start, nameof(start))], Math.Log(2) / FlowGuard.PositiveTime(doubling, nameof(doubling)));

    /// <summary>A measured curve. It ends at its last point: what comes later is not guessed.</summary>
    /// <param name="points">Points in order of time, the first at time zero; at least two; times rise, viscosities do not fall.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range or order.</exception>
    /// <exception cref="ArgumentException">There are fewer than two points.</exception>
    public static ViscosityCurve Measured(IReadOnlyList<(Duration Time, DynamicViscosity Viscosity)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2)
        {
            throw new ArgumentException("A curve needs two points at least.", nameof(points));
        }

        double[] times = new double[points.Count];
        double[] viscosities = new double[points.Count];
        for (int i = 0; i < points.Count; i++)
        {
            double t = FlowGuard.Time(points[i].Time, nameof(points));
            double mu = FlowGuard.Viscosity(points[i].Viscosity, nameof(points));
            if (i == 0 ? t > 0 : t <= times[i - 1])
            {
                throw Guard.Refuse(t, "s", nameof(points), i == 0 ? "must start at time 0" : "must have rising times");
            }

            if (i > 0 && mu < viscosities[i - 1])
            {
                throw Guard.Refuse(mu, "Pa s", nameof(points), "must not fall in viscosity");
            }

            (times[i], viscosities[i]) = (t, mu);
        }

        return new ViscosityCurve(times, viscosities, null);
    }

    /// <summary>Samples a formula closely enough that integrals over it are right to about 1e-7.</summary>
    /// <param name="viscosity">The formula; it never falls and stays from 1e-6 to 1e9 Pa s.</param>
    /// <param name="end">Time up to which it is asked, before the gel point; 1e-9 to 1e12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input or a viscosity of the formula is out of range, or it falls.</exception>
    public static ViscosityCurve FromFormula(Func<Duration, DynamicViscosity> viscosity, Duration end)
    {
        ArgumentNullException.ThrowIfNull(viscosity);
        return Measured(ViscositySampling.Sample(viscosity, FlowGuard.PositiveTime(end, nameof(end))));
    }

    /// <summary>Viscosity at a time since mixing.</summary>
    /// <param name="time">Time since mixing; 0 up to <see cref="End"/>, at most 1e12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of range.</exception>
    public DynamicViscosity At(Duration time) => DynamicViscosity.FromPascalSeconds(ViscosityAt(Known(time, nameof(time))));

    /// <summary>First time since mixing at which the viscosity reaches a value, or null when the curve never shows it.</summary>
    /// <param name="viscosity">Viscosity; 1e-6 to 1e9 Pa s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The viscosity is out of range.</exception>
    public Duration? TimeToViscosity(DynamicViscosity viscosity)
    {
        double mu = FlowGuard.Viscosity(viscosity, nameof(viscosity));
        return TimeTo(mu) is { } t ? Duration.FromSeconds(t) : null;
    }

    /// <summary>
    /// Time from a moment until the viscosity has doubled, or null when the curve never shows it. An infusion is planned to end before
    /// (common practice, from memory).
    /// </summary>
    /// <param name="from">Time since mixing at which the feed is opened; default 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of range.</exception>
    public Duration? TimeToDouble(Duration from = default)
    {
        double start = Known(from, nameof(from));
        return TimeTo(2 * ViscosityAt(start)) is { } t ? Duration.FromSeconds(t - start) : null;
    }

    /// <summary>The curve of the same resin with its clock started anew at an age, so that small differences of great sums never arise.</summary>
    internal ViscosityCurve Aged(Duration age, string parameter)
    {
        double start = Known(age, parameter);
        int next = Index(_times, start) + 1;
        return start == 0
            ? this
            : new ViscosityCurve(
                [0, .. _times[next..].Select(t => t - start)], [ViscosityAt(start), .. _viscosities[next..]], _growth);
    }

    internal double Known(Duration time, string parameter)
    {
        double t = FlowGuard.Time(time, parameter);
        return _growth is null ? Guard.Between(t, 0, _times[^1], "s", parameter) : t;
    }

    internal double ViscosityAt(double time)
    {
        (int i, double rate) = Segment(Index(_times, time));

        // Resin long gone off: a number beyond any measure, but a number.
        return Math.Min(1e300, _viscosities[i] * Math.Exp(rate * (time - _times[i])));
    }

    /// <summary>Integral of time over viscosity from mixing to a time, 1/Pa.</summary>
    internal double FluidityAt(double time)
    {
        (int i, double rate) = Segment(Index(_times, time));
        return _fluidities[i] + Fluidity(_viscosities[i], rate, time - _times[i]);
    }

    /// <summary>Time at which the integral of time over viscosity has come to a value, or positive infinity when it never does.</summary>
    internal double TimeAtFluidity(double fluidity)
    {
        int index = Index(_fluidities, fluidity);
        if (index == _times.Length - 1 && _growth is null)
        {
            return fluidity == _fluidities[^1] ? _times[^1] : double.PositiveInfinity;
        }

        (int i, double rate) = Segment(index);
        double left = (fluidity - _fluidities[i]) * _viscosities[i];
        return rate * left < 1
            ? _times[i] + (rate == 0 ? left : -double.LogP1(-rate * left) / rate)
            : double.PositiveInfinity;
    }

    /// <summary>Last time that counts: the end of the curve, or positive infinity.</summary>
    internal double LastSecond => _growth is null ? _times[^1] : double.PositiveInfinity;

    /// <summary>Integral of time over viscosity from mixing until flow ends for good, 1/Pa; infinite for a viscosity that stays.</summary>
    internal double WholeFluidity => _growth switch
    {
        null => _fluidities[^1],
        0 => double.PositiveInfinity,
        { } rate => _fluidities[^1] + (1 / (_viscosities[^1] * rate)),
    };

    internal double? TimeTo(double viscosity)
    {
        if (viscosity <= _viscosities[0])
        {
            return 0;
        }

        // The first segment whose end is at least as thick.
        int i = Array.FindIndex(_viscosities, mu => mu >= viscosity) - 1;
        i = i < 0 ? _times.Length - 1 : i;
        if (i == _times.Length - 1 && _growth is not > 0)
        {
            return null;
        }

        double rate = Segment(i).Rate;
        return _times[i] + (Math.Log(viscosity / _viscosities[i]) / rate);
    }

    // Integral of dt/mu over a stretch in which mu grows as exp(rate t).
    private static double Fluidity(double viscosity, double rate, double time) =>
        (rate == 0 ? time : -double.ExpM1(-rate * time) / rate) / viscosity;

    private static int Index(double[] sorted, double value)
    {
        int found = Array.BinarySearch(sorted, value);
        return found >= 0 ? found : Math.Max(0, ~found - 1);
    }

    private (int Index, double Rate) Segment(int index)
    {
        if (index < _times.Length - 1)
        {
            return (index, Math.Log(_viscosities[index + 1] / _viscosities[index]) / (_times[index + 1] - _times[index]));
        }

        return (index, _growth ?? 0);
    }
}
