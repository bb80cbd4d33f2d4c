using Recipe.TestKit;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>
/// Sound recipes with one slip planted in each: the slip earns its finding, and besides it only what truly follows from it.
/// The slips are common practice of the trade; every figure in them is invented.
/// </summary>
public class BrokenCorpusTests
{
    private const string TablePath = "tests/corpus/broken.tsv";

    // What may follow from one slip before it hides the slip itself.
    private const int MostThatFollow = 2;

    private static readonly Lazy<IReadOnlyList<Slip>> LazySlips = new(Read);

    public static TheoryData<int> Rows => [.. LazySlips.Value.Select(s => s.Line)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_planted_slip_earns_its_finding_and_only_what_follows_from_it(int line)
    {
        var slip = LazySlips.Value.Single(s => s.Line == line);
        var findings = Findings(slip);

        Assert.True(findings.Exists(f => f.Descriptor.Name == slip.Finding), $"{slip}: {slip.Finding} is not among {Told(findings)}");
        var others = findings.Where(f => f.Descriptor.Name != slip.Finding && f.Severity != Severity.Advice).ToList();
        Assert.True(others.Count <= MostThatFollow, $"{slip}: too much follows: {Told(others)}");
        Assert.True(
            slip.Follows.Order(StringComparer.Ordinal).SequenceEqual(others.Select(f => f.Descriptor.Name).Distinct().Order(StringComparer.Ordinal)),
            $"{slip}: what follows is {Told(others)}");
    }

    /// <summary>So that a row cannot pass because its recipe had the finding all along.</summary>
    [Fact]
    public void The_recipes_earn_none_of_it_as_they_stand()
    {
        foreach (var file in LazySlips.Value.GroupBy(s => s.File))
        {
            var names = Shipped.Compile(file.Key).Findings.Select(f => f.Descriptor.Name);
            Assert.Empty(names.Intersect(file.Select(s => s.Finding)).Select(n => $"{file.Key}: {n}"));
        }
    }

    [Fact]
    public void Each_slip_is_another_one() =>
        Assert.Equal(LazySlips.Value.Count, LazySlips.Value.Select(s => (s.File, s.Old, s.New)).Distinct().Count());

    [Fact]
    public void The_corpus_is_as_large_as_it_is_said_to_be()
    {
        Assert.True(Shipped.In("tests/corpus/sound").Length >= 40);
        Assert.True(LazySlips.Value.Count >= 180);
        Assert.True(LazySlips.Value.Select(s => s.Finding).Distinct().Count() >= 120);
    }

    private static List<Finding> Findings(Slip slip)
    {
        var text = Repository.Read(slip.File);
        var first = text.IndexOf(slip.Old, StringComparison.Ordinal);
        Assert.True(first >= 0, $"{slip}: the old text is not there");
        Assert.True(text.IndexOf(slip.Old, first + 1, StringComparison.Ordinal) < 0, $"{slip}: the old text stands there more than once");
        var broken = string.Concat(text.AsSpan(0, first), slip.New, text.AsSpan(first + slip.Old.Length));
        return [.. Shipped.Compile(slip.File, broken).Findings];
    }

    private static string Told(IEnumerable<Finding> findings) => string.Join("; ", findings.Select(f => $"{f.Severity} {f.Descriptor.Name}: {f.Message}"));

    private static IReadOnlyList<Slip> Read() =>
    [
        .. Repository.Read(TablePath)
            .Split('\n')
            .Select((text, i) => (Cells: text.TrimEnd('\r').Split('\t'), Line: i + 1))
            .Where(r => r.Line > 1 && r.Cells.Length > 1)
            .Select(r => new Slip(r.Line, r.Cells[0], Plain(r.Cells[1]), Plain(r.Cells[2]), r.Cells[3], r.Cells[4], r.Cells.Length > 5 ? r.Cells[5].Split(',') : [])),
    ];

    // `\n` stands for a line end and `\\` for a backslash, since a row is one line.
    private static string Plain(string cell) =>
        cell.Replace(@"\\", "\0", StringComparison.Ordinal).Replace(@"\n", "\n", StringComparison.Ordinal).Replace('\0', '\\');

    private sealed record Slip(int Line, string File, string Old, string New, string Finding, string Mistake, string[] Follows)
    {
        public override string ToString() => $"{TablePath}:{Line} {File}, {Mistake}";
    }
}
