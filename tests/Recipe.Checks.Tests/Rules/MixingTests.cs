namespace Recipe.Checks.Tests;

/// <summary>When the checks of mixing, coats, prepreg, pump and the shop's safety speak, at their limits.</summary>
public class MixingTests
{
    [Theory]
    [InlineData("resin; accelerator; stir; hardener; stir", false)]
    [InlineData("resin; accelerator; hardener; stir", true)]
    [InlineData("accelerator; stir; hardener; resin; stir", true)]
    [InlineData("resin; hardener; stir; accelerator; stir", true)]
    [InlineData("resin; hardener; stir", false)]
    public void Accelerator_is_stirred_into_the_resin_before_the_peroxide(string order, bool fires)
    {
        Limits.Speaks("peroxide-meets-accelerator", Mixed(order) with { Resin = "laminating-polyester" }, fires);
        Bench.Silent("peroxide-meets-accelerator", Mixed(order));
    }

    [Fact]
    public void No_reason_accepts_peroxide_on_accelerator()
    {
        var tray = Mixed("resin; accelerator; hardener; stir") with { Resin = "laminating-polyester" };
        var bench = Bench.Of((tray with { PartLines = tray.PartLines + "accept peroxide-meets-accelerator because \"always done so\"" }).ToString());
        Assert.Contains("RC4101", bench.Codes);
        Assert.Contains("RC9004", bench.Codes);
    }

    [Theory]
    [InlineData("laminating-polyester", 15, false)]
    [InlineData("laminating-polyester", 15.1, true)]
    [InlineData("slow-laminating-epoxy", 5, false)]
    [InlineData("slow-laminating-epoxy", 5.1, true)]
    public void Epoxy_carries_five_parts_of_pigment_and_polyester_fifteen(string resin, double parts, bool fires) => Limits.Speaks(
        "too-much-pigment",
        Tray.Hand with { Resin = resin, PartLines = FormattableString.Invariant($"mix {{ add resin\nadd pigment parts {parts}\nadd hardener\nstir 3 min\nscrape }}") },
        fires);

    // TM 1-1500-204-23-11 p. 0169: scrape and fold; common practice: two minutes at the least.
    [Theory]
    [InlineData("add resin\nadd hardener\nstir 2 min\nscrape", false)]
    [InlineData("add resin\nadd hardener\nstir 1 min\nscrape\nstir 1 min", false)]
    [InlineData("add resin\nadd hardener\nstir 119 s\nscrape", true)]
    [InlineData("add resin\nadd hardener\nstir 3 min", true)]
    [InlineData("add resin\nadd hardener\nstir 3 min\nsecond-cup", false)]
    public void A_pot_is_stirred_two_minutes_and_scraped(string lines, bool fires) => Limits.Speaks("mixed-in-haste", Tray.Hand with { PartLines = $"mix {{\n{lines}\n}}" }, fires);

    [Theory]
    [InlineData("resin; hardener; stir; filler", false)]
    [InlineData("resin; filler; hardener; stir", true)]
    [InlineData("resin; hardener; filler; stir", true)]
    [InlineData("resin; pigment; hardener; stir", false)]
    public void Filler_comes_after_the_stirring_and_pigment_may_come_before(string order, bool fires) => Limits.Speaks("filler-first", Mixed(order), fires);

    // 1.2 g/cm3: 0.38 mm is 456 g/m2, 0.84 mm is 1008 g/m2.
    [Theory]
    [InlineData(450, true)]
    [InlineData(460, false)]
    [InlineData(1000, false)]
    [InlineData(1010, true)]
    public void Gel_coat_lies_four_to_eight_tenths_thick(int weight, bool fires) => Limits.Speaks("gel-coat-film", Coated($"{weight} g/m2 wait 90 min"), fires);

    [Theory]
    [InlineData("44 min", true)]
    [InlineData("45 min", false)]
    [InlineData("24 h", false)]
    [InlineData("25 h", true)]
    public void Gel_coat_skins_over_and_is_not_forgotten(string wait, bool fires) => Limits.Speaks("gel-coat-timed", Coated($"600 g/m2 wait {wait}"), fires);

    // TM 1-1500-204-23-11 p. 0184: one minute accepted for a wet lay-up.
    [Theory]
    [InlineData("60 s", false)]
    [InlineData("59 s", true)]
    public void A_leak_check_of_a_wet_lay_up_lasts_a_minute(string time, bool fires) =>
        Limits.Speaks("leak-check-too-short", new Tray { Vacuum = $"draw 25 inHg below ambient within 10 min; leak-check {time} rise at-most 5 mbar isolated" }, fires);

    [Theory]
    [InlineData("5 min", false)]
    [InlineData("4 min", true)]
    public void An_infusion_is_watched_for_five(string time, bool fires) =>
        Limits.Speaks("leak-check-too-short", Tray.Infused with { Infuse = $"path 300 mm; feed-line length 300 mm diameter 8 mm; drop-test {time} rise at-most 20 mbar isolated" }, fires);

    [Theory]
    [InlineData("pump 2.5 cfm ultimate 20 mbar absolute band 170 mbar", "wide-switch-band", false)]
    [InlineData("pump 2.5 cfm ultimate 20 mbar absolute band 171 mbar", "wide-switch-band", true)]
    [InlineData("gauge-checked 2025-05-14", "gauge-unchecked", false)]
    [InlineData("gauge-checked 2025-05-13", "gauge-unchecked", true)]
    public void Pump_and_gauge_are_looked_after(string shop, string code, bool fires) => Limits.Speaks(code, new Tray { Shop = shop }, fires);

    // Common practice: a hundred grams that warm themselves can set fire to a bin.
    [Theory]
    [InlineData("leftover bin", "leftover-in-bin", true)]
    [InlineData("leftover water", "leftover-in-bin", false)]
    [InlineData("spills rags", "spills-on-sawdust", true)]
    [InlineData("spills mineral", "spills-on-sawdust", false)]
    [InlineData("solvents by-heat", "solvents-by-heat", true)]
    [InlineData("gloves \"latex\"", "latex-gloves", true)]
    [InlineData("gloves \"latex inside, nitrile over it\"", "latex-gloves", false)]
    [InlineData("gloves \"heavy rubber\"", "latex-gloves", false)]
    [InlineData("dust wet", "no-gloves", true)]
    public void What_the_shop_says_of_its_safety_is_held_to(string line, string code, bool fires) => Limits.Speaks(code, Tray.Hand with { Shop = $"safety {{ {line} }}" }, fires);

    [Fact]
    public void A_shop_without_a_safety_block_hears_nothing()
    {
        Bench.Clean(Tray.Hand with { Shop = "scale 0.1 g" });
        Bench.Silent("styrene-unvented", Tray.Hand with { Resin = "laminating-polyester" });
    }

    [Theory]
    [InlineData("oven limit 80 degC cut-out no", true)]
    [InlineData("oven limit 80 degC cut-out yes", false)]
    [InlineData("oven limit 80 degC", false)]
    public void Long_heat_wants_a_cut_out(string shop, bool fires) => Limits.Speaks(
        "unattended-heat",
        new Tray { Shop = shop, Cure = "hold 20 degC for 24 h; ramp 10 degC/h to 50 degC; hold 50 degC for 16 h; cool to 30 degC; demould" },
        fires);

    // Two hours above 40 degC in all, however many steps they are spread over; half an hour of them to cool down (common practice: nobody stays longer beside it).
    [Theory]
    [InlineData("hold 20 degC for 24 h; hold 50 degC for 60 min; hold 45 degC for 31 min; cool to 30 degC; demould", true)]
    [InlineData("hold 20 degC for 24 h; hold 50 degC for 60 min; hold 45 degC for 30 min; cool to 30 degC; demould", false)]
    [InlineData("hold 20 degC for 24 h; hold 40 degC for 16 h; cool to 30 degC; demould", false)]
    [InlineData("hold 20 degC for 24 h; hold 41 degC for 16 h; cool to 30 degC; demould", true)]
    public void Hours_of_heat_are_counted_together(string cure, bool fires) =>
        Limits.Speaks("unattended-heat", new Tray { Shop = "oven limit 80 degC cut-out no", Cure = cure }, fires);

    [Fact]
    public void An_oven_of_which_nothing_is_known_is_said_to_be_unchecked_and_only_when_it_is_hot()
    {
        NotChecked("hold 20 degC for 24 h; hold 50 degC for 16 h; cool to 30 degC; demould", 1);
        NotChecked("hold 20 degC for 48 h; demould", 0);

        static void NotChecked(string cure, int times) => Assert.Equal(
            times, Bench.Of(new Tray { Shop = "oven limit 80 degC", Cure = cure }.ToString(), checks: Bench.Only("unattended-heat")).Report.NotChecked.Length);
    }

    // Four hours in all, over several steps, up to the one that lets it go.
    [Theory]
    [InlineData("hold 20 degC for 3 h under vacuum; hold 21 degC for 61 min under vacuum; vent; hold 20 degC for 48 h; demould", true)]
    [InlineData("hold 20 degC for 3 h under vacuum; hold 21 degC for 60 min under vacuum; vent; hold 20 degC for 48 h; demould", false)]
    public void Hours_under_vacuum_are_counted_together(string cure, bool fires) =>
        Limits.Speaks("pump-may-stop", new Tray { Shop = "check-valve no", Cure = cure }, fires);

    [Fact]
    public void Bare_hands_and_thin_gloves_are_told_apart()
    {
        Assert.Equal("resin is handled with bare hands", Bench.Fires("latex-gloves", (Tray.Hand with { Shop = "safety { gloves \"none\" }" }).ToString()).Message);
        var thin = Bench.Fires("latex-gloves", (Tray.Hand with { Shop = "safety { gloves \"thin latex\" }" }).ToString());
        Assert.Equal("gloves are thin latex; nitrile or butyl keeps resin out", thin.Message);
        Assert.Equal("gloves \"nitrile, changed on every splash\"", Assert.Single(Assert.Single(thin.Fixes).Edits).NewText);
    }

    [Theory]
    [InlineData("thaw 6 h sealed", "opened-frozen", false)]
    [InlineData("thaw 5 h sealed", "opened-frozen", true)]
    [InlineData("thaw 24 h unwrapped", "opened-frozen", true)]
    [InlineData("freezer -16 degC", "freezer-warm", false)]
    [InlineData("freezer -15 degC", "freezer-warm", true)]
    [InlineData("out-time 30 d", "out-life-spent", false)]
    [InlineData("out-time 31 d", "out-life-spent", true)]
    [InlineData("edges sealed", "sealed-edges", true)]
    [InlineData("debulk every 5 for 10 min", "no-debulk", false)]
    [InlineData("debulk every 6 for 10 min", "no-debulk", true)]
    public void Prepreg_is_handled_by_its_rules(string line, string code, bool fires) => Limits.Speaks(
        code,
        new Tray
        {
            Above = "fabric own-prepreg { fibre e-glass; areal-weight 280 g/m2; width 100 cm; resin-content prepreg 40 % by weight; out-life 30 d }",
            Process = "prepreg",
            Plies = "skins own-prepreg 0/90 x8",
            PartLines = $"prepreg {{ {line} }}",
        },
        fires);

    // Without its peel ply a felt lies on the prepreg, unless a film does.
    [Theory]
    [InlineData("peel-ply; release-film perforated; breather; bag-film", "bag {\nrelease-film perforated\nbreather")]
    [InlineData("peel-ply; breather; bag-film", "bag {\nrelease-film perforated\nbreather")]
    [InlineData("peel-ply; bag-film", "bag {\nrelease-film perforated\nbag-film")]
    public void A_lean_prepreg_loses_its_peel_ply_and_no_more(string bag, string lines)
    {
        var tray = new Tray
        {
            Above = "fabric own-prepreg { fibre e-glass; areal-weight 280 g/m2; width 100 cm; resin-content prepreg 34 % by weight; out-life 30 d }",
            Process = "prepreg",
            Plies = "skins own-prepreg 0/90 x2",
            Bag = bag,
        };
        var found = Bench.Fires("peel-ply-steals", tray, Text.Findings.Severity.Advice);
        Assert.Contains(lines, Text.Findings.TextEdit.Apply(found.Where.Source, Assert.Single(found.Fixes).Edits), StringComparison.Ordinal);
        Bench.Settles("peel-ply-steals", tray.ToString(), "felt-on-laminate", "nothing-under-bag");
    }

    [Fact]
    public void A_debulk_that_is_not_understood_is_not_called_missing()
    {
        var tray = new Tray
        {
            Above = "fabric own-prepreg { fibre e-glass; areal-weight 280 g/m2; width 100 cm; resin-content prepreg 40 % by weight; out-life 30 d }",
            Process = "prepreg",
            Plies = "skins own-prepreg 0/90 x8",
            PartLines = "prepreg {\ndebulk evry 3\n}",
        };
        Assert.DoesNotContain(Bench.Of(tray.ToString()).All, finding => finding.Descriptor.Name == "no-debulk");
    }

    private static Tray Coated(string coat) => Tray.Hand with
    {
        Above = "gel-coat own-gel-coat { chemistry polyester; mix 100:2 by weight; density cured 1.2 g/cm3; pot-life 25 min at 20 degC in 100 g }",
        PartLines = "coat own-gel-coat " + coat,
        Resin = "laminating-polyester",
    };

    private static Tray Mixed(string order)
    {
        var lines = order.Split(';').Select(w => w.Trim()).Select(w => w == "stir" ? "stir 3 min" : "add " + w);
        return Tray.Hand with { PartLines = $"mix {{\n{string.Join('\n', lines)}\nscrape\n}}\n" };
    }
}
