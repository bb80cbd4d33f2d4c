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
        MostPots = 99,
    };

    private static BatchSplit Found(BatchRequest request) => Assert.IsType<BatchSplit>(Batches.Split(request));

    [Fact]
    public void A_small_need_is_one_pot()
    {
        BatchSplit plan = Found(Request(92, 150, 25));
        Assert.Equal(1, plan.Pots);
        Assert.Equal(BatchLimit.Need, plan.BoundBy);
    }

    [Fact]
    public void The_mass_limit_splits_into_equal_pots()
    {
        // 300 g at 100 g a pot is three pots, not four for the last bit of 0.3 / 0.1.
        BatchSplit plan = Found(Request(300, 100, 30));
        Assert.Equal(3, plan.Pots);
        Assert.Equal(BatchLimit.PotLimit, plan.BoundBy);
    }

    [Fact]
    public void The_pot_life_splits_too()
    {
        // By hand: 100 min of laying, half an hour of usable life for pots up to 150 g: 400 g need 4 pots of 25 min.
        BatchSplit plan = Found(Request(400, 1000, 100));
        Assert.Equal(4, plan.Pots);
        Assert.Equal(BatchLimit.PotLife, plan.BoundBy);
        Digits.Close(120, plan.LargestPot.Grams);
    }

    [Fact]
    public void A_large_pot_shortens_its_own_life()
    {
        // One kilogram in a deep cup lives 0.42 of an hour: 25.2 min, half of it 12.6 min. 20 min of laying do not fit,
        // though they would fit the half hour of a small pot; two of 500 g, 0.60 of an hour, have 18 min for 10 min each.
        BatchSplit plan = Found(Request(1000, 2000, 20));
        Assert.Equal(2, plan.Pots);
        Assert.True(plan.Assumptions.HasFlag(PotLifeAssumptions.BatchMassCurve));

        Assert.Equal(1, Found(Request(1000, 2000, 18) with { Shape = PotShape.ShallowTray }).Pots);
    }

    [Fact]
    public void Heat_takes_more_pots()
    {
        BatchRequest cool = Request(400, 1000, 100);
        BatchRequest hot = cool with { Temperature = Temperature.FromDegreesCelsius(33) };
        Assert.Equal(4, Found(cool).Pots);
        Assert.Equal(7, Found(hot).Pots);
    }

    [Fact]
    public void What_is_never_used_up_in_time_has_no_split()
    {
        // Half an hour may be used: 31 min of mixing leave nothing of it, and 3000 min of laying want 100 pots of 30 min.
        Assert.Null(Batches.Split(Request(100, 100, 10) with { MixingTime = Duration.FromMinutes(31) }));
        Assert.Null(Batches.Split(Request(400, 1000, 3000)));
        Assert.Equal(100, Found(Request(400, 1000, 3000) with { MostPots = 100 }).Pots);
    }

    [Fact]
    public void Mixing_counts_against_the_pot()
    {
        // 30 min usable, 6 of them for mixing: 24 min of laying, a pot of 96 g out of 400 g in 100 min: 5 pots.
        BatchSplit plan = Found(Request(400, 1000, 100) with { MixingTime = Duration.FromMinutes(6) });
        Assert.Equal(5, plan.Pots);
        Digits.Close(96, plan.LargestPot.Grams);
    }

    [Fact]
    public void Every_split_fits_and_is_the_smallest()
    {
        Gen.Select(
            Gen.Select(Gen.Double[5, 5000], Gen.Double[20, 3000], Gen.Double[0, 300]),
            Gen.Select(Gen.Double[5, 40], Gen.Double[0, 10], Gen.Bool)).Sample(
            (need, conditions) =>
            {
                (double total, double limit, double laying) = need;
                (double celsius, double mixing, bool tray) = conditions;
                BatchRequest request = Request(total, limit, laying) with
                {
                    Temperature = Temperature.FromDegreesCelsius(celsius),
                    MixingTime = Duration.FromMinutes(mixing),
                    Shape = tray ? PotShape.ShallowTray : PotShape.DeepCup,
                    MostPots = 10_000,
                };
                if (Batches.Split(request) is not { } split)
                {
                    Assert.False(Allowed(request, total / 10_000 * (1 - 1e-10), 1));
                    return;
                }

                Assert.True(Allowed(request, total / split.Pots));
                if (split.Pots > 1)
                {
                    // One pot fewer is over the limit by more than rounding, were it by less than a scale shows.
                    Assert.False(Allowed(request, total / (split.Pots - 1) * (1 - 1e-10), 1));
                }
            },
            iter: 2000);
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
