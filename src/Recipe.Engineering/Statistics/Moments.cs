namespace Recipe.Engineering;

/// <summary>Mean and scatter of a few values.</summary>
public static class Moments
{
    /// <summary>Mean, and standard deviation with n less one below the line; the deviation of one value is 0.</summary>
    /// <param name="values">At least one value, each finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is none, or one is not finite.</exception>
    /// <remarks>In two passes, so that values that differ little lose no digits.</remarks>
    public static (double Mean, double Deviation) Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        Guard.AtLeast(values.Count, 1, nameof(values));
        double mean = values.Sum(v => Guard.Between(v, double.MinValue, double.MaxValue, string.Empty, nameof(values))) / values.Count;
        double squares = values.Sum(v => (v - mean) * (v - mean));
        return (mean, values.Count > 1 ? Math.Sqrt(squares / (values.Count - 1)) : 0);
    }
}
