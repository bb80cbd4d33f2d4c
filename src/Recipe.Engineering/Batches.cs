using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Splits the resin to mix into pots that can be weighed, and laid before they go off.</summary>
/// <remarks>
/// A pot of mass m takes <c>mixing + laying * m / total</c> and may take <c>fraction * life(m)</c>. The left side grows with m
/// and the right side does not, so there is one largest pot, found by halving the interval.
/// </remarks>
public static class Batches
{
    // Rounding must not cost a pot: three pots of 100 g are three, whatever 0.3 / 0.1 comes to.
    private const double RelativeSlack = 1e-9;

    /// <summary>
    /// Splits the need into the smallest number of like pots, each no heavier than the limit and laid within the allowed share of its own
    /// life at today's temperature.
    /// </summary>
    /// <param name="request">Need, limits and conditions.</param>
    /// <returns>The split; null when no pot, however small, is used up in time, or more pots than allowed would be needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the request is out of its range.</exception>
    public static BatchSplit? Split(BatchRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        double total = Guard.Positive(request.Total.Kilograms, "kg", nameof(request.Total));
        double limit = Guard.Positive(request.PotLimit.Kilograms, "kg", nameof(request.PotLimit));
        Guard.NotNegative(request.LayingTime.Seconds, "s", nameof(request.LayingTime));
        Guard.NotNegative(request.MixingTime.Seconds, "s", nameof(request.MixingTime));
        Guard.Positive(request.FractionOfLife.DecimalFractions, string.Empty, nameof(request.FractionOfLife));
        Guard.Between(request.FractionOfLife.Percent, 0, 100, "%", nameof(request.FractionOfLife));
        Guard.AtLeast(request.MostPots, 1, nameof(request.MostPots));

        double largest = LargestPot(request, Math.Min(total, limit));
        double pots = largest > 0 ? Math.Max(1, Math.Ceiling(total / largest * (1 - RelativeSlack))) : double.PositiveInfinity;
        if (pots > request.MostPots)
        {
            return null;
        }

        BatchLimit bound = pots == 1 ? BatchLimit.Need
            : largest < limit ? BatchLimit.PotLife
            : BatchLimit.PotLimit;
        return new BatchSplit((int)pots, Mass.FromKilograms(largest), bound, Life(request, total / pots).Assumptions);
    }

    private static double LargestPot(BatchRequest request, double cap)
    {
        if (Fits(request, cap))
        {
            return cap;
        }

        double low = 0;
        double high = cap;
        for (int step = 0; step < 200 && high - low > 1e-13 * cap; step++)
        {
            double middle = (low + high) / 2;
            if (Fits(request, middle))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private static bool Fits(BatchRequest request, double mass)
    {
        double life = Life(request, mass).Life.Seconds;
        double laying = request.LayingTime.Seconds * mass / request.Total.Kilograms;
        double needed = request.MixingTime.Seconds + laying;
        return needed <= life * request.FractionOfLife.DecimalFractions;
    }

    private static PotLifeEstimate Life(BatchRequest request, double mass) =>
        PotLife.At(request.PotLife, request.Temperature, Mass.FromKilograms(mass), request.Shape);
}
