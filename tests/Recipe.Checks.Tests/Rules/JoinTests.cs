using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of seams and stock speak, and when they do not.</summary>
public class JoinTests
{
    private static readonly Tray Halves = Tray.Hand with { MouldLines = "halves left right; flange 40 mm" };

    [Theory]
    [InlineData("manner cured-then-taped; overlap 20 mm", false)]
    [InlineData("manner cured-then-taped; tape glass-tape-200 width 40 mm x1", false)]
    [InlineData("manner cured-then-taped", true)]
    [InlineData("manner cured-then-taped; overlap 0 mm", true)]
    [InlineData("manner cured-then-bonded; adhesive paste", false)]
    [InlineData("manner cured-then-bonded", true)]
    public void Cloth_or_a_flange_crosses_a_seam(string join, bool fires)
    {
        var tray = Halves with { Join = join, Above = "adhesive paste { chemistry epoxy; mix 100:50 by weight; density cured 1.2 g/cm3; source \"data sheet\" }" };
        if (fires)
        {
            Assert.Equal("no lip and no tape crosses the seam of tray", Bench.Fires("seam-without-lap", tray, Severity.Error).Message);
        }
        else
        {
            Bench.Silent("seam-without-lap", tray);
        }
    }

    [Fact]
    public void Halves_without_a_join_stay_halves()
    {
        Assert.Equal("tray is laid in 2 halves and nothing joins them", Bench.Fires("seam-without-lap", Halves, Severity.Error).Message);
        Bench.Silent("seam-without-lap", Tray.Hand);
    }

    // Film life 150 min at 20 degC; half of it at 30 degC (common practice).
    [Theory]
    [InlineData("wet-in-wet", "within 150 min", "20 degC", null)]
    [InlineData("wet-in-wet", "within 151 min", "20 degC", Severity.Error)]
    [InlineData("wet-in-wet", "within 100 min", "30 degC", Severity.Warning)]
    [InlineData("cured-then-taped", "within 150 min", "20 degC", null)]
    [InlineData("cured-then-taped", "within 151 min", "20 degC", Severity.Error)]
    [InlineData("cured-then-taped", "", "20 degC", null)]
    public void A_wet_seam_is_closed_while_the_film_lives(string manner, string within, string room, Severity? severity)
    {
        var tray = Halves with { Join = $"manner {manner}; overlap 20 mm; {within}", WetOut = "room " + room };
        if (severity is { } expected)
        {
            Bench.Fires("seam-closed-late", tray, expected);
        }
        else
        {
            Bench.Silent("seam-closed-late", tray);
        }
    }

    // The adhesive's own film life counts, 40 min at 20 degC, and not that of the resin of the part.
    [Theory]
    [InlineData("within 40 min", false)]
    [InlineData("within 41 min", true)]
    public void A_bonded_seam_is_closed_while_its_adhesive_lives(string within, bool fires) => Limits.Says(
        "seam-closed-late",
        Halves with
        {
            Join = $"manner cured-then-bonded; abrade 80 grit; overlap 25 mm; adhesive paste; bond-line 0.5 mm; {within}",
            WetOut = "room 20 degC",
            Above = "adhesive paste { chemistry epoxy; mix 100:50 by weight; density cured 1.2 g/cm3; film-life 40 min at 20 degC; source \"data sheet\" }",
        },
        fires,
        Severity.Error);

    [Theory]
    [InlineData("width 100 mm", false)]
    [InlineData("width 101 mm", true)]
    [InlineData("", false)]
    public void A_tape_is_no_wider_than_its_roll(string width, bool fires) => Limits.Says(
        "tape-wider-than-roll", Halves with { Join = $"manner cured-then-taped; overlap 20 mm; tape glass-tape-200 {width} x1" }, fires);

    // A circle of 300 mm is 942.5 mm round; 5 % of that is what a tape measure is out by. The rim of a flat half is no line of a join.
    [Theory]
    [InlineData("spherical-cap diameter 300 mm rise 40 mm", "seam 896 mm", false)]
    [InlineData("spherical-cap diameter 300 mm rise 40 mm", "seam 895 mm", true)]
    [InlineData("flat 400 mm x 300 mm", "seam 800 mm", false)]
    public void A_seam_goes_round_the_rim(string surface, string seam, bool fires) => Limits.Says(
        "seam-shorter-than-rim", Halves with { Surface = surface, Join = $"manner cured-then-taped; overlap 20 mm; {seam}" }, fires);

    private const string Old = "stock {\n  slow-laminating-epoxy 2 kg lot \"E1\" expires 2026-05-13\n}";

    [Theory]
    [InlineData("stock {\n  slow-laminating-epoxy 2 kg lot \"E1\" expires 2026-05-14\n}", false)]
    [InlineData(Old, true)]
    [InlineData("stock {\n  slow-laminating-epoxy 2 kg lot \"E1\" expires 2026-05-13\n  slow-laminating-epoxy 2 kg lot \"E2\" expires 2027-05-13\n}", false)]
    [InlineData("stock {\n  fast-laminating-epoxy 2 kg lot \"E1\" expires 2026-05-13\n}", false)]
    public void What_the_part_needs_is_in_date(string stock, bool fires)
    {
        var tray = Tray.Hand with { Above = stock };
        if (fires)
        {
            Assert.Equal(
                "lot E1 of slow-laminating-epoxy expired on 2026-05-13; today is 2026-05-14",
                Bench.Fires("expired-stock", tray, Severity.Warning).Message);
        }
        else
        {
            Bench.Silent("expired-stock", tray);
        }
    }

    [Fact]
    public void Without_a_day_nobody_can_tell()
    {
        var bench = Bench.Of((Tray.Hand with { Above = Old }).ToString(), dated: false);
        Assert.Empty(bench.Report.Findings);
        Assert.Contains(bench.Report.NotChecked, n => n.Descriptor.Name == "expired-stock");
    }

    [Fact]
    public void Prepreg_past_its_date_is_an_error()
    {
        var tray = new Tray { Process = "prepreg", Above = "stock {\n  glass-twill-163 5 m2 lot \"G1\" expires 2026-01-01\n}" };
        Bench.Fires("expired-stock", tray, Severity.Error);
    }
}
