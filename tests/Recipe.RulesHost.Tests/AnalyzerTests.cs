using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Recipe.RuleAnalyzers;
using Recipe.RulesHost.Tests.Cases;

namespace Recipe.RulesHost.Tests;

/// <summary>An editor marks what the host refuses, in a project with the whole framework and the newest language, and nothing else.</summary>
public sealed class AnalyzerTests
{
    private static readonly Lazy<ILookup<string?, Diagnostic>> OfEscapes = new(() => Analyze(Escapes.All.Select(pair => (pair.Key, pair.Value.Body, pair.Value.Members, pair.Value.Types))));

    public static TheoryData<string> Names => [.. Escapes.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void An_editor_marks_it(string name)
    {
        // With the whole framework referred to, what the host's compiler cannot find has a name.
        var code = Escapes.All[name].Code is { } own && own.StartsWith("RULE", StringComparison.Ordinal) ? own : "RULE001";
        Assert.Contains(OfEscapes.Value[name], one => one.Id == code);
    }

    [Fact]
    public void An_editor_leaves_alone_what_a_rule_may_do() =>
        Assert.Empty(Analyze(Allowed.All.Select(pair => (pair.Key, pair.Value.Body, pair.Value.Members, pair.Value.Types))).SelectMany(group => group.Select(one => $"{group.Key}: {one.Id} {one.GetMessage()}")));

    [Fact]
    public void Other_files_of_the_project_are_left_alone() =>
        Assert.Empty(Run("class C { static int s_n; void M() => System.IO.File.Delete(\"a\"); }", "Helper.cs"));

    [Fact]
    public void The_mark_stands_where_the_host_says()
    {
        var text = Write.Rule("_ = System.IO.File.Exists(\"a\");");
        var host = Assert.Single(Write.Compile(text).Diagnostics);
        var mark = Assert.Single(Run(text, "one.rule.cs"));
        Assert.Equal((host.Code, host.Start, host.End, host.Message), (mark.Id, mark.Location.SourceSpan.Start, mark.Location.SourceSpan.End, mark.GetMessage()));
        Assert.Equal("File", text[host.Start..host.End]);
    }

    private static ILookup<string?, Diagnostic> Analyze(IEnumerable<(string Name, string Body, string Members, string Types)> cases)
    {
        var many = new ManyRules();
        foreach (var (name, body, members, types) in cases)
        {
            many.Add(name, body, members, types);
        }

        return Run(many.Text, "many.rule.cs").ToLookup(one => many.CaseAt(one.Location.SourceSpan.Start));
    }

    private static IReadOnlyList<Diagnostic> Run(string text, string path)
    {
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(file => MetadataReference.CreateFromFile(file));
        const string usings = "global using System; global using System.Collections.Generic; global using System.Linq; global using UnitsNet; global using Recipe.RuleApi;";
        var compilation = CSharpCompilation.Create(
            "author",
            [CSharpSyntaxTree.ParseText(text, path: path), CSharpSyntaxTree.ParseText(usings)],
            references,
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, allowUnsafe: true, nullableContextOptions: NullableContextOptions.Enable));
        return [.. compilation.WithAnalyzers([new RuleAnalyzer()]).GetAnalyzerDiagnosticsAsync().GetAwaiter().GetResult()];
    }
}
