using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>What git shows of a change when it asks this program.</summary>
public sealed partial class GitDiffTests
{
    private const string Lid = "hatch-lid.recipe";

    [Fact]
    public void Git_shows_grams_and_minutes_of_what_is_on_disk_and_of_what_is_in_the_history()
    {
        using var repo = Repo.OfHatchLid("git", "setup", "--write");
        repo.Change(Lid, "    back   glass-twill-280", "    back   glass-twill-163");
        var diff = repo.Git("diff");
        Assert.Contains("\n-    back   glass-twill-280   0/90\n+    back   glass-twill-163   0/90\n", diff, StringComparison.Ordinal);
        var masses = Mass().Matches(diff).Select(match => match.Value).ToList();
        Assert.Equal(2, masses.Count);

        // The mass of the commit is that of the file, which takes the shop into account: the old version had it at hand too.
        repo.Commit("A lighter back");
        Assert.Equal(masses, Mass().Matches(repo.Git("log", "-p", "-1")).Select(match => match.Value));
        repo.Git("checkout", "--quiet", "HEAD~1");
        Assert.Contains(masses[0][1..] + "\n", repo.Bench.RunHere("git", "textconv", Lid).Out, StringComparison.Ordinal);

        // In the words of the trade when asked to.
        repo.Git("checkout", "--quiet", "main");
        var words = repo.Shell("git diff HEAD~1", ("GIT_EXTERNAL_DIFF", "recipe git external-diff"));
        Assert.Equal((0, ""), (words.Status, words.Error));
        Assert.Matches(@"~ back +4: glass-twill-280 0/90  ->  4: glass-twill-163 0/90", words.Out);
        Assert.Matches(@"~ Mass, trimmed +\d+ g  ->  \d+ g  -\d+ g", words.Out);
    }

    [Fact]
    public void Layout_is_no_difference()
    {
        using var repo = Repo.OfHatchLid("git", "setup", "--write");
        repo.Change(Lid, "  trim      15 mm\n", "  trim 15mm\n");
        Assert.DoesNotContain("\n+ ", repo.Git("diff"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_recipe_comes_out_laid_out_with_its_figures_behind()
    {
        var run = Bench.Run("git", "textconv", Bench.Sample("samples/" + Lid));
        Assert.Equal((0, ""), (run.Status, run.Error));
        var sample = Repository.Read("samples/" + Lid);
        Assert.StartsWith(sample + "\n# hatch-lid: Mass, trimmed: ", run.Out, StringComparison.Ordinal);
        Assert.All(run.Out[sample.Length..].Split('\n', StringSplitOptions.RemoveEmptyEntries), line => Assert.Matches("^# hatch-lid(-no-veil)?: [A-Z][^:]+: .*[^ ]$", line));
        Assert.Matches("\n# hatch-lid: Left on the clock: [0-9]+ min\n", run.Out);
        Assert.Matches("\n# hatch-lid-no-veil: Pots: 1\n", run.Out);
    }

    [Theory]
    [InlineData("part lid {\n  a  1 mm\n")]
    [InlineData("<<<<<<< ours\nlet a = 1 mm\n=======\nlet a = 2 mm\n>>>>>>> theirs\n")]
    [InlineData("")]
    [InlineData("no recipe at all; 1,5 }\r\n")]
    public void What_cannot_be_read_comes_out_as_it_is(string text)
    {
        using var bench = new Bench();
        Assert.Equal(new Outcome(0, text, ""), Bench.Run("git", "textconv", bench.Write("a.recipe", text)));
    }

    [Fact]
    public void An_external_diff_knows_what_came_went_and_is_not_settled()
    {
        using var bench = new Bench();
        bench.Write("old", Repository.Read("samples/shop.recipe"));
        bench.Write("new", Repository.Read("samples/shop.recipe") + "# a remark\n");
        Assert.Equal("a.recipe: layout and remarks only\n", External("a.recipe", "old", "1234567890", "100644", "new", "0000000000", "100644"));
        Assert.Contains("+ shop ours", External("a.recipe", "/dev/null", ".", ".", "new", "1234567890", "100644"), StringComparison.Ordinal);
        Assert.StartsWith("a.recipe: the merge of it is not settled", External("a.recipe"), StringComparison.Ordinal);
        Assert.StartsWith("a.txt: it changed, and it is no recipe", External("a.txt", "old", "1", "100644", "new", "2", "100644"), StringComparison.Ordinal);

        string External(params string[] arguments)
        {
            var run = bench.RunHere(["git", "external-diff", .. arguments]);
            Assert.Equal((0, ""), (run.Status, run.Error));
            return run.Out;
        }
    }

    [GeneratedRegex(@"^[-+]# hatch-lid: Mass, trimmed: \d+ g$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Mass();
}
