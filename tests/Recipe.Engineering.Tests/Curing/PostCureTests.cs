using UnitsNet;
using static Recipe.Engineering.Tests.Cures;

namespace Recipe.Engineering.Tests;

public class PostCureTests
{
    private static CureOptions AfterADay { get; } =
        SlowOptions with { Start = CureSimulation.Along(Slow, Day, SlowOptions).FinalDegree };

    private static PostCureLead Up(double to, double kelvinsPerHour) => PostCure.LeadOf(CureSimulation.Along(
        Slow,
        CureSchedule.Create(
            C(20), [new RampStep(C(to), TemperatureChangeRate.FromDegreesCelsiusPerHour(kelvinsPerHour)), new HoldStep(C(to), Min(600))]),
        AfterADay));

    [Fact]
    public void A_part_dropped_into_heat_above_its_glass_transition_softens()
    {
        // Fresh from the room its glass transition is 45 degC: at 70 degC it lacks 25 K at once.
        PostCureLead shock = PostCure.LeadOf(CureSimulation.Along(Slow, Hold(70, 600), AfterADay));
        Within(-25, shock.Least.Kelvins, 0.1);
        Assert.Equal(Duration.Zero, shock.At);
        Assert.Equal(Duration.Zero, shock.Softens);
        Assert.True(shock.Final > C(75));
    }

    [Fact]
    public void A_slow_ramp_keeps_the_glass_transition_ahead()
    {
        // Common practice: 10 K/h for a part that nothing supports.
        PostCureLead slow = Up(60, 10);
        Assert.True(slow.Least.Kelvins > 5);
        Assert.Null(slow.Softens);

        PostCureLead fast = Up(70, 300);
        Assert.True(fast.Least.Kelvins < 0);
        double softens = fast.Softens!.Value.Minutes;

        // It softens where the oven passes the 45 degC that the room left it, or little above.
        Assert.InRange(20 + (softens * 5), 45, 50);
    }

    [Fact]
    public void Slower_ramps_keep_more_lead()
    {
        double[] leads = [.. new double[] { 300, 100, 30, 10, 3 }.Select(rate => Up(65, rate).Least.Kelvins)];
        Assert.Equal(leads.Order(), leads);
        Assert.True(leads[^1] > leads[0] + 5);
    }

    [Fact]
    public void The_fastest_ramp_keeps_just_the_lead_that_was_asked()
    {
        double PerHour(double lead, double to) =>
            PostCure.FastestRamp(Slow, C(20), C(to), K(lead), AfterADay)!.Value.DegreesCelsiusPerHour;
        double found = PerHour(8, 65);
        Assert.InRange(found, 1, 200);
        PostCureLead kept = PostCure.LeadOf(CureSimulation.Along(
            Slow, CureSchedule.Create(C(20), [new RampStep(C(65), TemperatureChangeRate.FromDegreesCelsiusPerHour(found))]), AfterADay));
        Within(8, kept.Least.Kelvins, 0.05);
        Assert.True(PerHour(12, 65) < found);
        Digits.Close(600, PerHour(5, 40));
    }

    [Fact]
    public void A_lead_beyond_the_limit_of_the_resin_cannot_be_kept()
    {
        // 85 degC is the most the resin ever has: 20 K above 70 degC do not exist.
        Assert.Null(PostCure.FastestRamp(Slow, C(20), C(70), K(20), AfterADay));
        Assert.Throws<ArgumentOutOfRangeException>(() => PostCure.FastestRamp(Slow, C(20), C(20), K(5), AfterADay));
        Assert.Throws<ArgumentOutOfRangeException>(() => PostCure.FastestRamp(Slow, C(20), C(60), K(-5), AfterADay));
        Assert.Throws<ArgumentException>(() => PostCure.LeadOf(CureSimulation.Along(Slow, Day)));
    }
}
