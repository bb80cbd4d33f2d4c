namespace Recipe.Cli.Tests;

public sealed class NewRuleTests : IDisposable
{
    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_rule_is_started_and_sound()
    {
        var run = _bench.RunHere("new", "rule", "light-cloth");
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.StartsWith("wrote light-cloth.rule.recipe\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("rule light-cloth {", File.ReadAllText(_bench.PathOf("light-cloth.rule.recipe")), StringComparison.Ordinal);
        Assert.Equal("1 file, 1 rule with 2 examples run: nothing wrong found\n", _bench.RunHere("check", "light-cloth.rule.recipe").Out);
        Assert.Equal(ExitStatus.Clean, _bench.RunHere("fmt", "--check", "light-cloth.rule.recipe").Status);
    }

    [Fact]
    public void One_in_CSharp_is_a_class_of_its_name_and_runs_nowhere_before_somebody_agreed()
    {
        Assert.Equal(ExitStatus.Clean, _bench.RunHere("new", "rule", "light-cloth-2", "--csharp").Status);
        var text = File.ReadAllText(_bench.PathOf("light-cloth-2.rule.cs"));
        Assert.Contains("public sealed class LightCloth2 : HouseRule", text, StringComparison.Ordinal);
        Assert.Contains("\"light-cloth-2\"", text, StringComparison.Ordinal);
        _bench.Write("settings.recipe", "use \"light-cloth-2.rule.cs\"\n");
        Assert.Contains("RC9205 rules-not-trusted", _bench.RunHere("check", "settings.recipe").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Light", "is no name for a rule")]
    [InlineData("light-", "is no name for a rule")]
    public void A_name_that_is_none_is_refused(string name, string says)
    {
        var run = _bench.RunHere("new", "rule", name);
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_there_is_left_as_it_is()
    {
        _bench.Write("mine.rule.recipe", "# mine\n");
        Assert.Equal(ExitStatus.CouldNotRun, _bench.RunHere("new", "rule", "mine").Status);
        Assert.Equal("# mine\n", File.ReadAllText(_bench.PathOf("mine.rule.recipe")));
    }
}
