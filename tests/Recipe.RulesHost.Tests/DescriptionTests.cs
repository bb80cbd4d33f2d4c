namespace Recipe.RulesHost.Tests;

/// <summary>What a rule says of itself is held to account before it is run.</summary>
[Collection("counter")]
public sealed class DescriptionTests
{
    [Theory]
    [InlineData("Name => \"one\"", "Name => \"Not Kebab\"", "RULE015", "is not in kebab case")]
    [InlineData("Name => \"one\"", "Name => \"\"", "RULE015", "is not in kebab case")]
    [InlineData("Title => \"a title\"", "Title => \"\"", "RULE015", "empty title")]
    [InlineData("Name => \"one\"", "Name => throw new InvalidOperationException(\"no name\")", "RULE014", "failed with InvalidOperationException: no name")]
    [InlineData("Name => \"one\"", "Name => Name", "RULE014", "was stopped")]
    [InlineData("Title => \"a title\";", "Title { get { while (true) { } } }", "RULE014", "took more than")]
    [InlineData("Title => \"a title\";", "Title => \"a title\"; public override RuleSeverity Severity => (RuleSeverity)7;", "RULE015", "no severity that exists")]
    [InlineData("Title => \"a title\";", "Title => \"a title\"; public One() => throw new InvalidOperationException(\"no\");", "RULE014", "no")]
    [InlineData("Title => \"a title\";", "Title => \"a title\"; private readonly int _n = Zero() / 0m > 1 ? 1 : 2; private static int Zero() => 1;", "RULE014", "divide by zero")]
    public void What_is_wrong_with_it_is_said(string before, string after, string code, string says)
    {
        var text = Write.Rule("");
        Assert.Contains(before, text, StringComparison.Ordinal);
        var answer = HostCollection.Run(text.Replace(before, after, StringComparison.Ordinal));
        Assert.True(answer.Diagnostics.Any(one => one.Code == code && one.Message.Contains(says, StringComparison.Ordinal)), answer.Diagnostics.Said());
        Assert.Empty(answer.Rules);
    }

    [Fact]
    public void Two_rules_of_one_name_are_refused()
    {
        var text = Write.Rule("") + Write.Rule("", name: "two").Replace("\"two\"", "\"one\"", StringComparison.Ordinal);
        Assert.Contains("two rules with the name 'one'", Assert.Single(HostCollection.Run(text).Diagnostics).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Texts_are_on_one_line_and_examples_are_not()
    {
        var text = Write.Rule("").Replace("\"a title\";", "\"a\\u001b[31m \\n title\"; public override string BadExample => \"part a {\\n}\\n\";", StringComparison.Ordinal);
        var rule = Assert.Single(HostCollection.Run(text).Rules);
        Assert.DoesNotContain(rule.Title, char.IsControl);
        Assert.Equal("part a {\n}\n", rule.BadExample);
    }
}
