using Recipe.RulesHost.Compiling;
using Recipe.RulesHost.Tests.Cases;

namespace Recipe.RulesHost.Tests;

/// <summary>What a rule may not do is refused, each for its reason.</summary>
public sealed class EscapeTests
{
    private static readonly Lazy<ILookup<string?, RuleDiagnostic>> Refused = new(() =>
    {
        var many = new ManyRules();
        foreach (var (name, escape) in Escapes.All)
        {
            many.Add(name, escape.Body, escape.Members, escape.Types);
        }

        return RuleCompiler.Read(new RuleSource("many.rule.cs", many.Text), RuleCompiler.Parse(many.Text)).ToLookup(one => many.CaseAt(one.Start));
    });

    public static TheoryData<string> Names => [.. Escapes.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_refused(string name)
    {
        var escape = Escapes.All[name];
        var found = Refused.Value[name];
        Assert.True(found.Any(one => one.Code == escape.Code && one.Message.Contains(escape.Says, StringComparison.Ordinal)), found.Said());
    }

    [Theory]
    [InlineData("RULE001", "using F = System.IO.File;\n", "_ = F.Exists(\"a\");")]
    [InlineData("RULE001", "using static System.Environment;\n", "Exit(0);")]
    [InlineData("RULE002", "[assembly: System.CLSCompliant(false)]\n", "")]
    [InlineData("RULE002", "extern alias other;\n", "")]
    [InlineData("RULE001", "namespace Recipe.RulesHost.Running { public static class Steps { public static void Enter() { } public static void Take() { } } }\n", "while (true) { }")]
    [InlineData("RULE001", "public static class Recipe { public static class RulesHost { public static class Running { public static class Steps { public static void Enter() { } public static void Take() { } } } } }\n", "while (true) { }")]
    [InlineData("RULE001", "namespace System.Runtime.CompilerServices { public static class RuntimeHelpers { public static void EnsureSufficientExecutionStack() { } } }\n", "")]
    [InlineData("RULE001", "namespace UnitsNet.Mine { public enum E { A } }\n", "")]
    public void It_is_refused_at_the_top_of_the_file(string code, string top, string body)
    {
        var compiled = Write.Compile(top + Write.Rule(body));
        Assert.Null(compiled.Image);
        Assert.True(compiled.Diagnostics.Any(one => one.Code == code), compiled.Diagnostics.Said());
    }
}
