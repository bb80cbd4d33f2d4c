using Recipe.RulesHost.Tests.Cases;

namespace Recipe.RulesHost.Tests;

/// <summary>What a rule may not do is refused, each for its reason.</summary>
public sealed class EscapeTests
{
    public static TheoryData<string> Names => [.. Escapes.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_refused(string name)
    {
        var escape = Escapes.All[name];
        var compiled = Write.Compile(Write.Rule(escape.Body, escape.Members, escape.Types));
        Assert.Null(compiled.Image);
        Assert.True(
            compiled.Diagnostics.Any(one => one.Code == escape.Code && one.Message.Contains(escape.Says, StringComparison.Ordinal)),
            compiled.Said());
    }

    [Theory]
    [InlineData("RULE001", "using F = System.IO.File;\n", "_ = F.Exists(\"a\");")]
    [InlineData("RULE001", "using static System.IO.File;\n", "_ = Exists(\"a\");")]
    [InlineData("RULE001", "using static System.Environment;\n", "Exit(0);")]
    [InlineData("RULE002", "[assembly: System.CLSCompliant(false)]\n", "")]
    [InlineData("RULE002", "extern alias other;\n", "")]
    [InlineData("RULE001", "using T = System.Threading.Tasks.Task;\n", "_ = T.CompletedTask;")]
    public void It_is_refused_at_the_top_of_the_file(string code, string top, string body)
    {
        var compiled = Write.Compile(top + Write.Rule(body));
        Assert.Null(compiled.Image);
        Assert.True(compiled.Diagnostics.Any(one => one.Code == code), compiled.Said());
    }
}
