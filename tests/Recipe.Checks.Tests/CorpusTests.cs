using Recipe.TestKit;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>Sound recipes earn nothing, planted mistakes are found where they are, and nothing else is.</summary>
public class CorpusTests
{
    private const string Mistakes = "samples/mistakes";

    // The mistakes that a first program has to catch, and the finding that does.
    private static readonly string[] FirstSet =
    [
        "bare-number", "wrong-kind-of-unit", "cloth-in-ounces", "vacuum-without-convention", "more-vacuum-than-air", "ratio-without-basis",
        "unknown-name", "duplicate-name", "film-under-peel-ply", "felt-on-laminate", "solid-film-blocks-bleed", "bag-upside-down",
        "pot-dies-first", "batches-short", "mould-too-hot", "core-too-hot", "bag-too-hot", "no-release", "no-cure", "no-leak-check",
        "wider-than-roll",
    ];

    public static TheoryData<string> Sound => [.. Shipped.In("tests/corpus/sound")];

    public static TheoryData<string> Samples => [.. Shipped.In("samples").Concat(Shipped.In("src/Recipe.Compiler/Templates"))];

    public static TheoryData<string> Mistaken => [.. Shipped.In(Mistakes)];

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_sound_recipe_earns_no_warning_and_no_error(string path) =>
        Assert.Empty(Shipped.Compile(path).Findings.Where(f => f.Severity != Severity.Advice).Select(Told));

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_sample_and_a_template_earn_not_even_advice(string path) => Assert.Empty(Shipped.Compile(path).Findings.Select(Told));

    [Theory]
    [MemberData(nameof(Mistaken))]
    public void A_planted_mistake_earns_its_finding_and_nothing_else_does(string path)
    {
        var expected = Table().Where(m => m.File == path).Select(m => $"{m.Line} {m.Code} {m.Name} {m.Severity}");
        var found = Shipped.Compile(path).Findings
            .Select(f => $"{f.Where.Start.Line + 1} {f.Descriptor.Code} {f.Descriptor.Name} {f.Severity.ToString().ToLowerInvariant()}");
        Assert.Equal(expected.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Mistaken))]
    public void The_table_names_the_lines_that_are_marked(string path)
    {
        var marked = Repository.Read(path).Split('\n').Select((line, i) => (line, Number: i + 1)).Where(l => l.line.Contains("# wrong: ", StringComparison.Ordinal));
        Assert.Equal(
            Table().Where(m => m.File == path).Select(m => $"{m.Line} {m.Mistake}"),
            marked.Select(l => $"{l.Number} {l.line[(l.line.IndexOf("# wrong: ", StringComparison.Ordinal) + 9)..].Trim()}"));
    }

    [Theory]
    [MemberData(nameof(Mistaken))]
    public void Each_fix_of_a_planted_mistake_can_be_applied(string path)
    {
        var file = Shipped.Compile(path);
        foreach (var fix in file.Findings.SelectMany(f => f.Fixes))
        {
            Assert.NotEqual(file.Source.Text, TextEdit.Apply(file.Source, fix.Edits));
        }
    }

    [Fact]
    public void The_first_set_is_covered_by_a_planted_mistake_each() =>
        Assert.Empty(FirstSet.Except(Table().Select(m => m.Name)));

    private static IEnumerable<(string File, int Line, string Code, string Name, string Severity, string Mistake)> Table() =>
        Repository.Read("tests/corpus/mistakes.tsv")
            .Split('\n')
            .Where(l => l.StartsWith(Mistakes, StringComparison.Ordinal))
            .Select(l => l.TrimEnd('\r').Split('\t'))
            .Select(c => (c[0], int.Parse(c[1], null), c[2], c[3], c[4], c[5]));

    private static string Told(Finding finding) => $"{finding.Where} {finding.Severity} {finding.Descriptor.Name}: {finding.Message}";
}
