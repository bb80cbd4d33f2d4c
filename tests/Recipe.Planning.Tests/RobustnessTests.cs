using CsCheck;
using Recipe.Model;
using Recipe.TestKit.Models;

namespace Recipe.Planning.Tests;

public class RobustnessTests
{
    /// <summary>Whatever is missing, there is a plan, and what it cannot say it names.</summary>
    [Fact]
    public void NothingThatIsMissingStopsThePlan() => Gen.Select(RandomParts.Model, Gen.Int, Gen.Double[0, 0.6]).Sample(
        (model, seed, chance) =>
        {
            var thin = ModelSurgery.Thin(model, new Random(seed), chance);
            var plan = Planner.Plan(thin.Parts[0], thin);
            Assert.Equal(plan.Laminate is null, plan.Gaps.Any(g => g.Subject == "mass of the part"));
            Assert.Empty(PlanDump.NoNumbers(plan));
        },
        iter: 1000);

    /// <summary>Whatever the figures, there is a plan, and no number in it is infinite or none.</summary>
    [Fact]
    public void NoFigureHoweverOddStopsThePlan() => Gen.Select(RandomParts.Model, Gen.Int, Gen.Double[0, 0.3]).Sample(
        (model, seed, chance) =>
        {
            var odd = ModelSurgery.Distort(model, new Random(seed), chance);
            Assert.Empty(PlanDump.NoNumbers(Planner.Plan(odd.Parts[0], odd)));
        },
        iter: 1000);

    [Fact]
    public void AnEmptyPartHasAPlanOfGaps()
    {
        var part = new Part { Name = "nothing", Where = Fig.Somewhere, Process = Fig.Stated(Process.Bagged, "bagged") };
        var plan = Planner.Plan(part, Recipes.Around(part));
        Assert.Null(plan.Geometry);
        Assert.Null(plan.Laminate);
        Assert.Null(plan.Resin);
        Assert.Empty(plan.Takeoff);
        Assert.Contains(plan.Gaps, g => g.Subject == "areas and sizes");
        Assert.Contains(plan.Gaps, g => g is { Subject: "resin to mix", Missing: "the part names no resin" });
    }

    [Fact]
    public void TheSamePartGivesTheSamePlanOnAnyThread()
    {
        var model = Recipes.HatchLid();
        var expected = PlanDump.Text(Planner.Plan(model.Parts[0], model));
        var texts = new string[64];
        Parallel.For(0, texts.Length, i => texts[i] = PlanDump.Text(Planner.Plan(model.Parts[0], model)));
        Assert.All(texts, text => Assert.Equal(expected, text));
    }

    [Fact]
    public void TheSameRandomPartGivesTheSamePlan() => RandomParts.Model.Sample(
        model => Assert.Equal(PlanDump.Text(Planner.Plan(model.Parts[0], model)), PlanDump.Text(Planner.Plan(model.Parts[0], model))),
        iter: 100);
}
