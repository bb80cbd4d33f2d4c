using System.Text.Json.Nodes;

namespace Recipe.Cli.Tests;

/// <summary><c>recipe compare</c>: parts side by side, in every format, and what is said when it cannot be.</summary>
public sealed class CompareVerbTests : IDisposable
{
    private static readonly string Lid = Bench.Sample("samples/hatch-lid.recipe");
    private readonly Bench _bench = new();

    [Fact]
    public void A_part_and_its_variant_stand_side_by_side()
    {
        var run = Bench.Run("compare", Lid);
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Matches(@"^ +hatch-lid +hatch-lid-no-veil\n", run.Out);
        Assert.Matches(@"\nMass, trimmed|^Mass, trimmed +126 g +122 g  -4 g \(-3.5 %\)", run.Out);
        Assert.Matches(@"Bending stiffness along +\d\.\d+ N·m²/m +\d\.\d+ N·m²/m  -\d", run.Out);
        Assert.Matches(@"Materials, all parts +[\d.]+ EUR +[\d.]+ EUR  -[\d.]+ EUR", run.Out);
    }

    [Fact]
    public void The_first_name_is_what_the_others_are_compared_with()
    {
        var run = Bench.Run("compare", Lid, "hatch-lid-no-veil", "hatch-lid");
        Assert.Matches(@"^ +hatch-lid-no-veil +hatch-lid\n", run.Out);
        Assert.Matches(@"Mass, trimmed +122 g +126 g  \+4 g", run.Out);
    }

    [Theory]
    [InlineData("base.recipe", "a-variant.recipe", "tray", "tray-thick")]
    [InlineData("a-variant.recipe", "base.recipe", "tray-thick", "tray")]
    public void The_order_of_the_files_is_that_of_the_arguments(string first, string second, string one, string other)
    {
        File.WriteAllText(_bench.PathOf("base.recipe"), "part tray {\n  title \"a\"\n}\n");
        File.WriteAllText(_bench.PathOf("a-variant.recipe"), "use \"base.recipe\"\nvariant tray-thick of tray {\n  title \"b\"\n}\n");
        var run = _bench.RunHere("compare", first, second);
        Assert.Equal([one, other], run.Out.Split('\n')[0].Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.DoesNotContain("stands alone", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void One_part_alone_is_told_what_to_add()
    {
        File.WriteAllText(_bench.PathOf("base.recipe"), "part tray {\n  title \"a\"\n}\n");
        var run = _bench.RunHere("compare", "base.recipe");
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Contains("one part stands alone; name another file", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_of_one_name_in_two_files_say_where_they_stand()
    {
        File.Copy(Lid, _bench.PathOf("a.recipe"));
        File.Copy(Lid, _bench.PathOf("b.recipe"));
        File.Copy(Bench.Sample("samples/shop.recipe"), _bench.PathOf("shop.recipe"));
        var run = _bench.RunHere("compare", "a.recipe", "b.recipe", "hatch-lid");
        Assert.Contains("hatch-lid (a.recipe)", run.Out, StringComparison.Ordinal);
        Assert.Contains("hatch-lid (b.recipe)", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("md", "# Comparison: hatch-lid")]
    [InlineData("html", "<svg ")]
    [InlineData("csv", "part,file,trimmed_mass_kg,")]
    [InlineData("json", "\"schema\": \"recipe/comparison/1\"")]
    [InlineData("svg", "<?xml ")]
    public void Each_format_is_written_to_the_file_that_is_named_and_nothing_else_is(string format, string holds)
    {
        var run = _bench.RunHere("compare", Lid, "--format", format, "--out", "deep/result");
        Assert.Equal((ExitStatus.Clean, "wrote deep/result\n"), (run.Status, run.Out));
        Assert.Contains(holds, File.ReadAllText(_bench.PathOf("deep/result")), StringComparison.Ordinal);
        Assert.Equal(["deep/result"], Directory.GetFiles(_bench.Folder, "*", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(_bench.Folder, path).Replace('\\', '/')));
        Assert.Equal(File.ReadAllText(_bench.PathOf("deep/result")), Bench.Run("compare", Lid, "--format", format).Out);
    }

    [Fact]
    public void Open_findings_are_counted()
    {
        _bench.Write("lid.recipe", "mould m {\n  surface flat 300 mm x 200 mm\n  made-of epoxy-glass-tooling\n  release { carnauba-wax coats 5 wait 30 min }\n}\n\npart lid {\n  mould m\n  process hand\n  resin slow-laminating-epoxy\n  plies { body glass-twill-280 0/90 x2 }\n  cure { hold 20 degC for 12 h }\n}\n");
        var json = JsonNode.Parse(_bench.RunHere("compare", "lid.recipe", "--format", "json").Out)!["parts"]![0]!;
        Assert.Equal(1, json["errors"]!.GetValue<int>());
        Assert.Equal("RC7007", json["open_findings"]![0]!["code"]!.GetValue<string>());
        Assert.Matches(@"\nErrors +1\n", _bench.RunHere("compare", "lid.recipe").Out);
    }

    [Theory]
    [InlineData("there is no part or variant named hatch-lit in", "hatch-lit")]
    [InlineData("did you mean hatch-lid?", "hatch-lit")]
    [InlineData("nowhere.recipe: there is no such file or folder", "nowhere.recipe")]
    public void What_is_not_there_is_said(string message, string word)
    {
        var run = Bench.Run("compare", Lid, word);
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains(message, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_of_a_file_that_is_used_is_found_by_giving_that_file()
    {
        _bench.Write("lid.recipe", "part lid {\n  process hand\n}\n");
        _bench.Write("thin.recipe", "use \"lid.recipe\"\n\nvariant thin of lid {\n  title \"thin\"\n}\n");
        var run = _bench.RunHere("compare", "thin.recipe", "lid", "thin");
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains("lid stands in lid.recipe, which thin.recipe only uses: give that file as well.", run.Error, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Clean, _bench.RunHere("compare", "thin.recipe", "lid.recipe", "lid", "thin").Status);
    }

    [Fact]
    public void Files_without_a_part_cannot_be_compared()
    {
        _bench.Write("shop.recipe", "shop ours {\n  room 20 degC\n}\n");
        Assert.Contains("no part", _bench.RunHere("compare", "shop.recipe").Error, StringComparison.Ordinal);
        _bench.Write("tray.recipe", "part tray {\n  process hand\n}\n");
        Assert.Contains("no picture", _bench.RunHere("compare", "tray.recipe", "--format", "svg").Error, StringComparison.Ordinal);
    }

    public void Dispose() => _bench.Dispose();
}
