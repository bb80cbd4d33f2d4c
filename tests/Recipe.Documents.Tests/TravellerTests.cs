using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using Recipe.Planning;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The traveller: stations in the order of the work, hold points where they belong, numbers that add up.</summary>
public sealed class TravellerTests
{
    // The order of the bench (common practice): a seam is taped once it is closed, only wet halves before; nothing is unclamped before it has cured.
    [Theory]
    [InlineData(JoinManner.CuredThenTaped, new[] { "Close both halves dry", "Overlap all", "adhesive pot", "Lay filler", "Close and clamp", "Wipe off", "seam pot", "Tape the closed seam", "Leave it clamped", "Never colder", "Unclamp", "Put no load" })]
    [InlineData(JoinManner.CuredThenBonded, new[] { "Close both halves dry", "Overlap all", "adhesive pot", "Lay filler", "Keep the bond line", "Close and clamp", "Wipe off", "Leave it clamped", "Unclamp" })]
    [InlineData(JoinManner.WetInWet, new[] { "before the first ply?", "Overlap all", "adhesive pot", "Lay filler", "Lay the tape on one lip", "Close and clamp", "Wipe off", "Roll the tape down" })]
    public void Steps_of_a_join_stand_in_the_order_of_the_bench(JoinManner manner, string[] steps)
    {
        var plan = RudderHalves.Input.Plan;
        var glue = new ResinSystem
        {
            Name = "paste",
            Keyword = "adhesive",
            Where = Here,
            Role = ResinRole.Adhesive,
            Demould = Stated(new TimeAt(H(24), C(20)), "24 h at 20 degC"),
            FullCure = Stated(new TimeAt(H(168), C(20)), "7 d at 20 degC"),
            MinimumTemperature = Stated(C(15), "15 degC"),
        };
        var join = plan.Part.Join! with { Manner = Stated(manner, "manner"), Adhesive = glue, BondLine = Stated(Mm(0.3), "0.3 mm") };
        var page = Papers.Write(RudderHalves.Input with { Plan = plan with { Part = plan.Part with { Join = join }, Join = new JoinPlan { TapeResin = Known(G(40)), SameSession = false, Mass = Known(G(60)) } } }, Papers.Traveller, PaperFormat.Markdown);
        var at = steps.Select(step => page.IndexOf(step, StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, at);
        Assert.Equal(at.Order(), at);
        if (manner != JoinManner.WetInWet)
        {
            Assert.Contains("| **24 h** (at 68 °F, by the data sheet; colder takes longer) |", page.Replace('\u00A0', ' '), StringComparison.Ordinal);
            Assert.Contains("**7 days**", page.Replace('\u00A0', ' '), StringComparison.Ordinal);
            Assert.DoesNotContain("Lay the tape on one lip", page, StringComparison.Ordinal);
        }
        else
        {
            Assert.DoesNotContain("Leave it clamped", page, StringComparison.Ordinal);
        }
    }

    // Common practice of bonding on cured resin: no release, a fresh matt surface; a hull is neither lifted off nor put on the scale.
    [Fact]
    public void What_is_laid_on_a_part_that_stays_is_not_released_not_taken_off_and_not_weighed()
    {
        var plan = HatchLid.Input.Plan;
        var part = plan.Part with
        {
            Mould = plan.Part.Mould! with { StaysInPart = true, Release = [] },
            Cure = plan.Part.Cure! with { Steps = [.. plan.Part.Cure.Steps.Where(step => step.Action != CureAction.Demould)] },
            Finish = [],
            TargetMass = null,
        };
        var input = HatchLid.Input with { Plan = plan with { Part = part, Cure = plan.Cure! with { Steps = [.. plan.Cure.Steps.Where(step => step.Step.Action != CureAction.Demould)] } } };
        var page = Papers.Write(input, Papers.Traveller, PaperFormat.Markdown);
        Assert.Contains("no wax, no release agent", page, StringComparison.Ordinal);
        Assert.Contains("H1 HOLD: ready to lay on", page, StringComparison.Ordinal);
        Assert.Contains("H7 HOLD: hard enough to go on", page, StringComparison.Ordinal);
        Assert.All(["release coat", "names no release", "Wedges", "may leave the mould", "Weigh ", "Pulls since"], words => Assert.DoesNotContain(words, page, StringComparison.OrdinalIgnoreCase));
        Assert.Contains("Measure at 3 marks how much thicker it is.", page.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.False(Papers.Passport.AppliesTo(input));
        Assert.Contains("Mass it adds, expected", Papers.Write(input, Papers.Record, PaperFormat.Markdown), StringComparison.Ordinal);

        Assert.Contains("Go on with it not before", Papers.Write(input, Papers.Cure, PaperFormat.Markdown), StringComparison.Ordinal);
        Assert.Contains("From what stays up", Papers.Write(input, Papers.LayUp, PaperFormat.Markdown), StringComparison.Ordinal);
        Assert.Contains("on what stays. Tick each ply", Papers.Write(input, Papers.Cover, PaperFormat.Markdown), StringComparison.Ordinal);

        // Where the recipe wants it weighed it is, and on the last day all of it leaves the mould that it began in.
        var weighed = input with { Plan = plan with { Part = part with { Cure = plan.Part.Cure, Finish = [new FinishStep("weigh", "", Here)] } } };
        var last = Papers.Write(weighed, Papers.Traveller, PaperFormat.Markdown);
        Assert.Contains("Weigh it, less what it weighed before. Expected", last, StringComparison.Ordinal);
        Assert.Contains("may leave the mould", last, StringComparison.Ordinal);
        Assert.Contains("Wedges", last, StringComparison.Ordinal);
    }

    // A skin that another day's part is laid on stays in its mould: the traveller must not take it off against the recipe.
    [Fact]
    public void A_part_that_no_line_takes_off_and_no_line_needs_off_is_left_on_its_mould()
    {
        var plan = HatchLid.Input.Plan;
        var left = plan.Part with { Cure = plan.Part.Cure! with { Steps = [.. plan.Part.Cure.Steps.Where(step => step.Action != CureAction.Demould)] }, Finish = [], TargetMass = null };
        Assert.Contains("Leave it where it lies", Traveller(left), StringComparison.Ordinal);
        Assert.DoesNotContain("Wedges", Traveller(left), StringComparison.Ordinal);
        Assert.Contains("Every release coat done", Traveller(left), StringComparison.Ordinal);

        // What is drilled or weighed has to come off, said or not.
        Assert.Contains("Wedges", Traveller(left with { Finish = [new FinishStep("drill", "4 mm", Here)] }), StringComparison.Ordinal);
        Assert.Contains("Wedges", Traveller(left with { Cure = null }), StringComparison.Ordinal);

        string Traveller(Part part) => Papers.Write(
            HatchLid.Input with { Plan = plan with { Part = part, Cure = part.Cure is null ? null : plan.Cure! with { Steps = [.. plan.Cure.Steps.Where(step => step.Step.Action != CureAction.Demould)] } } }, Papers.Traveller, PaperFormat.Markdown);
    }

    // What is joined of finished parts has no mould to release, nothing to cut, lay up or cure: their own papers say that. All finishing follows the join.
    [Fact]
    public void An_assembly_is_joined_weighed_and_decided_on_and_has_no_papers_of_what_is_laid()
    {
        var plan = RudderHalves.Input.Plan;
        var join = plan.Part.Join! with { Manner = Stated(JoinManner.CuredThenBonded, "manner"), Parts = ["left", "right"] };
        var part = plan.Part with { Stack = [], Mould = null, Join = join };
        Assert.True(part.IsAssembly);
        Assert.False((part with { Stack = plan.Part.Stack }).IsAssembly);
        Assert.False((part with { Join = join with { Parts = [] } }).IsAssembly);
        var input = RudderHalves.Input with { Plan = plan with { Part = part, Stack = [], Pots = [], Cure = null } };
        Assert.Equal(["H8", "H9"], Papers.HoldPoints(input).Select(hold => hold.Id));
        var page = Papers.Write(input, Papers.Traveller, PaperFormat.Markdown);
        Assert.Contains("joined of left, right", page, StringComparison.Ordinal);
        Assert.DoesNotContain("lay-up card", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Clean the mould", page, StringComparison.Ordinal);
        Assert.All(part.Finish.Where(line => line.Verb == "trim"), line => Assert.True(page.IndexOf("Trim", StringComparison.Ordinal) > page.IndexOf("Close and clamp", StringComparison.Ordinal)));
        PaperKind[] laid = [Papers.CutList, Papers.LayUp, Papers.Cure, Papers.Passport];
        Assert.All(laid, kind => Assert.True(kind.AppliesTo(RudderHalves.Input)));
        Assert.All(laid, kind => Assert.False(kind.AppliesTo(input)));
        Assert.DoesNotContain("Kit box", Papers.Write(input, Papers.Labels, PaperFormat.Markdown), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.2, false)]
    [InlineData(5.9, false)]
    [InlineData(6, true)]
    [InlineData(45, true)]
    public void A_front_is_marked_only_where_two_marks_three_minutes_apart_fit_in(double minutes, bool marked)
    {
        var plan = TubeInfused.Input.Plan;
        var page = Papers.Write(TubeInfused.Input with { Plan = plan with { Flow = plan.Flow! with { Fill = Known(Min(minutes)) } } }, Papers.Traveller, PaperFormat.Markdown);
        Assert.Equal(marked, page.Contains("Mark it every few minutes", StringComparison.Ordinal));
        Assert.Equal(!marked, page.Contains("Have the clamp in hand", StringComparison.Ordinal));
        Assert.Equal(!marked, page.IndexOf("Have the clamp in hand", StringComparison.Ordinal) is >= 0 and var hand && hand < page.IndexOf("Open the feed.", StringComparison.Ordinal));
    }

    // What is printed adds up: the kit is the sum of the pieces of the cut list, a pot what its mix card makes the scale show.
    [Fact]
    public void Kit_and_pots_weigh_what_cut_list_and_mix_card_print()
    {
        var plan = HatchLid.Input.Plan;
        var stack = plan.Stack.Select(line => line.CutMass is null ? line : line with { CutMass = Known(G(10.04)) }).ToImmutableArray();
        var pot = plan.Pots[0] with { Mass = Known(G(8.0)), Resin = Known(G(6.14)), Hardener = Known(G(1.84)) };
        var input = HatchLid.Input with { Plan = plan with { Stack = stack, Pots = [pot] } };
        var (traveller, cuts, card) = (Page(Papers.Traveller), Page(Papers.CutList), Page(Papers.MixCards));
        var cloth = Regex.Match(cuts, @"Cloth, sum of the pieces: \*\*([\d.]+ g)\*\*").Groups[1].Value;
        Assert.Contains($"Cloth in the kit weighs **{cloth}**", traveller, StringComparison.Ordinal);
        Assert.Contains("**7.9 g**", card, StringComparison.Ordinal);
        Assert.Contains("mix card 1. | **7.9 g**", traveller, StringComparison.Ordinal);

        string Page(PaperKind kind) => Papers.Write(input, kind, PaperFormat.Markdown).Replace('\u00A0', ' ');
    }

    [Fact]
    public void Every_feed_line_is_opened_and_clamped()
    {
        var plan = TubeInfused.Input.Plan with { Feed = new FeedPlan { Lines = Known(2), Length = Known(Mm(400)), Bore = Known(Mm(12)) } };
        var page = Papers.Write(TubeInfused.Input with { Plan = plan }, Papers.Traveller, PaperFormat.Markdown);
        Assert.Contains("2 feed lines, each 400", page, StringComparison.Ordinal);
        Assert.Contains("Open every feed.", page, StringComparison.Ordinal);
        Assert.Contains("Clamp every feed.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Stations_of_a_bagged_part_stand_in_the_order_of_the_work()
    {
        Assert.Equal(
            ["Start", "Mould", "Cut, mix, lay up", "Bag, vacuum, cure", "Demould and finish", "Deviations and lots"],
            Stations(HatchLid.Input));
    }

    [Fact]
    public void Stations_of_an_infused_part_mix_after_the_leak_check_and_join_what_is_trimmed()
    {
        Assert.Equal(
            ["Start", "Mandrel", "Cut, lay up dry, bag", "Mix and infuse", "Cure, demould, finish", "Join", "Weigh and inspect", "Deviations and lots"],
            Stations(TubeInfused.Input));
    }

    [Fact]
    public void Stations_of_halves_joined_wet_close_them_before_they_cure()
    {
        Assert.Equal(
            ["Start", "Mould", "Cut, mix, lay up", "Join", "Cure", "Demould and finish", "Deviations and lots"],
            Stations(RudderHalves.Input));
    }

    // Without a bag nobody tapes one, draws vacuum or looks for a leak; of a prepreg nothing is mixed, so no cup tells whether it is hard.
    [Fact]
    public void No_paper_asks_for_a_bag_that_is_not_there_or_for_a_cup_that_nobody_filled()
    {
        foreach (var kind in (PaperKind[])[Papers.Traveller, Papers.LayUp, Papers.Cure])
        {
            var page = Papers.Write(RudderHalves.Input, kind, PaperFormat.Markdown);
            Assert.DoesNotMatch("(?i)tape land|\\bbag\\b|vacuum", page.Replace("hand lay-up, no bag", "", StringComparison.Ordinal));
        }

        Assert.Contains("Tape land clean", Papers.Write(HatchLid.Input, Papers.Traveller, PaperFormat.Markdown), StringComparison.Ordinal);
        Assert.Contains("go to the bag", Papers.Write(HatchLid.Input, Papers.LayUp, PaperFormat.Markdown), StringComparison.Ordinal);
        var prepreg = HatchLid.Input with { Plan = HatchLid.Input.Plan with { Part = HatchLid.Input.Plan.Part with { Process = Stated(Process.Prepreg, "prepreg") } } };
        Assert.DoesNotContain("leftover in the cup", Papers.Write(prepreg, Papers.Traveller, PaperFormat.Markdown), StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)\\bdry\\b", Papers.Write(prepreg, Papers.LayUp, PaperFormat.Markdown));
        var nothing = prepreg with { Plan = prepreg.Plan with { OwnMixes = [], Part = prepreg.Plan.Part with { Coats = [], Join = null } } };
        Assert.False(Papers.MixCards.AppliesTo(nothing));
        Assert.All(Cases.All.Values, input => Assert.True(Papers.MixCards.AppliesTo(input)));
    }

    [Fact]
    public void Hold_points_stand_on_the_traveller_alone()
    {
        foreach (var (name, kind) in Cases.Papers.Select(paper => (paper.Case, paper.Kind)).Distinct().Where(paper => paper.Kind.Name != "traveller"))
        {
            Assert.DoesNotContain(kind.Build(Cases.All[name]).Stations.SelectMany(station => station.Blocks), block => block is Layout.HoldPoint);
        }
    }

    [Fact]
    public void The_route_names_the_card_of_each_station_that_has_one()
    {
        var page = Write(HatchLid.Input);
        PaperText.InOrder(page, "the cut list", "H2 HOLD", "H3 HOLD", "mix card 1", "the lay-up card", "H4 HOLD", "the bag sheet", "the vacuum card", "H5 HOLD", "the cure chart", "H6 HOLD");
        Assert.Equal(HatchLid.Input.Plan.Pots.Length, Regex.Count(page, @"Pot \d: mix card \d"));
    }

    [Fact]
    public void A_step_has_a_space_for_time_name_and_inspector()
    {
        foreach (var input in Cases.All.Values)
        {
            var rows = Papers.Traveller.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Layout.Table>()
                .Where(table => table.Columns[0].Title == "No." && table.Columns[^1].Title == "Time, by, inspected").SelectMany(table => table.Rows).OfType<Layout.CellRow>().ToList();
            Assert.NotEmpty(rows);
            Assert.All(rows, row => Assert.Equal("time, by, inspected by", ((Layout.BlankCell)row.Cells[^1]).Blank.What));
        }
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
            var steps = Papers.Traveller.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Layout.Table>()
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
        PaperText.InOrder(traveller, "Trim", "Weigh the trimmed part", "H8 HOLD", "H9 HOLD", "After H9", "Seal", "Paint");
    }

    [Fact]
    public void A_recipe_that_forgets_the_weighing_still_weighs_before_the_paint()
    {
        PaperText.InOrder(Write(With("trim", "prime", "paint")), "Trim", "Weigh the trimmed part", "H8 HOLD", "Prime", "Paint");
    }

    [Fact]
    public void Wax_and_peel_ply_come_off_before_the_part_is_weighed_untrimmed()
    {
        PaperText.InOrder(Write(With("wash", "trim", "weigh")), "Wash", "Weigh before trimming", "Trim", "Weigh the trimmed part");
    }

    // A closed shell pushes its air out of a vent while it is clamped (common practice): the vent is filled once the halves are joined.
    [Fact]
    public void A_vent_is_filled_after_the_join_that_asks_whether_it_is_open()
    {
        var plan = RudderHalves.Input.Plan;
        var join = plan.Part.Join! with { Manner = Stated(JoinManner.CuredThenTaped, "cured-then-taped"), Vent = Stated(Mm(3), "3 mm") };
        var part = plan.Part with { Join = join, Finish = [.. new[] { "wash", "trim", "fill", "weigh" }.Select(verb => new FinishStep(verb, verb == "fill" ? "the 3 mm vent" : "", Here))] };
        PaperText.InOrder(Write(RudderHalves.Input with { Plan = plan with { Part = part } }), "Wash", "Trim", "Vent hole open?", "Fill: the 3", "Weigh the trimmed part");
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
    public void The_margin_is_the_difference_of_the_minutes_on_the_same_page()
    {
        var page = Write(HatchLid.Input);
        var by = Minutes(page, "Full vacuum at the latest");
        Assert.Equal(by - Minutes(page, "Need: first mix to full vacuum"), Minutes(page, "Margin"));
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

    private static PaperInput With(params string[] verbs) => HatchLid.Input with
    {
        Plan = HatchLid.Input.Plan with { Part = HatchLid.Input.Plan.Part with { Finish = [.. verbs.Select(verb => new FinishStep(verb, "", Here))] } },
    };

    private static string Write(PaperInput input) => Papers.Write(input, Papers.Traveller, PaperFormat.Markdown);

    private static List<string> Stations(PaperInput input) => [.. Regex.Matches(Write(input), @"(?m)^## \d+\. (.*)$").Select(match => match.Groups[1].Value)];

    private static int Minutes(string page, string label) =>
        int.Parse(Regex.Match(page, $@"{Regex.Escape(label)}: \*\*(-?\d+) min\*\*").Groups[1].Value, CultureInfo.InvariantCulture);
}
