using System.Text;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary><c>recipe git merge</c>, asked by itself and by git.</summary>
public sealed class GitMergeTests
{
    private const string Lid = "hatch-lid.recipe";
    private static readonly string[] Setup = ["git", "setup", "--write"];
    private static readonly string Sample = Repository.Read("samples/" + Lid);

    [Fact]
    public void Git_merges_two_branches_where_lines_of_paper_would_collide()
    {
        using var repo = Branches(
            lid => lid.Replace("  resin     slow-laminating-epoxy", "  resin     fast-laminating-epoxy", StringComparison.Ordinal)
                .Replace("    veil   carbon-veil-8     random      # hides the twill\n", "    veil   carbon-veil-8     random      # hides the twill\n    stiff  glass-plain-25    0/90\n", StringComparison.Ordinal),
            lid => lid.Replace("  process   bagged\n", "  process   bagged\n  outdoors  yes\n", StringComparison.Ordinal)
                .Replace("+/-45   overlap lap", "+/-45   overlap 25 mm", StringComparison.Ordinal));
        var run = repo.TryGit("merge", "--quiet", "--no-edit", "other");
        Assert.True(run.Status == 0, run.Out + run.Error);
        var merged = repo[Lid];
        Assert.Contains("  process   bagged\n  outdoors  yes\n  resin     fast-laminating-epoxy\n", merged, StringComparison.Ordinal);
        Assert.Contains("    stiff  glass-plain-25    0/90\n    body   glass-twill-280   +/-45   overlap 25 mm\n", merged, StringComparison.Ordinal);
        Assert.Equal("", repo.Git("status", "--porcelain"));

        // Git's own merge has a conflict here.
        repo.Git("reset", "--quiet", "--hard", "HEAD~1");
        repo.Git("config", "--remove-section", "merge.recipe");
        Assert.Equal(1, repo.TryGit("merge", "--quiet", "--no-edit", "other").Status);
    }

    [Fact]
    public void A_conflict_is_the_line_and_the_rest_is_merged()
    {
        using var repo = Branches(
            lid => lid.Replace("    back   glass-twill-280", "    back   glass-twill-163", StringComparison.Ordinal),
            lid => lid.Replace("    back   glass-twill-280   0/90", "    back   glass-twill-280   +/-45", StringComparison.Ordinal).Replace("quantity  4", "quantity  6", StringComparison.Ordinal));
        var run = repo.TryGit("merge", "other");
        Assert.Equal(1, run.Status);
        Assert.Contains("1 place of hatch-lid.recipe changed on both sides", run.Error, StringComparison.Ordinal);
        Assert.Contains("CONFLICT (content)", run.Out, StringComparison.Ordinal);
        Assert.Equal(
            Sample.Replace("quantity  4", "quantity  6", StringComparison.Ordinal).Replace(
                "    back   glass-twill-280   0/90\n",
                "<<<<<<< ours\n    back   glass-twill-163   0/90\n=======\n    back   glass-twill-280   +/-45\n>>>>>>> theirs\n",
                StringComparison.Ordinal),
            repo[Lid]);
        Assert.Equal($"UU {Lid}\n", repo.Git("status", "--porcelain"));
    }

    [Fact]
    public void A_rebase_uses_it_too()
    {
        using var repo = Branches(
            lid => lid.Replace("  trim      15 mm", "  trim      12 mm", StringComparison.Ordinal),
            lid => lid.Replace("  overlap   20 mm", "  overlap   25 mm", StringComparison.Ordinal));
        repo.Git("checkout", "--quiet", "other");
        var run = repo.TryGit("rebase", "main");
        Assert.True(run.Status == 0, run.Out + run.Error);
        Assert.Contains("  trim      12 mm\n  overlap   25 mm\n", repo[Lid], StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_checks_find_only_in_both_together_is_said_and_is_no_conflict()
    {
        using var bench = new Bench();
        bench.Write("shop.recipe", Repository.Read("samples/shop.recipe"));
        var run = Merge(
            bench,
            Sample,
            Sample.Replace("heat-limit  70 degC ", "heat-limit  58 degC ", StringComparison.Ordinal),
            Sample.Replace("to 50 degC under", "to 60 degC under", StringComparison.Ordinal).Replace("hold           50 degC", "hold           60 degC", StringComparison.Ordinal));
        Assert.Equal((0, ""), (run.Status, run.Out));
        Assert.StartsWith($"recipe: {Lid} was merged without a conflict, but together the two versions earn what neither did alone.", run.Error, StringComparison.Ordinal);
        Assert.Contains("error RC", run.Error, StringComparison.Ordinal);
        Assert.Contains($"--> {Lid}:", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_change_by_itself_says_nothing()
    {
        using var bench = new Bench();
        bench.Write("shop.recipe", Repository.Read("samples/shop.recipe"));
        var run = Merge(bench, Sample, Sample.Replace("quantity  4", "quantity  5", StringComparison.Ordinal), Sample.Replace("trim      15 mm", "trim      12 mm", StringComparison.Ordinal));
        Assert.Equal(new Outcome(0, "", ""), run);
    }

    [Theory]
    [InlineData("build hatch-lid no 3 on 2026-06-01 {\n  mass  128 g\n}\n", "build hatch-lid no 4 on 2026-06-02 {\n  mass  125 g\n}\n", 0)]
    [InlineData("build hatch-lid no 3 on 2026-06-01 {\n  mass  128 g\n}\n", "build hatch-lid no 3 on 2026-06-01 {\n  mass  125 g\n}\n", 1)]
    [InlineData("resin mine like slow-laminating-epoxy {\n  density cured     1.1 g/cm3\n  hardener fast { pot-life 20 min at 23 degC in 100 g }\n}\n", "resin mine like slow-laminating-epoxy {\n  density resin  1.1 g/cm3\n  hardener slow { pot-life 60 min at 23 degC in 100 g }\n}\n", 0)]
    public void The_words_of_the_language_say_what_a_line_is_known_by(string ours, string theirs, int conflicts)
    {
        using var bench = new Bench();
        var run = Merge(bench, Sample, Sample + "\n" + ours, Sample + "\n" + theirs);
        Assert.Equal(conflicts, run.Status);
        foreach (var line in (ours + theirs).Split('\n'))
        {
            Assert.Contains(Words(line), Words(File.ReadAllText(bench.PathOf("ours"))), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Text_that_cannot_be_read_is_merged_line_by_line_and_said()
    {
        using var bench = new Bench();
        var broken = Sample.Replace("part hatch-lid {", "part hatch-lid", StringComparison.Ordinal);
        var run = Merge(bench, broken, broken.Replace("quantity  4", "quantity  5", StringComparison.Ordinal), broken.Replace("240 grit", "320 grit", StringComparison.Ordinal));
        Assert.Equal((0, $"recipe: {Lid} was merged line by line, because one of its versions cannot be read as a recipe.\n"), (run.Status, run.Error));
        Assert.Equal(broken.Replace("quantity  4", "quantity  5", StringComparison.Ordinal).Replace("240 grit", "320 grit", StringComparison.Ordinal), File.ReadAllText(bench.PathOf("ours")));
    }

    [Fact]
    public void Bytes_that_are_no_utf_8_come_through()
    {
        using var bench = new Bench();
        var letters = Encoding.Latin1.GetBytes("# für den Deckel\nlet a = 1 mm\nlet b = 1 mm\nlet c = 1 mm\n");
        File.WriteAllBytes(bench.PathOf("base"), letters);
        File.WriteAllBytes(bench.PathOf("ours"), [.. letters, .. "let d = 2 mm\n"u8]);
        File.WriteAllBytes(bench.PathOf("theirs"), [.. "let z = 3 mm\n"u8, .. letters]);
        Assert.Equal(0, bench.RunHere("git", "merge", "base", "ours", "theirs", Lid).Status);
        Assert.Equal([.. "let z = 3 mm\n"u8, .. letters, .. "let d = 2 mm\n"u8], File.ReadAllBytes(bench.PathOf("ours")));
    }

    [Fact]
    public void What_is_no_text_is_left_as_it_was()
    {
        using var bench = new Bench();
        File.WriteAllBytes(bench.PathOf("base"), [0, 1]);
        File.WriteAllBytes(bench.PathOf("ours"), [0, 2]);
        File.WriteAllBytes(bench.PathOf("theirs"), [0, 3]);
        var run = bench.RunHere("git", "merge", "base", "ours", "theirs", Lid);
        Assert.Equal(1, run.Status);
        Assert.StartsWith($"recipe: {Lid} is no text on one of the sides, so it was not merged and our version stands.", run.Error, StringComparison.Ordinal);
        Assert.Equal([0, 2], File.ReadAllBytes(bench.PathOf("ours")));
    }

    [Fact]
    public void Markers_line_ends_and_the_mark_at_the_start_are_as_wanted()
    {
        using var bench = new Bench();
        bench.Write("base", "let a = 1 mm\nlet b = 1 mm\n");
        bench.Write("ours", "\ufefflet a = 2 mm\r\nlet b = 1 mm\r\n");
        bench.Write("theirs", "let a = 3 mm\nlet b = 5 mm\n");
        Assert.Equal(1, bench.RunHere("git", "merge", "--marker-size", "9", "--", "base", "ours", "theirs", Lid).Status);
        Assert.Equal(
            "\ufeff<<<<<<<<< ours\r\nlet a = 2 mm\r\n=========\r\nlet a = 3 mm\r\n>>>>>>>>> theirs\r\nlet b = 5 mm\r\n",
            Encoding.UTF8.GetString(File.ReadAllBytes(bench.PathOf("ours"))));
    }

    private static Repo Branches(Func<string, string> ours, Func<string, string> theirs)
    {
        var repo = Repo.OfHatchLid(Setup);
        repo.Git("checkout", "--quiet", "-b", "other");
        repo[Lid] = theirs(Sample);
        repo.Commit("Theirs");
        repo.Git("checkout", "--quiet", "main");
        repo[Lid] = ours(Sample);
        repo.Commit("Ours");
        return repo;
    }

    private static Outcome Merge(Bench bench, string before, string ours, string theirs)
    {
        Assert.NotEqual(before, ours);
        Assert.NotEqual(before, theirs);
        bench.Write("base", before);
        bench.Write("ours", ours);
        bench.Write("theirs", theirs);
        return bench.RunHere("git", "merge", "base", "ours", "theirs", Lid);
    }

    private static string Words(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
