namespace Recipe.Engineering;

/// <summary>What a few measured values say of the value that they scatter about, and of the next one.</summary>
/// <remarks>
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2 (confidence limits for the mean) and 1.3.5.17.1 (Grubbs); the
/// interval for the next value adds its own scatter: half width t s sqrt(1 + 1/n) (the usual prediction interval; from memory).
/// Values are taken to scatter as a normal distribution does.
/// </remarks>
public sealed record Estimate
{
    /// <summary>Fewest values, outliers left out, from which anything is concluded.</summary>
    public const int Fewest = 5;

    private Estimate()
    {
    }

    /// <summary>How many values there were.</summary>
    public required int Given { get; init; }

    /// <summary>Places of values that do not belong to the others and were left out, in order.</summary>
    public required IReadOnlyList<int> Outliers { get; init; }

    /// <summary>How many values it rests on.</summary>
    public int Count => Given - Outliers.Count;

    /// <summary>Their mean.</summary>
    public required double Mean { get; init; }

    /// <summary>Their standard deviation.</summary>
    public required double Deviation { get; init; }

    /// <summary>Half the width of the interval that holds the true mean.</summary>
    public required double HalfWidth { get; init; }

    /// <summary>Half the width of the interval that holds the next value.</summary>
    public required double NextHalfWidth { get; init; }

    /// <summary>How often such intervals hold what they promise, 0 to 1.</summary>
    public required double Confidence { get; init; }

    /// <summary>Whether there are enough values to conclude anything.</summary>
    public bool IsEnough => Count >= Fewest;

    /// <summary>Estimates from values.</summary>
    /// <param name="values">Two values or more, each finite.</param>
    /// <param name="confidence">How often the intervals shall hold; more than 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than two values, or an input is out of range.</exception>
    public static Estimate From(IReadOnlyList<double> values, double confidence = 0.95)
    {
        ArgumentNullException.ThrowIfNull(values);
        Guard.AtLeast(values.Count, 2, nameof(values));
        Guard.Between(confidence, 0.01, 0.9999, string.Empty, nameof(confidence));
        IReadOnlyList<int> outliers = Outlier.Find(values);
        double[] kept = [.. values.Where((_, place) => !outliers.Contains(place))];
        (double mean, double deviation) = Moments.Of(kept);
        double t = StudentT.Quantile((1 + confidence) / 2, kept.Length - 1);
        return new Estimate
        {
            Given = values.Count,
            Outliers = outliers,
            Mean = mean,
            Deviation = deviation,
            HalfWidth = t * deviation / Math.Sqrt(kept.Length),
            NextHalfWidth = t * deviation * Math.Sqrt(1 + (1.0 / kept.Length)),
            Confidence = confidence,
        };
    }
}
