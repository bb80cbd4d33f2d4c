using System.Text.Json.Nodes;

namespace Recipe.Cli.Tests;

/// <summary><c>recipe shape</c> and <c>recipe cut</c>: from the mould's surface to pieces on the roll, and what is said when that cannot be.</summary>
public sealed class ShapeVerbTests : IDisposable
{
    private static readonly string Pan = Bench.Sample("samples/shapes/seat-pan.recipe");
    private readonly Bench _bench = new();

    [Fact]
    public void The_samples_are_sound() =>
        Assert.Contains("2 files, 2 parts: nothing wrong found", Bench.Run("check", Bench.Sample("samples/shapes")).Out, StringComparison.Ordinal);

    [Fact]
    public void The_surface_of_a_file_is_measured_and_its_cloth_laid_on_it()
    {
        var run = Bench.Run("shape", Pan);
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Matches(@"Area +0\.124 m²", run.Out);
        Assert.Matches(@"Box +380 mm x 340 mm x 70 mm", run.Out);
        Assert.Matches(@"Undercut +none", run.Out);
        Assert.Contains("\n  If it goes wrong\n  - A sheet of paper", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("? ", run.Out, StringComparison.Ordinal);
        Assert.Matches(@"Greatest shear: 1\d deg \(wrinkles from 40 deg\)", run.Out);
    }

    [Fact]
    public void Programs_get_it_in_SI_units()
    {
        var json = JsonNode.Parse(Bench.Run("shape", Pan, "--format", "json").Out)!;
        Assert.Equal(1380, (int)json["triangles"]!);
        Assert.Equal(0.38, (double)json["box_m"]![0]!, 1e-6);
        Assert.Equal(4, json["cloths"]!.AsArray().Count);
        Assert.All(json["cloths"]!.AsArray(), cloth => Assert.InRange((double)cloth!["covered_m2"]!, 0.122, 0.126));
    }

    [Theory]
    [InlineData("svg", "<?xml ")]
    [InlineData("html", "<svg ")]
    [InlineData("md", "# Shape sheet")]
    public void Each_format_is_written_to_the_file_that_is_named(string format, string holds)
    {
        var run = _bench.RunHere("shape", Pan, "--format", format, "--out", "deep/result");
        Assert.Equal((ExitStatus.Clean, "wrote deep/result\n"), (run.Status, run.Out));
        Assert.Contains(holds, File.ReadAllText(_bench.PathOf("deep/result")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_flat_has_no_shape_to_show()
    {
        var run = Bench.Run("shape", Bench.Sample("samples/telescope-tube.recipe"));
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains("flat or rolls out flat", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_went_is_said_with_its_name_and_nothing_is_drawn()
    {
        Directory.CreateDirectory(_bench.PathOf("shapes"));
        File.Copy(Bench.Sample("samples/shop.recipe"), _bench.PathOf("shop.recipe"));
        File.Copy(Pan, _bench.PathOf("shapes/seat-pan.recipe"));
        var check = _bench.RunHere("check", "shapes/seat-pan.recipe");
        Assert.Equal(ExitStatus.Findings, check.Status);
        Assert.Contains("RC2121 shape-file-missing: there is no file seat-pan.stl", check.Out, StringComparison.Ordinal);
        var cut = _bench.RunHere("cut", "shapes/seat-pan.recipe");
        Assert.Equal(ExitStatus.Findings, cut.Status);
        Assert.False(Directory.Exists(_bench.PathOf("out")));
        Assert.Equal(ExitStatus.CouldNotRun, _bench.RunHere("shape", "shapes/seat-pan.recipe").Status);

        // And a file that is none.
        File.WriteAllText(_bench.PathOf("shapes/seat-pan.stl"), "solid of words only");
        Assert.Contains("RC2123 shape-not-a-surface: seat-pan.stl gives no surface", _bench.RunHere("check", "shapes/seat-pan.recipe").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cut_plan_is_the_same_bytes_each_time_and_holds_every_piece()
    {
        string[] line = ["cut", Pan, "--effort", "0", "--undated", "--out"];
        var run = _bench.RunHere([.. line, "a"]);
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Matches(@"glass-twill-280: 2 pieces on 4\d\d mm of 1000 mm, ", run.Out);
        Assert.Equal(ExitStatus.Clean, _bench.RunHere([.. line, "b"]).Status);
        var files = Directory.GetFiles(_bench.PathOf("a")).Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal).ToArray();
        Assert.Equal(
            ["seat-pan-cut-1.dxf", "seat-pan-cut-1.svg", "seat-pan-cut-2.dxf", "seat-pan-cut-2.svg", "seat-pan-cut-3.dxf", "seat-pan-cut-3.svg", "seat-pan-cut-plan.html", "seat-pan-cut-plan.pdf"],
            files);
        Assert.All(files, name => Assert.Equal(File.ReadAllBytes(_bench.PathOf($"a/{name}")), File.ReadAllBytes(_bench.PathOf($"b/{name}"))));
    }

    [Fact]
    public void An_offcut_of_the_shelf_is_used_before_the_roll()
    {
        Directory.CreateDirectory(_bench.PathOf("shapes"));
        File.WriteAllText(_bench.PathOf("shop.recipe"), File.ReadAllText(Bench.Sample("samples/shop.recipe")) + "\nstock { glass-plain-80 offcut 500 mm x 450 mm lot \"G4\" }\n");
        File.Copy(Pan, _bench.PathOf("shapes/seat-pan.recipe"));
        File.Copy(Bench.Sample("samples/shapes/seat-pan.stl"), _bench.PathOf("shapes/seat-pan.stl"));
        Assert.Contains("offcut, lot G4: 1 piece on", _bench.RunHere("cut", "shapes/seat-pan.recipe", "--effort", "0", "--format", "svg").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("offcut", _bench.RunHere("cut", "shapes/seat-pan.recipe", "--effort", "0", "--format", "svg", "--roll-only").Out, StringComparison.Ordinal);

        // A US shop reads inches: a sixteenth of one is 1.5875 mm (NIST SP 811, appendix B.8).
        File.WriteAllText(_bench.PathOf("shop.recipe"), File.ReadAllText(_bench.PathOf("shop.recipe")).Replace("units       metric", "units       us", StringComparison.Ordinal));
        Assert.Matches(@"1 piece on 1\d(\.\d+)? in of 17\.6875 in, ", _bench.RunHere("cut", "shapes/seat-pan.recipe", "--effort", "0", "--format", "svg").Out);
    }

    [Theory]
    [InlineData("--effort", "101")]
    [InlineData("--quantity", "0")]
    [InlineData("--seed", "-1")]
    public void A_number_out_of_its_range_is_said(string option, string value)
    {
        var run = Bench.Run("cut", Pan, option, value);
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains(option, run.Error, StringComparison.Ordinal);
    }

    public void Dispose() => _bench.Dispose();
}
