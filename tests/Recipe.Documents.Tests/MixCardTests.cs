using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Shared;
using Recipe.Documents.Tests.Plans;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The mix cards: numbers that add up, nothing together that must never meet.</summary>
public sealed class MixCardTests
{
    [Fact]
    public void The_scale_shows_the_sum_of_what_stands_on_the_paper()
    {
        foreach (var input in (PaperInput[])[HatchLid.Input, TubeInfused.Input])
        {
            var page = Write(input);
            var pots = Regex.Matches(page, @"Pour ● A until it shows \| \*\*([\d.]+) g\*\*[^\n]*\n.*until the scale shows \| \*\*([\d.]+) g\*\* \(.*B ([\d.]+) g");
            Assert.Equal(input.Plan.Pots.Length + input.Plan.OwnMixes.Sum(mix => mix.Pots.Length), pots.Count);
            Assert.All(pots, pot => Assert.Equal(Value(pot, 2), Value(pot, 1) + Value(pot, 3), 6));
        }
    }

    /// <summary>Whoever mixes has the card in hand and not the cover.</summary>
    [Fact]
    public void What_the_checks_doubt_about_the_mix_stands_on_the_card_before_the_steps()
    {
        var doubt = new Finding(Make.Descriptor("RC4203", "odd-share", Severity.Warning, "odd share", "Look."), Severity.Warning, Make.Here, "an odd share of hardener");
        var elsewhere = new Finding(Make.Descriptor("RC7003", "hot", Severity.Warning, "hot", "Cool."), Severity.Warning, Make.Here, "a hot mould");
        var page = Write(HatchLid.Input with { Findings = [doubt, elsewhere, doubt with { AcceptedBecause = "tried", Message = "an accepted share" }] });
        Assert.InRange(page.IndexOf("RC4203 an odd share of hardener", StringComparison.Ordinal), page.IndexOf("Before you mix", StringComparison.Ordinal), page.IndexOf("until it shows", StringComparison.Ordinal));
        Assert.DoesNotContain("a hot mould", page, StringComparison.Ordinal);
        Assert.DoesNotContain("an accepted share", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Before you mix", Write(HatchLid.Input with { Findings = [] }), StringComparison.Ordinal);
    }

    // Filler hides streaks and upsets the ratio: it goes in last, and is weighed (common practice).
    [Theory]
    [InlineData(null, "until a peak stands")]
    [InlineData(8.0, "8 parts to 100 of A")]
    public void A_thickened_adhesive_has_its_filler_stirred_in_last(double? parts, string target)
    {
        var card = Text(Glue(HatchLid.Input.Plan.Pots[0], parts));
        Assert.True(card.IndexOf("Second clean cup", StringComparison.Ordinal) < card.IndexOf("Filler last: stir in cotton flock", StringComparison.Ordinal), card);
        Assert.Contains(target, card, StringComparison.Ordinal);
        Assert.DoesNotContain("Filler last", Text(HatchLid.Input), StringComparison.Ordinal);
    }

    // 2 % of 1.8 g is 0.036 g: on a scale in steps of 0.1 g no other figure lies inside.
    [Theory]
    [InlineData(0.036, "exactly: 0.036 g more or less is less than this scale shows")]
    [InlineData(0.12, "7.8 g to 8.0 g")]
    public void A_band_that_the_scale_cannot_show_is_not_printed_as_one(double offGrams, string band)
    {
        var pot = new PotPlan { Number = 1, Mass = Known(G(7.9)), Resin = Known(G(6.1)), Hardener = Known(G(1.8)), HardenerTolerance = G(offGrams), MixedAt = Known(Min(0)), UsedUpAt = Known(Min(9)) };
        Assert.Contains(band, Text(Glue(pot, null)), StringComparison.Ordinal);
    }

    private static string Text(PaperInput input) => Papers.Write(input, Papers.MixCards, PaperFormat.Markdown).Replace('\u00A0', ' ');

    private static PaperInput Glue(PotPlan pot, double? parts)
    {
        var plan = HatchLid.Input.Plan;
        var system = plan.Resin!.System with { Name = "glue", Filler = "cotton flock", FillerParts = parts is { } number ? Stated(number, "8") : null };
        var glue = new OwnMixPlan { Use = OwnMixUse.Adhesive, System = system, Laid = pot.Mass, Loss = pot.Mass, Spare = pot.Mass, ToMix = pot.Mass, Pots = [pot] };
        return HatchLid.Input with { Plan = plan with { OwnMixes = [glue] } };
    }

    [Fact]
    public void The_pots_add_up_to_the_sum_that_is_printed_and_that_to_what_is_required()
    {
        foreach (var input in (PaperInput[])[HatchLid.Input, TubeInfused.Input])
        {
            foreach (var run in MixRun.Of(new PaperContext(input)))
            {
                var table = Papers.MixCards.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Table>()
                    .First(table => table.Caption == "All pots of this liquid" && table.Rows.Length == (run.Pots.Length > 1 ? run.Pots.Length + 1 : 1)
                        && ((TextCell)((CellRow)table.Rows[^1]).Cells[0]).Text.Plain.Contains(new QuantityText(input.Plan.Shop).Weight(run.ToMix.Value).Main, StringComparison.Ordinal));
                var sum = (CellRow)table.Rows[^1];
                var printed = Grams(sum.Cells[3]);
                Assert.Equal(Grams(sum.Cells[1]) + Grams(sum.Cells[2]), printed, 6);
                if (run.Pots.Length > 1)
                {
                    Assert.Equal(table.Rows.OfType<CellRow>().Where(row => !row.IsSum).Sum(row => Grams(row.Cells[3])), printed, 6);
                }

                // Each pot is rounded to the scale, twice.
                var mixed = run.Pots.Sum(pot => pot.Mass.Value.Grams);
                var off = 1.1 * (input.Plan.Shop?.ScaleResolution?.Value.Grams ?? 0.1) * run.Pots.Length;
                Assert.InRange(printed, mixed - off, mixed + off);
                Assert.True(input.Plan.Part.Name != "hatch-lid" || Math.Abs(mixed - run.ToMix.Value.Grams) < 0.11);
            }
        }
    }

    [Fact]
    public void Peroxide_goes_in_last_and_never_near_the_accelerator()
    {
        var plan = RudderHalves.Input.Plan;
        var pot = new PotPlan { Number = 1, Mass = Make.Known(Make.G(101)), Resin = Make.Known(Make.G(99)), Hardener = Make.Known(Make.G(2)), MixedAt = Make.Known(Make.Min(0)), UsedUpAt = Make.Known(Make.Min(9)) };
        var seam = new OwnMixPlan { Use = OwnMixUse.SeamResin, System = plan.Part.Resin!, Laid = pot.Mass, Loss = Make.Known(Mass.Zero), Spare = Make.Known(Mass.Zero), ToMix = pot.Mass, Pots = [pot] };
        var page = Write(RudderHalves.Input with { Plan = plan with { OwnMixes = [seam] } });
        PaperText.InOrder(page, "Accelerator first", "Pour ● A", "Stir the accelerator in", "Peroxide last: add ■ B");
        Assert.Contains("Never bring accelerator and peroxide together", page, StringComparison.Ordinal);
        Assert.DoesNotContain("eroxide", Write(HatchLid.Input), StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_says_when_the_pot_is_dead_by_the_rule_that_is_printed()
    {
        var pot = HatchLid.Input.Plan.Pots[0];
        Assert.Contains($"mixed + {QuantityText.Minutes(pot.PotLife!.Value.Value, Rounding.Down)}".Replace('\u00A0', ' '), Write(HatchLid.Input), StringComparison.Ordinal);
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

    [Fact]
    public void A_liquid_that_no_pot_could_be_planned_for_has_a_card_all_the_same()
    {
        var input = HatchLid.Input;
        var page = Write(input with { Plan = input.Plan with { OwnMixes = [] } });
        Assert.Contains("Pot without a plan", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Pot without a plan", Write(input), StringComparison.Ordinal);
    }

    private static double Grams(Cell cell) => double.Parse(((TextCell)cell).Text.Plain.Split('\u00A0')[0], CultureInfo.InvariantCulture);

    private static string Write(PaperInput input) => Papers.Write(input, Papers.MixCards, PaperFormat.Markdown).Replace('\u00A0', ' ');

    private static double Value(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);
}
