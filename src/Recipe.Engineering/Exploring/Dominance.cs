namespace Recipe.Engineering;

/// <summary>
/// Dominance in the sense of Pareto (Manuale di economia politica, 1906; the definition as in K. Deb, Multi-Objective Optimization using
/// Evolutionary Algorithms, Wiley 2001, definition 2.5): one point dominates another when it is nowhere worse and somewhere better.
/// Less is better everywhere here.
/// </summary>
public static class Dominance
{
    // 16 of the 52 bits behind the point are dropped: values closer than one part in 7e10 are one value.
    private const int DroppedBits = 16;

    /// <summary>Whether the first dominates the second.</summary>
    /// <param name="first">Values of the first; less is better.</param>
    /// <param name="second">As many values of the second.</param>
    /// <exception cref="ArgumentException">They have not as many values.</exception>
    public static bool Dominates(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        if (first.Length != second.Length)
        {
            throw new ArgumentException("Both points must have as many values.", nameof(second));
        }

        bool better = false;
        for (int i = 0; i < first.Length; i++)
        {
            if (first[i] > second[i])
            {
                return false;
            }

            better |= first[i] < second[i];
        }

        return better;
    }

    /// <summary>
    /// The value to ten digits, so that sums that differ only by the order of their terms are equal. The same value always gives the same
    /// result, and greater values never give smaller results.
    /// </summary>
    public static double Snap(double value)
    {
        const long half = 1L << (DroppedBits - 1);
        const long mask = ~((1L << DroppedBits) - 1);
        if (!double.IsFinite(value))
        {
            return value;
        }

        // On the size alone, so that a value and its negative stay each other's negative.
        double size = BitConverter.Int64BitsToDouble((BitConverter.DoubleToInt64Bits(Math.Abs(value)) + half) & mask);
        return !double.IsFinite(size) ? value : value < 0 ? -size : size;
    }
}
