using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of the mould itself speak, at their limits, and when they do not.</summary>
public class FaceTests
{
    private const string Board = "mould-material board { heat-limit 60 degC; porous yes }";

    [Theory]
    [InlineData("carnauba-wax coats 5 wait 30 min dry 59 min", true)]
    [InlineData("carnauba-wax coats 5 wait 30 min dry 60 min", false)]
    [InlineData("carnauba-wax coats 5 wait 30 min dry 10 min; pva-film coats 1 dry 60 min", false)]
    public void Wax_hardens_an_hour_unless_a_film_lies_over_it(string release, bool fires) =>
        Limits.Speaks("wax-still-soft", Tray.Hand with { Release = release }, fires);

    [Theory]
    [InlineData("pva-film coats 1 dry 60 min", "", true)]
    [InlineData("pva-film coats 1 dry 60 min", "seal-coats 2", false)]
    [InlineData("carnauba-wax coats 3 wait 30 min; pva-film coats 1 dry 60 min", "", false)]
    [InlineData("carnauba-wax coats 3 wait 30 min on left; pva-film coats 1 dry 60 min", "halves left right", true)]
    [InlineData("carnauba-wax coats 3 wait 30 min on left; pva-film coats 1 dry 60 min on right", "halves left right", true)]
    public void A_film_on_a_porous_face_wants_wax_or_a_seal_under_it(string release, string lines, bool fires) =>
        Limits.Speaks("film-without-wax", Tray.Hand with { Above = Board, MadeOf = "board", Release = release, MouldLines = lines }, fires);

    [Theory]
    [InlineData("semi-permanent-release coats 4; pva-film coats 1 dry 60 min", true)]
    [InlineData("pva-film coats 1 dry 60 min", false)]
    [InlineData("carnauba-wax coats 4 wait 30 min; pva-film coats 1 dry 60 min", false)]
    public void A_film_does_not_wet_a_semi_permanent_release(string release, bool fires) => Limits.Speaks("film-on-silicone", Tray.Hand with { Release = release }, fires);

    [Theory]
    [InlineData("", true)]
    [InlineData("state new", false)]
    [InlineData("state seasoned", true)]
    public void A_film_lifts_under_an_infusion_but_shields_a_new_face(string state, bool fires) =>
        Limits.Speaks("film-under-infusion", Tray.Infused with { MouldLines = state, Release = "carnauba-wax coats 5 wait 30 min; pva-film coats 1 dry 60 min" }, fires);

    // trim 10 + gap 20 + tape 12 = 42 mm
    [Theory]
    [InlineData("flange 42 mm", "trim 10 mm", true, false)]
    [InlineData("flange 41 mm", "trim 10 mm", true, true)]
    [InlineData("flange 41 mm", "trim 10 mm", false, false)]
    [InlineData("", "trim 10 mm", true, false)]
    public void Trim_gap_and_tape_fit_on_the_flange(string flange, string trim, bool bagged, bool fires)
    {
        var tray = bagged ? new Tray() : Tray.Hand;
        Limits.Speaks("flange-too-narrow", tray with { MouldLines = flange, PartLines = trim }, fires);
    }

    [Fact]
    public void An_envelope_bag_needs_no_flange_and_no_seal()
    {
        var bag = new Tray().Bag + "; envelope yes";
        Bench.Silent("flange-too-narrow", new Tray { MouldLines = "flange 20 mm", PartLines = "trim 15 mm", Bag = bag });
        Bench.Silent("leaky-mould", new Tray { Above = Board, MadeOf = "board", Bag = bag });
        Bench.Silent("released-tape-land", new Tray { MouldLines = "tape-land released", Bag = bag });
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("seal-coats 0", true)]
    [InlineData("seal-coats 1", false)]
    [InlineData("tested 2026-02-01", false)]
    public void A_porous_mould_under_a_bag_is_sealed_or_was_tested_bare(string lines, bool fires) =>
        Limits.Speaks("leaky-mould", new Tray { Above = Board, MadeOf = "board", MouldLines = lines }, fires);

    // Common practice: 1 degree at the least on walls of more than 25 mm.
    [Theory]
    [InlineData("box 400 mm x 300 mm x 60 mm", "draft 0.9 deg", true)]
    [InlineData("box 400 mm x 300 mm x 60 mm", "draft 1 deg", false)]
    [InlineData("box 400 mm x 300 mm x 25 mm", "draft 0 deg", false)]
    [InlineData("box 400 mm x 300 mm x 60 mm", "draft 0 deg; flexible yes", false)]
    [InlineData("box 400 mm x 300 mm x 60 mm", "draft 0 deg; halves left right", false)]
    public void Walls_of_a_rigid_mould_have_draft(string surface, string lines, bool fires) =>
        Limits.Speaks("no-draft", Tray.Hand with { Surface = surface, MouldLines = lines }, fires);

    [Theory]
    [InlineData("undercut yes", true)]
    [InlineData("undercut no", false)]
    [InlineData("undercut yes; flexible yes", false)]
    [InlineData("undercut yes; stays-in-part yes", false)]
    public void An_undercut_locks_the_part_into_one_rigid_piece(string lines, bool fires) => Limits.Speaks("locked-in", Tray.Hand with { MouldLines = lines }, fires);

    [Theory]
    [InlineData("box 300 mm x 200 mm x 101 mm", "", true)]
    [InlineData("box 300 mm x 200 mm x 100 mm", "", false)]
    [InlineData("box 300 mm x 200 mm x 150 mm", "draft 3 deg", false)]
    [InlineData("box 300 mm x 200 mm x 150 mm", "pull-aid \"water port\"", false)]
    [InlineData("spherical-cap diameter 200 mm rise 100 mm", "", false)]
    [InlineData("half-ellipsoid 300 mm x 200 mm x 101 mm", "", true)]
    [InlineData("half-ellipsoid 200 mm x 300 mm x 101 mm", "", true)]
    [InlineData("half-ellipsoid 300 mm x 200 mm x 100 mm", "", false)]
    public void A_cavity_deeper_than_half_its_width_has_something_to_pull_it_with(string surface, string lines, bool fires) =>
        Limits.Speaks("no-way-to-pull", Tray.Hand with { Surface = surface, MouldLines = lines }, fires);

    [Theory]
    [InlineData("pulls-since-release 7", "", false)]
    [InlineData("pulls-since-release 8", "", true)]
    [InlineData("state new; pulls-since-release 3", "", true)]
    [InlineData("state new; pulls-since-release 2", "", false)]
    [InlineData("pulls-since-release 4", "lasts 4", true)]
    [InlineData("pulls-since-release 8", "lasts 20", false)]
    public void Pulls_count_against_what_the_release_stands(string lines, string lasts, bool fires) => Limits.Speaks(
        "too-many-pulls",
        Tray.Hand with { Above = $"release-agent own-wax like carnauba-wax {{ {lasts} }}", Release = "own-wax coats 5 wait 30 min", MouldLines = lines },
        fires);

    // 22 degC at 70 % is wet below 16.3 degC (table of DIN 4108-3, from memory: 16.3): 19.3 degC is the least.
    [Theory]
    [InlineData("room 22 degC; humidity 70 %; mould-temperature 19 degC", true)]
    [InlineData("room 22 degC; humidity 70 %; mould-temperature 19.5 degC", false)]
    [InlineData("room 22 degC; mould-temperature 5 degC", false)]
    [InlineData("room 22 degC; humidity 70 %", false)]
    public void A_mould_stays_three_degrees_above_the_dew_point(string wetOut, bool fires) => Limits.Speaks("sweating-mould", Tray.Hand with { WetOut = wetOut }, fires);

    [Theory]
    [InlineData("2026-05-08", true)]
    [InlineData("2026-05-07", false)]
    public void A_polyester_mould_is_left_for_a_week(string made, bool fires)
    {
        var tray = Tray.Hand with
        {
            Above = "mould-material tooling { chemistry polyester; heat-limit 70 degC; porous no }",
            MadeOf = "tooling",
            MouldLines = "made-on " + made,
        };
        Limits.Speaks("green-mould", tray, fires);
        Bench.Silent("green-mould", tray with { MouldLines = tray.MouldLines + "; post-cured yes" });
    }

    [Fact]
    public void A_half_without_release_is_named()
    {
        var tray = new Tray
        {
            MouldLines = "halves left right",
            Release = "carnauba-wax coats 5 wait 30 min on left",
            Join = "manner wet-in-wet; overlap 20 mm; within 60 min; align dowels",
        };
        var found = Bench.Fires("half-not-released", tray, Severity.Error);
        Assert.Contains("right stays bare", found.Message, StringComparison.Ordinal);
        Bench.Silent("half-not-released", tray with { Release = "carnauba-wax coats 5 wait 30 min on left; carnauba-wax coats 5 wait 30 min on right" });
    }

    [Theory]
    [InlineData("polystyrene-foam", true)]
    [InlineData("xps-foam", true)]
    [InlineData("pvc-foam", false)]
    [InlineData("steps", false)]
    public void Styrene_eats_polystyrene_and_leaves_other_foams_alone(string family, bool fires) => Limits.Speaks(
        "styrene-eats-foam",
        Tray.Hand with { Above = $"mould-material block {{ family {family}; porous no }}", MadeOf = "block", Resin = "laminating-polyester" },
        fires);

    // Trim allowance 15 mm where none is given (common practice, as the plan takes it): 15 + 20 + 12 = 47 mm.
    [Theory]
    [InlineData("flange 46 mm", "", true)]
    [InlineData("flange 47 mm", "", false)]
    [InlineData("flange 52 mm", "our-tape", true)]
    public void Without_a_trim_the_usual_one_lies_on_the_flange(string flange, string tape, bool fires)
    {
        var tray = new Tray { MouldLines = flange, Above = "sealant-tape our-tape { width 20 mm; heat-limit 120 degC; source \"data sheet\" }" };
        Limits.Says("flange-too-narrow", tray with { Bag = tape.Length == 0 ? tray.Bag : $"{tray.Bag}; {tape}" }, fires);
    }

    // Each half has a face of its own.
    [Theory]
    [InlineData("carnauba-wax coats 2 wait 30 min on left; carnauba-wax coats 2 wait 30 min on right", true)]
    [InlineData("carnauba-wax coats 4 wait 30 min on left; carnauba-wax coats 2 wait 30 min on right", true)]
    [InlineData("carnauba-wax coats 4 wait 30 min on left; carnauba-wax coats 4 wait 30 min on right", false)]
    [InlineData("carnauba-wax coats 2 wait 30 min; carnauba-wax coats 2 wait 30 min on right", true)]
    [InlineData("carnauba-wax coats 4 wait 30 min; carnauba-wax coats 2 wait 30 min on right", false)]
    public void Coats_of_wax_are_counted_on_each_half(string release, bool fires) =>
        Limits.Speaks("few-wax-coats", Tray.Hand with { MouldLines = "halves left right; state new", Release = release }, fires);

    [Fact]
    public void Coats_on_both_halves_are_mended_together()
    {
        var tray = Tray.Hand with
        {
            MouldLines = "halves left right; state new",
            Release = "carnauba-wax coats 3 wait 30 min on left; carnauba-wax coats 2 wait 30 min on right",
            Join = "manner wet-in-wet; overlap 20 mm; within 60 min; align dowels",
        };
        Assert.Equal("2 wax coats on the new face of right of tray-mould, which wants 4 or more; likewise 1 more", Bench.Fires("few-wax-coats", tray, Severity.Warning).Message);
        Bench.Settles("few-wax-coats", tray.ToString());
    }

    [Theory]
    [InlineData("film-on-silicone", "semi-permanent-release coats 4 on left; pva-film coats 1 dry 60 min on right", false)]
    [InlineData("film-on-silicone", "semi-permanent-release coats 4 on left; pva-film coats 1 dry 60 min", true)]
    [InlineData("releases-mixed", "carnauba-wax coats 5 wait 30 min on left; semi-permanent-release coats 4 on right", false)]
    [InlineData("releases-mixed", "carnauba-wax coats 5 wait 30 min; semi-permanent-release coats 4 on right", true)]
    [InlineData("wax-still-soft", "carnauba-wax coats 5 wait 30 min dry 20 min on left; pva-film coats 1 dry 60 min on right", true)]
    [InlineData("wax-still-soft", "carnauba-wax coats 5 wait 30 min dry 20 min on left; pva-film coats 1 dry 60 min", false)]
    [InlineData("wax-still-soft", "carnauba-wax coats 3 wait 30 min dry 20 min; carnauba-wax coats 3 wait 30 min dry 60 min", false)]
    [InlineData("film-not-dry", "pva-film coats 1 dry 5 min on left; pva-film coats 1 dry 60 min on right", true)]
    [InlineData("film-not-dry", "pva-film coats 1 dry 5 min on left; pva-film coats 1 dry 60 min", false)]
    [InlineData("first-pulls-unshielded", "carnauba-wax coats 5 wait 30 min; pva-film coats 1 dry 60 min on left", true)]
    [InlineData("first-pulls-unshielded", "carnauba-wax coats 5 wait 30 min; pva-film coats 1 dry 60 min", false)]
    public void What_goes_on_two_halves_does_not_meet(string check, string release, bool fires) =>
        Limits.Speaks(check, Tray.Hand with { MouldLines = "halves left right; state new", Resin = "laminating-polyester", Release = release }, fires);

    [Fact]
    public void A_mould_made_on_the_last_day_there_is_is_green() => Bench.Fires("green-mould", Tray.Hand with
    {
        Above = "mould-material tooling { chemistry polyester; heat-limit 70 degC; porous no }",
        MadeOf = "tooling",
        MouldLines = "made-on 9999-12-31",
    }, Severity.Warning);

    private const string GelCoat = "gel-coat own-gel { chemistry polyester; mix 100:2 by weight; density cured 1.2 g/cm3; pot-life 25 min at 20 degC in 100 g; source \"data sheet\" }\n";

    // A gel coat has set before a core comes near it; the foam of a mould it does meet.
    [Theory]
    [InlineData("slow-laminating-epoxy", "coat own-gel 500 g/m2 wait 90 min", "steps", "xps-foam", false)]
    [InlineData("laminating-polyester", "", "steps", "xps-foam", true)]
    [InlineData("slow-laminating-epoxy", "coat own-gel 500 g/m2 wait 90 min", "xps-foam", "pvc-foam", true)]
    public void Styrene_eats_the_foam_that_it_meets(string resin, string coat, string block, string foam, bool fires) => Limits.Speaks(
        "styrene-eats-foam",
        Tray.Hand with
        {
            Above = GelCoat + $"mould-material block {{ family {block}; porous no }}\ncore board like pvc-foam-75 {{ family {foam}; source \"data sheet\" }}",
            MadeOf = "block",
            Resin = resin,
            PartLines = coat,
            Plies = "outer glass-twill-163 0/90; middle core board; inner glass-twill-163 0/90",
        },
        fires);

    [Fact]
    public void The_coat_that_holds_styrene_is_pointed_at()
    {
        var found = Bench.Fires("styrene-unvented", Tray.Hand with { Above = GelCoat, PartLines = "coat own-gel 500 g/m2 wait 90 min", Shop = "safety {\ngloves \"nitrile\"\n}" }, Severity.Error);
        Assert.Equal("coat own-gel 500 g/m2 wait 90 min", Assert.Single(found.Labels).Where.Text);
    }

    // NIOSH and EN 14387: filters against organic vapour are type A; P filters hold particles.
    [Theory]
    [InlineData("respirator \"P3 for dust\"", true)]
    [InlineData("respirator \"FFP2\"", true)]
    [InlineData("respirator \"A2P3\"", false)]
    [InlineData("respirator \"P3 for dust, A2 for styrene\"", false)]
    [InlineData("respirator \"half mask\"", false)]
    [InlineData("respirator \"half mask, OV/P100\"", false)] // organic vapour, as NIOSH labels it
    [InlineData("respirator \"ABE1 P3\"", false)]
    [InlineData("respirator \"P3 for dust\"\nventilation \"extraction at the bench\"", false)]
    public void A_mask_for_dust_holds_no_styrene(string line, bool fires) => Limits.Says(
        "styrene-unvented", Tray.Hand with { Resin = "laminating-polyester", Shop = $"safety {{\ngloves \"nitrile\"\n{line}\n}}" }, fires, Severity.Error);

    [Fact]
    public void Another_wax_keeps_its_coats_and_its_half()
    {
        var tray = Tray.Hand with
        {
            Above = "release-agent own-wax like carnauba-wax { silicone yes }",
            MouldLines = "halves left right",
            Release = "own-wax coats 6 wait 45 min on left; carnauba-wax coats 5 wait 30 min on right",
            Finish = "wash; abrade 240 grit; paint",
        };
        var found = Bench.Fires("silicone-before-paint", tray, Severity.Warning);
        Assert.Contains("carnauba-wax coats 6 wait 45 min on left", TextEdit.Apply(found.Where.Source, Assert.Single(found.Fixes).Edits), StringComparison.Ordinal);
    }
}
