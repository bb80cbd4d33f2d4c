using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Cures;
using static Recipe.Engineering.Tests.Heats;

namespace Recipe.Engineering.Tests;

public class PotModelTests
{
    [Fact]
    public void A_pot_that_loses_nothing_warms_by_its_heat_of_reaction()
    {
        PotCurve pot = PotModel.Along(SlowMix, Cup(500, 20) with { Loss = Transfer(0) }, Duration.FromHours(48));
        double whole = Exotherm.AdiabaticRise(SlowMix.HeatOfReaction, SlowMix.SpecificHeat, Part(0), Part(1)).Kelvins;
        for (int hours = 0; hours <= 48; hours++)
        {
            double rise = pot.TemperatureAt(Duration.FromHours(hours)).DegreesCelsius - 20;
            Within(whole * pot.DegreeAt(Duration.FromHours(hours)).DecimalFractions, rise, 0.02);
        }

        Assert.True(pot.FinalDegree.DecimalFractions > 0.999);
        Within(20 + whole, pot.Peak.DegreesCelsius, 0.5);

        // A container of the same heat takes half of it.
        PotCurve steel = PotModel.Along(
            SlowMix, Cup(500, 20) with { Loss = Transfer(0), Container = G(500) }, Duration.FromHours(96));
        Within(20 + (whole / 2 * steel.FinalDegree.DecimalFractions), steel.Peak.DegreesCelsius, 0.1);
    }

    [Fact]
    public void A_pot_without_heat_of_reaction_cures_as_the_room_does()
    {
        PotCurve pot = PotModel.Along(SlowMix with { HeatOfReaction = JoulesPerGram(0) }, Cup(500, 23), Duration.FromHours(24));
        CureCurve film = CureSimulation.Along(Slow, Hold(23, 1440));
        for (int hours = 0; hours <= 24; hours++)
        {
            Within(film.At(60 * hours), pot.DegreeAt(Duration.FromHours(hours)).DecimalFractions, 1e-5);
        }

        Digits.Close(23, pot.Peak.DegreesCelsius, 1e-9);
        Within(film.TimeTo(Part(0.5))!.Value.Seconds, pot.TimeTo(Part(0.5))!.Value.Seconds, 1);
    }

    [Fact]
    public void A_hot_pot_cools_as_Newton_says()
    {
        // 1 kg of 1000 kg/m3 in a cup as deep as wide: D = (4 V/pi)^(1/3), A = 1.5 pi D^2; resistance 1/h + D/10/k; time constant m c/(A U).
        ExothermicResin inert = new(Kamal(1e-9, 0, 0, 0, 1, 1), JoulesPerGram(0)) { Density = Density.FromKilogramsPerCubicMeter(1000) };
        PotCurve pot = PotModel.Along(inert, Cup(1000, 20) with { Start = C(80) }, Duration.FromHours(6));
        double width = Math.Cbrt(4 * 0.001 / Math.PI);
        double constant = 1900 * ((1 / 10.0) + (width / 10 / 0.2)) / (1.5 * Math.PI * width * width);
        foreach (double hours in new[] { 0.1, 1, 2.5, 6 })
        {
            Within(20 + (60 * Math.Exp(-hours * 3600 / constant)), pot.TemperatureAt(Duration.FromHours(hours)).DegreesCelsius, 0.01);
        }

        // A tray: 10 mm deep, cooled on both sides, d/6/k inside.
        PotCurve tray = PotModel.Along(inert, Tray(1000, 20) with { Start = C(80) }, Duration.FromHours(2));
        double rim = 0.01 * Math.Sqrt(4 * Math.PI * 0.1);
        double flat = 1900 * ((1 / 10.0) + (0.01 / 6 / 0.2)) / (0.2 + rim);
        Within(20 + (60 * Math.Exp(-3600 / flat)), tray.TemperatureAt(Duration.FromHours(1)).DegreesCelsius, 0.01);
    }

    [Fact]
    public void The_peak_alone_is_that_of_the_whole_curve()
    {
        // To the last digit: only hours in which nothing can make the pot hotter are left out. A pot hotter than its room cools before it warms.
        foreach (double grams in new[] { 5, 60, 100, 300, 1000, 4200 })
        {
            foreach (double start in new[] { 15, 23, 35, 60 })
            {
                foreach (Pot pot in new[] { Cup(grams, 23), Tray(grams, 23) })
                {
                    Pot warm = pot with { Start = C(start) };
                    Assert.Equal(PotModel.Along(SlowMix, warm, Duration.FromDays(2)).Peak, PotModel.Peak(SlowMix, warm, Duration.FromDays(2)));
                }
            }
        }
    }

    [Fact]
    public void A_fine_step_of_another_method_agrees_through_a_runaway()
    {
        Pot cup = Cup(500, 23);
        PotCurve pot = PotModel.Along(SlowMix, cup, Duration.FromHours(6));
        double width = Math.Cbrt(4 * 0.5 / 1100 / Math.PI);
        double loss = 1.5 * Math.PI * width * width / ((1 / 10.0) + (width / 10 / 0.2)) / (0.5 * 1900);
        double a = 0;
        double t = 296.15;
        double peak = t;
        const double h = 0.5;
        (double, double) Slopes(double degree, double kelvin)
        {
            double rate = Slow.RateAt(Part(degree), Temperature.FromKelvins(kelvin)).Hertz;
            return (rate, (450_000 / 1900.0 * rate) - (loss * (kelvin - 296.15)));
        }

        for (int i = 0; i < 6 * 3600 * 2; i++)
        {
            if (i % 1200 == 0)
            {
                Within(a, pot.DegreeAt(Duration.FromSeconds(i * h)).DecimalFractions, 1e-4);
                Within(t, pot.TemperatureAt(Duration.FromSeconds(i * h)).Kelvins, 0.05);
            }

            (double a1, double t1) = Slopes(a, t);
            (double a2, double t2) = Slopes(a + (h / 2 * a1), t + (h / 2 * t1));
            (double a3, double t3) = Slopes(a + (h / 2 * a2), t + (h / 2 * t2));
            (double a4, double t4) = Slopes(a + (h * a3), t + (h * t3));
            a += h / 6 * (a1 + (2 * a2) + (2 * a3) + a4);
            t += h / 6 * (t1 + (2 * t2) + (2 * t3) + t4);
            peak = Math.Max(peak, t);
        }

        Within(peak, pot.Peak.Kelvins, 0.1);
        Assert.True(pot.Peak > C(100));
        Within(pot.Peak.Kelvins, pot.TemperatureAt(pot.PeakAt).Kelvins, 1e-6);
        Assert.False(pot.BeyondModel);
    }

    [Fact]
    public void Larger_warmer_and_deeper_pots_go_off_sooner() =>
        Gen.Select(Gen.Double[30, 3000], Gen.Double[1.1, 3], Gen.Double[12, 32], Gen.Double[0.5, 5], Gen.Double[0.02, 0.5]).Sample(
            (grams, times, celsius, warmer, degree) =>
            {
                double Life(Pot pot) => PotModel.TimeTo(SlowMix, pot, Part(degree))!.Value.Seconds;
                double here = Life(Cup(grams, celsius));
                Assert.True(Life(Cup(grams * times, celsius)) < here);
                Assert.True(Life(Cup(grams, celsius + warmer)) < here);
                Assert.True(Life(Cup(grams, celsius) with { Start = C(celsius + warmer) }) < here);
                Assert.True(CureSimulation.Along(Slow, Hold(celsius, 60 * 24 * 60)).TimeTo(Part(degree))!.Value.Seconds > here);
                Assert.True(grams < 50 || Life(Tray(grams, celsius)) > here);
            },
            iter: 60);

    [Fact]
    public void The_sheet_pot_lives_as_its_sheet_says()
    {
        // The shipped slow epoxy: 60 min at 23 degC in 100 g.
        SheetPot sheet = SheetPot.OfPotLife(SlowMix, new PotLifeReference(Min(60), C(23), G(100)));

        // By then it runs away: a quarter cured after 56 min and at 126 degC after 60 (a program outside the project, Runge-Kutta, steps of 0.5 s).
        Within(0.5375, sheet.Degree.DecimalFractions, 2e-3);
        Within(126.0, PotModel.Along(SlowMix, Cup(100, 23), Min(60)).TemperatureAt(Min(60)).DegreesCelsius, 0.5);
        Assert.False(sheet.PastGel);
        Within(60, sheet.LifeOf(Cup(100, 23))!.Value.Minutes, 0.01);

        // Common practice, from memory: 1 kg has 0.35 to 0.5 of the life of a small pot. The lumped pot errs late and falls by less.
        // Life halves for each 10 K; a tray lives longer than a cup.
        double kilogram = sheet.LifeOf(Cup(1000, 23))!.Value.Minutes;
        Assert.InRange(kilogram, 0.5 * 60, 59);
        Assert.InRange(sheet.LifeOf(Cup(100, 33))!.Value.Minutes, 24, 34);
        Assert.True(sheet.LifeOf(Tray(100, 23))!.Value.Minutes > 60);
    }

    // Gel after 5 h at 23 degC, as the entry has it: the degree of Flory's gel point.
    [Fact]
    public void The_film_of_the_sheet_gels_as_its_sheet_says() =>
        Within(GelPoint.Usual.DecimalFractions, CureSimulation.Along(Slow, Hold(23, 300)).FinalDegree.DecimalFractions, 0.01);

    [Fact]
    public void A_big_pot_gets_dangerously_hot()
    {
        // Common practice: 100 g left standing in a cup may pass 200 degC, and a tray stays cooler.
        PotCurve bucket = PotModel.Along(SlowMix, Cup(4200, 23), Duration.FromHours(12));
        PotCurve cup = PotModel.Along(SlowMix, Cup(100, 23), Duration.FromHours(12));
        PotCurve tray = PotModel.Along(SlowMix, Tray(100, 23), Duration.FromHours(12));
        Assert.InRange(cup.Peak.DegreesCelsius, 150, 250);
        Assert.True(bucket.Peak > cup.Peak);
        Assert.True(tray.Peak.Kelvins < cup.Peak.Kelvins - 30);
        Assert.True(tray.PeakAt > cup.PeakAt);

        // In a cool room the tray never runs away.
        Assert.True(PotModel.Along(SlowMix, Tray(100, 15), Duration.FromHours(24)).Peak < C(45));
        ExothermicResin hot = SlowMix with { HeatOfReaction = JoulesPerGram(900) };
        Assert.True(PotModel.Along(hot, Cup(5000, 23), Duration.FromHours(12)).BeyondModel);
    }

    [Fact]
    public void The_brake_limits_nothing_in_a_runaway()
    {
        PotCurve free = PotModel.Along(SlowMix, Cup(1000, 23), Duration.FromHours(8));
        PotCurve braked = PotModel.Along(SlowMix with { Options = SlowOptions }, Cup(1000, 23), Duration.FromHours(8));
        Within(free.Peak.Kelvins, braked.Peak.Kelvins, 0.5);
    }

    [Fact]
    public void Pots_that_cannot_be_are_refused()
    {
        Duration hour = Duration.FromHours(1);
        Assert.Throws<ArgumentOutOfRangeException>(() => PotModel.Along(SlowMix, Cup(0, 23), hour));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotModel.Along(SlowMix, Cup(100, -60), hour));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotModel.Along(SlowMix, Cup(100, 23) with { Loss = Transfer(-1) }, hour));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotModel.Along(SlowMix, Cup(100, 23), Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotModel.Along(SlowMix with { SpecificHeat = PerGramKelvin(0) }, Cup(100, 23), hour));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => PotModel.Along(new ExothermicResin(new LeeLoosSpringer(), JoulesPerGram(473.6)), Cup(100, 23), hour));
        PotCurve curve = PotModel.Along(SlowMix, Cup(100, 23), hour);
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.DegreeAt(Min(61)));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.TemperatureAt(Min(-1)));
        Assert.Null(curve.TimeTo(Part(0.9)));
        Assert.Equal(Duration.Zero, curve.TimeTo(Part(0)));
    }
}
