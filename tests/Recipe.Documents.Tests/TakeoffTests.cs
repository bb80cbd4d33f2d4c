using Recipe.Documents.Shared;
using Recipe.Documents.Takeoffs;
using Recipe.Documents.Tests.Plans;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The takeoff for a number of parts.</summary>
public sealed class TakeoffTests
{
    [Fact]
    public void More_parts_take_more_of_everything_but_the_shelf()
    {
        var plan = HatchLid.Input.Plan;
        var parts = plan.Part.Quantity * 5;
        var lines = JobTakeoff.Lines(new PaperContext(HatchLid.Input with { Quantity = parts }));
        Assert.Equal(plan.Takeoff.Length, lines.Length);
        foreach (var (one, all) in plan.Takeoff.Zip(lines))
        {
            Assert.Equal(one.Gross.Value.Si * 5, all.Gross.Value.Si, 9);
            Assert.Equal(one.Net.Value.Si * 5, all.Net.Value.Si, 9);
            Assert.Equal(one.InStock, all.InStock);
            Assert.Equal(one.Cost is { } cost ? Math.Round(cost * 5, 2) : null, all.Cost);
            Assert.True(all.ToBuy is null || all.ToBuy.Value.Si >= one.ToBuy!.Value.Si);
        }
    }

    [Fact]
    public void A_part_that_cures_in_the_room_does_not_curl_by_cooling_from_it_to_it()
    {
        var plan = HatchLid.Input.Plan;
        var stiffness = plan.Stiffness!;
        string Cover(UnitsNet.Temperature free) => Papers.Write(
            HatchLid.Input with { Plan = plan with { Stiffness = stiffness with { Curl = stiffness.Curl! with { StressFree = Known(free) } } } }, Papers.Cover, PaperFormat.Markdown);
        Assert.Contains("that cools from", Cover(C(30)), StringComparison.Ordinal);
        var cold = Cover(stiffness.Curl!.Room.Value);
        Assert.Contains("none, the part cures at the 20 °C of the room", cold, StringComparison.Ordinal);
        Assert.DoesNotContain("that cools from", cold, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resin_in_two_lines_takes_from_the_shelf_once()
    {
        var plan = HatchLid.Input.Plan;
        var line = plan.Takeoff[0];
        var shelf = line.Gross.Value with { Si = line.Gross.Value.Si * 3 };
        var twice = line with { InStock = shelf, ToBuy = shelf with { Si = 0 } };
        var input = HatchLid.Input with { Plan = plan with { Takeoff = [twice, twice with { Label = "the same, for the seam" }] }, Quantity = plan.Part.Quantity * 2 };
        var buy = JobTakeoff.Lines(new PaperContext(input)).Sum(all => all.ToBuy!.Value.Si);
        Assert.Equal(line.Gross.Value.Si, buy, 9); // 2 lines of 2 are 4; 3 lie there
    }

    [Fact]
    public void What_a_liquid_measures_grows_with_what_it_weighs()
    {
        var plan = HatchLid.Input.Plan;
        var resin = plan.Takeoff.First(line => line.Group == Planning.TakeoffGroup.Resin) with { Label = "Epoxy" };
        resin = resin with { Density = UnitsNet.Density.FromKilogramsPerCubicMeter(resin.Net.Value.Si / 80e-6) };
        var input = HatchLid.Input with { Plan = plan with { Takeoff = [resin] }, Quantity = plan.Part.Quantity * 3 };
        Assert.Equal("Epoxy (80 mL)", resin.LabelWithVolume);
        Assert.Equal("Epoxy (240 mL)", Assert.Single(JobTakeoff.Lines(new PaperContext(input))).LabelWithVolume);
        Assert.Contains("Epoxy (240 mL)", Papers.Write(input, Papers.Takeoff, PaperFormat.Markdown).Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Groups_add_up_to_the_total_and_the_total_to_one_part()
    {
        var context = new PaperContext(HatchLid.Input);
        var lines = JobTakeoff.Lines(context);
        var (costs, without) = JobTakeoff.Total(lines);
        var total = Assert.Single(costs);
        Assert.Equal(TakeoffSums.Of(lines).Sum(group => group.Costs.Sum(cost => cost.Amount)), total.Amount);
        Assert.Equal(lines.Count(line => line.Cost is null), without);
        var page = Papers.Write(HatchLid.Input, Papers.Takeoff, PaperFormat.Markdown).Replace('\u00A0', ' ');
        var each = QuantityText.Money(total.Amount / context.Parts, total.Currency).Replace('\u00A0', ' ');
        Assert.Contains(without == 0 ? each + ", if every part comes out good" : "at least " + each, page, StringComparison.Ordinal);
    }
}
