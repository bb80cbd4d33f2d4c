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
    /// Splits the need into the smallest number of pots, each no heavier than the limit and laid within the allowed share of
    /// its own life at today's temperature. The same request always gives the same split.
    /// </summary>
    /// <param name="request">Need, limits and conditions.</param>
    /// <returns><see cref="BatchesFound"/>, or <see cref="BatchesImpossible"/> with the reason.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the request is out of its range.</exception>
    public static BatchSplit Split(BatchRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        double total = Guard.Positive(request.Total.Kilograms, "kg", nameof(request.Total));
        double limit = Guard.Positive(request.PotLimit.Kilograms, "kg", nameof(request.PotLimit));
        double smallest = Guard.NotNegative(request.SmallestPot.Kilograms, "kg", nameof(request.SmallestPot));
        Guard.NotNegative(request.LayingTime.Seconds, "s", nameof(request.LayingTime));
        Guard.NotNegative(request.MixingTime.Seconds, "s", nameof(request.MixingTime));
        Guard.Positive(request.FractionOfLife.DecimalFractions, string.Empty, nameof(request.FractionOfLife));
        Guard.Between(request.FractionOfLife.Percent, 0, 100, "%", nameof(request.FractionOfLife));
        Guard.AtLeast(request.MostPots, 1, nameof(request.MostPots));

        double largest = LargestPot(request, Math.Min(total, limit));
        Mass largestMass = Mass.FromKilograms(largest);
        if (largest <= 0)
        {
            return new BatchesImpossible(BatchObstacle.LifeShorterThanMixing, largestMass, 0);
        }

        double exact = Math.Max(1, Math.Ceiling(total / largest * (1 - RelativeSlack)));
        int pots = exact < int.MaxValue ? (int)exact : int.MaxValue;
        if (total / exact < smallest * (1 - RelativeSlack))
        {
            return new BatchesImpossible(BatchObstacle.PotBelowSmallest, largestMass, pots);
        }

        if (pots > request.MostPots)
        {
            return new BatchesImpossible(BatchObstacle.TooManyPots, largestMass, pots);
        }

        double[] masses = Masses(total, largest, smallest, pots, request.Style);
        BatchLimit bound = pots == 1 ? BatchLimit.Need
            : largest < limit ? BatchLimit.PotLife
            : BatchLimit.PotLimit;
        return Found(request, masses, largestMass, bound);
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
        double needed = request.MixingTime.Seconds + Laying(request, mass);
        return needed <= life * request.FractionOfLife.DecimalFractions;
    }

    private static double Laying(BatchRequest request, double mass) =>
        request.LayingTime.Seconds * mass / request.Total.Kilograms;

    private static PotLifeEstimate Life(BatchRequest request, double mass) =>
        PotLife.At(request.PotLife, request.Temperature, Mass.FromKilograms(mass), request.Shape);

    private static double[] Masses(double total, double largest, double smallest, int pots, BatchStyle style)
    {
        double[] masses = new double[pots];
        Array.Fill(masses, total / pots);
        double rest = total - ((pots - 1) * largest);

        // A rest too small to weigh is evened out with the pot before it, or failing that over all pots.
        double last = rest >= smallest ? rest : (largest + rest) / 2;
        if (style == BatchStyle.Equal || pots == 1 || last < smallest)
        {
            return masses;
        }

        Array.Fill(masses, largest);
        masses[^2] = rest >= smallest ? largest : last;
        masses[^1] = last;
        return masses;
    }

    private static BatchesFound Found(BatchRequest request, double[] masses, Mass largest, BatchLimit bound)
    {
        PotLifeAssumptions assumptions = PotLifeAssumptions.None;
        List<Batch> batches = new(masses.Length);
        double clock = 0;
        foreach (double mass in masses)
        {
            PotLifeEstimate life = Life(request, mass);
            assumptions |= life.Assumptions;
            double laying = Laying(request, mass);
            batches.Add(new Batch(
                batches.Count + 1,
                Mass.FromKilograms(mass),
                Duration.FromSeconds(clock),
                Duration.FromSeconds(laying),
                life.Life,
                Duration.FromSeconds(life.Life.Seconds * request.FractionOfLife.DecimalFractions)));
            clock += request.MixingTime.Seconds + laying;
        }

        return new BatchesFound(batches.AsReadOnly(), largest, bound, assumptions);
    }
}
