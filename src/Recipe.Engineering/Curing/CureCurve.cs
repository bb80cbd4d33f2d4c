using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Degree of cure and temperature over the time of one cure, as <see cref="CureSimulation"/> works it out. Immutable.</summary>
public sealed class CureCurve
{
    // Questions about the first moment of something look at this many places in each step of the solver.
    private const int Looks = 4;

    private readonly List<CureStep> _steps;
    private readonly double _start;
    private readonly double _last;

    internal CureCurve(List<CureStep> steps, double start, double end, double lastKelvin, DiBenedetto? curve)
    {
        _steps = steps;
        _start = start;
        _last = lastKelvin;
        Curve = curve;
        FinalDegree = Ratio.FromDecimalFractions(end);
        Vitrification = curve is null ? null : Time(FirstWhen((a, kelvin) => curve.KelvinAt(a) >= kelvin));
    }

    /// <summary>Time from the start to the end.</summary>
    public Duration Total => Duration.FromSeconds(End);

    /// <summary>Degree of cure at the end.</summary>
    public Ratio FinalDegree { get; }

    /// <summary>
    /// When the glass transition first overtakes the temperature, so that the resin turns to glass; null when it never does, or when the
    /// glass transition is not known.
    /// </summary>
    public Duration? Vitrification { get; }

    /// <summary>Glass transition over the degree of cure; null when it is not known.</summary>
    public DiBenedetto? Curve { get; }

    private double End => _steps.Count == 0 ? 0 : _steps[^1].End;

    /// <summary>Degree of cure at a time.</summary>
    /// <param name="time">Time from the start; zero to <see cref="Total"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside the cure: what happens after it was not computed.</exception>
    public Ratio DegreeAt(Duration time) => Ratio.FromDecimalFractions(At(time, nameof(time)).Degree);

    /// <summary>Temperature at a time; where it jumps, the one after the jump.</summary>
    /// <param name="time">As for the degree.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside the cure.</exception>
    public Temperature TemperatureAt(Duration time) => Temperature.FromKelvins(At(time, nameof(time)).Kelvin);

    /// <summary>Glass transition at a time; null when it is not known.</summary>
    /// <param name="time">As for the degree.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside the cure.</exception>
    public Temperature? GlassTransitionAt(Duration time)
    {
        double degree = At(time, nameof(time)).Degree;
        return Curve is null ? null : Temperature.FromKelvins(Curve.KelvinAt(degree));
    }

    /// <summary>First time at which a degree of cure is reached; null when the cure ends before it.</summary>
    /// <param name="degree">Degree of cure; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The degree is out of range.</exception>
    public Duration? TimeTo(Ratio degree)
    {
        double a = CureGuard.Degree(degree, nameof(degree));
        if (a <= _start)
        {
            return Duration.Zero;
        }

        int low = 0;
        int high = _steps.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (_steps[middle].ToDegree < a)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low == _steps.Count ? null : Duration.FromSeconds(_steps[low].TimeTo(a));
    }

    /// <summary>First time in s, not before another, at which degree and kelvin fulfil a condition; null when they never do.</summary>
    internal double? FirstWhen(Func<double, double, bool> condition, double from = 0)
    {
        if (_steps.Count == 0)
        {
            return condition(_start, _last) ? 0 : null;
        }

        foreach (CureStep step in _steps)
        {
            if (step.End < from)
            {
                continue;
            }

            double before = Math.Max(from, step.Start);
            if (condition(step.DegreeAt(before), step.Piece.At(before)))
            {
                return before;
            }

            double rest = step.End - before;
            for (int i = 1; i <= Looks; i++)
            {
                double time = i == Looks ? step.End : step.End - (rest * (Looks - i) / Looks);
                if (condition(step.DegreeAt(time), step.Piece.At(time)))
                {
                    return Close(step, before, time, condition);
                }

                before = time;
            }
        }

        return null;
    }

    /// <summary>The least of a function of degree and kelvin, and its time in s; looked at where the solver stepped, and between.</summary>
    internal (double Value, double Time) Least(Func<double, double, double> function)
    {
        (double Value, double Time) least = (function(_start, _steps.Count == 0 ? _last : _steps[0].Piece.From), 0);
        foreach (CureStep step in _steps)
        {
            for (int i = 0; i <= Looks; i++)
            {
                double time = step.Start + ((step.End - step.Start) * i / Looks);
                double value = function(step.DegreeAt(time), step.Piece.At(time));
                if (value < least.Value)
                {
                    least = (value, time);
                }
            }
        }

        return least;
    }

    internal static Duration? Time(double? seconds) => seconds is { } s ? Duration.FromSeconds(s) : null;

    private static double Close(in CureStep step, double low, double high, Func<double, double, bool> condition)
    {
        for (int i = 0; i < 50 && high - low > 1e-6; i++)
        {
            double middle = (low + high) / 2;
            if (condition(step.DegreeAt(middle), step.Piece.At(middle)))
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return high;
    }

    private (double Degree, double Kelvin) At(Duration time, string parameter) =>
        At(Guard.Between(time.Seconds, 0, End + 1e-6, "s", parameter));

    private (double Degree, double Kelvin) At(double time)
    {
        if (_steps.Count == 0 || time >= End)
        {
            return (FinalDegree.DecimalFractions, _last);
        }

        int low = 0;
        int high = _steps.Count - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (_steps[middle].End <= time)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return (_steps[low].DegreeAt(time), _steps[low].Piece.At(time));
    }
}
