using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When checks speak of what is measured on a drawn surface, and when they do not.</summary>
public class ShapeTests
{
    // Common practice: a rigid mould in one piece wants a degree of draft; the walls of these cups lean by the angle of their profile.
    [Theory]
    [InlineData(0.2, true)]
    [InlineData(3.0, false)]
    public void Walls_are_measured_against_the_pull(double degrees, bool speaks)
    {
        var lean = 100 * Math.Tan(degrees * Math.PI / 180);
        var text = Part(FormattableString.Invariant($"point radius 0 mm height -100 mm; point radius 150 mm height -100 mm; point radius {150 + lean:F3} mm height 0 mm"));
        Speaks("no-draft", text, speaks);
        Speaks("no-draft", text.Replace("pull z", "", StringComparison.Ordinal), false);
    }

    [Fact]
    public void What_closes_in_again_towards_the_rim_locks_the_part_in()
    {
        const string bottle = "point radius 0 mm height -100 mm; point radius 160 mm height -60 mm; point radius 120 mm height 0 mm";
        var finding = Speaks("locked-in", Part(bottle), true)!;
        Assert.Contains("lies under itself along the pull", finding.Message, StringComparison.Ordinal);
        Speaks("locked-in", Part(bottle).Replace("pull z", "pull z\nflexible yes", StringComparison.Ordinal), false);
        Speaks("locked-in", Part("point radius 0 mm height -60 mm; point radius 150 mm height 0 mm"), false);
    }

    // Common practice: deeper than half its width.
    [Theory]
    [InlineData(200, true)]
    [InlineData(100, false)]
    public void A_deep_hollow_wants_something_to_pull_with(double depth, bool speaks) =>
        Speaks("no-way-to-pull", Part(FormattableString.Invariant($"point radius 0 mm height -{depth} mm; point radius 100 mm height -{depth} mm; point radius 150 mm height 0 mm")).Replace("pull-aid \"air port\"", "", StringComparison.Ordinal), speaks);

    [Fact]
    public void A_sharp_corner_of_the_profile_is_seen_under_heavy_cloth()
    {
        var cup = Part("point radius 0 mm height -60 mm; point radius 100 mm height -60 mm; point radius 150 mm height 0 mm");
        var finding = Speaks("corner-too-sharp", cup.Replace("glass-twill-163", "carbon-twill-200", StringComparison.Ordinal), true)!;
        Assert.Contains("measured on its surface", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_region_that_leaves_nothing_says_how_far_the_surface_reaches()
    {
        var text = Part("point radius 0 mm height -60 mm; point radius 150 mm height 0 mm").Replace("pull z", "pull z\nregion above z 50 mm", StringComparison.Ordinal);
        Assert.Contains("in z from -60 mm to 0 mm", Speaks("shape-region-empty", text, true)!.Message, StringComparison.Ordinal);
    }

    private static Finding? Speaks(string name, string text, bool speaks)
    {
        var bench = Bench.Of(text);
        Assert.True(bench.Before.IsEmpty, bench.Story());
        var found = bench.Report.Findings.Where(finding => finding.Descriptor.Name == name).ToList();
        Assert.True(found.Count == (speaks ? 1 : 0), bench.Story());
        return found.FirstOrDefault();
    }

    private static string Part(string points) =>
        (Tray.Hand with { Surface = $"revolved {{ {points} }}", MouldLines = "pull z; pull-aid \"air port\"" }).ToString();
}
