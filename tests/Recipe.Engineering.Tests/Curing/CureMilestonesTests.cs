using UnitsNet;
using static Recipe.Engineering.Tests.Cures;

namespace Recipe.Engineering.Tests;

public class CureMilestonesTests
{
    [Fact]
    public void Gel_is_where_Flory_and_Stockmayer_have_it()
    {
        // Flory and Stockmayer: 1/sqrt(r (f - 1)(g - 1)); a balanced diepoxide with a tetrafunctional diamine gels at 0.577.
        Digits.AsPrinted("0.57735", GelPoint.Usual.DecimalFractions);
        Digits.AsPrinted("0.57735", GelPoint.Of(Part(1)).DecimalFractions);
        Digits.Close(1 / Math.Sqrt(3 * 0.8), GelPoint.Of(Part(0.8)).DecimalFractions);
        Digits.Close(1, GelPoint.Of(Part(1 / 3.0)).DecimalFractions);
        Digits.Close(1 / Math.Sqrt(2), GelPoint.Of(Part(1), 2, 3).DecimalFractions);
    }

    [Fact]
    public void A_mix_that_never_gels_is_refused_with_a_reason()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => GelPoint.Of(Part(0.33)));
        Assert.Contains("must be at least 0.3333, or the mix never gels", refused.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => GelPoint.Of(Part(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => GelPoint.Of(Part(1.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => GelPoint.Of(Part(1), 2, 2 - 1e-3));
        Assert.Throws<ArgumentOutOfRangeException>(() => GelPoint.Of(Part(0.9), 2, 2));
    }

    [Fact]
    public void The_slow_epoxy_gels_and_comes_off_when_its_sheet_says()
    {
        // The shipped entry: gel after 5 h at 23 degC; demould after 24 h at 20 degC, common practice 12 to 24 h.
        CureMilestones warm = CureMilestones.Of(CureSimulation.Along(Slow, Hold(23, 1440), SlowOptions));
        Within(5, warm.Gel!.Value.Hours, 0.15);

        CureMilestones day = CureMilestones.Of(CureSimulation.Along(Slow, Day, SlowOptions));
        Assert.InRange(day.Gel!.Value.Hours, 5, 8);
        Assert.True(day.VacuumOff!.Value.Hours >= 1.5 * day.Gel.Value.Hours);
        Assert.InRange(day.VacuumOff.Value.Hours, 6, 12);
        Assert.InRange(day.Demould!.Value.Hours, 9, 24);
        Assert.True(day.Demould >= day.VacuumOff);
        Assert.True(day.DemouldByTransition);
    }

    [Fact]
    public void Each_rule_holds_at_the_moment_and_not_before()
    {
        CureCurve cure = CureSimulation.Along(Slow, Oven(20, 60, 0.5, 360), SlowOptions);
        MilestoneRules rules = new();
        CureMilestones found = CureMilestones.Of(cure, rules);
        Within(GelPoint.Usual.DecimalFractions, cure.DegreeAt(found.Gel!.Value).DecimalFractions, 1e-7);

        // It is gelled in the heat, and may only be pulled in the cooling, at 50 degC.
        Duration pulled = found.Demould!.Value;
        Within(50, cure.TemperatureAt(pulled).DegreesCelsius, 0.01);
        Assert.True(cure.GlassTransitionAt(pulled)!.Value.DegreesCelsius >= 70);
        CureMilestones further = CureMilestones.Of(cure, rules with { DemouldLead = K(40) });
        Duration later = further.Demould!.Value;
        Assert.True(later > pulled);
        Within(40, cure.GlassTransitionAt(later)!.Value.Kelvins - cure.TemperatureAt(later).Kelvins, 0.01);
    }

    [Fact]
    public void What_does_not_happen_is_not_told()
    {
        CureMilestones early = CureMilestones.Of(CureSimulation.Along(Slow, Hold(20, 60), SlowOptions));
        Assert.Equal(new CureMilestones(null, null, null, true), early);

        CureCurve known = CureSimulation.Along(Slow, Day);
        CureMilestones without = CureMilestones.Of(known);
        Assert.False(without.DemouldByTransition);
        Within(0.80, known.DegreeAt(without.Demould!.Value).DecimalFractions, 1e-6);

        // Where the rules are met at once, the vacuum still goes first.
        CureMilestones quick = CureMilestones.Of(known, new MilestoneRules { Demould = Part(0.1), VacuumHold = 2 });
        Assert.Equal(quick.VacuumOff, quick.Demould);

        // Just past gel the hold of the vacuum is not over.
        double gel = known.TimeTo(GelPoint.Usual)!.Value.Minutes;
        Assert.Null(CureMilestones.Of(CureSimulation.Along(Slow, Hold(20, gel * 1.3))).VacuumOff);
        Assert.NotNull(CureMilestones.Of(CureSimulation.Along(Slow, Hold(20, gel * 1.6))).VacuumOff);
    }

    [Fact]
    public void Rules_without_sense_are_refused()
    {
        CureCurve cure = CureSimulation.Along(Slow, Day);
        Assert.Throws<ArgumentOutOfRangeException>(() => CureMilestones.Of(cure, new MilestoneRules { VacuumHold = 0.5 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => CureMilestones.Of(cure, new MilestoneRules { Demould = Part(2) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => CureMilestones.Of(cure, new MilestoneRules { DemouldLead = K(-1) }));
    }
}
