using Recipe.TestKit;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>What DEVELOPERS.md says of adding a check is what is so: its skeleton compiles and works, its table of codes is that of the catalogue.</summary>
public class DevelopersPageTests
{
    private const string Page = "DEVELOPERS.md";
    private const string Skeleton = "tests/Recipe.Checks.Tests/Kit/NoTitle.cs";
    private const string TableBegins = "| code | what about | next free |\n|---|---|---|\n";

    [Fact]
    public void The_skeleton_is_the_check_that_is_compiled_here()
    {
        var page = Repository.Read(Page).ReplaceLineEndings("\n");
        var shown = Between(page, "```csharp\n/// <summary>A part that nobody", "```\n");
        var whole = Repository.Read(Skeleton).ReplaceLineEndings("\n");

        Assert.Equal(Between(whole, "/// <summary>A part that nobody", "\0"), shown);
    }

    [Fact]
    public void The_skeleton_does_what_it_says()
    {
        var check = new NoTitle();
        var bad = Findings(check, check.Descriptor.BadExample);

        Assert.Equal("lid has no title", Assert.Single(bad).Message);
        Assert.Empty(Findings(check, check.Descriptor.GoodExample));
        Assert.Equal(check.Descriptor.GoodExample, TextEdit.Apply(bad[0].Where.Source, Assert.Single(bad[0].Fixes).Edits));
    }

    [Fact]
    public void The_table_of_codes_is_that_of_the_catalogue()
    {
        var all = FindingCatalogue.All.Select(d => d.Code).ToArray();
        var rows = string.Concat(FindingFamilies.All.Select(f =>
        {
            var last = all.Where(code => code.StartsWith(f.Prefix, StringComparison.Ordinal)).Select(code => int.Parse(code[2..], null)).DefaultIfEmpty(int.Parse(f.Prefix[2..], null) * 100).Max();
            return FormattableString.Invariant($"| {f.Prefix} | {f.Title} | RC{last + 1} |\n");
        }));
        var page = Repository.Read(Page).ReplaceLineEndings("\n");
        var old = Between(page, TableBegins, "\n\n") + "\n";
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            File.WriteAllText(Repository.PathOf(Page), page.Replace(TableBegins + old, TableBegins + rows, StringComparison.Ordinal));
        }

        Assert.Equal(Between(Repository.Read(Page).ReplaceLineEndings("\n"), TableBegins, "\n\n") + "\n", rows);
    }

    private static List<Finding> Findings(Check check, string text)
    {
        var bench = Bench.Of(text);
        var examiner = new Examiner(bench.Model, null, [check]);
        return [.. examiner.Conclude([.. bench.Plans.Select(examiner.Examine)]).Findings];
    }

    /// <summary>From the last line of where it begins, up to where it ends.</summary>
    private static string Between(string text, string begins, string ends)
    {
        var start = text.IndexOf(begins, StringComparison.Ordinal);
        Assert.True(start >= 0, $"'{begins}' is not in it.");
        start += begins.EndsWith('\n') ? begins.Length : begins.LastIndexOf('\n') + 1;
        var end = text.IndexOf(ends, start, StringComparison.Ordinal);
        return text[start..(end < 0 ? text.Length : end)];
    }
}
