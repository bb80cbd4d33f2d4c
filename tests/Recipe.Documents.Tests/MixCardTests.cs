using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Documents.Tests.Plans;
using UnitsNet;

namespace Recipe.Documents.Tests;

/// <summary>The mix cards: numbers that add up, nothing together that must never meet.</summary>
public sealed class MixCardTests
{
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
    public void Peroxide_goes_in_last_and_never_near_the_accelerator()
    {
        var page = Write(RudderHalves.Input);
        PaperText.InOrder(page, "Pour resin (A)", "Stir in the accelerator", "Peroxide last");
        Assert.Contains("Never bring accelerator and peroxide together", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Peroxide", Write(HatchLid.Input), StringComparison.Ordinal);
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

    private static string Write(PaperInput input) => Papers.Write(input, Papers.MixCards, PaperFormat.Markdown);

    private static double Value(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);
}
