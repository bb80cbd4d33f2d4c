using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>A shop holds findings to be worse or milder than they are.</summary>
public class SettingTests
{
    private static readonly Tray Cold = Tray.Hand with { Shop = "night 10 degC", Cure = "hold room for 48 h; demould", WetOut = "room 20 degC" };

    [Fact]
    public void A_setting_makes_a_finding_milder_or_worse()
    {
        Assert.Equal(Severity.Warning, Bench.Fires("cold-night", Cold.ToString()).Severity);
        Assert.Equal(Severity.Advice, Bench.Fires("cold-night", Held("cold-night advice")).Severity);
        Assert.Equal(Severity.Advice, Bench.Fires("cold-night", Held("RC7006 advice")).Severity);
    }

    // Never an error from an assumed default, whatever the shop wishes.
    [Fact]
    public void A_finding_that_rests_on_an_assumption_stays_a_warning()
    {
        var tray = new Tray { PartLines = "quantity 1", Above = "findings { weak-vacuum error }", Vacuum = "draw 10 inHg below ambient within 10 min; leak-check 5 min rise at-most 30 mbar isolated" };
        Assert.Equal(Severity.Error, Bench.Fires("weak-vacuum", tray.ToString()).Severity);
        var assumed = tray with { Above = "findings { few-wax-coats error }\nrelease-agent own-wax { kind wax; coats 2 source assumed \"a guess\"; wait 30 min; dry 60 min }", Vacuum = new Tray().Vacuum, MouldLines = "state new", Release = "own-wax" };
        Assert.Equal(Severity.Warning, Bench.Fires("few-wax-coats", assumed.ToString()).Severity);
    }

    [Fact]
    public void What_can_hurt_somebody_stays_a_warning_and_the_setting_is_told_off()
    {
        var tray = Tray.Hand with { Shop = "safety { leftover bin; gloves \"nitrile\" }", Above = "findings { leftover-in-bin advice }" };
        Assert.Equal(Severity.Error, Bench.Fires("leftover-in-bin", tray.ToString()).Severity);
        Bench.Fires("safety-made-light", tray.ToString());
        var warned = tray with { Above = "findings { leftover-in-bin warning }" };
        Assert.Equal(Severity.Warning, Bench.Fires("leftover-in-bin", warned.ToString()).Severity);
        Bench.Silent("safety-made-light", warned.ToString());
    }

    [Fact]
    public void A_setting_that_names_nothing_is_found_even_in_a_file_without_a_part()
    {
        var bench = Bench.Of("findings {\n  cold-nights advice\n  bare-number advice\n}\n");
        Assert.Equal(["RC9005", "RC9005"], bench.Codes);
        Assert.Contains("did you mean cold-night?", bench.Report.Findings[0].Message, StringComparison.Ordinal);
    }

    private static string Held(string line) => (Cold with { Above = $"findings {{ {line} }}" }).ToString();
}
