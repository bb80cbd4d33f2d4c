using System.Text.RegularExpressions;
using Recipe.Syntax.Findings;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Tests;

/// <summary>The examples on the page of each finding are true, and its fixes settle it.</summary>
public sealed partial class FindingExampleTests
{
    public static TheoryData<string> Codes => [.. SyntaxFindings.All.Select(descriptor => descriptor.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_bad_example_earns_exactly_this_finding(string code) => Assert.Equal([code], Read.Codes(Of(code).BadExample));

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_good_example_earns_none(string code) => Read.Clean(Of(code).GoodExample);

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_fix_settles_the_finding(string code)
    {
        var finding = Assert.Single(Read.Tree(Of(code).BadExample).Findings);

        Assert.All(finding.Fixes, fix => Assert.DoesNotContain(code, Read.Codes(TextEdit.Apply(finding.Where.Source, fix.Edits))));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_safe_fix_leaves_nothing_to_find(string code)
    {
        var finding = Assert.Single(Read.Tree(Of(code).BadExample).Findings);

        Assert.All(finding.Fixes.Where(fix => fix.Safety == FixSafety.Safe), fix => Read.Clean(TextEdit.Apply(finding.Where.Source, fix.Edits)));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_finding_says_what_and_why(string code)
    {
        var descriptor = Of(code);
        var finding = Assert.Single(Read.Tree(descriptor.BadExample).Findings);

        Assert.Matches(Sentence(), descriptor.Reason);
        Assert.Matches(Sentence(), descriptor.Remedy);
        Assert.DoesNotMatch(Sentence(), finding.Message);
        Assert.DoesNotContain('\n', finding.Message);
        Assert.Equal(descriptor.Severity, finding.Severity);
    }

    [Fact]
    public void Codes_are_in_order_and_without_gaps_and_names_are_those_of_the_files()
    {
        Assert.Equal(Enumerable.Range(1001, SyntaxFindings.All.Length).Select(number => $"RC{number}"), SyntaxFindings.All.Select(descriptor => descriptor.Code));

        var files = Directory.GetFiles(TestKit.Repository.PathOf("src/Recipe.Syntax/Findings"), "*.cs").Select(Path.GetFileNameWithoutExtension).ToList();
        Assert.All(SyntaxFindings.All, descriptor => Assert.Contains(string.Concat(descriptor.Name.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..])), files));
    }

    [Theory]
    [InlineData("a {\n  b 1\n", "a {\n  b 1\n}\n")]
    [InlineData("  a {\n    b 1\n  c 2\n", "  a {\n    b 1\n  }\n  c 2\n")]
    public void The_fix_of_a_missing_brace_puts_it_where_the_block_ends(string text, string closed)
    {
        var finding = Assert.Single(Read.Tree(text).Findings);

        Assert.Equal(closed, TextEdit.Apply(finding.Where.Source, Assert.Single(finding.Fixes).Edits));
    }

    [Theory]
    [InlineData("a \"b\\")]
    [InlineData("a \"b\\\\")]
    [InlineData("a \"b\\\"")]
    [InlineData("a \"")]
    public void The_fix_of_an_open_text_closes_it(string text)
    {
        var finding = Assert.Single(Read.Tree(text).Findings, finding => finding.Descriptor.Code == "RC1002");

        Assert.DoesNotContain("RC1002", Read.Codes(TextEdit.Apply(finding.Where.Source, Assert.Single(finding.Fixes).Edits)));
    }

    private static FindingDescriptor Of(string code) => SyntaxFindings.All.Single(descriptor => descriptor.Code == code);

    [GeneratedRegex(@"^[A-Z][^\n]*\.$")]
    private static partial Regex Sentence();
}
