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

    // Common practice, from memory: first mix to level reached on 0.3 to 0.5 m2 of three plies takes experienced hands 30 to 40 minutes;
    // the smallest of these parts may be a tenth quicker. A square part; layers: release film and breather; a minute for the pump.
    [Theory]
    [InlineData(0.3, 27, 40)]
    [InlineData(0.4, 30, 40)]
    [InlineData(0.5, 30, 40)]
    public void The_preset_agrees_with_what_is_commonly_reckoned(double area, double low, double high)
    {
        WorkPace pace = WorkPace.Experienced;
        Length side = Length.FromMeters(Math.Sqrt(area));
        Surface part = Surfaces.FlatRectangle(side, side);
        Duration wetOut = WorkingTime.WetOut(part.Area, 3, pace.WetOutPerSquareMetrePly) + (3 * pace.HandlingPerPly);
        Duration bagging = WorkingTime.Bagging(part.Area, BagSize.TapeLine(part, new BagAllowances()), 2, true, pace);
        Assert.InRange((pace.MixingPerPot + wetOut + bagging + pace.LeakHunt + Min(1)).Minutes, low, high);
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
    public void More_hands_never_take_longer()
    {
        Gen.Select(Gen.Double[0, 10], Gen.Int[0, 12], Gen.Int[1, 6]).Sample(
            (area, plies, people) =>
            {
                double few = WorkingTime.WetOut(M2(area), plies, Min(12), people).Minutes;
                double more = WorkingTime.WetOut(M2(area), plies, Min(12), people + 1).Minutes;
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
            () => WorkingTime.Bagging(M2(-1), Length.Zero, 0, false, WorkPace.Experienced));
    }
}
