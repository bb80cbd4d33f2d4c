using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of infusion speak, and when they do not.</summary>
public class InfusingTests
{
    private const string Infuse = "feed-line length 300 mm diameter 8 mm; drop-test 5 min rise at-most 30 mbar isolated; resin-temperature 22 degC; ";

    private const string Vinylester = """
        resin shop-vinylester {
          chemistry vinylester; mix 100:2 by weight; density cured 1.14 g/cm3; viscosity 250 mPa.s at 22 degC; pot-life 60 min at 20 degC in 100 g
          film-life 90 min at 20 degC; gel-time 150 min at 20 degC; minimum-temperature 15 degC; demould 12 h at 20 degC; largest-pot 1 kg; source "data sheet"
        }
        """;

    private static Tray With(string lines) => Tray.Infused with { Infuse = Infuse + (lines.Contains("path", StringComparison.Ordinal) ? "" : "path 300 mm; ") + lines };

    [Theory]
    [InlineData("510 mPa.s", "path 200 mm", true)]
    [InlineData("490 mPa.s", "path 200 mm", false)]
    [InlineData("900 mPa.s", "path 149 mm", false)]
    public void Resin_for_an_infusion_is_thin(string viscosity, string path, bool fires) => Limits.Says(
        "too-thick-to-infuse",
        With(path) with { Above = $"resin shop-epoxy like infusion-epoxy {{ viscosity {viscosity} at 22 degC; source \"data sheet\" }}", Resin = "shop-epoxy" },
        fires);

    [Theory]
    [InlineData("mould-temperature 15 degC", true)]
    [InlineData("mould-temperature 16 degC", false)]
    [InlineData("mould-temperature 60 degF", false)]
    public void An_infusion_is_warm(string mould, bool fires) => Limits.Says("infused-cold", With(mould), fires);

    [Fact]
    public void The_cold_is_one_finding() => Bench.Silent("too-thick-to-infuse", With("mould-temperature 8 degC"));

    [Theory]
    [InlineData("path 610 mm", "peel-ply; flow-medium smaller 40 mm; bag-film", true)]
    [InlineData("path 600 mm", "peel-ply; flow-medium smaller 40 mm; bag-film", false)]
    [InlineData("path 800 mm; feed-lines 2", "peel-ply; flow-medium smaller 40 mm; bag-film", false)]
    [InlineData("path 800 mm", "peel-ply; flow-medium x2; bag-film", false)]
    public void One_line_feeds_six_tenths_of_a_metre(string path, string bag, bool fires) =>
        Limits.Says("long-flow-path", With(path) with { Bag = bag }, fires, Severity.Advice);

    [Theory]
    [InlineData("vent \"along the far edge\"", true)]
    [InlineData("reserve 20 %", true)]
    [InlineData("vent \"along the far edge\"; clamp-feed \"at full wet\"", false)]
    [InlineData("", false)]
    public void Who_says_where_the_vent_is_says_when_to_clamp(string lines, bool fires) => Limits.Says("no-clamp-order", With(lines), fires);

    [Theory]
    [InlineData("", "port at \"on the flange\"", true)]
    [InlineData("", "port at \"vent side\"", false)]
    [InlineData("vent \"along the far edge\"", "port at \"on the flange\"", false)]
    public void Who_lists_a_port_says_where_the_vent_is(string lines, string port, bool fires) =>
        Limits.Says("no-way-out", With(lines) with { Bag = $"peel-ply; flow-medium smaller 40 mm; bag-film; catch-pot; {port}" }, fires, Severity.Advice);

    [Theory]
    [InlineData("reserve 14 %", true)]
    [InlineData("reserve 15 %", false)]
    [InlineData("reserve 20 %", false)]
    public void A_feed_pot_keeps_a_reserve(string reserve, bool fires) => Limits.Says("small-reserve", With(reserve), fires);

    [Theory]
    [InlineData("use flying", "", true)]
    [InlineData("use flying", "degas 8 min", false)]
    [InlineData("use structural", "", false)]
    public void Resin_of_a_flying_part_is_degassed(string use, string lines, bool fires) =>
        Limits.Says("not-degassed", With(lines) with { PartLines = use }, fires, Severity.Advice);

    // TM 1-1500-204-23-11: 10 minutes at most.
    [Theory]
    [InlineData("degas 11 min", true)]
    [InlineData("degas 10 min", false)]
    public void Resin_stands_under_vacuum_for_ten_minutes(string degas, bool fires) => Limits.Says("degassed-too-long", With(degas), fires);

    [Fact]
    public void Styrene_is_not_pulled_out_of_the_resin()
    {
        var tray = With("degas 30 min") with { Above = Vinylester, Resin = "shop-vinylester" };
        Bench.Fires("styrene-degassed", tray, Severity.Warning);
        Bench.Silent("degassed-too-long", tray);
        Bench.Silent("styrene-degassed", With("degas 8 min"));
    }

    [Theory]
    [InlineData("glass-plain-25", "path 310 mm", "peel-ply; release-film perforated; bag-film", true)]
    [InlineData("glass-plain-25", "path 300 mm", "peel-ply; release-film perforated; bag-film", false)]
    [InlineData("glass-plain-25", "path 310 mm", "peel-ply; flow-medium smaller 40 mm; bag-film", false)]
    [InlineData("glass-twill-163", "path 310 mm", "peel-ply; release-film perforated; bag-film", false)]
    public void Light_plain_weave_wants_a_flow_medium(string cloth, string path, string bag, bool fires) =>
        Limits.Says("tight-weave-infused", With(path) with { Plies = $"a {cloth} 0/90 x4", Bag = bag }, fires, Severity.Advice);

    [Theory]
    [InlineData("smaller 24 mm", true)]
    [InlineData("smaller 25 mm", false)]
    [InlineData("smaller 1 in", false)]
    [InlineData("beyond 20 mm", true)]
    public void The_mesh_stops_short_of_the_vacuum(string edge, bool fires) =>
        Limits.Says("mesh-reaches-vacuum", With("") with { Bag = $"peel-ply; flow-medium {edge}; bag-film" }, fires);

    [Theory]
    [InlineData("beside the feed line", true)]
    [InlineData("at feed side", true)]
    [InlineData("on the flange, next to the feed", true)]
    [InlineData("by the inlet", true)]
    [InlineData("across from the feed", false)]
    [InlineData("at the end far from the feed", false)]
    [InlineData("along the far long edge", false)]
    [InlineData("opposite the feed", false)]
    public void The_vent_is_not_where_the_resin_comes_in(string vent, bool fires)
    {
        var tray = With($"vent \"{vent}\"");
        Limits.Says("vent-beside-feed", tray, fires);
        if (fires)
        {
            Bench.Settles("vent-beside-feed", tray.ToString());
        }
    }

    [Theory]
    [InlineData("peel-ply; release-film solid; flow-medium smaller 40 mm; bag-film", true)]
    [InlineData("peel-ply; release-film perforated; flow-medium smaller 40 mm; bag-film", false)]
    [InlineData("peel-ply; release-film solid smaller 100 mm; flow-medium smaller 40 mm; bag-film", false)]
    [InlineData("peel-ply; flow-medium smaller 40 mm; release-film solid; bag-film", false)]
    [InlineData("peel-ply; release-film solid; bag-film", false)]
    public void No_film_parts_the_mesh_from_the_cloth(string bag, bool fires)
    {
        var tray = With("") with { Bag = bag };
        Limits.Says("film-under-mesh", tray, fires, Severity.Error);
        if (fires)
        {
            Bench.Settles("film-under-mesh", tray.ToString());
        }
    }

    [Theory]
    [InlineData("off \"when the feed is clamped\"", true)]
    [InlineData("off \"at full wet\"", true)]
    [InlineData("off after gel", false)]
    [InlineData("off \"when the leftover of the full pot is hard\"", false)]
    public void The_vacuum_stays_until_gel(string off, bool fires)
    {
        var tray = With("");
        tray = tray with { Vacuum = tray.Vacuum + "; " + off };
        Limits.Says("vacuum-off-early", tray, fires, Severity.Error);
        if (fires)
        {
            Bench.Settles("vacuum-off-early", tray.ToString());
        }
    }

    [Theory]
    [InlineData("peel-ply; flow-medium smaller 40 mm; breather; bag-film", true)]
    [InlineData("peel-ply; bleeder; bag-film", true)]
    [InlineData("peel-ply; release-film perforated; breather; bag-film", true)]
    [InlineData("peel-ply; flow-medium smaller 40 mm; release-film solid; breather; bag-film", false)]
    [InlineData("peel-ply; flow-medium smaller 40 mm; bag-film; breather; bag-film", false)]
    [InlineData("peel-ply; flow-medium smaller 40 mm; breather smaller 150 mm; bag-film", false)]
    public void Felt_drinks_an_infusion(string bag, bool fires)
    {
        var tray = With("") with { Bag = bag };
        Limits.Says("felt-in-infusion", tray, fires);
        Limits.Says("felt-in-infusion", new Tray { Bag = bag }, false);
    }

    [Fact]
    public void A_mesh_says_where_it_ends()
    {
        var found = Bench.Fires("mesh-reaches-vacuum", With("") with { Bag = "peel-ply; flow-medium; bag-film" }, Severity.Advice);
        Assert.EndsWith("ends, and it is cut as large as the plies; 25 mm or more inside keeps it off the vacuum", found.Message, StringComparison.Ordinal);
        Bench.Settles("mesh-reaches-vacuum", (With("") with { Bag = "peel-ply; flow-medium; bag-film" }).ToString());
    }

    // A line of 160 mm and 16 mm on either side of it: 2 x 160 x 16 + pi x 16 x 16 = 59.2 cm2, and the tray is 400 x 300 mm, 1200 cm2.
    // From 300 mm of line, 0.12 m2 = 2 x 0.3 p + pi p2 gives p = 123 mm; a tenth more of the part than that is let pass, which is 113 mm.
    // Where nothing is said of the line, the plan has one as long as the part, and the check looks at the same: 0.12 m2 / 1.1 = 2 x 0.4 p + pi p2 gives 98 mm.
    [Theory]
    [InlineData("path 16 mm; feed-line length 160 mm", true)]
    [InlineData("path 113 mm; feed-line length 300 mm", true)]
    [InlineData("path 115 mm; feed-line length 300 mm", false)]
    [InlineData("path 60 mm; feed-line length 300 mm; feed-lines 2", true)]
    [InlineData("path 70 mm; feed-line length 300 mm; feed-lines 3", false)]
    [InlineData("path 97 mm", true)]
    [InlineData("path 99 mm", false)]
    [InlineData("path 360 mm; feed-line length 40 mm", true)]
    [InlineData("path 360 mm; feed-line length 179 mm", true)]
    [InlineData("path 360 mm; feed-line length 180 mm", false)]
    [InlineData("path 601 mm; feed-line length 180 mm", false)]
    public void The_feed_reaches_all_of_the_part(string infuse, bool fires) =>
        Limits.Says("feed-out-of-reach", Tray.Infused with { Infuse = infuse + "; drop-test 5 min rise at-most 30 mbar isolated" }, fires);

    [Theory]
    [InlineData("hose", true)]
    [InlineData("hose; catch-pot", false)]
    [InlineData("sealant-tape", false)]
    public void Resin_of_an_infusion_is_caught(string fittings, bool fires) =>
        Limits.Says("no-catch-pot", With("") with { Bag = "peel-ply; flow-medium smaller 40 mm; bag-film; " + fittings }, fires);

    [Theory]
    [InlineData("hose", true)]
    [InlineData("hose; catch-pot", false)]
    [InlineData("sealant-tape", false)]
    public void Resin_out_of_a_wet_bag_is_caught(string fittings, bool fires) =>
        Limits.Says("no-catch-pot", new Tray() with { Bag = "peel-ply; release-film perforated; breather; bag-film; " + fittings }, fires, Severity.Advice);

    // Warm on its data sheet and cold at the bench, a resin is no cure for itself; and what is too thick is not said to be just right.
    [Fact]
    public void A_resin_that_is_too_thick_is_not_offered_in_its_own_place()
    {
        var tray = With("path 200 mm") with { Above = "resin a-epoxy like infusion-epoxy { viscosity 340 mPa.s at 30 degC; source \"data sheet\" }", Resin = "a-epoxy" };
        var found = Bench.Fires("too-thick-to-infuse", tray, Severity.Warning);
        Assert.DoesNotContain(found.Fixes, fix => fix.Title.EndsWith("a-epoxy", StringComparison.Ordinal));
        var thick = Bench.Fires("too-thick-to-infuse", tray with { Above = "resin a-epoxy like infusion-epoxy { viscosity 503 mPa.s at 22 degC; source \"data sheet\" }" }, Severity.Warning);
        Assert.Contains("about 510 mPa.s", thick.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drop_test_is_called_one()
    {
        var tray = Tray.Infused with { Infuse = "path 300 mm; drop-test 2 min rise at-most 10 mbar isolated" };
        Assert.StartsWith("drop test of 2 min", Bench.Fires("leak-check-too-short", tray, Severity.Warning).Message, StringComparison.Ordinal);
    }

    // The plan counts a mesh that is smaller from the plies, not from the peel ply under it, which runs past them.
    [Fact]
    public void A_mesh_is_said_to_end_where_the_plan_cuts_it()
    {
        var tray = Tray.Infused with { Bag = "peel-ply; flow-medium smaller 5 mm; bag-film" };
        Assert.Contains("ends 5 mm inside the plies;", Bench.Fires("mesh-reaches-vacuum", tray, Severity.Warning).Message, StringComparison.Ordinal);
    }
}
