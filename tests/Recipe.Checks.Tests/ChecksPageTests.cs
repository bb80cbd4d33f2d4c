using Recipe.Semantics.Findings;
using Recipe.Syntax.Findings;
using Recipe.TestKit;

namespace Recipe.Checks.Tests;

public class ChecksPageTests
{
    private const string Page = "grammar/findings.md";

    [Fact]
    public void The_page_of_findings_is_fresh()
    {
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            File.WriteAllText(Repository.PathOf(Page), ChecksPage.Write());
        }

        Assert.True(File.Exists(Repository.PathOf(Page)), $"{Page} is missing: run the tests once with RECIPE_UPDATE_GOLDENS=1.");
        Assert.Equal(Repository.Read(Page).ReplaceLineEndings("\n"), ChecksPage.Write());
    }

    [Fact]
    public void Every_finding_of_every_stage_has_one_line()
    {
        var rows = ChecksPage.Write().Split('\n').Where(l => l.StartsWith("| RC", StringComparison.Ordinal)).Select(l => l[2..8]);
        var all = SyntaxFindings.All.Concat(SemanticFindings.All).Concat(CheckCatalogue.All.Select(c => c.Descriptor)).Select(d => d.Code);
        Assert.Equal(all.Order(StringComparer.Ordinal), rows);
    }

    [Fact]
    public void What_is_seen_at_the_bench_leads_to_findings_of_the_checks()
    {
        var known = FindingCatalogue.All.Select(d => d.Name).ToHashSet();
        Assert.All(Symptoms.All, symptom => Assert.All(symptom.Findings, name => Assert.Contains(name, known)));
        Assert.All(Symptoms.All, symptom => Assert.Equal(symptom.Findings.Distinct(), symptom.Findings));
        Assert.Equal(Symptoms.All.Length, Symptoms.All.Select(symptom => symptom.Seen).Distinct().Count());

        // What somebody would search for.
        var page = ChecksPage.Write();
        Assert.All((string[])["bag leaks", "Sticky", "White patches", "Pinholes", "sticks in the mould", "Too heavy", "Warped"], word => Assert.Contains(word, page, StringComparison.Ordinal));
    }

    [Fact]
    public void Rows_have_six_cells() => Assert.All(
        ChecksPage.Write().Split('\n').Where(l => l.StartsWith("| RC", StringComparison.Ordinal)),
        row => Assert.Equal(7, row.Replace("\\|", "", StringComparison.Ordinal).Count(c => c == '|')));

    [Fact]
    public void What_cannot_be_accepted_is_marked()
    {
        var row = ChecksPage.Write().Split('\n').Single(l => l.StartsWith("| RC4006", StringComparison.Ordinal));
        Assert.Contains("error *", row, StringComparison.Ordinal);
    }
}
