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
    [InlineData("cured-then-taped", "within 300 min", "20 degC", null)]
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
