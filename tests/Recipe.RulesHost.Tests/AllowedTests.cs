using Recipe.RulesHost.Tests.Cases;

namespace Recipe.RulesHost.Tests;

/// <summary>What a rule may do compiles with its counters, runs, and finds what it should.</summary>
[Collection("counter")]
public sealed class AllowedTests
{
    private static readonly Lazy<(ManyRules Rules, RuleRunAnswer Answer)> Run = new(() =>
    {
        var many = new ManyRules();
        foreach (var (name, use) in Allowed.All)
        {
            many.Add(name, use.Body, use.Members, use.Types);
        }

        return (many, HostCollection.Run(many.Text));
    });

    public static TheoryData<string> Names => [.. Allowed.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_runs(string name)
    {
        var (rules, answer) = Run.Value;
        Assert.True(answer.Diagnostics.IsEmpty, answer.Diagnostics.Select(one => one with { Message = $"{rules.CaseAt(one.Start)}: {one.Message}" }).Said());
        Assert.Empty(answer.Problems.Where(one => one.Rule == rules.RuleOf(name)).Select(one => one.Message));
        Assert.Equal(Allowed.All[name].Finds, Assert.Single(answer.Findings, one => one.Rule == rules.RuleOf(name)).Message);
    }
}
