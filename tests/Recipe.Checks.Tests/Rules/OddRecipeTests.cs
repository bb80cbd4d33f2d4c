using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>Recipes that are odd and happen all the same: what the checks say of them, and whether their fixes settle it.</summary>
public class OddRecipeTests
{
    private const string Sheet = "density cured 1.15 g/cm3; film-life 150 min at 20 degC; gel-time 5 h at 20 degC; minimum-temperature 15 degC; demould 24 h at 20 degC; source \"data sheet\"";

    private static Tray Plain(string potLife, string pots) => Tray.Hand with
    {
        Above = $"resin plain {{ chemistry epoxy; mix 100:30 by weight; {potLife}; {Sheet} }}",
        Resin = "plain",
        Plies = "outer glass-twill-163 0/90; inner glass-twill-163 0/90 x6",
        WetOut = pots,
    };

    // What the plan mixes by its own default is not blamed: pots of up to 150 g, of which the assumptions list says so.
    [Theory]
    [InlineData("pot-life 40 min at 20 degC in 50 g", "", null)]
    [InlineData("pot-life 40 min at 20 degC in 50 g", "pot 150 g", null)]
    [InlineData("pot-life 40 min at 20 degC in 50 g", "pot 160 g", "pot 1 holds 160.0 g; without a largest pot of its own plain is mixed in pots of 150 g at most (assumed: largest mass to mix at once in a cup: 150 g)")]
    [InlineData("pot-life 40 min at 20 degC in 100 g", "pot 210 g", "pot 1 holds 210.0 g; plain stands 200 g in a cup, twice the 100 g of its pot life (assumed: a cup may hold twice the mass that the pot life is given for)")]
    [InlineData("pot-life 40 min at 20 degC", "pot 190 g", null)]
    [InlineData("pot-life 40 min at 20 degC", "pot 210 g", "pot 1 holds 210.0 g; plain stands 200 g in a cup, twice the 100 g of its pot life (assumed: a cup may hold twice the mass that the pot life is given for)")]
    public void A_pot_of_a_resin_without_a_largest_one(string potLife, string pots, string? said)
    {
        var tray = Plain(potLife, pots);
        if (said is null)
        {
            Bench.Silent("pot-too-big", tray);
        }
        else
        {
            Assert.Equal(said, Bench.Fires("pot-too-big", tray, Severity.Warning).Message);
        }
    }

    [Fact]
    public void The_plan_never_mixes_more_than_the_check_lets_pass() =>
        Assert.All(Bench.Of(Plain("pot-life 40 min at 20 degC in 50 g", "").ToString()).Plans.Single().Pots, pot => Assert.True(pot.Mass.Value <= Defaults.LargestPot.Value));

    // The content of the ply's own line is what makes it too wet, so that is what is changed.
    [Fact]
    public void Too_much_resin_in_one_ply_is_mended_in_its_own_line() => Bench.Settles("left-too-wet", (Tray.Hand with
    {
        Plies = "outer glass-twill-163 0/90 resin-content 70 % by weight; inner glass-twill-163 0/90",
        WetOut = "resin-content 48 % by weight",
    }).ToString(), "drier-than-hands");

    // What is missing is not offered in a pot that smokes.
    [Fact]
    public void What_is_missing_is_mixed_in_pots_that_the_resin_stands()
    {
        var tray = Tray.Hand with { Resin = "fast-laminating-epoxy", Surface = "flat 1 m x 1 m", WetOut = "pot 20 g; laminators 4" };
        Bench.Settles("batches-short", tray.ToString(), "pot-too-big", "runaway-pot");
        Assert.StartsWith("Mix another 4 pots: pot 115 g each", Assert.Single(Bench.Fires("batches-short", tray.ToString()).Fixes).Title, StringComparison.Ordinal);
    }

    // A pad is no skin of a core that covers the whole part; two pieces that cover it are one, and so is a piece over a piece of core.
    [Theory]
    [InlineData("outer glass-twill-163 0/90; heart core pvc-foam-75 thickness 5 mm; pad patch glass-twill-163 0/90 size 60 mm x 60 mm at \"aft\"", "heart has nothing but pad on its bag side")]
    [InlineData("pad patch glass-twill-163 0/90 size 60 mm x 60 mm at \"aft\"; heart core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90", "heart has nothing but pad on its mould side")]
    [InlineData("outer glass-twill-163 0/90; heart core pvc-foam-75 thickness 5 mm; left glass-twill-163 0/90 size 200 mm x 300 mm at \"left\"; right glass-twill-163 0/90 size 200 mm x 300 mm at \"right\"", null)]
    [InlineData("outer glass-twill-163 0/90; heart core pvc-foam-75 thickness 5 mm size 50 mm x 50 mm at \"aft\"; pad patch glass-twill-163 0/90 size 90 mm x 90 mm at \"aft\"", null)]
    [InlineData("outer glass-twill-163 0/90; heart core pvc-foam-75 thickness 5 mm", "heart has no ply on its bag side")]
    public void A_pad_is_no_skin(string plies, string? said)
    {
        var tray = Tray.Hand with { Plies = plies };
        Assert.Equal(said, Bench.Of(tray.ToString(), checks: Bench.Only("bare-core-face")).Report.Findings.SingleOrDefault()?.Message);
        if (said is not null)
        {
            Bench.Settles("bare-core-face", tray.ToString());
        }
    }

    // Trade: 28 to 38 % for what is infused, half and half by hand.
    [Theory]
    [InlineData("hand", "Lay it at 50 % by weight")]
    [InlineData("infused", "Lay it at 33 % by weight")]
    public void A_ply_drier_than_its_fibres_is_given_what_such_work_holds(string process, string title)
    {
        var tray = (process == "hand" ? Tray.Hand : Tray.Infused) with { WetOut = "resin-content 15 % by weight" };
        Assert.Equal(title, Assert.Single(Bench.Fires("content-out-of-reach", tray, Severity.Warning).Fixes).Title);
        Bench.Settles("content-out-of-reach", tray.ToString());
    }

    private static Tray Sandwich(string finish) => Tray.Hand with
    {
        Plies = "outer glass-twill-163 0/90; heart core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90",
        Finish = finish,
    };

    // The rim is where there is no core; a trim line is no rim, and hardware is nothing hard in the core.
    [Theory]
    [InlineData("drill \"for the hinge bolts, 30 mm from the trim line\"", true)]
    [InlineData("drill \"for the bolts of the deck hardware\"", true)]
    [InlineData("drill \"for the hinge bolts, through the hardpoint\"", false)]
    [InlineData("drill \"for the hinge bolts, in plugged holes\"", false)]
    [InlineData("drill \"for the cleat, in the hardwood block\"", false)]
    [InlineData("drill \"for the bolts, through the bushings\"", false)]
    [InlineData("drill \"for the hinge bolts, in the rim\"", false)]
    public void A_hard_point_is_named_by_a_word_of_its_own(string finish, bool fires) => Limits.Says("drilled-core", Sandwich(finish), fires, Severity.Error);

    [Theory]
    [InlineData("seal edges; trim", true)]
    [InlineData("trim; seal edges", false)]
    public void An_edge_is_sealed_when_it_is_cut(string finish, bool fires) => Limits.Says("open-core-edge", Sandwich(finish), fires);

    [Theory]
    [InlineData("covers 0.2 m2", true)]
    [InlineData("covers 0.12 m2", false)]
    public void A_core_covers_no_more_than_there_is(string covers, bool fires)
    {
        var tray = Tray.Hand with { Plies = $"outer glass-twill-163 0/90; heart core pvc-foam-75 thickness 5 mm {covers} at \"in the middle\"; inner glass-twill-163 0/90" };
        Limits.Says("core-past-edge", tray, fires);
        if (fires)
        {
            Assert.Equal("heart covers 0.2 m2; tray has 0.12 m2", Bench.Fires("core-past-edge", tray, Severity.Warning).Message);
        }
    }

    private const string Woods = """
        core one-wood { family balsa; moisture 9 %; density 150 kg/m3; heat-limit 100 degC; source "weighed" }
        core other-wood { family balsa; moisture 16 %; density 150 kg/m3; heat-limit 100 degC; source "weighed" }
        core bare-wood { family balsa; density 150 kg/m3; heat-limit 100 degC; source "weighed" }
        """;

    [Fact]
    public void Each_core_is_held_to_its_own_moisture() => Bench.Fires("damp-core", Tray.Hand with
    {
        Above = Woods,
        Plies = "outer glass-twill-163 0/90; heart core one-wood thickness 6 mm; pad core other-wood thickness 6 mm size 60 mm x 60 mm at \"aft\"; inner glass-twill-163 0/90",
    }, Severity.Warning);

    // One cause, one finding.
    [Theory]
    [InlineData("bare-wood", "damp-core")]
    [InlineData("one-wood", "store-out-of-band")]
    public void Damp_air_in_the_store_is_found_once(string wood, string found)
    {
        var tray = Tray.Hand with
        {
            Above = Woods,
            Shop = "store 20 degC; store-humidity 70 %",
            Plies = $"outer glass-twill-163 0/90; heart core {wood} thickness 6 mm; inner glass-twill-163 0/90",
        };
        Assert.Equal([found], Bench.Of(tray.ToString()).Report.Findings.Select(f => f.Descriptor.Name).Where(name => name is "damp-core" or "store-out-of-band"));
    }

    [Theory]
    [InlineData("pigment parts 4", false)]
    [InlineData("pigment parts 4; pigment parts 4", true)]
    public void Two_colours_in_one_pot_count_together(string pigments, bool fires)
    {
        var added = string.Concat(pigments.Split("; ").Select(pigment => $"add {pigment}\n"));
        Limits.Says("too-much-pigment", Tray.Hand with { PartLines = $"mix {{\nadd resin\n{added}add hardener\nstir 3 min\nscrape\n}}" }, fires);
    }

    // Common practice; the sheets of both come first: the two never meet.
    [Theory]
    [InlineData("add accelerator parts 0.1", true)]
    [InlineData("stir 1 min", false)]
    public void A_second_go_of_accelerator_meets_the_peroxide_too(string line, bool fires) => Limits.Says(
        "peroxide-meets-accelerator",
        Tray.Hand with { Resin = "laminating-polyester", PartLines = $"mix {{\nadd resin\nadd accelerator parts 0.3\nstir 2 min\nadd hardener\n{line}\nstir 2 min\nscrape\n}}" },
        fires,
        Severity.Error);

    [Theory]
    [InlineData("outer glass-twill-163 0/90 join-lines 1 x3; inner glass-twill-163 0/90", "the join lines of the 3 plies of outer lie 5 mm apart; 25 mm or more is wanted")]
    [InlineData("outer glass-twill-163 0/90 join-lines 1; middle glass-twill-163 0/90 x4; inner glass-twill-163 0/90 join-lines 1", null)]
    [InlineData("outer glass-twill-163 0/90 join-lines 1; middle glass-twill-163 0/90 x3; inner glass-twill-163 0/90 join-lines 1", "the join lines of outer and inner lie 5 mm apart; 25 mm or more is wanted")]
    public void Repeats_of_a_line_are_plies(string plies, string? said)
    {
        var tray = Tray.Hand with { PartLines = "stagger 5 mm", Plies = plies };
        Limits.Says("joins-stacked", tray, said is not null);
        Assert.Equal(said, Bench.Of(tray.ToString(), checks: Bench.Only("joins-stacked")).Report.Findings.SingleOrDefault()?.Message);
    }

    // 1.5 oz/ft2 is 458 g/m2 and the usual mat; 1.5 oz/yd2 is 51 g/m2 and none. 9 oz/yd2 is 305 g/m2.
    [Theory]
    [InlineData("mat", "1.5 oz/yd2", "Write 1.5 oz/ft2")]
    [InlineData("mat", "1.5 oz/ft2", null)]
    [InlineData("mat", "100 g/m2", null)]
    [InlineData("fabric", "9 oz/ft2", "Write 9 oz/yd2")]
    [InlineData("fabric", "5.8 g/m2", "Write 5.8 oz/yd2")]
    [InlineData("fabric", "163 oz/yd2", "Write 163 g/m2")]
    [InlineData("fabric", "2000 g/m2", "Write 200 g/m2")]
    public void Ounces_are_of_the_yard_for_cloth_and_of_the_foot_for_mat(string kind, string weight, string? title)
    {
        var tray = Tray.Hand with
        {
            Above = $"fibre glass-fibre {{ density 2.55 g/cm3; source \"sheet\" }}\n{kind} ours {{ fibre glass-fibre; areal-weight {weight}; width 120 cm; {(kind == "mat" ? "binder stitched" : "weave twill")}; pace 5 min/m2; source \"label\" }}",
            Plies = $"outer ours {(kind == "mat" ? "random" : "0/90")}; inner glass-twill-163 0/90",
        };
        var found = Bench.Of(tray.ToString(), checks: Bench.Only("odd-cloth-weight")).Report.Findings.SingleOrDefault();
        Assert.Equal(title, found?.Fixes.Single().Title);
    }

    // The unit is what the fix is about, so it is not turned back into that of the slip.
    [Fact]
    public void A_figure_that_is_read_in_another_unit_keeps_its_number()
    {
        var fix = Assert.Single(Bench.Fires("odd-room", Tray.Hand with { WetOut = "room 68 degC" }, Severity.Error).Fixes);
        Assert.Equal("Read it in degF", fix.Title);
        Assert.Equal("68 degF", Assert.Single(fix.Edits).NewText);
    }

    [Theory]
    [InlineData("use structural", "outer carbon-veil-8 random x3; inner qqq-cloth 0/90", "veil-for-strength")]
    [InlineData("use structural", "outer qqq-cloth 90; inner shop-ud 0", "angle-without-axis")]
    public void Of_a_ply_that_could_not_be_read_nothing_is_concluded(string use, string plies, string check)
    {
        const string ud = "ud shop-ud { areal-weight 200 g/m2; width 60 cm; pace 5 min/m2; source \"data sheet\" }";
        Assert.DoesNotContain(check, Bench.Of((Tray.Hand with { Above = ud, PartLines = use, Plies = plies }).ToString()).Report.Findings.Select(f => f.Descriptor.Name));
        Assert.Contains(check, Bench.Of((Tray.Hand with { Above = ud, PartLines = use, Plies = plies.Replace("outer qqq-cloth 90; ", "", StringComparison.Ordinal).Replace("; inner qqq-cloth 0/90", "", StringComparison.Ordinal) }).ToString()).Report.Findings.Select(f => f.Descriptor.Name));
    }

    private static readonly Tray Hot = new()
    {
        MadeOf = "aluminium",
        Release = "semi-permanent-release coats 4",
    };

    // Below 50 degC a part keeps its shape (common practice), however the line is written that opens it.
    [Theory]
    [InlineData("hold 60 degC for 8 h under vacuum; vent; debag; hold 20 degC for 8 h; demould")]
    [InlineData("hold 60 degC for 8 h under vacuum; cool to 56 degC then vent; debag; hold 20 degC for 8 h; demould")]
    [InlineData("hold 60 degC for 8 h under vacuum; cool to 56 degC under vacuum then vent then debag; hold 20 degC for 8 h; demould")]
    public void A_part_that_is_opened_hot_is_cooled_first(string cure) =>
        Bench.Settles("opened-hot", (Hot with { Cure = $"hold 20 degC for 24 h under vacuum; ramp 10 degC/h to 60 degC under vacuum; {cure}" }).ToString(), "cure-out-of-order");

    [Theory]
    [InlineData("hold 55 degC for 16 h; demould")]
    [InlineData("hold 60 degC for 16 h; cool to 53 degC then demould")]
    public void A_part_that_is_pulled_hot_is_cooled_first(string cure) =>
        Bench.Settles("pulled-hot", (Tray.Hand with { MadeOf = "aluminium", Release = Hot.Release, Cure = $"hold 20 degC for 24 h; ramp 10 degC/h to 55 degC; {cure}" }).ToString());

    [Theory]
    [InlineData("demould \"while it is warm\"", false)]
    [InlineData("demould \"when it is no longer hot\"", true)]
    [InlineData("demould \"not hot\"", true)]
    public void Warm_is_said_on_purpose_and_not_hot_is_the_contrary(string finish, bool fires) => Limits.Says(
        "pulled-hot",
        Tray.Hand with { MadeOf = "aluminium", Release = Hot.Release, Cure = "hold 20 degC for 24 h; ramp 10 degC/h to 55 degC; hold 55 degC for 16 h; demould", Finish = finish },
        fires);

    [Theory]
    [InlineData("trim \"green, with a knife\"", false)]
    [InlineData("trim \"at the bench by the greenhouse\"", true)]
    public void Green_is_a_word(string finish, bool fires) => Limits.Says("demould-too-early", Tray.Hand with { Cure = "hold 20 degC for 6 h; demould", Finish = finish }, fires, Severity.Error);

    // The middle of 30 plies warms itself by some 20 degC; the hose lies beside it on the bench.
    [Fact]
    public void A_hose_is_not_warmed_by_the_laminate() => Bench.Silent("laminate-heats-itself", new Tray
    {
        Above = "hose soft-hose { heat-limit 30 degC; inner-diameter 10 mm; source \"data sheet\" }\n"
            + "resin hot-epoxy like slow-laminating-epoxy { heat-of-reaction 450 J/g; source \"data sheet\" }",
        Resin = "hot-epoxy",
        Plies = "all glass-twill-163 0/90 x60",
        WetOut = "laminators 6; pace 0.1 min/m2; room 25 degC",
        Bag = "peel-ply; release-film perforated; breather; bag-film; hose soft-hose",
        Cure = "hold 25 degC for 48 h under vacuum; demould",
    });

    // Nine in the morning is offered where it is early enough and earlier than what is written.
    [Theory]
    [InlineData("closes 18:00", "start 17:45", 1)]
    [InlineData("closes 09:05", "start 09:02", 0)]
    [InlineData("closes 08:00", "start 07:50", 0)]
    public void The_start_that_is_offered_is_early_enough(string closes, string start, int fixes)
    {
        var tray = new Tray { Shop = closes, WetOut = start };
        Assert.Equal(fixes, Bench.Fires("shop-closes-first", tray, Severity.Advice).Fixes.Length);
        if (fixes > 0)
        {
            Bench.Settles("shop-closes-first", tray.ToString());
        }
    }

    // US Army TM 1-1500-204-23-11, page file 0134: 10 degF a minute, which is 5.6 degC. What is said is what was compared.
    [Theory]
    [InlineData("20 degC/min", "cooled by 20 degC/min from 50 degC; a part follows 5.6 degC/min at the most")]
    [InlineData("40 degF/min", "cooled by 40 degF/min from 122 degF; a part follows 10 degF/min at the most")]
    public void The_rate_that_is_said_is_the_limit(string rate, string said) => Assert.Equal(said, Bench.Fires(
        "cooled-too-fast",
        Tray.Hand with { MadeOf = "aluminium", Release = Hot.Release, Cure = $"hold 20 degC for 24 h; hold 50 degC for 16 h; cool to 30 degC at {rate}; demould" },
        Severity.Warning).Message);

    // Degrees are said in the scale that the author writes: 50 degC is 122 degF, 15 degC is 59 degF.
    [Theory]
    [InlineData("opened-hot", "hold 70 degF for 24 h under vacuum; ramp 18 degF/h to 140 degF under vacuum; hold 140 degF for 8 h under vacuum; vent; debag; hold 70 degF for 8 h; demould", "the bag is opened at 140 degF; below 122 degF the part keeps its shape")]
    [InlineData("pulled-hot", "hold 70 degF for 24 h under vacuum; ramp 18 degF/h to 140 degF under vacuum; hold 140 degF for 8 h under vacuum; demould", "the part is pulled at 140 degF; it wants to be below 122 degF")]
    [InlineData("too-cold-to-cure", "hold 50 degF for 72 h under vacuum; demould", "the first day gets no warmer than 50 degF; slow-laminating-epoxy cures from 59 degF up")]
    [InlineData("cold-night", "hold room for 48 h under vacuum; demould", "the night falls to 50 degF; slow-laminating-epoxy cures from 59 degF up")]
    public void Degrees_are_said_as_the_author_writes_them(string check, string cure, string said) => Assert.Equal(
        said,
        Bench.Fires(check, (Hot with { Shop = "room 70 degF; night 50 degF", Cure = cure }).ToString()).Message);

    // Galvanic corrosion beside carbon: plain steel and aluminium whatever else their name says, stainless steel and bronze not.
    [Theory]
    [InlineData("galvanised-steel", true)]
    [InlineData("aluminium-6082", true)]
    [InlineData("stainless-steel", false)]
    [InlineData("aluminium-bronze", false)]
    public void A_metal_is_known_by_one_of_its_words(string stuff, bool fires) => Limits.Says(
        "carbon-on-metal",
        Tray.Hand with
        {
            Above = $"insert plate {{ mass 10 g; stuff {stuff}; source \"offcuts\" }}",
            Plies = "a carbon-twill-200 0/90; b insert plate at \"aft\"; c carbon-twill-200 0/90",
        },
        fires);

    // The plan carries a film life into a hot shop by the Army's rule (half at the most above 90 degF), and so is the gel time beside it.
    [Fact]
    public void The_gel_time_is_carried_into_heat_as_the_film_life_is()
    {
        var tray = new Tray
        {
            Above = $"resin plain {{ chemistry epoxy; mix 100:30 by weight; pot-life 4 h at 30 degC in 100 g; film-life 10 h at 30 degC; gel-time 100 min at 30 degC; density cured 1.15 g/cm3; minimum-temperature 15 degC; demould 24 h at 20 degC; largest-pot 500 g; source \"data sheet\" }}",
            Resin = "plain",
            WetOut = "room 33 degC; pace 200 min/m2",
        };

        // 100 min halved and 0.7 of that.
        Assert.Contains("0.7 of the gel time is 35 min at 33 degC", Bench.Fires("bag-after-film-life", tray.ToString()).Message, StringComparison.Ordinal);
    }
}
