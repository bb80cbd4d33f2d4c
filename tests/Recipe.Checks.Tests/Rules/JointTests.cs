using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of joints speak, and when they do not.</summary>
public class JointTests
{
    private const string Paste = "adhesive paste { chemistry epoxy; mix 100:50 by weight; density cured 1.2 g/cm3; source \"data sheet\" }";

    private static readonly Tray Halves = Tray.Hand with { Above = Paste, MouldLines = "halves left right; flange 40 mm" };

    [Theory]
    [InlineData("", "", true)]
    [InlineData("abrade 80 grit", "", false)]
    [InlineData("prepare \"key both rims and wipe\"", "", false)]
    [InlineData("prepare \"pull the peel ply off the rims\"", "", false)]
    [InlineData("prepare \"wash both rims\"", "", true)]
    [InlineData("", "abrade 80 grit", false)]
    public void A_cured_joint_is_keyed(string prepared, string finish, bool fires) => Limits.Says(
        "joint-not-keyed", Halves with { Join = $"manner cured-then-taped; tape glass-tape-200 width 50 mm; {prepared}", Finish = finish }, fires, Severity.Error);

    [Fact]
    public void A_wet_joint_and_a_peel_ply_need_no_sanding()
    {
        Bench.Silent("joint-not-keyed", Halves with { Join = "manner wet-in-wet; overlap 20 mm" });
        Bench.Silent("joint-not-keyed", new Tray { MouldLines = "halves left right; flange 40 mm", Join = "manner cured-then-taped; overlap 20 mm" });
    }

    [Theory]
    [InlineData("adhesive slow-laminating-epoxy", true)]
    [InlineData("adhesive slow-laminating-epoxy; fillet 6 g/m", false)]
    [InlineData("adhesive slow-laminating-epoxy; prepare \"thicken with cotton flock\"", false)]
    [InlineData("adhesive paste", false)]
    public void Laminating_resin_is_thickened_before_it_glues(string lines, bool fires) =>
        Limits.Says("neat-seam", Halves with { Join = $"manner cured-then-bonded; overlap 20 mm; {lines}" }, fires, Severity.Advice);

    [Theory]
    [InlineData("bond-line 1 mm", "", false)]
    [InlineData("bond-line 1.1 mm", "", true)]
    [InlineData("bond-line 2 mm", "thickness 2 mm; ", false)]
    public void A_bond_line_is_thin(string gap, string own, bool fires) => Limits.Says(
        "thick-bond-line",
        Halves with { Above = Paste.Replace("{ ", "{ " + own, StringComparison.Ordinal), Join = $"manner cured-then-bonded; overlap 20 mm; adhesive paste; {gap}" },
        fires,
        Severity.Advice);

    [Theory]
    [InlineData("", true)]
    [InlineData("align dowels", false)]
    [InlineData("overlap 20 mm", false)]
    [InlineData("prepare \"dry fit and mark\"", false)]
    public void Something_aligns_the_halves(string lines, bool fires) =>
        Limits.Says("no-alignment", Halves with { Join = $"manner cured-then-taped; tape glass-tape-200 width 50 mm; {lines}" }, fires);

    // 50 degC after 20 degC at sea level: 1013 mbar x 30 K / 293 K = 104 mbar, by the gas law.
    [Theory]
    [InlineData("half-ellipsoid 220 mm x 140 mm x 60 mm", "50 degC", "", true)]
    [InlineData("half-ellipsoid 220 mm x 140 mm x 60 mm", "40 degC", "", false)]
    [InlineData("half-ellipsoid 220 mm x 140 mm x 60 mm", "50 degC", "vent 3 mm", false)]
    [InlineData("flat 220 mm x 140 mm", "50 degC", "", false)]
    public void A_closed_hollow_breathes_when_it_is_heated(string surface, string peak, string vent, bool fires)
    {
        var tray = Tray.Hand with
        {
            Surface = surface,
            MadeOf = "aluminium",
            Release = "semi-permanent-release coats 4",
            MouldLines = "halves left right; flange 40 mm",
            WetOut = "room 20 degC",
            Cure = $"hold 20 degC for 24 h; hold {peak} for 16 h; cool to 30 degC; demould",
            Join = $"manner wet-in-wet; align dowels; overlap 20 mm; within 60 min; {vent}",
        };
        Limits.Says("sealed-hollow-heated", tray, fires, Severity.Error);
        if (fires)
        {
            Assert.Contains("104 mbar", Bench.Fires("sealed-hollow-heated", tray, Severity.Error).Message, StringComparison.Ordinal);
        }
    }

    // The second half has one ply more or less, or another size.
    [Theory]
    [InlineData("flat 400 mm x 300 mm", "outer glass-twill-163 0/90; inner glass-twill-163 0/90", false)]
    [InlineData("flat 400 mm x 300 mm", "outer glass-twill-163 0/90", true)]
    [InlineData("flat 300 mm x 200 mm", "outer glass-twill-163 0/90", false)]
    public void Halves_of_one_size_weigh_the_same(string surface, string plies, bool fires)
    {
        var other = (Tray.Hand with { Surface = surface, Plies = plies }).ToString().Replace("tray", "dish", StringComparison.Ordinal);
        var tray = Tray.Hand with { Below = other + "part both { join { parts tray dish; manner cured-then-taped; tape glass-tape-200 width 50 mm; align dowels; abrade 80 grit } }" };
        Limits.Says("halves-unequal", tray, fires, Severity.Advice);
    }

    [Theory]
    [InlineData("width 24 mm", "", null)]
    [InlineData("width 22 mm", "", Severity.Warning)]
    [InlineData("width 40 mm", "use structural", Severity.Warning)]
    [InlineData("width 50 mm", "use structural", null)]
    [InlineData("width 14 mm", "use structural", Severity.Error)]
    public void A_tape_lies_on_both_sides_of_its_seam(string width, string use, Severity? severity) => Limits.Says(
        "narrow-seam-tape",
        Halves with { PartLines = use, Join = $"manner cured-then-taped; tape glass-tape-200 {width}" },
        severity is not null,
        severity ?? Severity.Warning);

    [Theory]
    [InlineData("overlap 12 mm", "", null)]
    [InlineData("overlap 11 mm", "", Severity.Warning)]
    [InlineData("overlap 24 mm", "use structural", Severity.Warning)]
    [InlineData("overlap 25 mm", "use structural", null)]
    [InlineData("overlap 7 mm", "use structural", Severity.Error)]
    [InlineData("overlap 7 mm; tape glass-tape-200 width 50 mm", "", null)]
    [InlineData("overlap 0 mm", "", null)]
    public void A_lap_is_long_enough(string lap, string use, Severity? severity) => Limits.Says(
        "short-lap",
        Halves with { PartLines = use, Join = $"manner cured-then-bonded; adhesive paste; {lap}" },
        severity is not null,
        severity ?? Severity.Warning);
}
