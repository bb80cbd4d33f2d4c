using Recipe.RulesHost.Tests.Cases;

namespace Recipe.RulesHost.Tests;

/// <summary>What would never end, or never stop growing, is stopped by the counters, without help from outside the process.</summary>
[Collection("counter")]
public sealed class RunawayTests
{
    private static readonly Lazy<(ManyRules Rules, RuleRunAnswer Answer)> Run = new(() =>
    {
        var many = new ManyRules();
        foreach (var (name, runaway) in Runaways.All)
        {
            many.Add(name, runaway.Body, runaway.Members, runaway.Types);
        }

        return (many, HostCollection.Run(many.Text));
    });

    public static TheoryData<string> Names => [.. Runaways.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_stopped(string name)
    {
        var (rules, answer) = Run.Value;
        Assert.True(answer.Diagnostics.IsEmpty, answer.Diagnostics.Select(one => one with { Message = $"{rules.CaseAt(one.Start)}: {one.Message}" }).Said());
        var problem = Assert.Single(answer.Problems, one => one.Rule == rules.RuleOf(name));

        // The runtime may turn a call at the end of a method into a loop, which the steps then stop.
        var says = Runaways.All[name].Says;
        Assert.True(problem.Message.Contains(says, StringComparison.Ordinal) || (says == Runaways.Deep && problem.Message.Contains(Runaways.Steps, StringComparison.Ordinal)), problem.Message);
        Assert.Equal(RuleProblemKind.RuleStopped, problem.Kind);
        Assert.Empty(answer.Findings);
    }
}
