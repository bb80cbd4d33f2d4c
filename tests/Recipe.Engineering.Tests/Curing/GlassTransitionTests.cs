using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Cures;

namespace Recipe.Engineering.Tests;

public class GlassTransitionTests
{
    // DiBenedetto's equation in the form of Pascault and Williams; Tg0 -20, TgInf 220 degC, L 0.5 (a set from memory), by calculator.
    [Theory]
    [InlineData(0, "-20")]
    [InlineData(0.25, "14.2857")]
    [InlineData(0.5, "60")]
    [InlineData(0.75, "124")]
    [InlineData(0.9, "176.364")]
    [InlineData(1, "220")]
    public void The_glass_transition_rises_with_the_cure(double degree, string celsius)
    {
        DiBenedetto curve = new(C(-20), C(220), 0.5);
        Digits.AsPrinted(celsius, curve.At(Part(degree)).DegreesCelsius);
        Within(degree, curve.DegreeAt(curve.At(Part(degree))).DecimalFractions, 1e-12);
    }

    [Fact]
    public void A_curve_without_sense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new DiBenedetto(C(80), C(80)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DiBenedetto(C(-20), C(80), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DiBenedetto(C(-20), C(800)));
        DiBenedetto curve = new(C(-20), C(80));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.At(Part(1.01)));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.DegreeAt(C(81)));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.DegreeAt(C(-21)));
    }

    [Fact]
    public void The_brake_adds_the_times_of_reaction_and_diffusion()
    {
        // Rabinowitch: 1/r = 1/r_chemical + 1/r_diffusion. At the glass transition diffusion allows what the brake was made with.
        DiffusionBrake brake = new(Frequency.FromHertz(3e-4));
        double Slowed(double chemical, double t, double tg) => brake.Slow(Frequency.FromHertz(chemical), C(t), C(tg)).Hertz;
        Digits.Close(1 / ((1 / 1e-4) + (1 / 3e-4)), Slowed(1e-4, 50, 50));

        // Williams, Landel and Ferry above, with half of the universal 40.2 rounded to 20, and the universal 51.6 K.
        Digits.Close(1 / ((1 / 1e-4) + (1 / (3e-4 * Math.Exp(20 * 10 / 61.6)))), Slowed(1e-4, 60, 50));

        // Arrhenius below, with the same slope at the transition.
        Digits.Close(1 / ((1 / 1e-4) + (1 / (3e-4 * Math.Exp(-20 / 51.6 * 323.15 * 10 / 313.15)))), Slowed(1e-4, 40, 50));
        double above = Math.Log(Slowed(1e6, 50.001, 50) / Slowed(1e6, 50, 50));
        double below = Math.Log(Slowed(1e6, 50, 50) / Slowed(1e6, 49.999, 50));
        Digits.Close(above, below, 1e-3);
        Assert.Equal(0, Slowed(0, 20, 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => Slowed(-1, 20, 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DiffusionBrake(Frequency.FromHertz(0)));
    }

    [Fact]
    public void The_slow_epoxy_of_the_book_goes_through_its_data_sheet()
    {
        // 45 degC after 24 h at 20 degC, 85 degC at most: figures of the shipped entry.
        GlassTransitionFit fit = SlowFit;
        Assert.True(fit.GoesThrough);
        Within(45, fit.Reached.DegreesCelsius, 0.1);
        Within(-35, fit.Curve.Uncured.DegreesCelsius, 1e-9);
        Assert.InRange(fit.Degree.DecimalFractions, 0.75, 0.85);

        // The degree that has this glass transition by DiBenedetto's equation: -35 + 120 a/2 / (1 - a/2) = 45, so a = 0.8.
        Within(0.8, fit.Degree.DecimalFractions, 1e-3);

        CureCurve day = CureSimulation.Along(Slow, Day, SlowOptions);
        Within(45, day.GlassTransitionAt(day.Total)!.Value.DegreesCelsius, 0.1);

        // A week more moves it little, the heat of a post-cure a good deal: a room-temperature cure ends 15 to 30 K above the room or a
        // little more, and 16 h at 50 degC raise 58 to 73 degC (common practice).
        CureCurve week = CureSimulation.Along(Slow, Hold(20, 7 * 24 * 60), SlowOptions);
        Assert.InRange(week.GlassTransitionAt(week.Total)!.Value.DegreesCelsius, 46, 53);
        CureCurve post = CureSimulation.Along(
            Slow, CureSchedule.Create(C(20), [new HoldStep(C(20), Min(1440)), new HoldStep(C(50), Min(960))]), SlowOptions);
        Assert.InRange(post.GlassTransitionAt(post.Total)!.Value.DegreesCelsius, 68, 78);
    }

    [Fact]
    public void Vitrification_is_where_the_glass_transition_passes_the_temperature()
    {
        CureCurve cure = CureSimulation.Along(Slow, Day, SlowOptions);
        Duration glass = cure.Vitrification!.Value;
        Within(20, cure.GlassTransitionAt(glass)!.Value.DegreesCelsius, 1e-4);
        Assert.True(glass > cure.TimeTo(GelPoint.Usual));

        // Nothing turns to glass above the limit, and a resin that starts as glass is glass at once.
        Assert.Null(CureSimulation.Along(Slow, Hold(90, 600), SlowOptions).Vitrification);
        Assert.Equal(Duration.Zero, CureSimulation.Along(Slow, Day, SlowOptions with { Start = Part(0.9) }).Vitrification);

        // Cooling below the glass transition counts.
        CureCurve cooled = CureSimulation.Along(Slow, Oven(20, 90, 2, 240), SlowOptions);
        Duration hot = cooled.Vitrification!.Value;
        Within(cooled.TemperatureAt(hot).DegreesCelsius, cooled.GlassTransitionAt(hot)!.Value.DegreesCelsius, 1e-3);
        Assert.True(hot.Minutes > 60 + 35 + 240);
    }

    [Fact]
    public void The_brake_only_ever_slows() =>
        Gen.Select(Gen.Double[-9, 9], Gen.Double[10, 80], Gen.Double[60, 3000]).Sample(
            (power, celsius, minutes) =>
            {
                CureSchedule soak = Hold(celsius, minutes);
                CureOptions strong = SlowOptions with { Brake = new DiffusionBrake(Frequency.FromHertz(Math.Pow(10, power))) };
                CureOptions weak = SlowOptions with { Brake = new DiffusionBrake(Frequency.FromHertz(3 * Math.Pow(10, power))) };
                double free = CureSimulation.Along(Slow, soak).FinalDegree.DecimalFractions;
                double less = CureSimulation.Along(Slow, soak, weak).FinalDegree.DecimalFractions;
                double least = CureSimulation.Along(Slow, soak, strong).FinalDegree.DecimalFractions;
                return least <= less + 1e-7 && less <= free + 1e-7;
            },
            iter: 300);

    [Fact]
    public void A_fit_goes_through_what_was_simulated() =>
        Gen.Select(Gen.Double[-4, 3], Gen.Double[-60, -10], Gen.Double[15, 40]).Sample(
            (power, uncured, celsius) =>
            {
                CureSchedule soak = Hold(celsius, 1440);
                DiBenedetto curve = new(C(uncured), C(95), 0.45);
                CureOptions options = new() { GlassTransition = curve, Brake = new DiffusionBrake(Frequency.FromHertz(Math.Pow(10, power))) };
                Temperature sheet = curve.At(CureSimulation.Along(Slow, soak, options).FinalDegree);
                GlassTransitionFit fit = DiffusionBrake.Through(Slow, soak, sheet, C(95), C(uncured), 0.45);
                Assert.True(fit.GoesThrough);
                Within(sheet.DegreesCelsius, fit.Reached.DegreesCelsius, 0.1);
            },
            iter: 100);

    /// <summary>
    /// What its documentation says of the assumed brake: a day at 20 degC ends 30 to 35 K above that, and with a tenth of the rate some 5 K lower. Common practice has 15 to 30 K, which is why a data
    /// sheet's figure is fitted.
    /// </summary>
    [Fact]
    public void The_usual_brake_ends_a_cold_cure_where_it_says()
    {
        double End(double rate)
        {
            CureOptions options = new() { GlassTransition = new DiBenedetto(DiBenedetto.UsualUncured, C(85)), Brake = new DiffusionBrake(Frequency.FromHertz(rate)) };
            return options.GlassTransition.At(CureSimulation.Along(Slow, Day, options).FinalDegree).DegreesCelsius;
        }

        Assert.Equal(1, DiffusionBrake.Usual.RateAtTransition.Hertz);
        Assert.InRange(End(1), 50, 55);
        Assert.InRange(End(1) - End(0.1), 4, 6.5);
    }

    [Fact]
    public void What_cannot_be_reached_says_how_near_it_comes()
    {
        // An hour at 20 degC makes no glass of 55 degC.
        GlassTransitionFit shortSoak = DiffusionBrake.Through(Slow, Hold(20, 60), C(55), C(85));
        Assert.False(shortSoak.GoesThrough);
        Assert.True(shortSoak.Reached < C(0));

        Assert.Throws<ArgumentOutOfRangeException>(() => DiffusionBrake.Through(Slow, Day, C(85), C(85)));
    }
}
