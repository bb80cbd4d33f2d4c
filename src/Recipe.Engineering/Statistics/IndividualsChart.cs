namespace Recipe.Engineering;

/// <summary>What a point of a run chart says that chance hardly does.</summary>
public enum ChartSignal
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It lies beyond a limit.</summary>
    BeyondLimit,

    /// <summary>It is the eighth in a row on one side of the mean.</summary>
    OneSide,

    /// <summary>It is the sixth in a row that moves the same way.</summary>
    Drift,
}

/// <summary>A run chart of single values with limits that they keep as long as nothing changes (Shewhart's chart of individuals).</summary>
/// <remarks>
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: limits at the mean plus and minus 3 times the mean moving range
/// over 1.128; signals after the Western Electric rules, 6.3.2 (eight on one side; six in a row that rise or fall).
/// </remarks>
public sealed record IndividualsChart
{
    /// <summary>Fewest values from which limits are drawn: with fewer they say more about luck than about the work.</summary>
    public const int Fewest = 8;

    // Mean range of two values of a normal distribution, in standard deviations.
    private const double RangeOfTwo = 1.128;
    private const int Side = 8;
    private const int Run = 6;

    private IndividualsChart()
    {
    }

    /// <summary>The values in the order in which they came.</summary>
    public required IReadOnlyList<double> Values { get; init; }

    /// <summary>Their mean.</summary>
    public required double Mean { get; init; }

    /// <summary>Mean difference from one value to the next.</summary>
    public required double MovingRange { get; init; }

    /// <summary>Lower limit; may lie below zero.</summary>
    public double Low => Mean - (3 * MovingRange / RangeOfTwo);

    /// <summary>Upper limit.</summary>
    public double High => Mean + (3 * MovingRange / RangeOfTwo);

    /// <summary>Whether there are enough values for the limits to mean anything.</summary>
    public bool IsEnough => Values.Count >= Fewest;

    /// <summary>What each value says; none where there are too few.</summary>
    public required IReadOnlyList<ChartSignal> Signals { get; init; }

    /// <summary>Draws up the chart.</summary>
    /// <param name="values">Two values or more, each finite, in the order in which they came.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than two values, or one is not finite.</exception>
    public static IndividualsChart From(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        Guard.AtLeast(values.Count, 2, nameof(values));
        (double mean, _) = Moments.Of(values);
        double range = Enumerable.Range(1, values.Count - 1).Average(i => Math.Abs(values[i] - values[i - 1]));
        IndividualsChart chart = new() { Values = values, Mean = mean, MovingRange = range, Signals = [] };
        return chart with { Signals = [.. values.Select((_, i) => chart.IsEnough ? chart.SignalAt(i) : ChartSignal.None)] };
    }

    private ChartSignal SignalAt(int i) =>
        Values[i] > High || Values[i] < Low ? ChartSignal.BeyondLimit
        : i + 1 >= Side && (Last(i, Side).All(v => v > Mean) || Last(i, Side).All(v => v < Mean)) ? ChartSignal.OneSide
        : i + 1 >= Run && (Steps(i).All(step => step > 0) || Steps(i).All(step => step < 0)) ? ChartSignal.Drift
        : ChartSignal.None;

    private IEnumerable<double> Last(int i, int count) => Values.Take(i + 1).TakeLast(count);

    private IEnumerable<double> Steps(int i) => Enumerable.Range(i - Run + 2, Run - 1).Select(at => Values[at] - Values[at - 1]);
}
