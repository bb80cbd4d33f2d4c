using System.Text;
using Recipe.TestKit;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Tests;

/// <summary>Whole texts with what each stage makes of them, in files beside them.</summary>
public sealed class CaseTests
{
    private static readonly GoldenCases Cases =
        new("tests/Recipe.Syntax.Tests/cases", "input.recipe", "tokens.txt", "tree.txt", "findings.txt", "formatted.recipe");

    public static TheoryData<string> Names => [.. Cases.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Tokens(string name)
    {
        var tree = Tree(name);
        Cases.Check(name, "tokens.txt", string.Concat(tree.Tokens.Select(token => $"{tree.Source.PositionOf(token.Span.Start)} {token.Kind} {Visible(tree.Source.Slice(token.Span))}".TrimEnd() + "\n")));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Tree_of(string name) => Cases.Check(name, "tree.txt", TreePrinter.Print(Tree(name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void Findings(string name)
    {
        var tree = Tree(name);
        Cases.Check(name, "findings.txt", tree.Findings.IsEmpty ? "(none)\n" : string.Join('\n', tree.Findings.Select(Describe)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Formatted(string name) => Cases.Check(name, "formatted.recipe", Formatter.Format(Tree(name)));

    [Fact]
    public void No_file_of_a_case_is_an_orphan() => Assert.Empty(Cases.Orphans());

    [Fact]
    public void There_are_cases() => Assert.True(Cases.Names.Count >= 10);

    private static SyntaxTree Tree(string name) => SyntaxTree.Parse(new SourceText($"{name}.recipe", Cases.Input(name)));

    private static string Describe(Finding finding)
    {
        var text = new StringBuilder($"{finding.Where} {finding.Severity} {finding.Descriptor.Code} {finding.Descriptor.Name}: {finding.Message}\n");
        var source = finding.Where.Source;
        var place = finding.Where.Start;
        text.Append("  | ").Append(source.Slice(source.LineSpan(place.Line)).Replace('\t', ' ')).Append('\n');
        text.Append("  | ").Append(' ', place.Column).Append('^', Math.Max(1, finding.Where.Text.Split('\n', '\r')[0].Length)).Append('\n');
        foreach (var label in finding.Labels)
        {
            text.Append($"  {label.Where.Start} {label.Text}\n");
        }

        foreach (var fix in finding.Fixes)
        {
            text.Append($"  fix ({fix.Safety}): {fix.Title}\n");
            text.Append(string.Concat(fix.Edits.Select(edit => $"    {edit.Where.Start} {Visible(edit.Where.Text)} -> {Visible(edit.NewText)}\n")));
        }

        return text.ToString();
    }

    private static string Visible(string text) =>
        text.Replace("\r", "\\r").Replace("\n", "\\n").Replace("\t", "\\t").Replace(' ', '\u00b7');
}
