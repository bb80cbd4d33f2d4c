using Recipe.RulesHost.Compiling;

namespace Recipe.RulesHost.Tests;

/// <summary>Files of rules for tests.</summary>
internal static class Write
{
    /// <summary>A file with one rule.</summary>
    /// <param name="body">The statements of its Examine.</param>
    /// <param name="members">Other members of the rule.</param>
    /// <param name="types">Other types of the file.</param>
    /// <param name="name">The name of the rule.</param>
    public static string Rule(string body, string members = "", string types = "", string name = "one") => $$"""
        public sealed class {{string.Concat(name.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]))}} : HouseRule
        {
            public override string Name => "{{name}}";
            public override string Title => "a title";
            public override string Reason => "a reason";
            public override string Remedy => "a remedy";
            public override void Examine(PartFacts part, RuleReport report)
            {
                {{body}}
            }
            {{members}}
        }
        {{types}}

        """;

    /// <summary>Compiles a text.</summary>
    public static CompiledFile Compile(string text) => RuleCompiler.Compile(new RuleSource("one.rule.cs", text));

    /// <summary>The diagnostics, to be read in a failure.</summary>
    public static string Said(this IEnumerable<RuleDiagnostic> diagnostics) => string.Join('\n', diagnostics.Select(one => $"{one.Code} {one.Start} {one.Message}"));
}
