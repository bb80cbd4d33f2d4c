using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of build records speak, and when they do not.</summary>
public class RecordTests
{
    private const string Sound = "pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40; used slow-laminating-epoxy 52 g lot \"E31\"; mass 88 g; ";

    /// <summary>Each limit that the record kept, on either side of it; what was decided silences the first check and not the second.</summary>
    [Theory]
    [InlineData("rise 31 mbar in 5 min", "rise 30 mbar in 5 min", true)]
    [InlineData("rise 30 mbar in 5 min", "rise 30 mbar in 5 min", false)]
    [InlineData("rise 31 mbar in 10 min", "rise 30 mbar in 5 min", false)] // it had longer
    [InlineData("rise 60 mbar in 10 min", "rise 30 mbar in 5 min", false)] // twice as long
    [InlineData("rise 61 mbar in 10 min", "rise 30 mbar in 5 min", true)]
    [InlineData("rise 29 mbar in 1 min", "rise 30 mbar in 5 min", false)] // still settling
    [InlineData("rise 31 mbar", "rise 30 mbar in 5 min", true)]
    [InlineData("rise 31 mbar in 5 min", "rise 30 mbar", true)]
    [InlineData("cure hottest 71 degC lasted 18 h", "heat-limit 70 degC", true)]
    [InlineData("cure hottest 70 degC lasted 18 h", "heat-limit 70 degC", false)]
    [InlineData("mass 97 g", "mass 88 g band 80 g to 96 g", true)]
    [InlineData("mass 96 g", "mass 88 g band 80 g to 96 g", false)]
    [InlineData("mass 80 g", "mass 88 g band 80 g to 96 g", false)]
    [InlineData("mass 79 g", "mass 88 g band 80 g to 96 g", true)]
    public void A_broken_limit_wants_a_decision_and_the_decision_to_use_it_a_reason(string line, string planned, bool broken)
    {
        Limits.Says("limit-broken", Record(Sound + line, planned), broken, Severity.Error);
        Limits.Says("limit-broken", Record(Sound + line + "; disposition use by \"K\"", planned), false);
        Limits.Says("used-out-of-band", Record(Sound + line + "; disposition use by \"K\"", planned), broken);
        Limits.Says("used-out-of-band", Record(Sound + line + "; disposition use because \"no load there\" by \"K\"", planned), false);
        Limits.Says("used-out-of-band", Record(Sound + line + "; disposition repair by \"K\"", planned), false);
    }

    // A gauge is off by a twentieth (from memory of the trade). What is counted from nothing falls short upwards.
    [Theory]
    [InlineData("569 mbar below ambient", "600 mbar below ambient", true)]
    [InlineData("570 mbar below ambient", "600 mbar below ambient", false)]
    [InlineData("700 mbar below ambient", "600 mbar below ambient", false)]
    [InlineData("17 inHg below ambient", "600 mbar below ambient", false)] // 576 mbar
    [InlineData("16 inHg below ambient", "600 mbar below ambient", true)]
    [InlineData("150 mbar absolute", "100 mbar absolute", true)]
    [InlineData("145 mbar absolute", "100 mbar absolute", false)]
    [InlineData("30 mbar absolute", "100 mbar absolute", false)]
    [InlineData("450 mbar absolute", "600 mbar below ambient", false)] // another gauge
    public void A_vacuum_that_was_not_reached_wants_a_decision(string reached, string planned, bool broken)
    {
        var tray = Record(Sound + $"vacuum on 10:20 reached {reached} off 22:30", $"vacuum {planned}");
        Limits.Says("limit-broken", tray, broken, Severity.Error);
        if (broken)
        {
            Assert.Equal($"the vacuum reached {reached}; {planned} is planned, and nothing is decided", Bench.Fires("limit-broken", tray, Severity.Error).Message);
        }
    }

    [Theory]
    [InlineData("mixed-at 09:00 dead-at 09:40", "from 09:05 until 09:43", "", true)]
    [InlineData("mixed-at 09:00 dead-at 09:40", "from 09:05 until 09:42", "", false)]
    [InlineData("mixed-at 09:00", "from 09:05 until 09:50", "", false)]
    [InlineData("mixed-at 23:50 dead-at 00:30", "from 23:55 until 00:40", "", true)]
    [InlineData("mixed-at 23:50 dead-at 00:30", "from 23:55 until 00:20", "", false)]
    [InlineData("mixed-at 09:00 dead-at 09:40; pot 2 resin 40 g hardener 12 g mixed-at 09:30 dead-at 10:10", "from 09:05 until 10:05", "", false)]
    [InlineData("mixed-at 09:00 dead-at 09:40", "from 09:05 until 09:50", "disposition scrap by \"K\"", false)]
    [InlineData("mixed-at 09:00 dead-at 09:40", "from 09:05 until 09:50", "disposition use because \"no dry spot\" by \"K\"", true)]
    public void What_is_laid_after_the_last_pot_died_is_seen(string pot, string laid, string decided, bool fires) =>
        Limits.Says("laid-with-dead-resin", Record($"pot 1 resin 40 g hardener 12 g {pot}; wet-out {laid} over 0.24 m2 pieces 2; mass 88 g; {decided}", "mixed 52 g"), fires);

    [Fact]
    public void Three_limits_passed_over_are_one_missing_reason()
    {
        var tray = Record(Sound.Replace("mass 88 g", "mass 97 g", StringComparison.Ordinal) + "rise 31 mbar in 5 min; cure hottest 71 degC lasted 18 h; disposition use by \"K\"", "rise 30 mbar in 5 min\nheat-limit 70 degC\nmass 88 g band 80 g to 96 g");
        var found = Bench.Fires("used-out-of-band", tray, Severity.Warning);
        Assert.EndsWith("and it is used without a reason; likewise 2 more", found.Message, StringComparison.Ordinal);
        Assert.Equal(3, found.Labels.Length);
        Assert.Equal("the part weighs 97 g; its band is 80 g to 96 g", found.Labels[^1].Text);
    }

    /// <summary>100:30 by weight asks for 12 g; 3 % of it is 0.36 g (common practice for epoxies), and half of the last digit that is written.</summary>
    [Theory]
    [InlineData("resin 40 g hardener 12 g", "", false)]
    [InlineData("resin 40 g hardener 11.6 g", "", false)]
    [InlineData("resin 40 g hardener 11.5 g", "", true)]
    [InlineData("resin 40 g hardener 12.5 g", "", true)]
    [InlineData("resin 40 g hardener 11.5 g", "scale 1 g", false)] // the scale shows no less
    [InlineData("resin 40 g hardener 10 g", "scale 1 g", true)]
    [InlineData("resin 40 g", "", false)] // another finding
    public void A_pot_is_mixed_in_its_ratio(string weighed, string shop, bool fires) =>
        Limits.Says("pot-off-ratio", Record($"pot 1 {weighed} mixed-at 09:00 dead-at 09:40; mass 88 g", "mixed 52 g") with { Shop = shop }, fires);

    [Fact]
    public void A_pot_of_another_resin_than_todays_is_not_held_to_its_ratio() =>
        Limits.Says("pot-off-ratio", Record("pot 1 resin 40 g hardener 20 g; mass 88 g", "resin infusion-epoxy"), false);

    [Theory]
    [InlineData("used slow-laminating-epoxy 52 g", false)]
    [InlineData("used slow-laminating-epoxy 57 g", false)]
    [InlineData("used slow-laminating-epoxy 58 g", true)]
    [InlineData("used slow-laminating-epoxy 46 g", true)]
    [InlineData("used slow-laminating-epoxy 30 g lot \"E31\"; used slow-laminating-epoxy 22 g lot \"E32\"", false)]
    public void What_was_taken_is_what_was_mixed(string used, bool fires) =>
        Limits.Says("taken-not-mixed", Record($"pot 1 resin 40 g hardener 12 g; mass 88 g; {used}", "mixed 52 g"), fires);

    public static TheoryData<string> Changes => ["process", "resin", "plies", "resin content", "bag", "vacuum", "cure temperature", "cure time", "pairs of hands"];

    /// <summary>Two plans that differ in one thing differ in that thing and in nothing else; what one of them does not say is no difference.</summary>
    [Theory]
    [MemberData(nameof(Changes))]
    public void One_change_is_told_as_that_change(string what)
    {
        var now = what switch
        {
            "process" => Planned with { Process = Process.Hand },
            "resin" => Planned with { Resin = "fast-laminating-epoxy" },
            "plies" => Planned with { Cloths = [Cloth("glass-twill-163", 50, 0.45)] },
            "resin content" => Planned with { Cloths = [Cloth("glass-twill-163", 40, 0.47)] },
            "bag" => Planned with { Bag = ["nylon-peel-ply", "nylon-bag-film"] },
            "vacuum" => Planned with { Vacuum = "20 inHg below ambient" },
            "cure temperature" => Planned with { Hottest = Temperature.FromDegreesCelsius(51) },
            "cure time" => Planned with { CureTime = Duration.FromHours(19) },
            "pairs of hands" => Planned with { Laminators = 3 },
            _ => throw new ArgumentOutOfRangeException(nameof(what)),
        };
        Assert.Equal([what], RecordFacts.Differences(Planned, now));
        Assert.Equal([what], RecordFacts.Differences(now, Planned));
        Assert.Empty(RecordFacts.Differences(Planned, Planned with { }));
        Assert.Empty(RecordFacts.Differences(new PlannedFigures(), Planned));
    }

    // What a form rounds away is no change.
    [Fact]
    public void Rounding_is_no_change() => Assert.Empty(RecordFacts.Differences(Planned, Planned with
    {
        Cloths = [Cloth("glass-twill-163", 40.04, 0.452)],
        Hottest = Temperature.FromDegreesCelsius(50.4),
        CureTime = Duration.FromHours(18) + Duration.FromSeconds(50),
    }));

    private static PlannedFigures Planned { get; } = new()
    {
        Process = Process.Bagged,
        Resin = "slow-laminating-epoxy",
        Cloths = [Cloth("glass-twill-163", 40, 0.45)],
        Bag = ["nylon-peel-ply", "breather-150", "nylon-bag-film"],
        Vacuum = "25 inHg below ambient",
        Hottest = Temperature.FromDegreesCelsius(50),
        CureTime = Duration.FromHours(18),
        Laminators = 2,
    };

    private static PlannedCloth Cloth(string name, double grams, double content) => new(name, Mass.FromGrams(grams), content, null);

    private static Tray Record(string lines, string planned) => Tray.Hand with
    {
        Below = $"build tray no 3 on 2026-05-06 {{\n{string.Concat(lines.Split(';').Select(line => line.Trim() + "\n"))}planned {{\n{planned}\n}}\n}}",
    };
}
