using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of how a cure is run speak, and when they do not.</summary>
public class CurePracticeTests
{
    private static readonly Tray Metal = Tray.Hand with { MadeOf = "aluminium", Release = "semi-permanent-release coats 4" };

    private static readonly Tray Box = Metal with { Surface = "box 300 mm x 200 mm x 80 mm" };

    // The resin's record names 85 degC at the most; 116 degC is more than 30 above, and 116 degF is 47 degC.
    [Theory]
    [InlineData("116 degC", true)]
    [InlineData("115 degC", false)]
    [InlineData("150 degC", true)]
    [InlineData("150 degF", false)]
    [InlineData("190 degC", false)]
    public void A_step_far_too_hot_in_celsius_may_be_fahrenheit(string step, bool fires) =>
        Limits.Says("cure-in-fahrenheit", Metal with { Cure = $"hold 20 degC for 24 h; hold {step} for 6 h; cool to 30 degC; demould" }, fires);

    [Fact]
    public void A_resin_of_which_no_post_cure_is_known_is_not_judged() => Bench.Silent("cure-in-fahrenheit", Metal with
    {
        Above = "resin ours { chemistry epoxy; mix 100:30 by weight; glass-transition 50 degC after 20 degC for 24 h; source \"data sheet\" }",
        Resin = "ours",
        Cure = "hold 20 degC for 24 h; hold 90 degC for 6 h; cool to 30 degC; demould",
    });

    [Fact]
    public void A_bag_that_does_not_stand_it_is_the_finding_then() => Bench.Silent("cure-in-fahrenheit", new Tray
    {
        MadeOf = "aluminium",
        Release = "semi-permanent-release coats 4",
        Cure = "hold 20 degC for 24 h; hold 150 degC for 6 h; cool to 30 degC; demould",
    });

    [Theory]
    [InlineData("hold 40 degC for 9 min", true)]
    [InlineData("hold 40 degC for 10 min", false)]
    [InlineData("hold 60 degC for 9 min", false)]
    public void A_dwell_lasts_hours(string hold, bool fires) =>
        Limits.Says("short-dwell", Metal with { Cure = $"hold 20 degC for 24 h; {hold}; hold 20 degC for 12 h; demould" }, fires);

    [Theory]
    [InlineData("ramp 8 degC/h to 50 degC; hold 50 degC for 16 h", true)]
    [InlineData("ramp 8 degC/h to 50 degC support cradle; hold 50 degC for 16 h", false)]
    [InlineData("ramp 2 degC/h to 50 degC; hold 50 degC for 16 h", false)]
    [InlineData("hold 20 degC for 16 h", false)]
    public void A_thin_part_is_post_cured_on_a_support(string after, bool fires) =>
        Limits.Says("unsupported-post-cure", Metal with { Cure = $"hold 20 degC for 36 h; demould; {after}; cool to 30 degC" }, fires);

    [Fact]
    public void A_tube_supports_itself() => Bench.Silent("unsupported-post-cure", Metal with
    {
        Surface = "cylinder diameter 100 mm length 300 mm",
        MouldLines = "mandrel yes",
        Cure = "hold 20 degC for 36 h; demould; ramp 8 degC/h to 50 degC; hold 50 degC for 16 h; cool to 30 degC",
    });

    // US Army TM 1-1500-204-23-11, page file 0134: 10 degF a minute at the most.
    [Theory]
    [InlineData("cool to 30 degC at 10 degF/min", false)]
    [InlineData("cool to 30 degC at 11 degF/min", true)]
    [InlineData("cool to 30 degC at 5 degC/min", false)]
    [InlineData("cool to 30 degC at 6 degC/min", true)]
    [InlineData("cool to 30 degC", false)]
    [InlineData("cool to 45 degC at 6 degC/min", false)]
    public void Cooling_is_slow(string cool, bool fires) =>
        Limits.Says("cooled-too-fast", Metal with { Cure = $"hold 20 degC for 24 h; hold 50 degC for 16 h; {cool}; demould" }, fires);

    [Theory]
    [InlineData("ramp 10 degF/min to 50 degC", false)]
    [InlineData("ramp 11 degF/min to 50 degC", true)]
    [InlineData("ramp 5.5 degC/min to 50 degC", false)]
    [InlineData("ramp 5.7 degC/min to 50 degC", true)]
    [InlineData("ramp 30 degC/min to 50 degC", true)]
    [InlineData("ramp 30 degC/min to 29 degC", false)]
    [InlineData("ramp 30 degC/h to 50 degC", false)]
    public void Heating_is_slow(string ramp, bool fires) =>
        Limits.Says("heated-too-fast", Metal with { Cure = $"hold 20 degC for 24 h; {ramp}; hold 50 degC for 16 h; cool to 30 degC; demould" }, fires);

    // Common practice: a part is drilled, weighed and painted off its mould; peeled, inspected and trimmed green it is on it.
    [Theory]
    [InlineData("hold 20 degC for 48 h", "weigh", "", true)]
    [InlineData("hold 20 degC for 48 h", "peel; drill 4 mm", "", true)]
    [InlineData("hold 20 degC for 48 h; demould", "weigh", "", false)]
    [InlineData("hold 20 degC for 48 h", "demould; weigh", "", false)]
    [InlineData("hold 20 degC for 48 h", "peel; trim; inspect \"no dry spot\"", "", false)]
    [InlineData("hold 20 degC for 48 h", "weigh", "stays-in-part yes", false)]
    public void A_part_that_is_finished_off_its_mould_is_taken_off_it(string cure, string finish, string mould, bool fires)
    {
        var tray = Tray.Hand with { Cure = cure, Finish = finish, MouldLines = mould };
        Limits.Says("never-demoulded", tray, fires);
        if (fires)
        {
            Bench.Settles("never-demoulded", tray.ToString());
        }
    }

    // A second bag on another day is another part; one line that slipped is moved.
    [Theory]
    [InlineData("hold 20 degC for 24 h under vacuum; vent; hold 20 degC for 24 h under vacuum; demould", 1)]
    [InlineData("hold 20 degC for 16 h under vacuum; vent; debag; hold 20 degC for 16 h under vacuum; vent; debag; demould", 0)]
    public void A_lay_up_in_two_goes_is_no_slip_of_a_line(string cure, int fixes)
    {
        var found = Bench.Fires("cure-out-of-order", new Tray { Cure = cure }, Severity.Error);
        Assert.Equal(fixes, found.Fixes.Length);
        Assert.Equal(fixes == 0, found.Message.EndsWith("what is bagged again on another day is a part of its own", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("hold 51 degC for 16 h under vacuum; vent; cool to 30 degC; demould", true)]
    [InlineData("hold 50 degC for 16 h under vacuum; vent; cool to 30 degC; demould", false)]
    [InlineData("hold 51 degC for 16 h under vacuum; cool to 50 degC then vent; cool to 30 degC; demould", false)]
    [InlineData("hold 51 degC for 16 h under vacuum; vent; debag; demould", false)]
    public void A_bag_is_opened_cool(string after, bool fires) => Limits.Says(
        "opened-hot",
        new Tray { MadeOf = "aluminium", Release = "semi-permanent-release coats 4", Cure = "hold 20 degC for 24 h under vacuum; " + after },
        fires);

    [Theory]
    [InlineData("hold 51 degC for 16 h; demould", "", true)]
    [InlineData("hold 50 degC for 16 h; demould", "", false)]
    [InlineData("hold 51 degC for 16 h; cool to 40 degC; demould", "", false)]
    [InlineData("hold 51 degC for 16 h; demould", "demould \"warm, it has shrunk on the plug\"", false)]
    public void A_part_is_pulled_cool(string after, string finish, bool fires) =>
        Limits.Says("pulled-hot", Metal with { Cure = "hold 20 degC for 24 h; " + after, Finish = finish }, fires);

    [Theory]
    [InlineData("thermocouples 0", "41 degC", true)]
    [InlineData("thermocouples 0", "40 degC", false)]
    [InlineData("thermocouples 1", "41 degC", false)]
    [InlineData("", "41 degC", false)]
    public void Something_measures_a_warm_part(string count, string peak, bool fires) =>
        Limits.Says("no-part-temperature", Metal with { Cure = $"{count}; hold 20 degC for 24 h; hold {peak} for 16 h; cool to 30 degC; demould" }, fires);

    [Theory]
    [InlineData("hold 20 degC for 1 h; hold 45 degC for 20 h", true)]
    [InlineData("hold 20 degC for 12 h; hold 45 degC for 20 h", false)]
    [InlineData("hold 20 degC for 1 h; hold 25 degC for 40 h", false)]
    public void Upright_faces_gel_before_they_are_warmed(string cure, bool fires) =>
        Limits.Says("heat-before-gel", Box with { Cure = cure + "; cool to 30 degC; demould" }, fires, Severity.Advice);

    [Fact]
    public void A_flat_part_may_be_warmed_at_once() =>
        Bench.Silent("heat-before-gel", Metal with { Cure = "hold 45 degC for 20 h; cool to 30 degC; demould" });

    [Theory]
    [InlineData("oven \"out in the sun\"", true)]
    [InlineData("oven \"black box in the sun\"", false)]
    [InlineData("oven \"lamp, never the sun\"", false)]
    [InlineData("oven \"Sunday dinner oven\"", false)]
    public void The_sun_is_no_oven(string oven, bool fires) =>
        Limits.Says("sun-as-oven", Metal with { Cure = oven + "; hold 20 degC for 24 h; hold 45 degC for 16 h; cool to 30 degC; demould" }, fires);

    [Theory]
    [InlineData("oven limit 49 degC", true)]
    [InlineData("oven limit 50 degC", false)]
    [InlineData("oven limit 122 degF", false)]
    [InlineData("room 20 degC", false)]
    public void A_cure_is_no_hotter_than_the_oven(string shop, bool fires) => Limits.Says(
        "hotter-than-oven", Metal with { Shop = shop, Cure = "hold 20 degC for 24 h; hold 50 degC for 16 h; cool to 30 degC; demould" }, fires, Severity.Error);

    [Theory]
    [InlineData("colour dark; outdoors yes", Severity.Warning)]
    [InlineData("colour dark", Severity.Advice)]
    [InlineData("colour dark; outdoors no", null)]
    [InlineData("colour light; outdoors yes", null)]
    [InlineData("colour dark; outdoors yes; service 30 degC", null)]
    public void A_dark_skin_wants_a_resin_that_stands_the_sun(string lines, Severity? severity) => Limits.Says(
        "dark-skin-uncured", Tray.Hand with { PartLines = lines, Finish = "wash; abrade 240 grit; paint" }, severity is not null, severity ?? Severity.Warning);

    [Fact]
    public void A_hot_post_cure_stands_the_sun() => Bench.Silent("dark-skin-uncured", Metal with
    {
        PartLines = "colour dark; outdoors yes",
        Finish = "wash; abrade 240 grit; paint",
        Cure = "hold 20 degC for 24 h; ramp 5 degC/h to 80 degC; hold 80 degC for 16 h; cool to 30 degC; demould",
    });
}
