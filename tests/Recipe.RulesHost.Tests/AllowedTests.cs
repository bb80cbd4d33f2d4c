using Recipe.RulesHost.Tests.Cases;

namespace Recipe.RulesHost.Tests;

/// <summary>What a rule may do compiles with its counters, runs, and finds what it should.</summary>
[Collection("counter")]
public sealed class AllowedTests
{
    public static TheoryData<string> Names => [.. Allowed.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_runs(string name)
    {
        var use = Allowed.All[name];
        var answer = HostCollection.Run(Write.Rule(use.Body, use.Members, use.Types));
        Assert.True(answer.Diagnostics.IsEmpty, string.Join('\n', answer.Diagnostics.Select(one => $"{one.Code} {one.Start} {one.Message}")));
        Assert.True(answer.Problems.IsEmpty, string.Join('\n', answer.Problems.Select(one => one.Message)));
        Assert.Equal(use.Finds, Assert.Single(answer.Findings).Message);
    }
}
