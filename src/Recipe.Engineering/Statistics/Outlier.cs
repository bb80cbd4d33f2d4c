namespace Recipe.Engineering;

/// <summary>Values that do not belong to the others.</summary>
/// <remarks>
/// Source: F. E. Grubbs, Technometrics 11 (1969) 1-21, and NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1. The test is
/// repeated on what is left (1.3.5.17.3 tells why it finds one bad value surely, and several that hide each other not always).
/// </remarks>
public static class Outlier
{
    /// <summary>Fewest values among which one can be told apart.</summary>
    public const int Fewest = 4;

    /// <summary>Grubbs' statistic: the largest distance from the mean, in standard deviations.</summary>
    /// <param name="values">At least two values, not all the same.</param>
    /// <param name="index">Which value it is.</param>
    /// <returns>0 when all are the same.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than two values, or one is not finite.</exception>
    public static double Grubbs(IReadOnlyList<double> values, out int index)
    {
        (double mean, double deviation) = Moments.Of(values);
        index = 0;
        double largest = 0;
        for (int i = 0; i < values.Count; i++)
        {
            double distance = Math.Abs(values[i] - mean);
            if (distance > largest)
            {
                (largest, index) = (distance, i);
            }
        }

        return deviation > 0 ? largest / deviation : 0;
    }

    /// <summary>The statistic that values without an outlier exceed with a probability, looking at both sides.</summary>
    /// <param name="count">How many values; 3 or more.</param>
    /// <param name="risk">The probability; more than 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static double Critical(int count, double risk)
    {
        double n = Guard.AtLeast(count, 3, nameof(count));
        Guard.Between(risk, 1e-6, 1 - 1e-6, string.Empty, nameof(risk));
        double t = StudentT.Quantile(1 - (risk / (2 * n)), count - 2);
        return (n - 1) / Math.Sqrt(n) * Math.Sqrt(t * t / (n - 2 + (t * t)));
    }

    /// <summary>
    /// The places of values that do not belong to the others, in order: the test is repeated until it finds none, but never takes more
    /// than a quarter of them.
    /// </summary>
    /// <param name="values">The values, each finite.</param>
    /// <param name="risk">The probability that a clean set loses one; 0.01 when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the risk is out of range.</exception>
    public static IReadOnlyList<int> Find(IReadOnlyList<double> values, double risk = 0.01)
    {
        ArgumentNullException.ThrowIfNull(values);
        List<int> places = [.. Enumerable.Range(0, values.Count)];
        List<int> found = [];
        while (places.Count >= Fewest && found.Count < values.Count / 4)
        {
            double[] left = [.. places.Select(place => values[place])];
            if (Grubbs(left, out int worst) <= Critical(left.Length, risk))
            {
                break;
            }

            found.Add(places[worst]);
            places.RemoveAt(worst);
        }

        found.Sort();
        return found;
    }
}
