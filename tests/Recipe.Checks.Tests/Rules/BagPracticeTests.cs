using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of film, felt, caul, port and hose speak, and when they do not.</summary>
public class BagPracticeTests
{
    private const string Plain = "peel-ply; release-film perforated; breather; bag-film";
    private const string Dome = "spherical-cap diameter 400 mm rise ";

    private static readonly Tray Hot = new()
    {
        MadeOf = "aluminium",
        Release = "semi-permanent-release coats 4",
        Cure = "hold 20 degC for 24 h under vacuum; hold 50 degC for 16 h under vacuum; cool to 30 degC; demould",
    };

    // FAA AC 43.13-1B (1998) p. 3-8: the gauge on the side opposite the port.
    [Theory]
    [InlineData("gauge at pump", true)]
    [InlineData("gauge at \"the catch pot\"", true)]
    [InlineData("gauge at \"far side from the pump\"", false)]
    [InlineData("gauge at \"second hose on the flange\"", false)]
    [InlineData("", false)]
    public void A_gauge_reads_the_bag_and_not_the_pump(string gauge, bool fires) =>
        Limits.Says("gauge-at-pump", new Tray { Bag = $"{Plain}; {gauge}" }, fires);

    [Fact]
    public void A_small_bag_may_be_read_at_the_pump() =>
        Bench.Silent("gauge-at-pump", new Tray { Surface = "flat 80 mm x 60 mm", Bag = Plain + "; gauge at pump" });

    [Theory]
    [InlineData("50 mm", "pleats 0", false)]
    [InlineData("51 mm", "pleats 0", true)]
    [InlineData("51 mm", "pleats 1", false)]
    [InlineData("51 mm", "", false)]
    public void A_deep_mould_wants_pleats(string rise, string pleats, bool fires) =>
        Limits.Says("no-pleats", new Tray { Surface = Dome + rise, Bag = $"{Plain}; {pleats}" }, fires);

    [Fact]
    public void A_stretching_film_needs_no_pleats() => Bench.Silent("no-pleats", new Tray
    {
        Above = "bag-film our-stretch-film { width 150 cm; stuff polyurethane; source \"data sheet\" }",
        Surface = Dome + "60 mm",
        Bag = "peel-ply; breather; our-stretch-film; pleats 0",
    });

    [Theory]
    [InlineData("radius 9.9 mm", "40 mm", true)]
    [InlineData("radius 10 mm", "40 mm", false)]
    [InlineData("radius 5 mm", "9 mm", false)]
    [InlineData("radius 5 mm", "60 mm", false)]
    public void A_sharp_corner_wants_pleats_too(string radius, string depth, bool fires) =>
        Limits.Says("bag-bridges-corner", new Tray { Surface = $"box 300 mm x 200 mm x {depth}", MouldLines = radius, Bag = Plain + "; pleats 0" }, fires);

    [Theory]
    [InlineData("300 cm", "bag-film", false)]
    [InlineData("30 cm", "bag-film", true)]
    [InlineData("30 cm", "bag-film x2", false)]
    public void A_bag_wider_than_its_film_is_joined(string width, string film, bool fires)
    {
        var tray = new Tray
        {
            Above = $"bag-film our-film {{ width {width}; heat-limit 120 degC; source \"data sheet\" }}",
            Bag = "peel-ply; breather; " + film.Replace("bag-film", "our-film", StringComparison.Ordinal),
        };
        Limits.Says("bag-film-too-narrow", tray, fires, Severity.Advice);
    }

    [Theory]
    [InlineData("caul; breather; bag-film", true)]
    [InlineData("peel-ply; caul; breather; bag-film", false)]
    [InlineData("our-sheet; breather; bag-film", false)]
    [InlineData("our-plate; breather; bag-film", false)]
    [InlineData("our-bare-plate; breather; bag-film", true)]
    public void A_caul_is_kept_off_the_resin(string bag, bool fires) =>
        Limits.Says("caul-sticks", new Tray { Above = "caul our-sheet { stuff silicone; source \"data sheet\" }\ncaul our-plate { stuff aluminium; coated yes; source \"data sheet\" }\ncaul our-bare-plate { stuff aluminium; coated no; source \"data sheet\" }", Bag = bag }, fires, Severity.Error);

    [Theory]
    [InlineData("60 degC", "", null)]
    [InlineData("61 degC", "", Severity.Warning)]
    [InlineData("81 degC", "", Severity.Error)]
    [InlineData("81 degC", "heat-limit 100 degC; ", null)]
    public void Polyethylene_is_for_cool_cures(string peak, string limit, Severity? severity)
    {
        var tray = Hot with
        {
            Above = $"release-film our-film {{ {limit}width 150 cm; stuff polyethylene; perforation medium; source \"measured\" }}",
            Bag = "peel-ply; our-film; breather; bag-film",
            Cure = $"hold 20 degC for 24 h under vacuum; hold {peak} for 6 h under vacuum; cool to 30 degC; demould",
        };
        Limits.Says("polyethylene-in-oven", tray, severity is not null, severity ?? Severity.Error);
    }

    [Theory]
    [InlineData("humidity 34 %", true)]
    [InlineData("humidity 35 %", false)]
    [InlineData("", false)]
    public void Nylon_turns_brittle_in_dry_air(string air, bool fires) => Limits.Says("dry-nylon", new Tray { WetOut = air }, fires, Severity.Advice);

    [Theory]
    [InlineData("phenolic", true)]
    [InlineData("epoxy", false)]
    public void Phenolic_resin_attacks_nylon(string chemistry, bool fires) => Limits.Says(
        "nylon-with-phenolic",
        new Tray { Above = $"resin ours like slow-laminating-epoxy {{ chemistry {chemistry}; source \"data sheet\" }}", Resin = "ours" },
        fires);

    [Theory]
    [InlineData("99 g/m2", "1010 mm x 1000 mm", "our-felt", true)]
    [InlineData("100 g/m2", "1010 mm x 1000 mm", "our-felt", false)]
    [InlineData("99 g/m2", "1000 mm x 1000 mm", "our-felt", false)]
    [InlineData("99 g/m2", "1010 mm x 1000 mm", "our-felt x2", false)]
    public void A_thin_felt_is_for_small_bags(string weight, string size, string felt, bool fires) => Limits.Says(
        "thin-felt",
        new Tray
        {
            Above = $"breather our-felt {{ areal-weight {weight}; width 150 cm; resin-pickup 40 g/m2; source \"data sheet\" }}",
            Surface = "flat " + size,
            Bag = $"peel-ply; {felt}; bag-film",
        },
        fires,
        Severity.Advice);

    // FAA AC 43.13-1B (1998) p. 3-7: parting film 1 inch smaller than the bleeder.
    [Theory]
    [InlineData("peel-ply; bleeder beyond 40 mm; release-film solid beyond 40 mm; breather; bag-film", true)]
    [InlineData("peel-ply; bleeder beyond 40 mm; release-film solid beyond 15 mm; breather; bag-film", false)]
    [InlineData("peel-ply; bleeder; release-film solid smaller 0 mm; breather; bag-film", true)]
    [InlineData("peel-ply; bleeder; release-film solid smaller 1 in; breather; bag-film", false)]
    [InlineData("peel-ply; bleeder; release-film solid; breather; bag-film", false)]
    [InlineData("peel-ply; bleeder; release-film perforated; breather; bag-film", false)]
    [InlineData("peel-ply; bleeder; breather; bag-film", false)]
    public void A_solid_film_is_smaller_than_the_bleeder(string bag, bool fires) => Limits.Says("film-covers-bleeder", new Tray { Bag = bag }, fires);

    [Theory]
    [InlineData("our-coated", "wash; bond hinge", true)]
    [InlineData("our-coated", "wash; abrade 80 grit; bond hinge", false)]
    [InlineData("our-coated", "wash; trim", false)]
    [InlineData("peel-ply", "wash; bond hinge", false)]
    public void A_coated_peel_ply_is_for_faces_that_stay_as_they_are(string ply, string finish, bool fires) => Limits.Says(
        "coated-peel-ply-bonded",
        new Tray
        {
            Above = "peel-ply our-coated { coated yes; width 150 cm; resin-pickup 40 g/m2; source \"data sheet\" }",
            Bag = $"{ply}; breather; bag-film",
            Finish = finish,
        },
        fires);

    [Theory]
    [InlineData(Dome + "40 mm", "time 9 min", true)]
    [InlineData(Dome + "40 mm", "time 10 min", false)]
    [InlineData("flat 400 mm x 300 mm", "time 4 min", false)]
    public void A_shaped_bag_takes_ten_minutes(string surface, string time, bool fires) =>
        Limits.Says("bag-closed-in-no-time", new Tray { Surface = surface, Bag = $"{Plain}; {time}" }, fires);

    [Theory]
    [InlineData("port sits part", "port-on-part", true)]
    [InlineData("port sits part at \"on a thick pad of breather\"", "port-on-part", false)]
    [InlineData("port sits breather", "port-on-part", false)]
    [InlineData("port sits flange", "port-off-breather", true)]
    [InlineData("port sits flange at \"on a tail of breather\"", "port-off-breather", false)]
    [InlineData("port sits breather", "port-off-breather", false)]
    [InlineData("port at flange", "port-off-breather", false)]
    public void A_port_sits_on_breather(string port, string check, bool fires) =>
        Limits.Says(check, new Tray { Bag = $"{Plain}; {port}" }, fires, check == "port-on-part" ? Severity.Warning : Severity.Error);

    [Fact]
    public void A_port_of_an_infusion_sits_on_its_own_line() =>
        Bench.Silent("port-off-breather", Tray.Infused with { Bag = Tray.Infused.Bag + "; port sits flange" });

    [Theory]
    [InlineData("flexible yes", "envelope yes", true)]
    [InlineData("flexible yes", "", false)]
    [InlineData("", "envelope yes", false)]
    public void An_envelope_bends_a_soft_mould(string mould, string envelope, bool fires) =>
        Limits.Says("envelope-on-soft-mould", new Tray { MouldLines = mould, Bag = $"{Plain}; {envelope}" }, fires, Severity.Advice);

    [Theory]
    [InlineData("reinforced no", "41 degC", true)]
    [InlineData("reinforced no", "40 degC", false)]
    [InlineData("reinforced yes", "41 degC", false)]
    [InlineData("", "41 degC", false)]
    public void A_plain_hose_goes_flat_in_the_warm(string hose, string peak, bool fires) => Limits.Says(
        "hose-collapses",
        Hot with
        {
            Above = $"hose our-hose {{ inner-diameter 8 mm; heat-limit 70 degC; {hose}; source \"data sheet\" }}",
            Bag = Plain + "; our-hose",
            Cure = $"hold 20 degC for 24 h under vacuum; hold {peak} for 6 h under vacuum; cool to 30 degC; demould",
        },
        fires);

    // With braid before one of which nothing is said, the shop's own before the book's, and none that the heat is too much for.
    [Theory]
    [InlineData("hose said-hose { inner-diameter 8 mm; heat-limit 70 degC; reinforced yes; source \"data sheet\" }", "said-hose")]
    [InlineData("hose soft-hose { inner-diameter 8 mm; heat-limit 45 degC; reinforced yes; source \"data sheet\" }\nhose quiet-hose { inner-diameter 8 mm; heat-limit 70 degC; source \"data sheet\" }\n"
        + "hose firm-hose { inner-diameter 8 mm; heat-limit 60 degC; reinforced yes; source \"data sheet\" }", "firm-hose")]
    [InlineData("hose b-hose { inner-diameter 8 mm; heat-limit 60 degC; reinforced yes; source \"data sheet\" }\nhose a-hose { inner-diameter 8 mm; heat-limit 90 degC; reinforced yes; source \"data sheet\" }", "a-hose")]
    public void A_hose_that_stands_the_heat_is_offered(string hoses, string taken)
    {
        var found = Bench.Fires("hose-collapses", Hot with
        {
            Above = "hose our-hose { inner-diameter 8 mm; heat-limit 70 degC; reinforced no; source \"data sheet\" }\n" + hoses,
            Bag = Plain + "; our-hose",
            Cure = "hold 20 degC for 24 h under vacuum; hold 50 degC for 6 h under vacuum; cool to 30 degC; demould",
        }, Severity.Warning);
        Assert.Equal(taken, Assert.Single(Assert.Single(found.Fixes).Edits).NewText);
    }

    [Theory]
    [InlineData("peel-ply reused; breather; bag-film", true)]
    [InlineData("peel-ply; breather reused; bag-film", false)]
    [InlineData("peel-ply; breather; our-silicone-bag reused", false)]
    public void What_is_made_for_one_bag_is_used_for_one(string bag, bool fires) => Limits.Says(
        "reused-layer",
        new Tray { Above = "bag-film our-silicone-bag { width 150 cm; stuff silicone; source \"data sheet\" }", Bag = bag },
        fires,
        Severity.Advice);

    // 400 x 300 x 80 mm unrolls to 560 x 460 mm; film a fifth larger and 75 mm past it (common practice) is 822 x 702 mm, 3048 mm round. The tape lies 50 mm
    // out: 1400 + 8 x 50 = 1800 mm. A pleat of 80 mm takes 160 mm, so seven of the 1248 mm that are left.
    [Theory]
    [InlineData("bag-film", "pleats 7", false)]
    [InlineData("bag-film", "pleats 8", true)]
    [InlineData("bag-film beyond 65 mm", "pleats 8", false)]
    [InlineData("bag-film", "", false)]
    [InlineData("bag-film", "pleats 8; envelope yes", false)]
    public void Pleats_are_folded_of_film_that_is_there(string film, string pleats, bool fires)
    {
        var tray = new Tray { Surface = "box 400 mm x 300 mm x 80 mm", Bag = $"peel-ply; release-film perforated; breather; {film}; {pleats}" };
        Limits.Says("film-short-of-pleats", tray, fires, Severity.Advice);
        if (fires)
        {
            Bench.Settles("film-short-of-pleats", tray.ToString(), "film-short-of-tape");
        }
    }

    [Fact]
    public void A_flat_bag_has_pleats_of_no_height() => Bench.Silent("film-short-of-pleats", new Tray { Bag = Plain + "; pleats 40" });

    // What a line says besides the name of its material stays.
    [Theory]
    [InlineData("coated-peel-ply-bonded", "our-coated x2 beyond 30 mm; breather; bag-film", "peel-ply x2 beyond 30 mm")]
    [InlineData("coated-peel-ply-bonded", "peel-ply our-coated beyond 30 mm; breather; bag-film", "peel-ply beyond 30 mm")]
    [InlineData("film-covers-bleeder", "peel-ply; bleeder beyond 40 mm; release-film solid beyond 40 mm x2; breather; bag-film", "release-film solid smaller 25 mm x2")]
    [InlineData("film-short-of-tape", "peel-ply; breather; bag-film smaller 5 mm x2", "bag-film beyond 75 mm x2")]
    [InlineData("solid-film-blocks-bleed", "peel-ply; release-film solid-etfe beyond 20 mm; bleeder; breather; bag-film", "release-film perforated beyond 20 mm")]
    [InlineData("solid-film-blocks-bleed", "peel-ply; release-film solid-etfe solid; bleeder; breather; bag-film", "release-film solid-etfe perforated")]
    [InlineData("reused-layer", "peel-ply reused x2; breather; bag-film", "peel-ply x2")]
    public void A_fix_keeps_the_rest_of_the_line(string check, string bag, string line)
    {
        var tray = new Tray
        {
            Above = "peel-ply our-coated { coated yes; width 150 cm; resin-pickup 40 g/m2; source \"data sheet\" }\n"
                + "release-film solid-etfe { perforation none; width 150 cm; heat-limit 200 degC; source \"data sheet\" }",
            Bag = bag,
            Finish = "wash; bond hinge",
        };
        var found = Bench.Fires(check, tray.ToString());
        Assert.Contains("\n" + line + "\n", TextEdit.Apply(found.Where.Source, Assert.Single(found.Fixes).Edits), StringComparison.Ordinal);
    }
}
