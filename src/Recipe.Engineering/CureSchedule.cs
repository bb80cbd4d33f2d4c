using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// The set temperature over time of a cure: straight pieces, one for each step. Geometry only; what the resin makes of it
/// is another calculation.
/// </summary>
public sealed class CureSchedule
{
    private const double AbsoluteZero = -273.15;

    private CureSchedule(Temperature start, IReadOnlyList<ScheduleSegment> segments)
    {
        Start = start;
        Segments = segments;
    }

    /// <summary>Temperature before the first step.</summary>
    public Temperature Start { get; }

    /// <summary>One straight piece for each step, in order.</summary>
    public IReadOnlyList<ScheduleSegment> Segments { get; }

    /// <summary>Time from the start to the end of the last step.</summary>
    public Duration Total => Segments.Count == 0 ? Duration.Zero : Segments[^1].End;

    /// <summary>Highest temperature, the start included.</summary>
    public Temperature Peak
    {
        get
        {
            double peak = Start.DegreesCelsius;
            foreach (ScheduleSegment segment in Segments)
            {
                peak = Math.Max(peak, Math.Max(segment.From.DegreesCelsius, segment.To.DegreesCelsius));
            }

            return Temperature.FromDegreesCelsius(peak);
        }
    }

    /// <summary>Works out the straight pieces.</summary>
    /// <param name="start">Temperature before the first step; above absolute zero.</param>
    /// <param name="steps">Steps in order; none gives an empty schedule.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A time is negative, a rate is not greater than zero, a temperature is not above absolute zero, or a cooling step ends
    /// above the temperature it starts from.
    /// </exception>
    public static CureSchedule Create(Temperature start, IReadOnlyList<ScheduleStep> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        List<ScheduleSegment> segments = new(steps.Count);
        double clock = 0;
        double now = Celsius(start, nameof(start));
        foreach (ScheduleStep step in steps)
        {
            (double from, double to, double lasts) = step switch
            {
                HoldStep hold => Hold(hold),
                RampStep ramp => Change(now, ramp.To, ramp.Rate),
                CoolStep cool => Cool(now, cool),
                _ => throw new ArgumentException("Unknown kind of step.", nameof(steps)),
            };
            segments.Add(new ScheduleSegment(
                step,
                Duration.FromSeconds(clock),
                Duration.FromSeconds(lasts),
                Temperature.FromDegreesCelsius(from),
                Temperature.FromDegreesCelsius(to)));
            clock += lasts;
            now = to;
        }

        return new CureSchedule(start, segments.AsReadOnly());
    }

    /// <summary>
    /// Set temperature at a time. Where one step hands over to the next, the next one's; after the end, the last one's.
    /// </summary>
    /// <param name="time">Time from the start; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public Temperature TemperatureAt(Duration time)
    {
        double t = Guard.NotNegative(time.Seconds, "s", nameof(time));
        Temperature last = Start;
        foreach (ScheduleSegment segment in Segments)
        {
            double into = t - segment.Start.Seconds;
            double lasts = segment.Lasts.Seconds;
            if (into >= 0 && into < lasts)
            {
                double from = segment.From.DegreesCelsius;
                double change = segment.To.DegreesCelsius - from;
                return Temperature.FromDegreesCelsius(from + (change * into / lasts));
            }

            last = segment.To;
        }

        return last;
    }

    /// <summary>Time at one temperature that a straight piece of a cure is worth: each moment counts twice as much for each 10 K more.</summary>
    /// <param name="lasts">How long the piece lasts; zero or more.</param>
    /// <param name="from">Temperature at its start; above absolute zero.</param>
    /// <param name="to">Temperature at its end; above absolute zero.</param>
    /// <param name="at">The temperature that the answer is given at; above absolute zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: common practice for amine-cured resins; a ramp is integrated exactly.</remarks>
    public static Duration Worth(Duration lasts, Temperature from, Temperature to, Temperature at)
    {
        double seconds = Guard.NotNegative(lasts.Seconds, "s", nameof(lasts));
        (double speed, double turn) = Pace(Celsius(from, nameof(from)), Celsius(to, nameof(to)), Celsius(at, nameof(at)));
        return Duration.FromSeconds(seconds * speed * (turn == 0 ? 1 : SmallNumbers.ExpM1(turn) / turn));
    }

    /// <summary>When the schedule is worth a time at one temperature, each piece as <see cref="Worth"/> has it.</summary>
    /// <param name="time">The time, such as the demould time of a data sheet; zero or more.</param>
    /// <param name="at">The temperature that it is given at; above absolute zero.</param>
    /// <returns>Time from the start, or null when the schedule ends before.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public Duration? TimeWorth(Duration time, Temperature at)
    {
        double left = Guard.NotNegative(time.Seconds, "s", nameof(time));
        double sheet = Celsius(at, nameof(at));
        foreach (ScheduleSegment segment in Segments)
        {
            double counts = Worth(segment.Lasts, segment.From, segment.To, at).Seconds;
            if (counts >= left)
            {
                (double speed, double turn) = Pace(segment.From.DegreesCelsius, segment.To.DegreesCelsius, sheet);
                double lasts = segment.Lasts.Seconds;
                double share = left <= 0 ? 0 : left / (lasts * speed);
                return Duration.FromSeconds(segment.Start.Seconds + (lasts * (turn == 0 ? share : SmallNumbers.LogP1(turn * share) / turn)));
            }

            left -= counts;
        }

        return null;
    }

    // At the share x of a straight piece the cure goes exp(turn x) times as fast as at its start, and there speed times as fast as at the sheet's temperature.
    private static (double Speed, double Turn) Pace(double from, double to, double sheet) =>
        (Math.Pow(2, (from - sheet) / 10), (to - from) / 10 * Math.Log(2));

    private static (double From, double To, double Lasts) Hold(HoldStep hold)
    {
        double at = Celsius(hold.At, nameof(hold.At));
        return (at, at, Guard.NotNegative(hold.For.Seconds, "s", nameof(hold.For)));
    }

    private static (double From, double To, double Lasts) Cool(double now, CoolStep cool)
    {
        double to = Celsius(cool.To, nameof(cool.To));
        return to <= now + 1e-9
            ? Change(now, cool.To, cool.Rate)
            : throw Guard.Refuse(to, "degC", nameof(cool.To), "must not be above the temperature before it");
    }

    private static (double From, double To, double Lasts) Change(
        double now, Temperature target, TemperatureChangeRate rate)
    {
        double to = Celsius(target, nameof(target));
        double perSecond = Guard.Positive(rate.DegreesCelsiusPerSecond, "K/s", nameof(rate));
        return (now, to, Math.Abs(to - now) / perSecond);
    }

    private static double Celsius(Temperature temperature, string parameter)
    {
        double celsius = temperature.DegreesCelsius;
        return celsius > AbsoluteZero
            ? celsius
            : throw Guard.Refuse(celsius, "degC", parameter, "must be above absolute zero");
    }
}
