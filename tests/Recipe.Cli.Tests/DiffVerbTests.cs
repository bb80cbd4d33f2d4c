using System.Diagnostics;
using System.Text.Json.Nodes;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary><c>recipe diff</c>: files, folders, revisions; in the words of the trade.</summary>
public sealed class DiffVerbTests : IDisposable
{
    private const string Lid = "hatch-lid.recipe";
    private readonly Bench _bench = new();

    public DiffVerbTests()
    {
        File.Copy(Repository.PathOf("samples/" + Lid), At("a/" + Lid));
        File.Copy(Repository.PathOf("samples/shop.recipe"), At("a/shop.recipe"));
        File.Copy(At("a/shop.recipe"), At("b/shop.recipe"));
        Write("b/" + Lid, Changed(File.ReadAllText(At("a/" + Lid))));
    }

    [Fact]
    public void It_names_the_plies_and_what_they_do()
    {
        var text = Diff(At("a/" + Lid), At("b/" + Lid));
        Assert.Contains("part hatch-lid\n", text, StringComparison.Ordinal);
        Assert.Matches(@"\n    > body +3: glass-twill-280 ±45 overlap lap  ->  1: glass-twill-280", text);
        Assert.Matches(@"\n    - veil +2: carbon-veil-8 random", text);
        Assert.Matches(@"\n    ~ back +4: glass-twill-280 0/90  ->  3: glass-twill-163 0/90", text);
        Assert.Matches(@"\n    = inside +6: glass-plain-105 0/90  ->  5: ", text);
        Assert.Matches(@"\n  wet-out\n    ~ resin-content  45 % by weight  ->  42 % by weight", text);
        Assert.Matches(@"\n    ~ Mass, trimmed +\d+ g  ->  \d+ g  -\d+ g \(-\d+ %\)", text);
        Assert.Matches(@"\n    \+ RC3006 target-out-of-reach", text);

        // The variant removes a line that is gone.
        Assert.Matches(@"\n    \+ RC1211 unknown-ply, error", text);
    }

    [Fact]
    public void Printed_figures_add_up()
    {
        var text = Diff(At("a/" + Lid), At("b/" + Lid));
        var match = System.Text.RegularExpressions.Regex.Match(text, @"Mass, trimmed +(\d+) g  ->  (\d+) g  -(\d+) g");
        Assert.True(match.Success, text);
        var numbers = match.Groups.Values.Skip(1).Select(group => int.Parse(group.Value, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(numbers[0] - numbers[1], numbers[2]);
    }

    [Fact]
    public void A_change_of_a_file_that_several_use_is_said_once_with_the_files_it_reaches()
    {
        foreach (var (folder, pace) in new[] { ("c", "15 min/m2"), ("d", "10 min/m2") })
        {
            Write(folder + "/base.recipe", $"shop ours {{\n  pace {pace}\n}}\n");
            Write(folder + "/one.recipe", "use \"base.recipe\"\nlet a = 1 mm\n");
            Write(folder + "/two.recipe", "use \"base.recipe\"\nlet a = 2 mm\n");
        }

        Assert.Equal(
            [At("c/base.recipe") + " -> " + At("d/base.recipe"), $"reaches {At("d/one.recipe")} and {At("d/two.recipe")}", "", "Besides the parts", "  shop ours", "    ~ pace  15 min/m²  ->  10 min/m²"],
            Diff(At("c"), At("d")).TrimEnd().Split('\n'));

        // Where the used file is not compared itself, it stands at the first that uses it.
        var text = Diff(At("c/one.recipe"), At("d/one.recipe"));
        Assert.Contains("which it uses\n", text, StringComparison.Ordinal);
        Assert.Single(text.Split("15 min/m²  ->  10 min/m²")[1..]);
    }

    [Fact]
    public void Layout_and_remarks_are_no_change()
    {
        Write("b/" + Lid, "# a new remark\n" + File.ReadAllText(At("a/" + Lid)).Replace("  trim      15 mm", "  trim 15 mm   # as ever", StringComparison.Ordinal));
        Assert.Equal("Nothing is different.\n", Diff(At("a/" + Lid), At("b/" + Lid)));
        Write("b/" + Lid, File.ReadAllText(At("a/" + Lid)).Replace("15 mm", "15mm", StringComparison.Ordinal).Replace("0/90", "0 / 90", StringComparison.Ordinal).Replace("+/-45", "\u00b1 45", StringComparison.Ordinal));
        Assert.Equal("Nothing is different.\n", Diff(At("a/" + Lid), At("b/" + Lid)));
    }

    [Fact]
    public void A_used_file_counts()
    {
        File.Copy(At("a/" + Lid), At("b/" + Lid), overwrite: true);
        Write("b/shop.recipe", File.ReadAllText(At("a/shop.recipe")).Replace("pace        15 min/m2", "pace        10 min/m2", StringComparison.Ordinal));
        var text = Diff(At("a/" + Lid), At("b/" + Lid));
        Assert.Matches(@"First mix to full vacuum +\d+ min  ->  \d+ min  -\d+ min", text);
        Assert.Matches(@"shop ours\n    ~ pace  15 min/m²  ->  10 min/m²", text);
    }

    [Fact]
    public void A_file_that_is_no_longer_used_counts()
    {
        Write("b/" + Lid, File.ReadAllText(At("a/" + Lid)).Replace("use \"shop.recipe\"\n", "", StringComparison.Ordinal));
        var text = Diff(At("a/" + Lid), At("b/" + Lid));
        Assert.Matches(@"- shop ours", text);
    }

    [Fact]
    public void Folders_are_compared_file_by_file()
    {
        Write("b/new.recipe", "language 1\n" + "part tray {\n  process hand\n}\n");
        var text = Diff(At("a"), At("b"));
        Assert.Contains("nothing -> ", text, StringComparison.Ordinal);
        Assert.Matches(@"part tray\n  The part\n    \+ tray", text);
        Assert.Matches(@"- veil ", text);
    }

    [Fact]
    public void A_part_under_another_name_is_the_same_part()
    {
        Write("b/" + Lid, File.ReadAllText(At("a/" + Lid)).Replace("part hatch-lid {", "part bow-lid {", StringComparison.Ordinal).Replace("of hatch-lid", "of bow-lid", StringComparison.Ordinal));
        var text = Diff(At("a/" + Lid), At("b/" + Lid));
        Assert.DoesNotContain("Mass", text, StringComparison.Ordinal);
        Assert.DoesNotContain("veil", text.Replace("no-veil", "", StringComparison.Ordinal), StringComparison.Ordinal);
        var parts = JsonNode.Parse(Bench.Run("diff", At("a/" + Lid), At("b/" + Lid), "--format", "json").Out)!["files"]![0]!["parts"]!.AsArray();
        Assert.Equal(("hatch-lid", "bow-lid"), ((string)parts[0]!["before"]!, (string)parts[0]!["after"]!));
    }

    [Theory]
    [InlineData("md", "| back | changed | 4: glass-twill-280 0/90 | 3: glass-twill-163 0/90 |")]
    [InlineData("html", "<svg ")]
    [InlineData("json", "\"trimmed_mass_kg\"")]
    public void Other_formats_say_the_same(string format, string expected)
    {
        var run = Bench.Run("diff", At("a/" + Lid), At("b/" + Lid), "--format", format);
        Assert.Equal(0, run.Status);
        Assert.Contains(expected, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_there_is_said()
    {
        Assert.Contains("no such file or folder", Bench.Run("diff", At("a"), At("c")).Error, StringComparison.Ordinal);
        Assert.Contains("one is a file and the other a folder", Bench.Run("diff", At("a"), At("b/" + Lid)).Error, StringComparison.Ordinal);
        Git("init", "-q");
        var run = _bench.RunHere("diff", "no-such-revision");
        Assert.Equal(2, run.Status);
        Assert.Contains("neither a file or folder here nor a revision", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_revision_is_compared_with_what_stands_on_disk_and_with_another()
    {
        Git("init", "-q");
        Git("add", "a");
        Git("-c", "user.name=bench", "-c", "user.email=bench@example.org", "commit", "-qm", "first");
        File.Copy(At("b/" + Lid), At("a/" + Lid), overwrite: true);
        var disk = Here("diff", "HEAD", "--path", "a");
        Assert.Contains("a/hatch-lid.recipe (HEAD) -> a/hatch-lid.recipe\n", disk, StringComparison.Ordinal);
        Assert.Matches(@"- veil ", disk);
        Git("-c", "user.name=bench", "-c", "user.email=bench@example.org", "commit", "-qam", "second");
        Assert.Equal("Nothing is different.\n", Here("diff", "HEAD", "--path", "a"));
        Assert.Matches(@"- veil ", Here("diff", "HEAD~1", "HEAD"));
        Assert.Equal("", Git("status", "--porcelain", "a"));
    }

    public void Dispose() => _bench.Dispose();

    private static string Changed(string lid) => lid
        .Replace("    body   glass-twill-280   +/-45   overlap lap\n", "", StringComparison.Ordinal)
        .Replace("    outer  ", "    body   glass-twill-280   +/-45   overlap lap\n    outer  ", StringComparison.Ordinal)
        .Replace("    veil   carbon-veil-8     random      # hides the twill\n", "", StringComparison.Ordinal)
        .Replace("back   glass-twill-280", "back   glass-twill-163", StringComparison.Ordinal)
        .Replace("inner  glass-plain-105", "inside  glass-plain-105", StringComparison.Ordinal)
        .Replace("resin-content      45 %", "resin-content      42 %", StringComparison.Ordinal);

    private static string Diff(string before, string after)
    {
        var run = Bench.Run("diff", before, after);
        Assert.Equal((0, ""), (run.Status, run.Error));
        return run.Out;
    }

    private string At(string name)
    {
        var path = _bench.PathOf(name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        return path;
    }

    private void Write(string name, string text) => File.WriteAllText(At(name), text);

    // A revision is one of the current folder's repository.
    private string Here(params string[] arguments)
    {
        var run = _bench.RunHere(arguments);
        Assert.Equal((0, ""), (run.Status, run.Error));
        return run.Out;
    }

    private string Git(params string[] arguments)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = _bench.Folder, RedirectStandardOutput = true };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return output;
    }
}
