using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class WorkingTimeTests
{
    private static Area M2(double value) => Area.FromSquareMeters(value);

    private static Duration Min(double value) => Duration.FromMinutes(value);

    [Fact]
    public void Wet_out_is_area_times_plies_times_pace_over_hands()
    {
        Digits.Close(0.5 * 4 * 6, WorkingTime.WetOut(M2(0.5), 4, Min(6)).Minutes);
        Digits.Close(0.5 * 4 * 6 / 2, WorkingTime.WetOut(M2(0.5), 4, Min(6), 2).Minutes);

        // Common practice: a hull side in 300 g/m2 takes one person about 12 minutes a square metre.
        Digits.Close(36, WorkingTime.WetOut(M2(3), 1, Min(12)).Minutes);
    }

    // Common practice, from memory: first mix to level reached on 0.3 to 0.5 m2 of three plies takes 30 to 40 minutes
    // experienced, 75 to 120 novice; the smallest of these parts may be a tenth quicker. Layers: release film and breather.
    [Theory]
    [InlineData(false, 0.3, 27, 40)]
    [InlineData(false, 0.4, 30, 40)]
    [InlineData(false, 0.5, 30, 40)]
    [InlineData(true, 0.3, 75, 120)]
    [InlineData(true, 0.4, 75, 120)]
    [InlineData(true, 0.5, 75, 120)]
    public void Presets_agree_with_what_is_commonly_reckoned(bool novice, double area, double low, double high)
    {
        WorkPace pace = novice ? WorkPace.Novice : WorkPace.Experienced;
        Surface part = Surfaces.FlatArea(M2(area));
        Duration wetOut = WorkingTime.WetOut(part, 3, pace);
        Duration bagging = WorkingTime.Bagging(
            part.Area, BagSize.TapeLine(part, new BagAllowances()), 2, true, pace);
        MixToVacuumClock clock = WorkingTime.FirstMixToFullVacuum(1, wetOut, bagging, Min(1), pace);
        Assert.InRange(clock.Total.Minutes, low, high);
    }

    [Fact]
    public void Double_curvature_is_slower_and_handling_counts_each_ply()
    {
        WorkPace pace = WorkPace.Experienced with { HandlingPerPly = Duration.Zero };
        double flat = WorkingTime.WetOut(M2(0.2), Curvature.Flat, 3, pace).Minutes;
        double bent = WorkingTime.WetOut(M2(0.2), Curvature.Single, 3, pace).Minutes;
        double bowl = WorkingTime.WetOut(M2(0.2), Curvature.Double, 3, pace).Minutes;
        Digits.Close(2.4, flat);
        Digits.Close(flat, bent);

        // Common practice: double curvature takes 1.5 to 2 times as long.
        Assert.InRange(bowl / flat, 1.5, 2);

        double handled = WorkingTime.WetOut(M2(0.2), Curvature.Flat, 3, WorkPace.Experienced).Minutes;
        Digits.Close(2.4 + 6, handled);
    }

    [Fact]
    public void Bagging_adds_layers_and_closing()
    {
        // By hand: 0.5 m2 with peel ply at 2.5 and two layers at 2 min/m2, 3 m of tape at 1.75 min/m.
        Duration time = WorkingTime.Bagging(M2(0.5), Length.FromMeters(3), 2, true, WorkPace.Experienced);
        Digits.Close((0.5 * 6.5) + 5.25, time.Minutes);
        Digits.Close(
            time.Minutes / 2,
            WorkingTime.Bagging(M2(0.5), Length.FromMeters(3), 2, true, WorkPace.Experienced, 2).Minutes);
        Digits.Close(
            5.25, WorkingTime.Bagging(M2(0.5), Length.FromMeters(3), 0, false, WorkPace.Experienced).Minutes);
    }

    [Fact]
    public void The_clock_adds_up_and_shows_its_margin()
    {
        MixToVacuumClock clock = WorkingTime.FirstMixToFullVacuum(2, Min(20), Min(10), Min(2), WorkPace.Experienced);
        Digits.Close(6 + 20 + 10 + 8 + 2, clock.Total.Minutes);
        Digits.Close(14, clock.MarginWithin(Min(60)).Minutes);
        Digits.Close(-6, clock.MarginWithin(Min(40)).Minutes);
    }

    [Fact]
    public void A_pot_has_a_clock_of_its_own()
    {
        PotClock pot = WorkingTime.OfPot(Min(3), Min(18), Min(28));
        Digits.Close(21, pot.Used.Minutes);
        Digits.Close(7, pot.Margin.Minutes);
        Digits.Close(75, pot.ShareUsed.Percent);
    }

    [Fact]
    public void More_hands_never_take_longer()
    {
        Gen.Select(Gen.Double[0, 10], Gen.Int[0, 12], Gen.Int[1, 6]).Sample(
            (area, plies, people) =>
            {
                double few = WorkingTime.WetOut(M2(area), Curvature.Double, plies, WorkPace.Novice, people).Minutes;
                double more = WorkingTime.WetOut(M2(area), Curvature.Double, plies, WorkPace.Novice, people + 1).Minutes;
                return more <= few && Digits.IsClose(few * people, more * (people + 1));
            },
            iter: 1000);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WorkingTime.WetOut(M2(1), -1, Min(4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => WorkingTime.WetOut(M2(1), 1, Min(4), 0));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => WorkingTime.WetOut(M2(1), Curvature.Double, 1, WorkPace.Novice with { DoubleCurvatureFactor = 0.5 }));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => WorkingTime.FirstMixToFullVacuum(0, Min(1), Min(1), Min(1), WorkPace.Novice));
        Assert.Throws<ArgumentOutOfRangeException>(() => WorkingTime.OfPot(Min(1), Min(1), Min(0)));
    }
}
