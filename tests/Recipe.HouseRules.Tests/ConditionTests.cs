namespace Recipe.HouseRules.Tests;

/// <summary>Every form of a condition: kept, broken, unknown. What is compared with stands in <see cref="Bench.Tray"/>.</summary>
public class ConditionTests
{
    [Theory]
    [InlineData("must room at-least 20 degC")]
    [InlineData("must room at-most 68 degF")]
    [InlineData("must room equals 20 degC")]
    [InlineData("must room above 19 degC below 21 degC")]
    [InlineData("must (room - 15 degC) at-least 5 K")]
    [InlineData("must process is bagged")]
    [InlineData("must process is-not infused prepreg")]
    [InlineData("must outdoors is no")]
    [InlineData("must outdoors is-not yes")]
    [InlineData("must title is \"Tray\"")]
    [InlineData("must title known")]
    [InlineData("must variant-of unknown")]
    [InlineData("must any ply { form is veil }")]
    [InlineData("must no ply { form is mat }")]
    [InlineData("must every ply { areal-weight at-most 280 g/m2 }")]
    [InlineData("must every ply { where form is veil; areal-weight at-most 10 g/m2 }")]
    [InlineData("must count ply equals 5")]
    [InlineData("must count ply at-least 1 at-most 1 { patch is yes }")]
    [InlineData("must sum ply repeats equals 6")]
    [InlineData("must least ply areal-weight equals 8 g/m2")]
    [InlineData("must most ply areal-weight above 8.25 oz/yd2 below 8.26 oz/yd2")]
    [InlineData("must either { process is hand; process is bagged }")]
    [InlineData("must not { process is hand }")]
    [InlineData("must every release { coats at-least 2 }")]
    [InlineData("must any coat { areal-weight equals 300 g/m2; wait equals 90 min }")]
    [InlineData("must any core { thickness equals 5 mm; family is pvc-foam; position equals 4 }")]
    [InlineData("must any insert { pieces equals 2 }")]
    [InlineData("must any pot { use is laminate; number equals 1 }")]
    [InlineData("must any bag-layer { position equals 1; class is peel-ply }")]
    [InlineData("must any cure-step { action is hold; to equals 50 degC; lasts equals 8 h; in-mould is yes }")]
    [InlineData("must any cure-step { action is ramp; rate equals 0.5 degC/min }")]
    [InlineData("must any finish-step { step is wash; text is \"warm water\" }")]
    [InlineData("must any load { name is pulled; way is along }")]
    [InlineData("must resin-content at-most 60 % by weight")]
    [InlineData("figure half (mass / 2)\nmust (half + half) equals mass")]
    [InlineData("figure heaviest most ply areal-weight\nmust any ply { name is body; areal-weight equals heaviest }")]
    [InlineData("must every ply { any release { kind is wax } }")]
    [InlineData("must every ply { keep (areal-weight * area) equals mass }")]
    [InlineData("must (fibre-mass + resin-mass + core-mass + coat-mass + insert-mass) equals mass")]
    [InlineData("when process is infused\nmust room at-least 90 degC")]
    public void Kept(string lines) => Assert.Equal((0, null), (Bench.Apply(lines).Broken.Length, Bench.Apply(lines).Missing));

    [Theory]
    [InlineData("must room at-least 21 degC", "room is 20 degC; at least 21 degC is the rule")]
    [InlineData("must room at-most 60 degF", "room is 20 degC; at most 60 degF is the rule")]
    [InlineData("must process is infused prepreg", "process is bagged; wanted: infused or prepreg")]
    [InlineData("must process is-not bagged", "process is bagged; not wanted here")]
    [InlineData("must outdoors is yes", "outdoors is no; it should be yes")]
    [InlineData("must variant-of known", "variant-of is not known")]
    [InlineData("must title unknown", "title is given")]
    [InlineData("must any ply { form is mat }", "no ply keeps `must any ply`")]
    [InlineData("title \"A veil\"\nmust no ply { form is veil }", "veil: A veil")]
    [InlineData("must every ply { areal-weight at-most 250 g/m2 }", "body: areal-weight is 280 g/m2; at most 250 g/m2 is the rule")]
    [InlineData("must count ply at-most 4", "count ply is 5; at most 4 is the rule")]
    [InlineData("must mould-pulls at-most 5", "mould-pulls is 6; at most 5 is the rule")]
    [InlineData("must every release { coats at-least 3 }", "pva-film: coats is 2; at least 3 is the rule")]
    [InlineData("must (room - 10 degC) at-most 5 K", "(room - 10 degC) is 10 K; at most 5 K is the rule")]
    [InlineData("must room at-least 25 degC\nmessage \"laid at {room}, {room in degF}; {name} by {process}\"", "laid at 20 degC, 68 degF; tray by bagged")]
    [InlineData("must every ply { repeats at-most 1 }\nmessage \"{name} twice: {repeats} of {areal-weight in oz/yd2}.\"", "inner twice: 2 of 3.097 oz/yd2")]
    [InlineData("figure heaviest most ply areal-weight\nmust heaviest at-most 1 g/m2\nmessage \"{heaviest}\"", "280 g/m2")]
    public void Broken(string lines, string message) => Assert.Equal([message], Bench.Messages(lines));

    [Theory]
    [InlineData("must night at-least 10 degC", "night")]
    [InlineData("must mould-pulls-since-release at-most 3", "mould-pulls-since-release")]
    [InlineData("must variant-of is lid", "variant-of")]
    [InlineData("when night at-least 10 degC\nmust room at-least 90 degC", "night")]
    [InlineData("must every ply { step at-most 10 mm }", "step of outer")]
    [InlineData("must sum ply step at-most 10 mm", "step of outer")]
    [InlineData("must least pot time-left at-least 1 min { use is seam }", "a pot to ask")]
    [InlineData("must (mass / (mass - mass)) at-most 1", "a number: mass / (mass - mass) divides by nought, or is too large")]
    [InlineData("must cost at-most 20 EUR", "cost")]
    public void Unknown_facts_are_not_checked_and_never_nought(string lines, string missing) =>
        Assert.Equal((0, missing), (Bench.Apply(lines).Broken.Length, Bench.Apply(lines).Missing));

    [Fact]
    public void Each_thing_that_breaks_a_rule_is_shown_where_it_stands()
    {
        var broken = Bench.Apply("must every ply { areal-weight at-most 100 g/m2 }").Broken;
        Assert.Equal(["body", "inner", "hinge"], broken.Select(b => b.Where.Text.Split(' ')[0]));
    }

    [Fact]
    public void A_figure_that_the_recipe_states_is_pointed_at()
    {
        Assert.Equal("20 degC", Bench.Apply("must room at-least 21 degC").Broken[0].Where.Text);
        Assert.Equal("tray", Bench.Apply("must mass at-least 9 kg").Broken[0].Where.Text);
    }

    [Fact]
    public void A_known_answer_needs_no_unknown_fact()
    {
        Assert.Null(Bench.Apply("must either { night at-least 10 degC; process is bagged }").Missing);
        Assert.Null(Bench.Apply("when process is infused\nwhen night at-least 10 degC\nmust room at-least 90 degC").Missing);
        Assert.Single(Bench.Apply("must not { either { process is bagged; night at-least 1 degC } }").Broken);
    }

    // Dry twill of 163 g/m2 alone weighs 163 g/m2 = 4.807 oz/yd2; NIST SP 811 (2008), appendix B: 1 oz/yd2 is 33.90575 g/m2.
    [Theory]
    [InlineData("must (fibre-mass / area) at-most 1 g/m2", "(fibre-mass / area) is 163 g/m2; at most 1 g/m2 is the rule")]
    [InlineData("must (2 * fibre-mass / area) at-most (fibre-mass / area)", "(2 * fibre-mass / area) is 326 g/m2; at most (fibre-mass / area) (163 g/m2) is the rule")]
    [InlineData("figure w (fibre-mass / area)\nmust w at-most 1 g/m2\nmessage \"{w}, {w in oz/yd2}\"", "163 g/m2, 4.807 oz/yd2")]
    [InlineData("figure v (area * 100 mm)\nmust v at-most 1 L\nmessage \"{v in L}\"", "6 L")]
    [InlineData("must (20 EUR / fibre-mass) at-most 1 EUR/kg", "(20 EUR / fibre-mass) is 2044.99 EUR/kg; at most 1 EUR/kg is the rule")]
    [InlineData("must (20 EUR / 10 EUR) at-most 1", "(20 EUR / 10 EUR) is 2; at most 1 is the rule")]
    public void What_is_reckoned_is_told_in_a_unit_of_its_own_kind(string lines, string message) => Assert.Equal([message], Bench.Messages(lines, Priced));

    private const string Priced = "\nshop ours { currency EUR }\nprices { glass-twill-163 6 EUR/m2 }\nmould m { surface flat 300 mm x 200 mm; stays-in-part yes }\npart p { mould m; process hand; plies { a glass-twill-163 0/90 } }";

    [Fact]
    public void Money_of_two_currencies_is_not_compared()
    {
        var (euro, dollar) = (Bench.Apply("must cost at-most 0.01 EUR", Priced), Bench.Apply("must cost at-most 0.01 USD", Priced));
        Assert.EndsWith(" EUR; at most 0.01 EUR is the rule", Assert.Single(euro.Broken).Message, StringComparison.Ordinal);
        Assert.Empty(dollar.Broken);
        Assert.Contains("its prices are in EUR", dollar.Missing, StringComparison.Ordinal);
        var sum = Bench.Apply("must (cost + 5 USD) at-most 0.01 EUR", Priced);
        Assert.Empty(sum.Broken);
        Assert.Contains("its prices are in EUR", sum.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_ends_however_much_it_asks()
    {
        var plies = string.Concat(Enumerable.Range(0, 400).Select(i => $"    p{i} glass-twill-163 0/90\n"));
        var part = $"mould m {{ surface flat 300 mm x 200 mm }}\npart p {{\n  mould m\n  process hand\n  resin slow-laminating-epoxy\n  plies {{\n{plies}  }}\n}}\n";
        var outcome = Bench.Apply("must every ply { every ply { every ply { areal-weight at-most 300 g/m2 } } }", part);
        Assert.Empty(outcome.Broken);
        Assert.Equal("an answer: it takes more steps than a rule may", outcome.Missing);
        Assert.Null(Bench.Apply("must every ply { every ply { areal-weight at-most 300 g/m2 } }", part).Missing);
    }
}
