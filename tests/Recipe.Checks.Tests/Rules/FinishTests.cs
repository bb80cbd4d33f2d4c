using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of finishing speak, and when they do not.</summary>
public class FinishTests
{
    // Nothing of release on it.
    private static readonly Tray Clean = Tray.Hand with { MadeOf = "polypropylene-sheet", Release = "" };

    [Theory]
    [InlineData("bond hinge", true)]
    [InlineData("abrade 80 grit; bond hinge", false)]
    [InlineData("step \"scuff with a pad\"; paint", false)]
    [InlineData("step \"knock it back with P180 wet sandpaper\"; paint", false)]
    [InlineData("step \"sandwich panel goes in\"; bond hinge", true)]
    [InlineData("bond \"hinge, while the part is still green\"", false)]
    [InlineData("trim; weigh", false)]
    public void A_face_is_keyed_before_something_sticks(string finish, bool fires) => Limits.Says("no-key-for-bond", Clean with { Finish = finish }, fires);

    [Fact]
    public void A_peel_ply_keys_a_face() => Bench.Silent("no-key-for-bond", new Tray { Finish = "bond hinge" });

    [Theory]
    [InlineData("abrade 240 grit; paint", true)]
    [InlineData("wash; abrade 240 grit; paint", false)]
    [InlineData("step \"wipe with acetone\"; abrade 240 grit; paint", false)]
    [InlineData("abrade 240 grit; wash; paint", true)]
    [InlineData("trim; weigh", false)]
    public void Release_is_washed_off_before_the_face_is_worked_on(string finish, bool fires) => Limits.Says("release-left-on-face", Tray.Hand with { Finish = finish }, fires);

    [Fact]
    public void A_face_without_release_is_not_washed()
    {
        Bench.Silent("release-left-on-face", Clean with { Finish = "abrade 240 grit; paint" });
        Bench.Silent("release-left-on-face", new Tray { Finish = "abrade 240 grit; paint" });
        Bench.Silent("release-left-on-face", Tray.Hand with { Release = "semi-permanent-release", Finish = "abrade 240 grit; paint" });
        Bench.Fires("release-left-on-face", new Tray { Finish = "abrade \"outer face, 240 grit\"; paint" }, Severity.Warning);
    }

    [Theory]
    [InlineData("room 17 degC", "abrade 120 grit; paint", true)]
    [InlineData("room 18 degC", "abrade 120 grit; paint", false)]
    [InlineData("room 20 degC; humidity 71 %", "abrade 120 grit; paint", true)]
    [InlineData("room 20 degC; humidity 70 %", "abrade 120 grit; paint", false)]
    [InlineData("room 17 degC", "wash \"warm water\"; abrade 120 grit; paint", false)]
    public void Cold_epoxy_is_washed_before_it_is_sanded(string air, string finish, bool fires) =>
        Limits.Says("blush-left", Clean with { WetOut = air, Finish = finish, Cure = "hold 17 degC for 96 h; demould" }, fires);

    [Theory]
    [InlineData("paint colour black", "hold 20 degC for 48 h", true)]
    [InlineData("paint \"dark blue\"", "hold 20 degC for 48 h", true)]
    [InlineData("paint colour white", "hold 20 degC for 48 h", false)]
    [InlineData("paint \"white, black lettering\"", "hold 20 degC for 48 h", false)]
    [InlineData("paint colour black", "hold 20 degC for 24 h; hold 50 degC for 16 h; cool to 30 degC", false)]
    public void A_part_is_warmed_before_it_is_painted_dark(string paint, string cure, bool fires) =>
        Limits.Says("dark-paint-before-heat", Clean with { Cure = cure + "; demould", Finish = "wash; abrade 240 grit; " + paint }, fires, Severity.Advice);

    [Theory]
    [InlineData("demould \"lever with a screwdriver\"", true)]
    [InlineData("demould \"steel wedge\"", true)]
    [InlineData("demould \"plastic wedges, never a screwdriver\"", false)]
    [InlineData("step \"lever it off with a chisel\"", true)]
    [InlineData("step \"weigh it down with steel bars\"", false)]
    public void Metal_stays_away_from_the_mould(string finish, bool fires) => Limits.Says("metal-levers", Clean with { Finish = finish }, fires, Severity.Advice);

    [Theory]
    [InlineData("demould \"hit the back of the mould\"", true)]
    [InlineData("demould \"hammer\"", true)]
    [InlineData("demould \"tap the flange with a hammer\"", false)]
    [InlineData("demould \"rubber mallet on the rim\"", false)]
    [InlineData("step \"hammer in the dowels\"", false)]
    public void A_mould_is_not_struck(string finish, bool fires) => Limits.Says("hammer-on-mould", Clean with { Finish = finish }, fires);

    [Theory]
    [InlineData("inspect", "", Severity.Advice)]
    [InlineData("inspect \"by eye\"", "use structural", Severity.Warning)]
    [InlineData("inspect \"no dry spot\"", "", null)]
    [InlineData("inspect \"at most 1 pinhole\"", "", null)]
    [InlineData("inspect; inspect \"mass in its band\"", "", null)]
    public void An_inspection_has_limits(string finish, string use, Severity? severity) =>
        Limits.Says("inspect-without-limits", Clean with { PartLines = use, Finish = finish }, severity is not null, severity ?? Severity.Advice);

    [Theory]
    [InlineData("wash; trim", true)]
    [InlineData("wash; trim; weigh", false)]
    [InlineData("wash; trim; step \"put it on the scale\"", false)]
    [InlineData("", false)]
    public void A_target_is_weighed_against(string finish, bool fires) =>
        Limits.Says("never-weighed", Clean with { PartLines = "target mass 82 g +/- 20 g", Finish = finish }, fires, Severity.Advice);

    [Fact]
    public void A_build_record_with_a_mass_has_been_weighed() => Bench.Silent("never-weighed", Clean with
    {
        PartLines = "target mass 82 g +/- 20 g",
        Finish = "wash; trim",
        Below = "build tray no 1 on 2026-05-01 { mass 84 g }",
    });

    [Theory]
    [InlineData("weigh; trim", true)]
    [InlineData("trim; weigh", false)]
    [InlineData("weigh \"untrimmed\"; trim; weigh", false)]
    [InlineData("trim; weigh; trim \"a last hair\"", false)]
    public void A_part_is_weighed_after_its_trim(string finish, bool fires) =>
        Limits.Says("weighed-before-trim", Clean with { PartLines = "target mass 82 g +/- 20 g", Finish = finish }, fires);

    [Theory]
    [InlineData("abrade \"while still green\"", true)]
    [InlineData("abrade \"while still green, wet\"", false)]
    [InlineData("trim \"green, with a knife\"", false)]
    [InlineData("abrade 80 grit", false)]
    public void Green_resin_makes_no_dust(string finish, bool fires) => Limits.Says("green-dust", Clean with { Finish = finish }, fires);

    private const string Aramid =
        "fibre ours-aramid { density 1.44 g/cm3; source \"data sheet\" }\nfabric our-cloth { fibre ours-aramid; areal-weight 170 g/m2; width 100 cm; source \"data sheet\" }";

    [Theory]
    [InlineData("only our-cloth 0/90", "trim", true)]
    [InlineData("only our-cloth 0/90", "trim; seal edges", false)]
    [InlineData("only our-cloth 0/90", "weigh", false)]
    [InlineData("only glass-twill-163 0/90", "trim", false)]
    public void A_cut_edge_of_aramid_is_sealed(string plies, string finish, bool fires) =>
        Limits.Says("open-aramid-edge", Clean with { Above = Aramid, Plies = plies, Finish = finish }, fires);

    [Theory]
    [InlineData("paint \"two-pack clear, sprayed\"", true)]
    [InlineData("paint \"2K, spray gun\"", true)]
    [InlineData("paint \"2K, by brush\"", false)]
    [InlineData("prime \"two-pack epoxy primer, sprayed\"", false)]
    [InlineData("paint \"water-based, sprayed\"", false)]
    [InlineData("paint \"isocyanate clear, sprayed, air-fed mask\"", false)]
    public void Isocyanate_is_sprayed_with_air_from_outside(string paint, bool fires) =>
        Limits.Says("spray-without-air", Clean with { Finish = "wash; abrade 240 grit; " + paint }, fires, Severity.Error);

    [Fact]
    public void No_reason_makes_isocyanate_safe() => Assert.False(CheckCatalogue.Find("spray-without-air")!.CanBeAccepted);

    [Theory]
    [InlineData("trim \"dry, jigsaw\"", true)]
    [InlineData("abrade \"dry, 80 grit\"", true)]
    [InlineData("abrade \"wet and dry paper\"", false)]
    [InlineData("trim \"dry, with extraction\"", false)]
    [InlineData("abrade \"240 grit, once it is dry\"", false)]
    [InlineData("trim \"with a jigsaw\"", false)]
    [InlineData("inspect \"no dry spot over 3 mm\"", false)]
    public void Dry_dust_is_caught(string finish, bool fires) => Limits.Says("dry-dust", Clean with { Finish = "wash; " + finish }, fires, Severity.Error);

    [Theory]
    [InlineData("dust wet", "trim \"dry, jigsaw\"", true)]
    [InlineData("dust wet", "trim \"dry, with extraction\"", false)]
    [InlineData("dust wet", "trim \"with a jigsaw\"", false)]
    [InlineData("dust extracted", "trim \"dry, jigsaw\"", false)]
    public void A_shop_that_works_wet_does_not_cut_dry(string dust, string finish, bool fires) =>
        Limits.Says("dry-dust", Clean with { Shop = $"safety {{\n{dust}\n}}", Finish = "wash; " + finish }, fires, Severity.Error);

    [Theory]
    [InlineData("", "trim \"with a jigsaw\"", true)]
    [InlineData("", "trim \"with a jigsaw\"; abrade \"wet, 240 grit\"", false)]
    [InlineData("", "weigh", false)]
    [InlineData("safety {\ndust extracted\n}", "trim \"with a jigsaw\"", false)]
    public void Where_nobody_says_what_becomes_of_dust_that_is_said(string shop, string finish, bool missing) =>
        Assert.Equal(missing, Bench.Of((Clean with { Shop = shop, Finish = "wash; " + finish }).ToString()).Report.NotChecked.Any(note => note.Descriptor.Name == "dry-dust"));

    [Theory]
    [InlineData("outdoors yes", "wash; trim", true)]
    [InlineData("outdoors yes", "wash; trim; abrade 240 grit; paint", false)]
    [InlineData("outdoors yes", "wash; step \"varnish, two coats\"", false)]
    [InlineData("outdoors no", "wash; trim", false)]
    [InlineData("", "wash; trim", false)]
    public void Epoxy_outdoors_is_covered(string where, string finish, bool fires) => Limits.Says("epoxy-in-sun", Clean with { PartLines = where, Finish = finish }, fires);

    [Theory]
    [InlineData("bond hinge; peel", Severity.Error)]
    [InlineData("peel; bond hinge", null)]
    [InlineData("paint; peel", null)]
    [InlineData("bond \"badge on the outer face\"; peel", null)]
    [InlineData("bond foot; peel; bond hinge", null)]
    [InlineData("trim; ship", Severity.Advice)]
    [InlineData("trim; ship \"peel ply stays on\"", null)]
    public void A_peel_ply_comes_off_before_the_bond(string finish, Severity? severity) =>
        Limits.Says("peel-ply-left-on", new Tray { Finish = finish }, severity is not null, severity ?? Severity.Error);

    // Common practice: 12 to 1 light, 20 to 1 loaded.
    [Theory]
    [InlineData("scarf 12 to 1", "", false)]
    [InlineData("scarf 11 to 1", "", true)]
    [InlineData("scarf \"1:15\"", "", false)]
    [InlineData("scarf 19 to 1", "use structural", true)]
    [InlineData("scarf 20 to 1", "use structural", false)]
    [InlineData("scarf \"5 to 1, filler only\"", "", false)]
    public void A_scarf_is_long(string scarf, string use, bool fires) => Limits.Says("steep-scarf", Clean with { PartLines = use, Finish = "wash; " + scarf }, fires);

    [Fact]
    public void A_scarf_without_a_number_is_not_judged() => Assert.Contains(
        Bench.Of((Clean with { Finish = "wash; scarf" }).ToString()).Report.NotChecked, n => n.Descriptor.Name == "steep-scarf");

    [Theory]
    [InlineData("hold 20 degC for 48 h", "ship", true)]
    [InlineData("hold 20 degC for 7 d", "ship", false)]
    [InlineData("hold 20 degC for 48 h", "ship \"a week later\"", false)]
    [InlineData("hold 20 degC for 24 h; hold 50 degC for 16 h; cool to 30 degC", "ship", false)]
    [InlineData("hold 20 degC for 48 h", "weigh", false)]
    public void A_part_is_shipped_cured(string cure, string last, bool fires) =>
        Limits.Says("shipped-green", Clean with { WetOut = "room 20 degC", Cure = cure + "; demould", Finish = "wash; trim; " + last }, fires, Severity.Advice);

    [Theory]
    [InlineData("bond foot; bond hinge; peel", "peel\nbond foot\nbond hinge")]
    [InlineData("bond \"badge on the outer face\"; bond hinge; peel", "bond \"badge on the outer face\"\npeel\nbond hinge")]
    public void The_peel_ply_comes_off_before_the_first_bond_on_its_face(string finish, string lines)
    {
        var found = Bench.Fires("peel-ply-left-on", new Tray { Finish = finish }, Severity.Error);
        Assert.Contains(lines, TextEdit.Apply(found.Where.Source, Assert.Single(found.Fixes).Edits), StringComparison.Ordinal);
    }

    // The number alone is changed, wherever it stands; other numbers of the line are no taper.
    [Theory]
    [InlineData("scarf \"8 to 1, round the hole\"", "scarf \"12 to 1, round the hole\"")]
    [InlineData("scarf \"1 in 8\"", "scarf \"1 in 12\"")]
    [InlineData("scarf \"8-to-1\"", "scarf \"12-to-1\"")]
    [InlineData("scarf \"1 patch, 8:1\"", "scarf \"1 patch, 12:1\"")]
    public void A_scarf_is_made_longer_and_its_words_stay(string scarf, string line)
    {
        var found = Bench.Fires("steep-scarf", Clean with { Finish = "wash; " + scarf }, Severity.Warning);
        Assert.Contains(line, TextEdit.Apply(found.Where.Source, Assert.Single(found.Fixes).Edits), StringComparison.Ordinal);
    }

    [Fact]
    public void A_width_is_no_taper() => Bench.Silent("steep-scarf", Clean with { Finish = "wash; scarf \"1 hole of 6 mm, 20 to 1\"" });

    [Fact]
    public void A_part_is_painted_before_it_is_sent_off()
    {
        var found = Bench.Fires("epoxy-in-sun", Clean with { PartLines = "outdoors yes", Finish = "wash; trim; ship \"after 7 days\"" }, Severity.Warning);
        Assert.Contains("paint colour white\nship", TextEdit.Apply(found.Where.Source, Assert.Single(found.Fixes).Edits), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("paint colour black", 1)]
    [InlineData("paint \"dark navy\"", 0)]
    public void A_colour_of_two_words_is_left_to_the_reader(string paint, int fixes) => Assert.Equal(
        fixes, Bench.Fires("dark-paint-before-heat", Clean with { Finish = "wash; abrade 240 grit; " + paint }, Severity.Advice).Fixes.Length);

    [Theory]
    [InlineData("trim", "", true)]
    [InlineData("trim \"with a knife\"", "", false)]
    [InlineData("trim \"with a knife, then sand the edge\"", "", true)]
    [InlineData("abrade \"80 grit, after the knife\"", "", true)]
    [InlineData("trim \"wet\"", "", false)]
    [InlineData("weigh", "abrade 80 grit", true)]
    [InlineData("weigh", "abrade \"80 grit, wet\"", false)]
    public void Dust_of_any_cut_is_let_into_the_air(string finish, string prepared, bool fires) => Limits.Says(
        "dust-in-the-air",
        Clean with
        {
            Shop = "safety {\ngloves \"nitrile\"\ndust dry\n}",
            MouldLines = "halves left right",
            Join = "manner cured-then-taped; align dowels; tape glass-tape-200 width 50 mm; " + prepared,
            Finish = finish,
        },
        fires,
        Severity.Error);

    [Theory]
    [InlineData("scarf 20 to 1", true)]
    [InlineData("trim", true)]
    [InlineData("trim \"with shears\"", false)]
    [InlineData("weigh", false)]
    public void Carbon_dust_gets_into_open_motors(string finish, bool fires) => Limits.Says(
        "open-motors-with-carbon",
        Clean with { Shop = "safety {\ngloves \"nitrile\"\ndust wet\ntools open\n}", Plies = "a carbon-twill-200 0/90; b carbon-twill-200 0/90", Finish = finish },
        fires,
        Severity.Advice);

    [Theory]
    [InlineData("none", "bare hands")]
    [InlineData("\"bare hands\"", "bare hands")]
    [InlineData("\"thin latex\"", "gloves are thin latex")]
    [InlineData("\"nitrile over cotton\"", null)]
    public void Gloves_keep_resin_out(string gloves, string? says)
    {
        var tray = Clean with { Shop = $"safety {{\ngloves {gloves}\n}}" };
        if (says is null)
        {
            Bench.Silent("latex-gloves", tray);
        }
        else
        {
            Assert.Contains(says, Bench.Fires("latex-gloves", tray, Severity.Warning).Message, StringComparison.Ordinal);
        }
    }
}
