using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>Waivers as they are written, in a part, at the top of a file and in a variant.</summary>
public class WaiverLineTests
{
    private const string NoCheck = "draw 25 inHg below ambient within 10 min";

    [Theory]
    [InlineData("accept RC6004 because \"small bag\"")]
    [InlineData("accept no-leak-check because \"small bag\"")]
    [InlineData("accept RC6004 because \"small bag\" until 2026-05-14")]
    public void A_waiver_of_the_part_or_of_the_file_settles_a_finding(string accept)
    {
        foreach (var tray in new[] { new Tray { Vacuum = NoCheck, PartLines = accept }, new Tray { Vacuum = NoCheck, Below = accept } })
        {
            var bench = Bench.Of(tray.ToString());
            Assert.True(!bench.All.Any(), bench.Story());
            var accepted = Assert.Single(bench.Report.Accepted);
            Assert.Equal("RC6004", accepted.Descriptor.Code);
            Assert.Equal("small bag", accepted.AcceptedBecause);
        }
    }

    [Theory]
    [InlineData("accept RC6004 because \"small bag\" until 2026-05-13", "lapsed-waiver no-leak-check")]
    [InlineData("accept RC6001 because \"small bag\"", "no-leak-check unused-waiver")]
    [InlineData("accept RC6999 because \"small bag\"", "no-leak-check unknown-waiver")]
    [InlineData("accept no-leek-check because \"small bag\"", "no-leak-check unknown-waiver")]
    [InlineData("accept RC1101 because \"we know the unit\"", "no-leak-check refused-waiver")]
    [InlineData("accept unclosed-block because \"it closes itself\"", "no-leak-check refused-waiver")]
    [InlineData("accept RC4006 because \"we are quick\"", "no-leak-check refused-waiver")]
    [InlineData("accept RC6004", "no-leak-check waiver-without-reason")]
    [InlineData("accept RC6004 because \" \"", "no-leak-check waiver-without-reason")]
    public void A_waiver_that_does_not_count_is_a_finding_beside_the_other(string accept, string found)
    {
        foreach (var tray in new[] { new Tray { Vacuum = NoCheck, PartLines = accept }, new Tray { Vacuum = NoCheck, Below = accept } })
        {
            var bench = Bench.Of(tray.ToString());
            Assert.True(found == string.Join(' ', bench.All.Select(f => f.Descriptor.Name).Order(StringComparer.Ordinal)), bench.Story());
        }
    }

    [Fact]
    public void Two_waivers_of_one_finding_are_both_needed()
    {
        var bench = Bench.Of((new Tray
        {
            Vacuum = NoCheck,
            PartLines = "accept RC6004 because \"small bag\"",
            Below = "accept RC6004 because \"we always hear a leak\"",
        }).ToString());
        Assert.True(!bench.All.Any(), bench.Story());
        Assert.Equal("small bag", Assert.Single(bench.Report.Accepted).AcceptedBecause);
    }

    [Fact]
    public void A_waiver_of_the_part_holds_for_its_variants_and_not_for_other_parts()
    {
        var accepted = new Tray { Vacuum = NoCheck, PartLines = "accept RC6004 because \"small bag\"" };
        var bench = Bench.Of(accepted with { Below = "variant tray-2 of tray { title \"Another\" }" } + "");
        Assert.True(!bench.All.Any(), bench.Story());

        var other = new Tray { Vacuum = NoCheck }.ToString();
        other = other[other.IndexOf("part tray", StringComparison.Ordinal)..].Replace("part tray", "part other", StringComparison.Ordinal);
        Assert.Equal(["no-leak-check"], Bench.Of((accepted with { Below = other }).ToString()).All.Select(f => f.Descriptor.Name));
    }

    [Fact]
    public void A_fix_renames_or_removes_the_waiver_and_leaves_the_rest()
    {
        var text = new Tray { Vacuum = NoCheck, PartLines = "accept no-leek-check because \"small bag\"" }.ToString();
        var bench = Bench.Of(text);
        var fix = Assert.Single(bench.Report.Findings.Single(f => f.Descriptor.Name == "unknown-waiver").Fixes);
        Assert.Equal(text.Replace("no-leek-check", "no-leak-check", StringComparison.Ordinal), TextEdit.Apply(bench.Source, fix.Edits));
    }
}
