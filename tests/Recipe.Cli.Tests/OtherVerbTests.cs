using Recipe.Checks;
using Recipe.Compiler;
using Recipe.Text.Findings;

namespace Recipe.Cli.Tests;

public sealed class OtherVerbTests
{
    public static TheoryData<string> Processes => [.. ShippedTexts.Templates.Select(text => Path.GetFileNameWithoutExtension(text.Name))];

    public static TheoryData<string> Codes => [.. FindingCatalogue.All.Select(descriptor => descriptor.Code)];

    [Theory]
    [MemberData(nameof(Processes))]
    public void A_new_recipe_is_sound_and_laid_out(string process)
    {
        using var bench = new Bench();
        Assert.Equal(ExitStatus.Clean, bench.RunHere("new", "seat-pan", "--process", process).Status);
        var text = File.ReadAllText(bench.PathOf("seat-pan.recipe"));
        Assert.Contains("part seat-pan {", text, StringComparison.Ordinal);
        Assert.DoesNotContain("new-part", text, StringComparison.Ordinal);
        var check = bench.RunHere("check", "seat-pan.recipe");
        Assert.EndsWith("nothing wrong found\n", check.Out, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Clean, bench.RunHere("fmt", "--check", "seat-pan.recipe").Status);
    }

    [Fact]
    public void A_new_recipe_never_overwrites()
    {
        using var bench = new Bench();
        var path = bench.Write("seat-pan.recipe", "mine");
        Assert.Equal(ExitStatus.CouldNotRun, bench.RunHere("new", "seat-pan").Status);
        Assert.Equal("mine", File.ReadAllText(path));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_finding_is_explained(string code)
    {
        var run = Bench.Run("explain", code);
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.StartsWith(code, run.Out, StringComparison.Ordinal);
        Assert.Contains("Why: ", run.Out, StringComparison.Ordinal);
    }

    // The marked lines and those around them are the bad example without the one mark and the good one without the other.
    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_finding_shows_which_lines_earn_it_and_which_mend_it(string code)
    {
        var (bad, good) = (FindingCatalogue.Find(code)!.BadExample, FindingCatalogue.Find(code)!.GoodExample);
        if (bad.Length == 0 || good.Length == 0)
        {
            return;
        }

        var lines = Bench.Run("explain", code).Out.Split("mend it:\n\n")[1].TrimEnd().Split('\n').Select(line => line.PadRight(6)).Select(line => (Mark: line[4], Text: line[6..])).ToList();
        Assert.Contains(lines, line => line.Mark is '-' or '+');
        Assert.True(InOrder(lines.Where(line => line.Mark != '+'), bad), code);
        Assert.True(InOrder(lines.Where(line => line.Mark != '-'), good), code);
        Assert.True(lines.Count <= bad.Split('\n').Length + good.Split('\n').Length, code);
    }

    private static bool InOrder(IEnumerable<(char Mark, string Text)> lines, string example)
    {
        var rest = example.ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd()).ToList();
        foreach (var text in lines.Select(line => line.Text.TrimEnd()).Where(text => text.Trim() != "..."))
        {
            var at = rest.IndexOf(text);
            if (at < 0)
            {
                return false;
            }

            rest.RemoveRange(0, at + 1);
        }

        return true;
    }

    [Fact]
    public void What_can_be_explained_is_listed_by_group_first()
    {
        var index = Bench.Run("explain");
        Assert.Equal(ExitStatus.Clean, index.Status);
        Assert.InRange(index.Out.Split('\n').Length, 40, 75);
        Assert.All(FindingFamilies.All, family => Assert.Contains($"{family.Prefix} ", index.Out, StringComparison.Ordinal));
        Assert.Contains($"  fabric           {ShippedTexts.Book.Materials.Values.Count(material => material.Keyword == "fabric")}  ", index.Out, StringComparison.Ordinal);
        Assert.All((string[])["demould-too-early", "carbon-twill-200"], name => Assert.Contains(name + "\n", Bench.Run("explain", "all").Out, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("carbon", "carbon-twill-200", "carbon-on-metal", "Rust, white bloom")]
    [InlineData("Sticky", "wrong-cure-agent", "Sticky, soft, tacky")]
    [InlineData("hold", "hold, in a block of cure: ", "hold 20 degC for 12 h under vacuum")]
    [InlineData("mold", "mould, at the top of a file: ")]
    [InlineData("RC70", "demould-too-early", "Demoulded too early")]
    [InlineData("core", "core, at the top of a file: ", "balsa-150")]
    public void A_word_lists_what_there_is_of_it(string word, params string[] found)
    {
        var run = Bench.Run("explain", word);
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.All(found, text => Assert.Contains(text, run.Out, StringComparison.Ordinal));
        Assert.DoesNotContain(word == "RC70" ? "RC7101" : "glass-biax-300", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("oven", "oven, in a block of cure: ", "sun-as-oven", "woven")]
    [InlineData("lamp", "what heats is written `oven \"heat lamp\"`", "Sags or softens", "no-clamp-order")]
    [InlineData("heat lamp", "heat lamp, as the bench says it, in a block of cure: ", "`oven \"heat lamp\"`", "heat-before-gel")]
    [InlineData("cylinder", "cylinder, on a line of surface: ", "surface cylinder diameter", "hose")]
    [InlineData("tube", "hose, in a block of bag: ", "a tube is a `cylinder`", "disc")]
    [InlineData("shrink", "shrink tape, as the bench says it: ", "no word for a tape", "Findings")]
    [InlineData("bagged", "bagged, on a line of process: wet lay-up", "process bagged", "infused")]
    [InlineData("cure", "In its block: hold, ramp, cool", "epoxy-glass-tooling", "post cure, as the bench")]
    [InlineData("cold night", "cold-night", "Night too cold", "cold-resin")]
    public void Words_are_looked_for_from_where_they_begin(string word, string first, string second, string notThere)
    {
        var run = Bench.Run("explain", word);
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Contains(first, run.Out, StringComparison.Ordinal);
        Assert.Contains(second, run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(notThere, run.Out, StringComparison.Ordinal);
    }

    /// <summary>Where nothing begins with it, a piece of a word is better than nothing.</summary>
    [Fact]
    public void A_piece_of_a_word_is_found_when_no_word_begins_so() =>
        Assert.Contains("glass-woven-roving-600", Bench.Run("explain", "oving").Out, StringComparison.Ordinal);

    [Fact]
    public void Every_material_of_the_book_is_explained_by_its_own_text()
    {
        Assert.All(ShippedTexts.Book.Materials.Keys, name =>
        {
            var run = Bench.Run("explain", name);
            Assert.Equal(ExitStatus.Clean, run.Status);
            Assert.Contains(name + " ", run.Out, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_part_is_explained_from_its_file()
    {
        var run = Bench.Run("explain", "hatch-lid", "--in", Bench.Sample("samples/hatch-lid.recipe"));
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.All((string[])["Expected mass", "What each line brings", "| veil |", "Pot life today", "Hottest", "| A1 |"], part => Assert.Contains(part, run.Out, StringComparison.Ordinal));
        Assert.Contains("did you mean hatch-lid?", Bench.Run("explain", "hatch-lit", "--in", Bench.Sample("samples/hatch-lid.recipe")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_material_of_ones_own_is_explained_from_its_file()
    {
        using var bench = new Bench();
        var path = bench.Write("own.recipe", "fabric our-cloth like glass-twill-163 {\n  width  80 cm\n}\n");
        Assert.Contains("80 cm", Bench.Run("explain", "our-cloth", "--in", path).Out, StringComparison.Ordinal);

        // A brace in a text ends no block.
        var other = bench.Write("other.recipe", "fabric our-cloth like glass-twill-163 {\n  note   \"the roll marked }\"\n  width  80 cm\n}\nlet lap = 20 mm\n");
        Assert.EndsWith("    width  80 cm\n  }\n", Bench.Run("explain", "our-cloth", "--in", other).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_is_answered_with_what_was_meant() =>
        Assert.Contains("did you mean breather-150?", Bench.Run("explain", "breater-150").Error, StringComparison.Ordinal);

    [Fact]
    public void Fmt_reads_a_pipe_and_writes_to_it()
    {
        var run = Bench.Run(["fmt", "-"], "let   lap=20   mm");
        Assert.Equal("let lap = 20 mm\n", run.Out);
        Assert.Equal(ExitStatus.Clean, run.Status);
    }

    [Fact]
    public void Fmt_changes_the_file_once_and_check_changes_nothing()
    {
        using var bench = new Bench();
        var path = bench.Write("a.recipe", "let   lap=20   mm\n");
        Assert.Equal(ExitStatus.Findings, Bench.Run("fmt", "--check", path).Status);
        Assert.Equal("let   lap=20   mm\n", File.ReadAllText(path));
        Assert.Equal(ExitStatus.Clean, Bench.Run("fmt", path).Status);
        Assert.Equal("let lap = 20 mm\n", File.ReadAllText(path));
        Assert.Equal("", Bench.Run("fmt", path).Out);
    }

    [Fact]
    public void The_shipped_and_sample_recipes_are_laid_out()
    {
        var run = Bench.Run(
            "fmt", "--check", Bench.Sample("samples"), Bench.Sample("samples/mistakes"), Bench.Sample("tests/corpus/sound"),
            Bench.Sample("src/Recipe.Compiler/Book"), Bench.Sample("src/Recipe.Compiler/Templates"));
        Assert.Equal("", run.Out);
        Assert.Equal(ExitStatus.Clean, run.Status);
    }

    [Fact]
    public void The_book_has_nothing_wrong()
    {
        Assert.All(ShippedTexts.Book.Files, file => Assert.Empty(file.Findings));
        Assert.Empty(ShippedTexts.Book.Findings);
    }
}
