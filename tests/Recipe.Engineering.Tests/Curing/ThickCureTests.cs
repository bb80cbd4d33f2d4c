using UnitsNet;
using static Recipe.Engineering.Tests.Cures;
using static Recipe.Engineering.Tests.Heats;

namespace Recipe.Engineering.Tests;

public class ThickCureTests
{
    private static ThickLaminate Glass(double millimetres, ExothermicResin? resin = null) =>
        new(resin ?? SlowMix, Length.FromMillimeters(millimetres), Part(0.5));

    private static LaminateFaceHeat Face(CureSchedule around, double transfer) => new(around, Transfer(transfer));

    [Fact]
    public void A_thin_laminate_follows_its_surroundings()
    {
        CureSchedule oven = Oven(20, 60, 0.5, 240);
        ThickCure thin = ThickCureSimulation.Along(Glass(0.1), Face(oven, 1000), Face(oven, 1000), C(20), 5);
        CureCurve set = CureSimulation.Along(Slow, oven);
        Within(60, thin.Peak.DegreesCelsius, 0.05);
        Within(set.FinalDegree.DecimalFractions, thin.LeastDegree.DecimalFractions, 5e-4);
        Within(set.FinalDegree.DecimalFractions, thin.MostDegree.DecimalFractions, 5e-4);
        Within(20, thin.Final[2].Temperature.DegreesCelsius, 0.05);
    }

    [Fact]
    public void An_insulated_laminate_warms_by_its_adiabatic_rise()
    {
        CureSchedule days = Hold(20, 10 * 1440);
        ThickLaminate laminate = Glass(20);
        ThickCure alone = ThickCureSimulation.Along(laminate, Face(days, 0), Face(days, 0), C(20), 8);
        double resin = 0.5 * 1100;
        double fibre = 0.5 * 2540;
        TemperatureDelta rise = Exotherm.AdiabaticRise(
            JoulesPerGram(450), PerGramKelvin(1.9), Part(0), alone.MostDegree, Part(fibre / (fibre + resin)), PerGramKelvin(0.8));
        Assert.True(alone.LeastDegree.DecimalFractions > 0.98);
        Within(20 + rise.Kelvins, alone.Peak.DegreesCelsius, 0.01);
        Within(alone.LeastDegree.DecimalFractions, alone.MostDegree.DecimalFractions, 1e-9);
    }

    [Fact]
    public void Steady_heat_goes_through_as_three_resistances_in_a_row()
    {
        // 60 degC at the mould over 1/50, 0.03 m / 0.3 W/(m K), 1/10 m2K/W to 20 degC: a flux of 40/(0.02 + 0.1 + 0.1).
        ExothermicResin inert = new(Kamal(1e-12, 0, 0, 0, 1, 1), JoulesPerGram(0));
        ThickCure steady = ThickCureSimulation.Along(
            Glass(30, inert), Face(Hold(60, 5 * 1440), 50), Face(Hold(20, 5 * 1440), 10), C(20), 10);
        double flux = 40 / (0.02 + 0.1 + 0.1);
        foreach (ThicknessPoint point in steady.Final)
        {
            Within(60 - (flux * (0.02 + (point.Depth.Meters / 0.3))), point.Temperature.DegreesCelsius, 0.01);
        }
    }

    [Fact]
    public void A_warm_slab_cools_as_the_series_says()
    {
        // Both faces held at 20 degC: the middle by Fourier's series, e.g. Carslaw and Jaeger, Conduction of Heat in Solids, ch. 3.
        ExothermicResin inert = new(Kamal(1e-12, 0, 0, 0, 1, 1), JoulesPerGram(0));
        const double half = 0.01;
        double capacity = (0.5 * 1100 * 1900) + (0.5 * 2540 * 800);
        double time = 0.3 * half * half * capacity / 0.3;
        CureSchedule held = Hold(20, time / 60);
        ThickCure slab = ThickCureSimulation.Along(Glass(20, inert), Face(held, 1e6), Face(held, 1e6), C(80), 101);
        double middle = 0;
        for (int n = 0; n < 20; n++)
        {
            double b = ((2 * n) + 1) * Math.PI / 2;
            middle += 2 * Math.Pow(-1, n) / b * Math.Exp(-b * b * 0.3);
        }

        Within(20 + (60 * middle), slab.Final[50].Temperature.DegreesCelsius, 0.05);
    }

    [Fact]
    public void Finer_cells_come_to_the_same()
    {
        CureSchedule room = Hold(23, 1440);
        ThickCure With(int cells) => ThickCureSimulation.Along(Glass(25), Face(room, 20), Face(room, 10), C(23), cells);
        (ThickCure coarse, ThickCure middle, ThickCure fine) = (With(8), With(16), With(48));
        double first = Math.Abs(coarse.Peak.Kelvins - fine.Peak.Kelvins);
        double second = Math.Abs(middle.Peak.Kelvins - fine.Peak.Kelvins);
        Assert.True(second < first + 0.02 && second < 0.1, FormattableString.Invariant($"{first} {second}"));
        Within(fine.LeastDegree.DecimalFractions, middle.LeastDegree.DecimalFractions, 1e-3);
    }

    [Fact]
    public void Thick_is_hotter_than_thin_and_hottest_towards_the_worse_cooled_face()
    {
        CureSchedule room = Hold(23, 1440);
        ThickCure Of(double millimetres) => ThickCureSimulation.Along(Glass(millimetres), Face(room, 20), Face(room, 10), C(23));
        double[] peaks = [.. new double[] { 2, 5, 10, 20, 40 }.Select(mm => Of(mm).Peak.DegreesCelsius)];
        Assert.Equal(peaks.Order(), peaks);
        Assert.True(peaks[0] < 26 && peaks[^1] > 45, string.Join(' ', peaks));
        ThickCure thick = Of(40);
        Assert.InRange(thick.PeakDepth.Millimeters, 20, 39);
        Assert.InRange(thick.PeakAt.Hours, 1, 12);
    }

    [Fact]
    public void A_hot_prepreg_passes_its_jump_and_its_cold_start()
    {
        // The way up is not cured, the switch at 0.3 is passed, and a thick one overshoots the oven.
        CureSchedule oven = Oven(20, 177, 2, 120);
        ExothermicResin resin = new(new LeeLoosSpringer(), LeeLoosSpringer.HeatOfReaction)
        {
            SpecificHeat = PerGramKelvin(1.26),
            Options = new CureOptions { IdleBelowRange = true },
        };
        ThickCure thin = ThickCureSimulation.Along(Glass(1, resin), Face(oven, 500), Face(oven, 500), C(20), 5);
        CureCurve set = CureSimulation.Along(resin.Kinetics, oven, resin.Options);
        Within(set.FinalDegree.DecimalFractions, thin.LeastDegree.DecimalFractions, 5e-3);
        Assert.True(ThickCureSimulation.Along(Glass(30, resin), Face(oven, 50), Face(oven, 50), C(20)).Peak > C(180));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => ThickCureSimulation.Along(Glass(1, resin with { Options = null }), Face(oven, 50), Face(oven, 50), C(20)));
    }

    [Fact]
    public void Laminates_that_cannot_be_are_refused()
    {
        CureSchedule room = Hold(23, 60);
        LaminateFaceHeat face = Face(room, 10);
        Assert.Throws<ArgumentOutOfRangeException>(() => ThickCureSimulation.Along(Glass(0), face, face, C(23)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThickCureSimulation.Along(Glass(5), face, face, C(23), 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThickCureSimulation.Along(Glass(5), face, Face(room, -1), C(23)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThickCureSimulation.Along(Glass(5) with { FibreVolumeFraction = Part(1) }, face, face, C(23)));
        CureSchedule none = CureSchedule.Create(C(23), []);
        Assert.Throws<ArgumentException>(() => ThickCureSimulation.Along(Glass(5), Face(none, 10), Face(none, 10), C(23)));
    }
}
