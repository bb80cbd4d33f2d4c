using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of plies speak, and when they do not.</summary>
public class PlyTests
{
    private const string Others = """
        variant tray-2 of tray {
          title "The other one"
        }

        part pair {
          join {
            manner cured-then-taped
            parts tray tray-2
            overlap 20 mm
            tape glass-tape-200 width 40 mm x1
          }
        }
        """;

    [Fact]
    public void A_part_that_joins_others_needs_no_plies_of_its_own() => Bench.Silent("no-plies", Tray.Hand with { Below = Others });

    [Fact]
    public void A_part_with_neither_has_nothing_to_cut() =>
        Assert.Equal("tray has no plies", Bench.Fires("no-plies", Tray.Hand with { Plies = "" }, Severity.Warning).Message);

    // The roll of the cloth is 100 cm wide.
    [Theory]
    [InlineData("flat 1200 mm x 1100 mm", "", "outer glass-twill-163 0/90", Severity.Error)]
    [InlineData("flat 1200 mm x 980 mm", "", "outer glass-twill-163 0/90", Severity.Warning)]
    [InlineData("flat 1200 mm x 980 mm", "trim 15 mm", "outer glass-twill-163 0/90", Severity.Error)]
    [InlineData("flat 1200 mm x 980 mm", "trim 10 mm", "outer glass-twill-163 0/90", null)]
    [InlineData("flat 400 mm x 1100 mm", "", "outer glass-twill-163 0/90", null)]
    [InlineData("flat 1200 mm x 1100 mm", "", "outer glass-twill-163 0/90 join-lines 1", null)]
    [InlineData("flat 900 mm x 900 mm", "", "outer glass-twill-163 +/-45", Severity.Warning)]
    [InlineData("flat 1200 mm x 1100 mm", "", "outer glass-ud-200 0", null)]
    [InlineData("flat 1400 mm x 1300 mm", "", "outer glass-stitched-mat-300 random", null)]
    public void A_piece_of_cloth_fits_the_roll_or_says_where_it_is_joined(string surface, string trim, string ply, Severity? severity)
    {
        var tray = Tray.Hand with { Surface = surface, PartLines = trim, Plies = ply };
        if (severity is { } expected)
        {
            Bench.Fires("wider-than-roll", tray, expected);
        }
        else
        {
            Bench.Silent("wider-than-roll", tray);
        }
    }

    [Fact]
    public void The_width_is_named_with_the_roll() => Assert.Equal(
        "outer is 113 cm across the roll, which is 100 cm wide",
        Bench.Fires("wider-than-roll", Tray.Hand with { Surface = "flat 1200 mm x 1100 mm", Plies = "outer glass-twill-163 0/90" }, Severity.Error).Message);

    // Common practice: the binder of a mat wants styrene; a stitched one has none.
    [Theory]
    [InlineData("slow-laminating-epoxy", "body glass-mat-300 random", true)]
    [InlineData("slow-laminating-epoxy", "body glass-stitched-mat-300 random", false)]
    [InlineData("laminating-polyester", "body glass-mat-300 random", false)]
    [InlineData("slow-laminating-epoxy", "body glass-twill-163 0/90; veil carbon-veil-8 random", false)]
    public void A_bound_mat_does_not_go_with_epoxy(string resin, string plies, bool fires)
    {
        var tray = Tray.Hand with { Resin = resin, Plies = plies };
        if (fires)
        {
            Bench.Fires("mat-with-epoxy", tray, Severity.Warning);
        }
        else
        {
            Bench.Silent("mat-with-epoxy", tray);
        }
    }

    // Common practice of a core that is bonded on a skin of the day before; what is porous, a foam that is left in, is no skin.
    [Theory]
    [InlineData("heart core pvc-foam-75 thickness 5 mm", "cured-skin", null)]
    [InlineData("heart core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90", "cured-skin", null)]
    [InlineData("outer glass-twill-163 0/90; heart core pvc-foam-75 thickness 5 mm", "cured-skin", "heart has no ply on its bag side")]
    [InlineData("heart core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90", "lost-foam", "heart has no ply on its mould side")]
    public void A_skin_that_cured_before_is_the_skin_of_a_core(string plies, string madeOf, string? said)
    {
        var tray = Tray.Hand with { Above = "mould-material lost-foam { porous yes; source \"data sheet\" }\nmould-material cured-skin { porous no; source \"data sheet\" }", MadeOf = madeOf, Release = "", MouldLines = "stays-in-part yes", Plies = plies };
        Assert.Equal(said, Bench.Of(tray.ToString(), checks: Bench.Only("bare-core-face")).Report.Findings.SingleOrDefault()?.Message);
    }

    [Theory]
    [InlineData("core-1 core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90", "mould side")]
    [InlineData("outer glass-twill-163 0/90; core-1 core pvc-foam-75 thickness 5 mm", "bag side")]
    public void A_core_has_a_skin_on_either_face(string plies, string side) =>
        Assert.Equal($"core-1 has no ply on its {side}", Bench.Fires("bare-core-face", Tray.Hand with { Plies = plies }, Severity.Error).Message);

    [Fact]
    public void A_sandwich_is_sound() => Bench.Clean(Tray.Hand with
    {
        Plies = "outer glass-twill-163 0/90; core-1 core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90",
    });

    [Theory]
    [InlineData("hinge patch glass-twill-163 0/90 size 60 mm x 40 mm", "nobody says where hinge goes")]
    [InlineData("hinge patch glass-twill-163 0/90 size 60 mm x 40 mm x2", "nobody says where the 2 pieces of hinge go")]
    [InlineData("boss insert m5-nut x4", "nobody says where the 4 pieces of boss go")]
    [InlineData("pad core pvc-foam-75 thickness 5 mm size 200 mm x 150 mm; inner glass-twill-163 0/90", "nobody says where the core pad goes")]
    [InlineData("heart core pvc-foam-75 thickness 5 mm size 300 mm x 210 mm; inner glass-twill-163 0/90", null)]
    [InlineData("hinge patch glass-twill-163 0/90 size 60 mm x 40 mm at 30 mm from rim", null)]
    [InlineData("boss insert m5-nut x4 at \"the holes of the drilling plate\"", null)]
    public void A_patch_says_where_it_goes(string line, string? message)
    {
        var tray = Tray.Hand with { Plies = "outer glass-twill-163 0/90; " + line };
        if (message is null)
        {
            Bench.Clean(tray);
        }
        else
        {
            Assert.Equal(message, Bench.Fires("patch-without-place", tray, Severity.Advice).Message);
        }
    }

    // Two plies of 163 g/m2 at 50 % resin on 0.12 m2 are 78.2 g.
    [Theory]
    [InlineData("target mass 78 g +/- 2 g", false)]
    [InlineData("target mass 110 g +/- 20 g", false)]
    [InlineData("target mass 110 g +/- 5 g", true)]
    [InlineData("target mass 40 g +/- 5 g", true)]
    public void A_target_can_be_met_with_the_plies_there_are(string target, bool fires)
    {
        var tray = Tray.Hand with { PartLines = target };
        if (fires)
        {
            Assert.Contains("78.2 g", Bench.Fires("target-out-of-reach", tray, Severity.Advice).Message, StringComparison.Ordinal);
        }
        else
        {
            Bench.Silent("target-out-of-reach", tray);
        }
    }
}
