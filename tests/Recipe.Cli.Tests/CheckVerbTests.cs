using System.Text.Json;

namespace Recipe.Cli.Tests;

public sealed class CheckVerbTests
{
    [Fact]
    public void A_folder_may_be_named_after_one_that_holds_it()
    {
        var run = Bench.Run("check", Bench.Sample("samples/house-rules"), Bench.Sample("samples/house-rules/rules"), "--recurse");
        Assert.NotEqual(ExitStatus.CouldNotRun, run.Status);
    }

    [Fact]
    public void The_samples_are_clean()
    {
        var run = Bench.Run("check", Bench.Sample("samples"));
        Assert.Equal("", run.Error);
        Assert.EndsWith("nothing wrong found\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Clean, run.Status);
    }

    [Theory]
    [InlineData("hatch-lid")]
    [InlineData("instrument-housing")]
    [InlineData("rudder-cheek")]
    [InlineData("telescope-tube")]
    public void The_samples_with_mistakes_are_not(string name)
    {
        var run = Bench.Run("check", Bench.Sample($"samples/mistakes/{name}.recipe"));
        Assert.Equal(ExitStatus.Findings, run.Status);
        Assert.Contains("why: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("fix: ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_shows_the_line_and_points_at_the_place()
    {
        using var bench = new Bench();
        var path = bench.Write("lid.recipe", "shop ours {\n\taltitude 250\n}\n");
        var lines = Bench.Run("check", path).Out.Split('\n');
        var source = Array.FindIndex(lines, line => line.EndsWith("altitude 250", StringComparison.Ordinal));
        Assert.True(source > 0);
        Assert.Equal(lines[source].IndexOf("250", StringComparison.Ordinal), lines[source + 1].IndexOf('^'));
        Assert.Equal("^^^", lines[source + 1].Trim(' ', '|'));
    }

    [Fact]
    public void A_pipe_gets_no_colour_and_asking_gives_it()
    {
        var path = Bench.Sample("samples/mistakes/hatch-lid.recipe");
        Assert.DoesNotContain("\u001b", Bench.Run("check", path).Out, StringComparison.Ordinal);
        Assert.Contains("\u001b[", Bench.Run("check", path, "--colour", "always").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_says_the_same_as_the_text()
    {
        var path = Bench.Sample("samples/mistakes/rudder-cheek.recipe");
        using var json = JsonDocument.Parse(Bench.Run("check", path, "--format", "json").Out);
        Assert.Equal("recipe/findings/1", json.RootElement.GetProperty("schema").GetString());
        var codes = json.RootElement.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()!).ToList();
        Assert.NotEmpty(codes);
        var text = Bench.Run("check", path).Out;
        Assert.All(codes, code => Assert.Contains(code, text, StringComparison.Ordinal));
    }

    /// <summary>A line of plies that is not read keeps many checks silent; people are told two of them and how many more, programs every one.</summary>
    [Fact]
    public void What_one_unread_line_keeps_silent_is_said_in_short_to_people()
    {
        using var bench = new Bench();
        var path = bench.Write("lid.recipe", "part lid {\n  plies {\n    body glass-twill-163 bias\n  }\n}\n");
        var told = Bench.Run("check", path).Out.Split('\n').Single(line => line.Contains("a line of plies is not understood", StringComparison.Ordinal));
        using var json = JsonDocument.Parse(Bench.Run("check", path, "--format", "json").Out);
        var silent = json.RootElement.GetProperty("not_checked").EnumerateArray().Count(note => note.GetProperty("missing").GetString() == "a line of plies is not understood");

        Assert.InRange(silent, 4, 40);
        Assert.Matches($"^not checked RC[0-9]{{4}} [a-z-]+, RC[0-9]{{4}} [a-z-]+ and {silent - 2} more: a line of plies is not understood \\(", told);
    }

    /// <summary>An example of a rule may stand on one line; a slip of the grammar in it is told once.</summary>
    [Theory]
    [InlineData("bad { mould m { flange 5 mm } part p { mould m; overlap 10 mm } }", "")]
    [InlineData("bad { mould m { flange 5 mm } part p { mould m; overlap 10 mm\n }\n }", "RC1021")]
    [InlineData("bad { part p { overlap 10 mm ? } }", "RC1003")]
    public void What_is_wrong_with_the_text_of_an_example_is_said_once(string example, string code)
    {
        using var bench = new Bench();
        var path = bench.Write("laps.recipe", $"rule lap-enough {{\n  title \"Lap too short\"\n  reason \"a tube opens at its lap\"\n  must overlap at-least 25 mm\n  {example}\n  good {{ part p {{ overlap 30 mm }} }}\n}}\n");
        var told = Bench.Run("check", path).Out.Split('\n').Where(line => line.Contains("RC10", StringComparison.Ordinal)).Select(line => line.Split(' ')[1]);

        Assert.Equal(code.Length == 0 ? [] : [code], told);
    }

    [Fact]
    public void A_folder_means_its_own_recipes_and_recurse_means_those_below()
    {
        using var bench = new Bench();
        bench.Write("a.recipe", "let lap = 20 mm\n");
        bench.Write("below/b.recipe", "let lap = 20\n}\n");
        Assert.Equal(ExitStatus.Clean, Bench.Run("check", bench.Folder).Status);
        Assert.Equal(ExitStatus.Findings, Bench.Run("check", bench.Folder, "--recurse").Status);
    }

    [Theory]
    [InlineData("check", "no-such-file.recipe")]
    [InlineData("check", "--no-such-option")]
    [InlineData("build", "no-such-file.recipe")]
    [InlineData("explain", "no-such-thing-at-all")]
    [InlineData("new", "Not A Name")]
    [InlineData("wash")]
    public void What_cannot_be_done_is_said_in_one_line_and_ends_with_two(params string[] args)
    {
        var run = Bench.Run(args);
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.StartsWith("recipe: ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_bytes_are_read_and_answered()
    {
        using var bench = new Bench();
        var path = bench.PathOf("noise.recipe");
        File.WriteAllBytes(path, [.. Enumerable.Range(0, 4096).Select(i => (byte)((i * 131) ^ (i >> 3)))]);
        var run = Bench.Run("check", path);
        Assert.Equal(ExitStatus.Findings, run.Status);
        Assert.Equal("", run.Error);
    }

    [Fact]
    public void Utf16_and_a_byte_order_mark_are_read()
    {
        using var bench = new Bench();
        var path = bench.PathOf("wide.recipe");
        File.WriteAllText(path, "let lap = 20 mm\n", System.Text.Encoding.Unicode);
        Assert.Equal(ExitStatus.Clean, Bench.Run("check", path).Status);
        File.WriteAllText(path, "let lap = 20 mm\n", new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        Assert.Equal(ExitStatus.Clean, Bench.Run("check", path).Status);
    }

    [Fact]
    public void What_cannot_be_read_in_a_file_that_is_used_is_said_with_the_one_that_uses_it()
    {
        using var bench = new Bench();
        bench.Write("shop.recipe", File.ReadAllText(Bench.Sample("samples/shop.recipe")).Replace("laminators", "laminatorz", StringComparison.Ordinal));
        bench.Write("lid.recipe", File.ReadAllText(Bench.Sample("samples/hatch-lid.recipe")));
        bench.Write("lid-again.recipe", File.ReadAllText(Bench.Sample("samples/hatch-lid.recipe")));

        var one = bench.RunHere("check", "lid.recipe");
        Assert.Equal(1, one.Status);
        Assert.Contains("shop.recipe:", one.Out, StringComparison.Ordinal);
        Assert.Contains("1 file, ", one.Out, StringComparison.Ordinal);
        Assert.EndsWith(": 1 error\n", one.Out, StringComparison.Ordinal);

        // However many use it, it is one thing to mend.
        var all = bench.RunHere("check");
        Assert.Equal(one.Out.Split("`laminatorz`").Length, all.Out.Split("`laminatorz`").Length);
        foreach (var format in (string[])["json", "sarif", "annotations"])
        {
            var shown = bench.RunHere("check", "lid.recipe", "lid-again.recipe", "--format", format);
            Assert.Equal(1, shown.Status);
            Assert.Equal(2, shown.Out.Split("is not a word of").Length);
        }

        // And no paper is made of it.
        Assert.Equal(1, bench.RunHere("build", "lid.recipe", "--out", "papers").Status);
        Assert.False(Directory.Exists(bench.PathOf("papers")));
    }

    [Fact]
    public void Each_thing_that_a_rule_finds_wrong_with_a_part_is_said()
    {
        using var bench = new Bench();
        bench.Write("shop.recipe", File.ReadAllText(Bench.Sample("samples/shop.recipe")));
        bench.Write("lid.recipe", File.ReadAllText(Bench.Sample("samples/hatch-lid.recipe")) + """

            rule light-and-many {
              title     "Light and many"
              reason    "it must not tip the boat, and one alone is not worth the mixing"
              remedy    "leave a ply out, or make more of them"
              source    "what the bench agreed on"
              severity  warning

              must  mass at-most 1 g
              must  quantity at-least 300
            }
            """);
        var run = bench.RunHere("check", "lid.recipe");

        // Two of the part, two of its variant.
        Assert.Equal(1 + 4, run.Out.Split("warning house rule light-and-many").Length);
    }
}
