using System.Text.Json;

namespace Recipe.Cli.Tests;

public sealed class BuildVerbTests
{
    private static readonly string HatchLid = Bench.Sample("samples/hatch-lid.recipe");

    [Fact]
    public void The_hatch_lid_becomes_every_paper_in_every_format()
    {
        using var bench = new Bench();
        var run = Bench.Run("build", HatchLid, "--out", bench.Folder);
        Assert.Equal(ExitStatus.Clean, run.Status);
        var names = Directory.GetFiles(bench.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal).ToList();
        foreach (var part in new[] { "hatch-lid", "hatch-lid-no-veil" })
        {
            Assert.All(
                ["takeoff.csv", "takeoff.html", "takeoff.json", "takeoff.md", "traveller.html", "traveller.md"],
                paper => Assert.Contains($"{part}.{paper}", names));
        }

        using var json = JsonDocument.Parse(File.ReadAllText(bench.PathOf("hatch-lid.takeoff.json")));
        Assert.Equal("recipe/plan/1", json.RootElement.GetProperty("schema").GetString());
    }

    [Fact]
    public void The_same_recipe_gives_the_same_bytes()
    {
        using var first = new Bench();
        using var second = new Bench();
        Bench.Run("build", HatchLid, "--out", first.Folder, "--undated");
        Bench.Run("build", HatchLid, "--out", second.Folder, "--undated");
        var names = Directory.GetFiles(first.Folder).Select(path => Path.GetFileName(path)).ToList();
        Assert.NotEmpty(names);
        Assert.All(names, name => Assert.Equal(File.ReadAllBytes(first.PathOf(name)), File.ReadAllBytes(second.PathOf(name))));
    }

    [Fact]
    public void Only_what_was_asked_for_is_written_and_nothing_else_is_touched()
    {
        using var bench = new Bench();
        var mine = bench.Write("mine.txt", "keep");
        var run = Bench.Run("build", HatchLid, "--out", bench.Folder, "--part", "hatch-lid", "--paper", "takeoff", "--format", "md");
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Equal(["hatch-lid.takeoff.md", "mine.txt"], Directory.GetFiles(bench.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal("keep", File.ReadAllText(mine));
    }

    [Fact]
    public void A_recipe_with_an_error_makes_no_papers()
    {
        using var bench = new Bench();
        var run = Bench.Run("build", Bench.Sample("samples/mistakes/hatch-lid.recipe"), "--out", bench.PathOf("out"));
        Assert.Equal(ExitStatus.Findings, run.Status);
        Assert.False(Directory.Exists(bench.PathOf("out")));
    }

    [Fact]
    public void When_one_paper_cannot_be_written_none_is()
    {
        using var bench = new Bench();

        // A folder stands where the last paper would go.
        Directory.CreateDirectory(bench.PathOf("hatch-lid.traveller.md"));
        var old = bench.Write("hatch-lid.takeoff.md", "old");
        var run = Bench.Run("build", HatchLid, "--out", bench.Folder, "--part", "hatch-lid");
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Equal("old", File.ReadAllText(old));
        Assert.Equal([old], Directory.GetFiles(bench.Folder));
    }

    [Fact]
    public void An_output_that_is_a_file_is_refused()
    {
        using var bench = new Bench();
        var file = bench.Write("out", "a file");
        Assert.Equal(ExitStatus.CouldNotRun, Bench.Run("build", HatchLid, "--out", file).Status);
        Assert.Equal("a file", File.ReadAllText(file));
    }

    [Fact]
    public void The_revision_changes_with_the_text_and_with_the_shop_it_uses()
    {
        using var bench = new Bench();
        bench.Write("shop.recipe", File.ReadAllText(Bench.Sample("samples/shop.recipe")));
        var lid = bench.Write("lid.recipe", File.ReadAllText(HatchLid));
        var first = Revision();
        bench.Write("shop.recipe", File.ReadAllText(Bench.Sample("samples/shop.recipe")) + "# a remark\n");
        var second = Revision();
        bench.Write("lid.recipe", File.ReadAllText(HatchLid) + "# a remark\n");
        Assert.Equal(3, new[] { first, second, Revision() }.Distinct().Count());

        string Revision()
        {
            Assert.Equal(ExitStatus.Clean, Bench.Run("build", lid, "--out", bench.PathOf("out"), "--part", "hatch-lid", "--format", "json").Status);
            using var json = JsonDocument.Parse(File.ReadAllText(bench.PathOf("out/hatch-lid.takeoff.json")));
            return json.RootElement.GetProperty("revision").GetString()!;
        }
    }

    [Fact]
    public void An_unknown_part_is_said() =>
        Assert.Contains("no-such-part", Bench.Run("build", HatchLid, "--part", "no-such-part").Error, StringComparison.Ordinal);
}
