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
        Assert.EndsWith($"\nto print: {bench.PathOf("hatch-lid-no-veil.pdf")} {bench.PathOf("hatch-lid.pdf")}\n", run.Out.Replace('\\', '/'), StringComparison.Ordinal);
        var names = Directory.GetFiles(bench.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal).ToList();
        foreach (var part in new[] { "hatch-lid", "hatch-lid-no-veil" })
        {
            Assert.All(
                ["pdf", "takeoff.csv", "takeoff.html", "takeoff.json", "takeoff.md", "traveller.html", "traveller.md", "xlsx"],
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

    // A variant earns what its part earns, in the same place and the same words.
    [Fact]
    public void A_finding_that_a_part_and_its_variant_share_is_said_once()
    {
        using var bench = new Bench();
        bench.Write("shop.recipe", File.ReadAllText(Bench.Sample("samples/shop.recipe")));
        var part = bench.Write("lid.recipe", File.ReadAllText(HatchLid).Replace("service   45 degC", "service   95 degC", StringComparison.Ordinal));
        var variant = bench.Write("variant.recipe", "use \"lid.recipe\"\nvariant lid-b of hatch-lid {\n  title \"b\"\n}\n");
        var run = Bench.Run("build", part, variant, "--out", bench.Folder, "--paper", "takeoff", "--format", "md");
        Assert.Contains("lid-b.takeoff.md", run.Out, StringComparison.Ordinal);
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(run.Out, "advice RC7009"));
    }

    // The sample asks for 4.
    [Theory]
    [InlineData(null, 4)]
    [InlineData("1", 1)]
    [InlineData("7", 7)]
    public void Cover_and_takeoff_are_for_as_many_parts_as_are_asked_for_or_else_as_the_recipe_says(string? asked, int parts)
    {
        using var bench = new Bench();
        string[] wanted = asked is null ? [] : ["--quantity", asked];
        Assert.Equal(ExitStatus.Clean, Bench.Run(["build", HatchLid, "--out", bench.Folder, "--only", "hatch-lid", "--format", "md", .. wanted]).Status);
        Assert.Contains(parts == 1 ? "Materials for 1 part\n" : $"Materials for {parts} parts\n", File.ReadAllText(bench.PathOf("hatch-lid.takeoff.md")), StringComparison.Ordinal);
        Assert.Matches($@"Good parts wanted:\*\* {parts}\n", File.ReadAllText(bench.PathOf("hatch-lid.cover.md")));

        // Volume is mass by density, 1.13 g/cm3 in the book, for as many parts as the mass is.
        var resin = System.Text.RegularExpressions.Regex.Match(File.ReadAllText(bench.PathOf("hatch-lid.takeoff.md")), @"Laminating epoxy, slow, resin \(([\d.]+) mL\).*?\| ([\d.]+) g \|");
        Assert.Equal(double.Parse(resin.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture) / 1.13, double.Parse(resin.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), 2.0);
    }

    [Fact]
    public void A_change_note_is_written_against_an_earlier_version()
    {
        using var bench = new Bench();
        var before = bench.Write("before.recipe", File.ReadAllText(HatchLid).Replace("resin-content      45 %", "resin-content      50 %", StringComparison.Ordinal));
        File.Copy(Bench.Sample("samples/shop.recipe"), bench.PathOf("shop.recipe"));
        var run = Bench.Run("build", HatchLid, "--out", bench.PathOf("out"), "--only", "hatch-lid", "--since", before, "--format", "md");
        Assert.Equal((ExitStatus.Clean, ""), (run.Status, run.Error));
        var note = File.ReadAllText(bench.PathOf("out/hatch-lid.change-note.md"));
        Assert.Contains("| resin-content | changed | 50 % by weight | 45 % by weight |", note, StringComparison.Ordinal);
        Assert.Matches(@"\| Resin to mix \| \d+ g \| [\d.]+ g \| -", note);
        Assert.Contains("First-off", note, StringComparison.Ordinal);
        var same = Bench.Run("build", HatchLid, "--out", bench.PathOf("same"), "--only", "hatch-lid", "--since", HatchLid, "--format", "md", "--paper", "change-note");
        Assert.Equal(ExitStatus.Clean, same.Status);
        Assert.Contains("Nothing that this part rests on was written differently.", File.ReadAllText(bench.PathOf("same/hatch-lid.change-note.md")), StringComparison.Ordinal);
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
        bench.Write("shop.recipe", File.ReadAllText(Bench.Sample("samples/shop.recipe")) + "let strip = 40 mm\n");
        var second = Revision();
        bench.Write("lid.recipe", File.ReadAllText(HatchLid) + "let lid-strip = 50 mm\n");
        Assert.Equal(3, new[] { first, second, Revision() }.Distinct().Count());

        string Revision()
        {
            Assert.Equal(ExitStatus.Clean, Bench.Run("build", lid, "--out", bench.PathOf("out"), "--part", "hatch-lid", "--format", "json").Status);
            using var json = JsonDocument.Parse(File.ReadAllText(bench.PathOf("out/hatch-lid.takeoff.json")));
            return json.RootElement.GetProperty("revision").GetString()!;
        }
    }

    [Fact]
    public void One_pdf_of_a_part_holds_all_wanted_papers()
    {
        using var bench = new Bench();
        Assert.Equal(ExitStatus.Clean, Bench.Run("build", HatchLid, "--out", bench.Folder, "--format", "pdf").Status);
        Assert.Equal(["hatch-lid-no-veil.pdf", "hatch-lid.pdf"], Directory.GetFiles(bench.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal("%PDF-"u8.ToArray(), File.ReadAllBytes(bench.PathOf("hatch-lid.pdf"))[..5]);
    }

    [Fact]
    public void A_serial_number_stands_where_the_space_for_it_was()
    {
        using var bench = new Bench();
        Assert.Equal(ExitStatus.Clean, Bench.Run("build", HatchLid, "--out", bench.Folder, "--part", "hatch-lid", "--paper", "traveller", "--serial", "HL-0042", "--undated").Status);
        Assert.Contains("HL-0042", File.ReadAllText(bench.PathOf("hatch-lid.traveller.md")), StringComparison.Ordinal);
        var html = File.ReadAllText(bench.PathOf("hatch-lid.traveller.html"));
        Assert.Contains("<strong class=\"serial\">HL-0042</strong>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("space to write serial number", html, StringComparison.Ordinal);
        Assert.DoesNotContain("\\00005f", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_size_of_paper_and_the_units_are_chosen_for_one_build()
    {
        using var bench = new Bench();
        string Html(params string[] options)
        {
            Assert.Equal(ExitStatus.Clean, Bench.Run(["build", HatchLid, "--out", bench.Folder, "--part", "hatch-lid", "--paper", "traveller", "--format", "html", .. options]).Status);
            return File.ReadAllText(bench.PathOf("hatch-lid.traveller.html"));
        }

        Assert.Contains("size: letter ", Html("--paper-size", "Letter"), StringComparison.Ordinal);
        Assert.Contains("size: A4 ", Html("--paper-size", "A4"), StringComparison.Ordinal);
        Assert.NotEqual(Html("--units", "metric"), Html("--units", "us"));
    }

    [Fact]
    public void Several_parts_are_chosen_by_name()
    {
        using var bench = new Bench();
        var run = Bench.Run("build", Bench.Sample("samples"), "--out", bench.Folder, "--only", "hatch-lid", "rudder-cheek", "--format", "json");
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Equal(["hatch-lid.takeoff.json", "rudder-cheek.takeoff.json"], Directory.GetFiles(bench.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("no-such-part", Bench.Run("build", HatchLid, "--only", "hatch-lid", "no-such-part").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("100001")]
    [InlineData("-1")]
    [InlineData("1.5")]
    [InlineData("many")]
    public void A_quantity_that_nobody_builds_is_refused(string quantity)
    {
        using var bench = new Bench();
        var run = Bench.Run("build", HatchLid, "--out", bench.PathOf("out"), "--quantity", quantity);
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains("1 to 100000", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(bench.PathOf("out")));
    }

    [Fact]
    public void How_far_it_is_is_said_on_a_terminal_only()
    {
        using var bench = new Bench();
        string Error(bool isTerminal)
        {
            using var output = new StringWriter();
            using var error = new StringWriter();
            var terminal = new Terminal(output, error, () => Stream.Null) { Today = new DateOnly(2026, 6, 1), ErrorIsTerminal = isTerminal };
            Assert.Equal(ExitStatus.Clean, CommandLine.Run(["build", Bench.Sample("samples"), "--out", bench.Folder, "--paper", "takeoff", "--format", "json"], terminal));
            return error.ToString();
        }

        Assert.Matches(@"\r[0-9]+ of [0-9]+ parts: ", Error(isTerminal: true));
        Assert.Empty(Error(isTerminal: false));
    }

    [Fact]
    public void An_unknown_part_is_said() =>
        Assert.Contains("no-such-part", Bench.Run("build", HatchLid, "--part", "no-such-part").Error, StringComparison.Ordinal);
}
