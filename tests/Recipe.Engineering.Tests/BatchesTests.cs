using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class BatchesTests
{
    private static readonly PotLifeReference HourOfLife =
        new(Duration.FromMinutes(60), Temperature.FromDegreesCelsius(23), Mass.FromGrams(100));

    private static BatchRequest Request(double totalGrams, double limitGrams, double layingMinutes) => new()
    {
        Total = Mass.FromGrams(totalGrams),
        PotLimit = Mass.FromGrams(limitGrams),
        LayingTime = Duration.FromMinutes(layingMinutes),
        PotLife = HourOfLife,
        Temperature = Temperature.FromDegreesCelsius(23),
        FractionOfLife = Ratio.FromPercent(50),
    };

    private static BatchesFound Found(BatchRequest request) => Assert.IsType<BatchesFound>(Batches.Split(request));

    private static BatchesImpossible Impossible(BatchRequest request) =>
        Assert.IsType<BatchesImpossible>(Batches.Split(request));

    [Fact]
    public void A_small_need_is_one_pot()
    {
        BatchesFound plan = Found(Request(92, 150, 25));
        Batch only = Assert.Single(plan.Batches);
        Digits.Close(92, only.Mass.Grams);
        Assert.Equal(BatchLimit.Need, plan.BoundBy);
        Digits.Close(30, only.UseWithin.Minutes);
        Assert.Equal(Duration.Zero, only.StartAfter);
    }

    [Fact]
    public void The_mass_limit_splits_into_equal_pots()
    {
        // 300 g at 100 g a pot is three pots, not four for the last bit of 0.3 / 0.1.
        BatchesFound plan = Found(Request(300, 100, 30));
        Assert.Equal(3, plan.Batches.Count);
        Assert.All(plan.Batches, batch => Digits.Close(100, batch.Mass.Grams));
        Assert.Equal(BatchLimit.PotLimit, plan.BoundBy);
        Digits.Close(20, plan.Batches[2].StartAfter.Minutes);
    }

    [Fact]
    public void The_pot_life_splits_too()
    {
        // By hand: 100 min of laying, half an hour of usable life for pots up to 150 g: 400 g need 4 pots of 25 min.
        BatchesFound plan = Found(Request(400, 1000, 100));
        Assert.Equal(4, plan.Batches.Count);
        Assert.Equal(BatchLimit.PotLife, plan.BoundBy);
        Digits.Close(120, plan.LargestPot.Grams);
        Digits.Close(25, plan.Batches[0].LayingTime.Minutes);
    }

    [Fact]
    public void A_large_pot_shortens_its_own_life()
    {
        // One kilogram in a deep cup lives 0.42 of an hour: 25.2 min, half of it 12.6 min. 20 min of laying do not fit,
        // though they would fit the half hour of a small pot; two of 500 g, 0.60 of an hour, have 18 min for 10 min each.
        BatchesFound plan = Found(Request(1000, 2000, 20));
        Assert.Equal(2, plan.Batches.Count);
        Digits.Close(36, plan.Batches[0].Life.Minutes);
        Assert.True(plan.Assumptions.HasFlag(PotLifeAssumptions.BatchMassCurve));

        BatchesFound tray = Found(Request(1000, 2000, 18) with { Shape = PotShape.ShallowTray });
        Assert.Single(tray.Batches);
    }

    [Fact]
    public void Heat_takes_more_pots()
    {
        BatchRequest cool = Request(400, 1000, 100);
        BatchRequest hot = cool with { Temperature = Temperature.FromDegreesCelsius(33) };
        Assert.Equal(4, Found(cool).Batches.Count);
        Assert.Equal(7, Found(hot).Batches.Count);
    }

    [Fact]
    public void Full_pots_come_first_and_the_rest_last()
    {
        BatchRequest request = Request(250, 100, 30) with { Style = BatchStyle.FullPotsThenRest };
        BatchesFound plan = Found(request);
        Assert.Equal(3, plan.Batches.Count);
        Digits.Close(100, plan.Batches[0].Mass.Grams);
        Digits.Close(100, plan.Batches[1].Mass.Grams);
        Digits.Close(50, plan.Batches[2].Mass.Grams);

        // A rest that is too small to weigh is evened out with the pot before it.
        BatchesFound evened = Found(request with { SmallestPot = Mass.FromGrams(60) });
        Digits.Close(100, evened.Batches[0].Mass.Grams);
        Digits.Close(75, evened.Batches[1].Mass.Grams);
        Digits.Close(75, evened.Batches[2].Mass.Grams);

        BatchesFound equal = Found(request with { SmallestPot = Mass.FromGrams(80) });
        Assert.All(equal.Batches, batch => Digits.Close(250.0 / 3, batch.Mass.Grams));
    }

    [Fact]
    public void What_cannot_be_done_says_why()
    {
        BatchesImpossible mixing = Impossible(Request(100, 100, 10) with { MixingTime = Duration.FromMinutes(31) });
        Assert.Equal(BatchObstacle.LifeShorterThanMixing, mixing.Obstacle);
        Assert.Equal(0, mixing.PotsNeeded);

        BatchesImpossible tiny = Impossible(Request(12, 100, 5) with { SmallestPot = Mass.FromGrams(25) });
        Assert.Equal(BatchObstacle.PotBelowSmallest, tiny.Obstacle);

        BatchesImpossible quick = Impossible(Request(400, 1000, 3000) with { SmallestPot = Mass.FromGrams(25) });
        Assert.Equal(BatchObstacle.PotBelowSmallest, quick.Obstacle);
        Digits.Close(4, quick.LargestPot.Grams);
        Assert.Equal(100, quick.PotsNeeded);

        BatchesImpossible many = Impossible(Request(400, 1000, 3000));
        Assert.Equal(BatchObstacle.TooManyPots, many.Obstacle);
    }

    [Fact]
    public void Mixing_counts_against_the_pot()
    {
        // 30 min usable, 6 of them for mixing: 24 min of laying, a pot of 96 g out of 400 g in 100 min: 5 pots.
        BatchesFound plan = Found(Request(400, 1000, 100) with { MixingTime = Duration.FromMinutes(6) });
        Assert.Equal(5, plan.Batches.Count);
        Digits.Close(96, plan.LargestPot.Grams);
        Digits.Close(26, plan.Batches[1].StartAfter.Minutes);
    }

    [Fact]
    public void Every_split_adds_up_fits_and_is_the_smallest()
    {
        Gen.Select(
            Gen.Select(Gen.Double[5, 5000], Gen.Double[20, 3000], Gen.Double[0, 300]),
            Gen.Select(Gen.Double[5, 40], Gen.Double[0, 10], Gen.Bool, Gen.Bool)).Sample(
            (need, conditions) =>
            {
                (double total, double limit, double laying) = need;
                (double celsius, double mixing, bool tray, bool full) = conditions;
                BatchRequest request = Request(total, limit, laying) with
                {
                    Temperature = Temperature.FromDegreesCelsius(celsius),
                    MixingTime = Duration.FromMinutes(mixing),
                    Shape = tray ? PotShape.ShallowTray : PotShape.DeepCup,
                    Style = full ? BatchStyle.FullPotsThenRest : BatchStyle.Equal,
                };
                BatchSplit split = Batches.Split(request);
                if (split is BatchesImpossible impossible)
                {
                    Assert.NotEqual(BatchObstacle.PotBelowSmallest, impossible.Obstacle);
                    return;
                }

                IReadOnlyList<Batch> pots = ((BatchesFound)split).Batches;
                Digits.Close(total, pots.Sum(pot => pot.Mass.Grams));
                Digits.Close(laying + 1e-9, pots.Sum(pot => pot.LayingTime.Minutes) + 1e-9);
                Assert.All(pots, pot => Assert.True(Allowed(request, pot.Mass.Grams)));
                if (pots.Count > 1)
                {
                    // One pot fewer is over the limit by more than rounding, were it by less than a scale shows.
                    Assert.False(Allowed(request, total / (pots.Count - 1) * (1 - 1e-10), 1));
                }
            },
            iter: 2000);
    }

    [Fact]
    public void The_same_request_gives_the_same_split()
    {
        BatchRequest request = Request(733, 180, 95) with { Temperature = Temperature.FromDegreesCelsius(27.5) };
        Assert.Equal(Found(request).Batches, Found(request).Batches);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Batches.Split(Request(0, 100, 10)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Batches.Split(Request(100, 0, 10)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Batches.Split(Request(100, 100, 10) with { FractionOfLife = Ratio.Zero }));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Batches.Split(Request(100, 100, 10) with { FractionOfLife = Ratio.FromPercent(101) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Batches.Split(Request(100, 100, 10) with { MostPots = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Batches.Split(Request(100, 100, 10) with { Temperature = Temperature.FromDegreesCelsius(99) }));
    }

    // The two limits of a pot, worked out again from the request.
    private static bool Allowed(BatchRequest request, double grams, double slack = 1 + 1e-6)
    {
        Mass mass = Mass.FromGrams(grams);
        double life = PotLife.At(request.PotLife, request.Temperature, mass, request.Shape).Life.Minutes;
        double needed = request.MixingTime.Minutes + (request.LayingTime.Minutes * grams / request.Total.Grams);
        return grams <= request.PotLimit.Grams * slack
            && needed <= life * request.FractionOfLife.DecimalFractions * slack;
    }
}
