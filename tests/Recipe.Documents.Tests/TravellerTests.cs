using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The traveller: stations in the order of the work, hold points where they belong, numbers that add up.</summary>
public sealed class TravellerTests
{
    [Fact]
    public void Stations_of_a_bagged_part_stand_in_the_order_of_the_work()
    {
        Assert.Equal(
            ["Start", "Mould", "Cut and kit", "Mix", "Lay up", "Bag", "Vacuum", "Cure", "Demould and finish", "Decide and record", "Lots and notes"],
            Stations(HatchLid.Input));
    }

    [Fact]
    public void Stations_of_an_infused_part_mix_after_the_leak_check_and_join_what_is_trimmed()
    {
        Assert.Equal(
            ["Start", "Mould", "Cut and kit", "Lay up dry", "Bag", "Vacuum", "Mix and infuse", "Cure", "Demould and trim", "Join", "Weigh and inspect", "Decide and record", "Lots and notes"],
            Stations(TubeInfused.Input));
    }

    [Fact]
    public void Stations_of_halves_joined_wet_close_them_before_they_cure()
    {
        Assert.Equal(
            ["Start", "Mould", "Cut and kit", "Mix", "Lay up", "Join", "Cure", "Demould and finish", "Decide and record", "Lots and notes"],
            Stations(RudderHalves.Input));
    }

    [Fact]
    public void Hold_points_keep_their_order_and_each_asks_for_time_and_initials()
    {
        foreach (var input in Cases.All.Values)
        {
            var traveller = Write(input);
            var ids = Regex.Matches(traveller, @"H(\d) HOLD").Select(match => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();
            Assert.Equal(ids.Distinct().Count(), ids.Count);
            Assert.Equal(ids.Order().Except([3]), ids.Except([3]));
            Assert.Contains(9, ids);
            Assert.Equal(ids.Count, Regex.Count(traveller, @"Time \\_+\S* · Initials"));
        }
    }

    [Fact]
    public void Steps_are_numbered_through_all_stations()
    {
        foreach (var input in Cases.All.Values)
        {
            var steps = Travellers.TravellerPaper.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Layout.Table>()
                .Where(table => table.Columns[0].Title == "No.").SelectMany(table => table.Rows).OfType<Layout.CellRow>()
                .Select(row => ((Layout.TextCell)row.Cells[0]).Text.Plain).ToList();
            var last = steps.IndexOf("A1") is var notes && notes >= 0 ? notes : steps.Count;
            Assert.Equal(Enumerable.Range(1, last).Select(i => i.ToString(CultureInfo.InvariantCulture)), steps.Take(last));
        }
    }

    [Fact]
    public void The_part_is_weighed_before_it_is_painted()
    {
        var traveller = Write(With("trim", "weigh", "inspect", "seal", "paint"));
        InOrder(traveller, "Trim", "Weigh the trimmed part", "H8 HOLD", "H9 HOLD", "After H9", "Seal", "Paint");
    }

    [Fact]
    public void A_recipe_that_forgets_the_weighing_still_weighs_before_the_paint()
    {
        InOrder(Write(With("trim", "prime", "paint")), "Trim", "Weigh the trimmed part", "H8 HOLD", "Prime", "Paint");
    }

    [Fact]
    public void Wax_and_peel_ply_come_off_before_the_part_is_weighed_untrimmed()
    {
        InOrder(Write(With("wash", "trim", "weigh")), "Wash", "Weigh before trimming", "Trim", "Weigh the trimmed part");
    }

    [Fact]
    public void What_the_author_wants_inspected_is_ticked_item_by_item()
    {
        var part = HatchLid.Input.Plan.Part with { Finish = [new FinishStep("inspect", "mass in its band; at most 1 pinhole per dm2", Here)] };
        var traveller = Write(HatchLid.Input with { Plan = HatchLid.Input.Plan with { Part = part } });
        Assert.Contains("- [ ] Mass in its band", traveller, StringComparison.Ordinal);
        Assert.Contains("- [ ] At most 1 pinhole per dm²", traveller, StringComparison.Ordinal);
    }

    [Fact]
    public void The_scale_shows_the_sum_of_what_stands_on_the_paper()
    {
        foreach (var input in (PaperInput[])[HatchLid.Input, TubeInfused.Input])
        {
            var traveller = Write(input);
            foreach (Match pot in Regex.Matches(traveller, @"Pour resin \(A\)\.[^|]*\| \*\*([\d.]+) g\*\*.*\n.*until the scale shows \| \*\*([\d.]+) g\*\* \(.*B alone ([\d.]+) g"))
            {
                Assert.Equal(Value(pot, 2), Value(pot, 1) + Value(pot, 3), 6);
            }

            Assert.Matches(@"until the scale shows", traveller);
        }
    }

    [Fact]
    public void The_margin_is_the_difference_of_the_minutes_on_the_same_page()
    {
        var page = Write(HatchLid.Input);
        var by = Minutes(page, "Full vacuum at the latest");
        Assert.Equal(by - Minutes(page, "Need: first mix to full vacuum"), Minutes(page, "Margin"));
    }

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
    public void Spaces_to_write_in_carry_the_units_of_the_shop()
    {
        var us = Write(RudderHalves.Input);
        Assert.DoesNotContain("\\_ °C", us, StringComparison.Ordinal);
        Assert.DoesNotContain("\\_ mm", us, StringComparison.Ordinal);
        Assert.Contains("\\_ °F", us, StringComparison.Ordinal);
        Assert.Contains("\\_ oz", us, StringComparison.Ordinal);
        Assert.DoesNotContain("°F", Write(HatchLid.Input), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_does_not_fit_says_so_in_words_and_by_shape()
    {
        var page = Write(RudderHalves.Input);
        Assert.Contains("STOP: 1 error is open. Mix no resin.", page, StringComparison.Ordinal);
        Assert.Contains("▲ Pot life today", page, StringComparison.Ordinal);
        Assert.Contains("too short", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Peroxide_goes_in_last_and_never_near_the_accelerator()
    {
        var page = Write(RudderHalves.Input);
        InOrder(page, "Pour resin (A)", "Stir in the accelerator", "Peroxide last");
        Assert.Contains("Never bring accelerator and peroxide together", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Peroxide", Write(HatchLid.Input), StringComparison.Ordinal);
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

    [Fact]
    public void A_coat_is_weighed_as_much_as_the_takeoff_takes_for_one_part()
    {
        var input = HatchLid.Input;
        var coat = input.Plan.Part.Coats[0].Material;
        var taken = input.Plan.Takeoff.Where(line => ReferenceEquals(line.Material, coat)).Sum(line => line.Gross.Value.Si);
        Assert.True(taken > 0);
        var each = Mass.FromKilograms(taken / input.Plan.Part.Quantity);
        Assert.Contains(new QuantityText(input.Plan.Shop).Weight(each).Main.Replace('\u00A0', ' '), Write(input), StringComparison.Ordinal);
    }

    private static PaperInput With(params string[] verbs) => HatchLid.Input with
    {
        Plan = HatchLid.Input.Plan with { Part = HatchLid.Input.Plan.Part with { Finish = [.. verbs.Select(verb => new FinishStep(verb, "", Here))] } },
    };

    private static string Write(PaperInput input) => Papers.Write(input, Papers.Traveller, PaperFormat.Markdown);

    private static List<string> Stations(PaperInput input) => [.. Regex.Matches(Write(input), @"(?m)^## \d+\. (.*)$").Select(match => match.Groups[1].Value)];

    private static double Value(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static int Minutes(string page, string label) =>
        int.Parse(Regex.Match(page, $@"{Regex.Escape(label)}: \*\*(-?\d+) min\*\*").Groups[1].Value, CultureInfo.InvariantCulture);

    private static void InOrder(string page, params ReadOnlySpan<string> texts)
    {
        var at = 0;
        foreach (var text in texts)
        {
            var next = page.IndexOf(text, at, StringComparison.Ordinal);
            Assert.True(next >= 0, $"“{text}” does not follow.");
            at = next + text.Length;
        }
    }
}
