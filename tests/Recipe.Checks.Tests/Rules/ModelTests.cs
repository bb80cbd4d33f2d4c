using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks speak that the models of resin, pump, flow and cure made possible, and when they must not.</summary>
public class ModelTests
{
    private const string Check = "; leak-check 5 min rise at-most 30 mbar isolated";

    /// <summary>55 % by weight under a bag, 62 % by hand: common practice. What a veil or a mat holds by nature is not too wet.</summary>
    [Fact]
    public void A_cloth_is_too_wet_and_a_mat_is_not()
    {
        Bench.Fires("left-too-wet", new Tray { WetOut = "resin-content 64 % by weight" }, Severity.Warning);
        Bench.Silent("left-too-wet", new Tray { WetOut = "resin-content 55 % by weight" });
        Bench.Fires("left-too-wet", Tray.Hand with { WetOut = "resin-content 64 % by weight" }, Severity.Warning);
        Bench.Silent("left-too-wet", Tray.Hand with { WetOut = "resin-content 60 % by weight" });
        Bench.Silent("left-too-wet", Tray.Hand with { Plies = "all glass-stitched-mat-300 random", WetOut = "resin-content 70 % by weight" });
    }

    [Fact]
    public void A_bag_that_could_take_more_than_there_is_bleeds_the_laminate_dry()
    {
        const string thirsty = "peel-ply; release-film perforated; bleeder x2; breather; bag-film";
        var found = Bench.Fires("bleeds-dry", new Tray { Bag = thirsty, WetOut = "resin-content 34 % by weight" }, Severity.Warning);
        Assert.Contains("laid at 34 %", found.Message, StringComparison.Ordinal);

        // It points at what would be left out, and not at the peel ply, which takes most of what there is.
        Assert.Equal("bleeder x2", found.Where.Text);
        Assert.Contains("of it in glass-bleeder;", found.Message, StringComparison.Ordinal);
        Bench.Silent("bleeds-dry", new Tray { Bag = thirsty, WetOut = "resin-content 55 % by weight" });

        // The fix gives what the bag takes and what the cloth keeps: laid like that it is silent, and not much wetter than it must be.
        var fix = Assert.Single(found.Fixes);
        Bench.Settles("bleeds-dry", new Tray { Bag = thirsty, WetOut = "resin-content 34 % by weight" }.ToString());
        var percent = int.Parse(fix.Title.Split(' ')[3], System.Globalization.CultureInfo.InvariantCulture);
        Bench.Fires("bleeds-dry", new Tray { Bag = thirsty, WetOut = $"resin-content {percent - 12} % by weight" }, Severity.Warning);
        Bench.Silent("bleeds-dry", new Tray { Bag = "peel-ply; breather; bag-film", WetOut = "resin-content 55 % by weight" });
    }

    /// <summary>A leak may take a fifth of the flow of the pump: common practice. The bag is 10 mm deep on the mean, with a pot of 2 L.</summary>
    [Fact]
    public void A_pump_wants_five_times_the_leak_in_hand()
    {
        var tray = new Tray { Vacuum = "draw 25 inHg below ambient within 10 min; leak-check 5 min rise at-most 150 mbar isolated" };
        Bench.Fires("pump-too-small", tray with { Shop = "pump 0.05 cfm ultimate 20 mbar absolute" }, Severity.Warning);
        Bench.Silent("pump-too-small", tray with { Shop = "pump 2.5 cfm ultimate 20 mbar absolute" });
        Bench.Silent("pump-too-small", tray with { Shop = "pump 0.05 cfm ultimate 200 mbar absolute" });
    }

    /// <summary>5 mmHg at 20 degC is the vapour pressure of styrene (NIOSH Pocket Guide); practice keeps 50 mbar (from memory of the trade).</summary>
    [Fact]
    public void Styrene_boils_and_epoxy_does_not()
    {
        var deep = new Tray { Resin = "laminating-polyester", Vacuum = "draw 40 mbar absolute within 10 min" + Check };
        Bench.Fires("styrene-boils", deep, Severity.Warning);
        Bench.Silent("styrene-boils", deep with { Vacuum = "draw 60 mbar absolute within 10 min" + Check });
        Bench.Silent("styrene-boils", deep with { Resin = "slow-laminating-epoxy" });
    }

    /// <summary>One and a half times a gel time of 5 h: common practice.</summary>
    [Theory]
    [InlineData("hold 20 degC for 7 h; vent; hold 20 degC for 41 h; demould", "", false)]
    [InlineData("hold 20 degC for 8 h; vent; hold 20 degC for 40 h; demould", "", true)]
    [InlineData("hold 20 degC for 48 h; demould", "; hold 5 h", false)]
    [InlineData("hold 20 degC for 48 h; demould", "; hold 12 h", true)]
    public void The_vacuum_stays_until_the_resin_is_firm(string cure, string hold, bool isLong)
    {
        var tray = new Tray { Cure = cure, Vacuum = new Tray().Vacuum + hold };
        if (isLong)
        {
            Bench.Silent("vacuum-off-early", tray);
        }
        else
        {
            Bench.Fires("vacuum-off-early", tray, Severity.Error);
        }
    }

    /// <summary>Fifteen degrees between use and softening: common practice. A part that is only looked at is worth a word, no more.</summary>
    [Fact]
    public void A_part_softens_in_the_sun()
    {
        Bench.Fires("softens-in-use", new Tray { PartLines = "service 60 degC" }, Severity.Warning);
        Bench.Fires("softens-in-use", new Tray { PartLines = "service 60 degC; use cosmetic" }, Severity.Advice);
        Bench.Silent("softens-in-use", new Tray { PartLines = "service 30 degC" });
        Bench.Silent("softens-in-use", new Tray());
    }

    [Fact]
    public void A_loose_part_sags_in_a_quick_oven_and_a_supported_one_does_not()
    {
        Bench.Fires("oven-ahead-of-part", new Tray { Cure = "hold 20 degC for 48 h; demould; ramp 60 degC/h to 75 degC; hold 75 degC for 4 h" }, Severity.Warning);
        Bench.Silent("oven-ahead-of-part", new Tray { Cure = "hold 20 degC for 48 h; demould; ramp 60 degC/h to 75 degC support cradle; hold 75 degC for 4 h support cradle" });
        Bench.Silent("oven-ahead-of-part", new Tray { Cure = "hold 20 degC for 48 h; ramp 60 degC/h to 75 degC; hold 75 degC for 4 h; cool to 30 degC; demould" });
        Bench.Silent("oven-ahead-of-part", new Tray { Cure = "hold 20 degC for 48 h; demould; ramp 5 degC/h to 50 degC; hold 50 degC for 16 h" });
    }

    /// <summary>Full within 0.7 of the gel time: common practice.</summary>
    [Fact]
    public void An_infusion_is_full_before_the_resin_gels()
    {
        Bench.Silent("fill-slower-than-gel", Tray.Infused);
        var far = Tray.Infused with { Bag = "peel-ply; bag-film", Infuse = Tray.Infused.Infuse.Replace("path 300 mm", "path 3 m", StringComparison.Ordinal) };
        Bench.Fires("fill-slower-than-gel", far, Severity.Warning);

        // One cause, one finding: that the pot would be dead too goes without saying.
        Bench.Silent("pot-dies-first", far);
    }

    /// <summary>Without a demould time of its sheet, the model has to say when a part is firm.</summary>
    [Fact]
    public void A_resin_without_a_demould_time_is_judged_by_its_cure()
    {
        const string own = "resin own-epoxy { chemistry epoxy; mix 100:30 by weight; gel-time 5 h at 20 degC; film-life 150 min at 20 degC; pot-life 60 min at 20 degC in 100 g; minimum-temperature 15 degC; glass-transition 45 degC after 20 degC for 24 h; glass-transition-limit 85 degC }";
        var tray = Tray.Hand with { Above = own, Resin = "own-epoxy" };
        Assert.Contains("% cured", Bench.Fires("demould-too-early", tray with { Cure = "hold 20 degC for 6 h; demould" }, Severity.Warning).Message, StringComparison.Ordinal);
        Bench.Silent("demould-too-early", tray);
    }
}
