using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of the figures of a resin and of its mixing speak, and when they do not.</summary>
public class FigureTests
{
    private static Tray With(string lines, string like = "slow-laminating-epoxy") =>
        Tray.Hand with { Above = $"resin shop-resin like {like} {{ {lines}; source \"data sheet\" }}", Resin = "shop-resin" };

    [Theory]
    [InlineData("25 h", true)]
    [InlineData("24 h", false)]
    [InlineData("2 min", false)]
    [InlineData("90 s", true)]
    public void A_pot_lives_between_two_minutes_and_a_day(string life, bool fires) => Limits.Says("odd-pot-life", With($"pot-life {life} at 20 degC in 100 g"), fires);

    // The other unit is offered where it makes a life that is usual.
    [Theory]
    [InlineData("25 h", "pot life of shop-resin is 25 h; 24 h is the longest that is usual", "Write 25 min at 20 degC in 100 g")]
    [InlineData("1 min", "pot life of shop-resin is 1 min; nothing is laid up in less than 2 min", "Write 1 h at 20 degC in 100 g")]
    [InlineData("90 s", "pot life of shop-resin is 1.5 min; nothing is laid up in less than 2 min", "Write 90 min at 20 degC in 100 g")]
    [InlineData("2 s", "pot life of shop-resin is 2 s; nothing is laid up in less than 2 min", "Write 2 min at 20 degC in 100 g")]
    [InlineData("1 s", "pot life of shop-resin is 1 s; nothing is laid up in less than 2 min", null)]
    [InlineData("1500 h", "pot life of shop-resin is 1500 h; 24 h is the longest that is usual", null)]
    public void A_pot_life_in_the_wrong_unit_is_offered_in_the_other(string life, string said, string? fix)
    {
        var found = Bench.Fires("odd-pot-life", With($"pot-life {life} at 20 degC in 100 g"), Severity.Warning);
        Assert.Equal(said, found.Message);
        Assert.Equal(fix, found.Fixes.SingleOrDefault()?.Title);
    }

    // Common practice: 0.5 to 4 % of peroxide; 8 to 120 parts of amine hardener to a hundred of epoxy.
    [Theory]
    [InlineData("slow-laminating-epoxy", "100:7", true)]
    [InlineData("slow-laminating-epoxy", "100:8", false)]
    [InlineData("slow-laminating-epoxy", "100:120", false)]
    [InlineData("laminating-polyester", "100:0.4", true)]
    [InlineData("laminating-polyester", "100:0.5", false)]
    [InlineData("laminating-polyester", "100:4", false)]
    [InlineData("laminating-polyester", "100:4.1", true)]
    public void A_hardener_has_its_usual_share(string like, string mix, bool fires) => Limits.Says("odd-hardener-share", With($"mix {mix} by weight", like), fires);

    [Theory]
    [InlineData("mix 100:121 by weight", true)]
    [InlineData("mix 100:120 by weight", false)]
    [InlineData("mix 1:1 by volume", false)]
    [InlineData("mix 30:100 by weight; cures-with anhydride", false)]
    public void A_hardener_seldom_outweighs_its_resin(string mix, bool fires)
    {
        Limits.Says("hardener-outweighs-resin", With(mix), fires);
        Bench.Silent("odd-hardener-share", With(mix));
    }

    [Theory]
    [InlineData("film-life 150 min at 20 degC; gel-time 140 min at 20 degC", true)]
    [InlineData("film-life 150 min at 20 degC; gel-time 150 min at 20 degC", false)]
    [InlineData("pot-life 60 min at 20 degC in 100 g; film-life 50 min at 20 degC", true)]
    [InlineData("film-life 150 min at 20 degC; gel-time 50 min at 30 degC", false)]
    [InlineData("film-life 150 min at 20 degC; gel-time 30 min at 30 degC", true)]
    [InlineData("gel-time 140 min at 20 degC", false)]
    public void The_times_of_a_sheet_follow_each_other(string times, bool fires) => Limits.Says("lives-out-of-order", With(times), fires);

    [Theory]
    [InlineData("86 degC", true)]
    [InlineData("85 degC", false)]
    public void No_cure_goes_beyond_the_limit_of_the_resin(string transition, bool fires) =>
        Limits.Says("transition-above-limit", With($"glass-transition {transition} after 20 degC for 24 h; glass-transition-limit 85 degC"), fires);

    [Theory]
    [InlineData("resin-temperature 17 degC", "slow-laminating-epoxy", true)]
    [InlineData("resin-temperature 18 degC", "slow-laminating-epoxy", false)]
    [InlineData("resin-temperature 64 degF", "slow-laminating-epoxy", true)]
    [InlineData("room 16 degC; resin-temperature 20 degC", "slow-laminating-epoxy", false)]
    [InlineData("room 20 degC; resin-temperature 16 degC", "slow-laminating-epoxy", true)]
    [InlineData("room 16 degC", "slow-laminating-epoxy", true)]
    [InlineData("room 16 degC to 20 degC", "slow-laminating-epoxy", false)]
    [InlineData("room 14 degC to 17 degC", "slow-laminating-epoxy", true)]
    [InlineData("resin-temperature 15 degC", "laminating-polyester", false)]
    [InlineData("resin-temperature 14 degC", "laminating-polyester", true)]
    public void Resin_is_mixed_warm(string wetOut, string resin, bool fires) => Limits.Says("cold-resin", Tray.Hand with { Resin = resin, WetOut = wetOut }, fires);

    [Fact]
    public void A_resin_for_the_cold_may_be_cold()
    {
        var tray = With("minimum-temperature 5 degC") with { WetOut = "resin-temperature 12 degC" };
        Bench.Silent("cold-resin", tray);
    }

    [Theory]
    [InlineData("tray yes; pot 300 g; pot 300 g", true)]
    [InlineData("tray yes; pot 200 g", false)]
    public void Resin_is_not_mixed_to_be_thrown_away(string pots, bool fires) => Limits.Says("mixed-too-much", Tray.Hand with { WetOut = pots }, fires, Severity.Advice);

    [Theory]
    [InlineData("mixing 13 min", true)]
    [InlineData("mixing 11 min", false)]
    public void A_fifth_of_the_pot_life_goes_in_stirring(string mixing, bool fires) =>
        Limits.Says("stirs-away-life", Tray.Hand with { WetOut = "room 20 degC; pot 100 g; " + mixing }, fires);
}
