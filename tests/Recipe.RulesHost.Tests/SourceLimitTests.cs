namespace Recipe.RulesHost.Tests;

/// <summary>Source that would take the compiler too long or too deep is refused in no time.</summary>
public sealed class SourceLimitTests
{
    public static TheoryData<string, string> Bombs => new()
    {
        { "brackets", $"int x = {new string('(', 5000)}1{new string(')', 5000)};" },
        { "brackets that do not close", new string('(', 100_000) },
        { "braces", new string('{', 100_000) },
        { "signs", $"bool x = {new string('!', 100_000)}true;" },
        { "signs with blanks", $"int x = {string.Concat(Enumerable.Repeat("- ", 50_000))}1;" },
        { "type arguments", $"{string.Concat(Enumerable.Repeat("List<", 2000))}int{new string('>', 2000)} x;" },
        { "a chain of sums", $"int x = {string.Join('+', Enumerable.Repeat("1", 20_000))};" },
        { "a chain of calls", $"var x = \"a\"{string.Concat(Enumerable.Repeat(".Trim()", 5_000))};" },
        { "a chain of conditions", $"int x = {string.Concat(Enumerable.Repeat("true?1:", 5_000))}1;" },
        { "a chain of else", $"{string.Concat(Enumerable.Repeat("if(true);else ", 5_000))};" },
        { "a chain of lambdas", $"Func<int> x = {string.Concat(Enumerable.Repeat("() => ", 5_000))}1;" },
        { "lambdas in calls", $"var x = {string.Concat(Enumerable.Repeat("F(a => ", 20))}1{new string(')', 20)};" },
        { "interpolations", string.Concat(Enumerable.Repeat("_ = $\"{", 200)) },
        { "a long file", new string(' ', 300_000) },
    };

    [Theory]
    [MemberData(nameof(Bombs))]
    public void It_is_refused_at_once(string name, string body)
    {
        var compiled = Write.Compile(Write.Rule(body));
        Assert.True(compiled.Image is null && compiled.Diagnostics is [{ Code: "RULE010" }], $"{name}: {compiled.Diagnostics.Said()}");
    }

    [Theory]
    [InlineData("", "RULE013", "There is no rule in this file")]
    [InlineData("class C;", "RULE013", "There is no rule in this file")]
    [InlineData("abstract class C : HouseRule;", "RULE013", "There is no rule in this file")]
    public void A_file_without_a_rule_says_so(string text, string code, string says)
    {
        var one = Assert.Single(Write.Compile(text).Diagnostics);
        Assert.Equal(code, one.Code);
        Assert.StartsWith(says, one.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_that_cannot_be_made_says_so() =>
        Assert.Equal("RULE012", Assert.Single(Write.Compile(Write.Rule("", members: "public One(int n) { }")).Diagnostics).Code);
}
