using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Documents.Tests.Plans;

namespace Recipe.Documents.Tests;

/// <summary>The lay-up card: what the plan says of each ply, in the order in which it is laid.</summary>
public sealed class LayUpTests
{
    [Fact]
    public void A_time_of_day_is_the_start_and_the_minutes_that_stand_beside_it()
    {
        var start = HatchLid.Input.Plan.Part.WetOut!.Start!.Value;
        var matches = Regex.Matches(Write(HatchLid.Input), @"Pot \d: used up by minute (\d+) \((\d\d:\d\d)\)");
        Assert.NotEmpty(matches);
        Assert.All(matches, match => Assert.Equal(
            start.AddMinutes(int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)),
            TimeOnly.ParseExact(match.Groups[2].Value, "HH:mm", CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void A_ply_of_the_second_half_is_turned_the_other_way()
    {
        Assert.Contains("port 30°, starboard -30°", Write(RudderHalves.Input), StringComparison.Ordinal);
    }

    [Fact]
    public void The_author_says_which_way_zero_runs()
    {
        var input = HatchLid.Input;
        var turned = input with { Plan = input.Plan with { Part = input.Plan.Part with { Axis = "0 degrees runs along the hinge line" } } };
        Assert.Contains("0 degrees runs along the hinge line.", Write(turned), StringComparison.Ordinal);
    }

    private static string Write(PaperInput input) => Papers.Write(input, Papers.LayUp, PaperFormat.Markdown);
}
