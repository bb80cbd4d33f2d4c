using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of resin, pots and clocks speak, and when they do not.</summary>
public class ResinTests
{
    private const string NoResin = "  resin slow-laminating-epoxy\n";

    [Fact]
    public void Plies_need_a_resin_unless_they_bring_it()
    {
        var hand = Tray.Hand.ToString().Replace(NoResin, "", StringComparison.Ordinal);
        Assert.Equal("tray has plies and no resin to wet them", Bench.Fires("no-resin", hand).Message);
        Bench.Silent("no-resin", (new Tray { Process = "prepreg" }).ToString().Replace(NoResin, "", StringComparison.Ordinal));
    }

    [Fact]
    public void A_resin_of_an_unknown_name_is_a_finding_about_names_only()
    {
        var bench = Bench.Of((Tray.Hand with { Resin = "no-such-epoxy" }).ToString());
        Assert.Equal(["unknown-name"], bench.All.Select(f => f.Descriptor.Name));
    }

    // (0.8 / 2.55) / (0.8 / 2.55 + 0.2 / 1.15) = 64.3 % of fibre by volume, 65.9 % at 19 % of resin; carbon at 25 % of resin 66 %, at 27 % 63.6 %.
    [Theory]
    [InlineData("glass-twill-163", "18 % by weight", true)]
    [InlineData("glass-twill-163", "19 % by weight", true)]
    [InlineData("glass-twill-163", "20 % by weight", false)]
    [InlineData("carbon-twill-200", "25 % by weight", true)]
    [InlineData("carbon-twill-200", "27 % by weight", false)]
    public void Fibres_cannot_be_packed_any_closer(string cloth, string content, bool fires) => Limits.Says(
        "content-out-of-reach",
        new Tray { Plies = $"outer {cloth} 0/90; inner {cloth} 0/90", WetOut = "resin-content " + content },
        fires);

    // 0.284 m2 of plies as cut, at 60 min/m2 and 2 min for each of two pieces, take 21 min, and 3 min to mix; the fast resin lives 20 min
    // in 100 g at 20 degC. Several small pots of a fast hardener are sound (common practice).
    [Theory]
    [InlineData("fast-laminating-epoxy", "pot 120 g", true)]
    [InlineData("fast-laminating-epoxy", "pot 60 g; pot 60 g", false)]
    [InlineData("fast-laminating-epoxy", "pot 120 g; laminators 2", false)]
    [InlineData("slow-laminating-epoxy", "pot 120 g", false)]
    public void A_pot_is_used_up_before_it_dies(string resin, string pots, bool fires)
    {
        var tray = Tray.Hand with { Resin = resin, WetOut = "pace 60 min/m2; " + pots };
        if (fires)
        {
            Assert.StartsWith("pot 1 (120.0 g) takes ", Bench.Fires("pot-dies-first", tray, Severity.Warning).Message, StringComparison.Ordinal);
        }
        else
        {
            Bench.Silent("pot-dies-first", tray);
        }
    }

    // Half as long for each 10 K more (common practice): what is sound in a cool shop is not in a hot one.
    [Fact]
    public void A_hot_shop_shortens_the_pot_life()
    {
        var cool = Tray.Hand with { WetOut = "room 20 degC; pace 130 min/m2; pot 120 g" };
        Bench.Silent("pot-dies-first", cool);
        Bench.Fires("pot-dies-first", cool with { WetOut = "room 33 degC; pace 130 min/m2; pot 120 g" }, Severity.Warning);
    }

    // Film life 50 min and 0.7 of 100 min to gel; film life 150 min and 0.7 of 300 min.
    [Theory]
    [InlineData("bagged", "fast-laminating-epoxy", true)]
    [InlineData("bagged", "slow-laminating-epoxy", false)]
    public void The_bag_is_closed_while_the_film_lives(string process, string resin, bool fires)
    {
        var tray = new Tray { Process = process, Resin = resin, Bag = "peel-ply; breather; bag-film; time 60 min" };
        if (fires)
        {
            Assert.Contains("the film lives 50 min at 20 degC", Bench.Fires("bag-after-film-life", tray, Severity.Warning).Message, StringComparison.Ordinal);
        }
        else
        {
            Bench.Silent("bag-after-film-life", tray);
        }
    }

    [Fact]
    public void Seven_tenths_of_the_gel_time_can_be_over_sooner_than_the_film()
    {
        var tray = new Tray
        {
            Above = "resin gels-early like slow-laminating-epoxy { gel-time 60 min at 20 degC source \"data sheet\" }",
            Resin = "gels-early",
            Bag = "peel-ply; breather; bag-film; time 60 min",
        };
        Assert.Contains("0.7 of the gel time is 42 min", Bench.Fires("bag-after-film-life", tray, Severity.Warning).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("trim 15 mm; overlap 20 mm", "pot 20 g", Severity.Error)]
    [InlineData("", "pot 20 g", Severity.Warning)]
    [InlineData("", "pot 70 g; pot 70 g", null)]
    [InlineData("", "pots 1", null)]
    public void The_pots_hold_what_the_part_needs(string sizes, string pots, Severity? severity)
    {
        var tray = Tray.Hand with { PartLines = sizes, WetOut = pots };
        if (severity is { } expected)
        {
            Assert.StartsWith("20 g is mixed and ", Bench.Fires("batches-short", tray, expected).Message, StringComparison.Ordinal);
        }
        else
        {
            Bench.Silent("batches-short", tray);
        }
    }

    [Theory]
    [InlineData("pot 160 g", "pot-too-big")]
    [InlineData("pot 150 g", null)]
    [InlineData("pot 160 g; tray yes", null)]
    [InlineData("pot 600 g", "pot-too-big")]
    public void A_pot_is_no_larger_than_the_resin_stands(string pots, string? fires) => Says(Tray.Hand with { WetOut = pots }, fires);

    [Theory]
    [InlineData("pot 520 g", "runaway-pot")]
    [InlineData("pot 500 g", "pot-too-big")]
    [InlineData("pot 520 g; tray yes", null)]
    public void Half_a_kilogram_of_fast_resin_in_a_cup_can_burn(string pots, string? fires) =>
        Says(Tray.Hand with { Resin = "fast-laminating-epoxy", WetOut = pots }, fires);

    [Fact]
    public void No_reason_makes_a_burning_pot_safe()
    {
        var tray = Tray.Hand with
        {
            Resin = "fast-laminating-epoxy",
            WetOut = "pot 520 g",
            PartLines = "accept RC4006 because \"we are quick\"",
        };
        var codes = Bench.Of(tray.ToString()).Codes.ToList();
        Assert.Contains("RC4006", codes);
        Assert.Contains("RC9004", codes);
    }

    // A data sheet that gives the pot life in 100 g: twice that in a cup (common practice), and an infusion resin that lives for hours is
    // left alone.
    [Theory]
    [InlineData("hand", "", "pot 210 g", true)]
    [InlineData("hand", "", "pot 190 g", false)]
    [InlineData("infused", "path 200 mm; drop-test 5 min rise at-most 30 mbar isolated", "pot 900 g", false)]
    public void Without_a_largest_pot_the_pot_life_tells(string process, string infuse, string pots, bool fires)
    {
        var tray = new Tray
        {
            Above = """
                resin plain {
                  chemistry epoxy; mix 100:30 by weight; pot-life 4 h at 20 degC in 100 g; film-life 5 h at 20 degC; gel-time 9 h at 20 degC
                  density cured 1.15 g/cm3; minimum-temperature 15 degC; demould 24 h at 20 degC; source "data sheet"
                }
                """,
            Resin = "plain",
            Process = process,
            Infuse = infuse,
            WetOut = pots,
            Bag = process == "hand" ? "" : Tray.Infused.Bag,
            Vacuum = process == "hand" ? "" : Tray.Infused.Vacuum,
        };
        Says(tray, fires ? "pot-too-big" : null);
    }

    // 120 g at 100:30 hold 27.7 g of hardener, of which one percent is 0.277 g.
    [Theory]
    [InlineData("scale 1 g", true)]
    [InlineData("scale 0.5 g", true)]
    [InlineData("scale 0.2 g", false)]
    [InlineData("", false)]
    public void The_scale_shows_one_percent_of_the_hardener(string shop, bool fires)
    {
        var tray = Tray.Hand with { Shop = shop, WetOut = "pot 120 g" };
        if (fires)
        {
            Assert.EndsWith(
                "; the 27.7 g of hardener in pot 1 want 0.277 g or finer",
                Bench.Fires("scale-too-coarse", tray, Severity.Warning).Message,
                StringComparison.Ordinal);
        }
        else
        {
            Bench.Silent("scale-too-coarse", tray);
        }
    }

    // A pot is said as the scale shows it, which is how the mix card prints it.
    [Theory]
    [InlineData("scale 0.1 g", "pot 400.04 g", "pot 1 holds 400.0 g; slow-laminating-epoxy stands 150 g in a cup")]
    [InlineData("scale 5 g", "pot 402 g", "pot 1 holds 400 g; slow-laminating-epoxy stands 150 g in a cup")]
    [InlineData("scale 0.05 oz", "pot 14.11 oz", "pot 1 holds 14.10 oz; slow-laminating-epoxy stands 150 g in a cup")]
    public void A_pot_is_said_as_the_scale_shows_it(string scale, string pot, string said) =>
        Assert.Equal(said, Bench.Fires("pot-too-big", Tray.Hand with { Shop = scale, WetOut = pot }, Severity.Warning).Message);

    private const string Paste = """
        adhesive paste {
          chemistry epoxy; mix 100:50 by weight; pot-life 60 min at 23 degC in 100 g; density cured 1.17 g/cm3; source "data sheet"
        }
        """;

    // 1000 mm by 25 mm by 0.3 mm at 1.17 g/cm3 are 8.78 g, 15.6 g with brush, spare and cup, 5.21 g of them hardener at 100:50: two percent is 0.104 g.
    // Of a pot of 60 g they are 0.4 g.
    [Theory]
    [InlineData("0.1 g", "", false)]
    [InlineData("0.2 g", "", true)]
    [InlineData("0.2 g", "pot 60 g", false)]
    [InlineData("0.4 g", "pot 60 g", false)]
    [InlineData("0.5 g", "pot 60 g", true)]
    public void The_scale_shows_the_band_of_what_is_mixed_for_a_join(string scale, string pot, bool fires)
    {
        var tray = Tray.Hand with
        {
            Above = Paste,
            Shop = $"scale {scale}",
            WetOut = "pot 400 g",
            Join = $"manner cured-then-bonded; adhesive paste; bond-line 0.3 mm; overlap 25 mm; seam 1000 mm; {pot}",
        };
        if (fires)
        {
            Assert.Contains("in the pot of paste want ", Bench.Fires("scale-too-coarse", tray, Severity.Warning).Message, StringComparison.Ordinal);
        }
        else
        {
            Bench.Silent("scale-too-coarse", tray);
        }
    }

    [Fact]
    public void A_join_is_offered_a_pot_that_its_scale_can_weigh()
    {
        var tray = Tray.Hand with { Above = Paste, Shop = "scale 0.2 g", WetOut = "pot 400 g", Join = "manner cured-then-bonded; adhesive paste; bond-line 0.3 mm; overlap 25 mm; seam 1000 mm" };
        var fix = Assert.Single(Bench.Fires("scale-too-coarse", tray, Severity.Warning).Fixes, fix => fix.Title.Contains("at once", StringComparison.Ordinal));
        Assert.Equal("Mix at least 30 g at once for the seam", fix.Title);
        Bench.Silent("scale-too-coarse", tray with { Join = tray.Join + "; pot 30 g" });
    }

    // Of two that can burn the larger is named, of two alike the first, and how many more there are.
    [Theory]
    [InlineData("pot 520 g; pot 600 g", "pot 2 holds 600.0 g", "catch fire; likewise 1 more")]
    [InlineData("pot 600 g; pot 600 g; pot 520 g", "pot 1 holds 600.0 g", "catch fire; likewise 2 more")]
    public void The_worst_pot_is_named(string pots, string said, string more)
    {
        var found = Bench.Fires("runaway-pot", Tray.Hand with { Resin = "fast-laminating-epoxy", WetOut = pots }, Severity.Error);
        Assert.StartsWith(said, found.Message, StringComparison.Ordinal);
        Assert.EndsWith(more, found.Message, StringComparison.Ordinal);
    }

    private static void Says(Tray tray, string? fires)
    {
        foreach (var check in new[] { "pot-too-big", "runaway-pot" })
        {
            if (check == fires)
            {
                Bench.Fires(check, tray, check == "runaway-pot" ? Severity.Error : Severity.Warning);
            }
            else
            {
                Bench.Silent(check, tray);
            }
        }
    }
}
