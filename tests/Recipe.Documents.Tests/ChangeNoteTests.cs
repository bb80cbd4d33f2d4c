using Recipe.Documents.Changes;
using Recipe.Documents.Tests.Plans;
using UnitsNet;

namespace Recipe.Documents.Tests;

/// <summary>The change note: what is different from the version before, of this part and what it rests on, and no other.</summary>
public sealed class ChangeNoteTests
{
    private static readonly string Note = Papers.Write(HatchLid.Input, Papers.ChangeNote, PaperFormat.Markdown);

    [Fact]
    public void It_tells_lines_of_the_part_and_of_what_it_rests_on()
    {
        Assert.Contains("| resin-content | changed | 48 % by weight | 45 % by weight |", Note, StringComparison.Ordinal);
        Assert.Contains("| hold | new | | 50 °C for 6 h |", Note, StringComparison.Ordinal);
        Assert.Contains("| pump | gone | 2 cfm | |", Note, StringComparison.Ordinal);
        Assert.DoesNotContain("18 °C", Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_earlier_version_there_is_no_note() => Assert.False(Papers.ChangeNote.AppliesTo(HatchLid.Input with { Earlier = null }));

    [Theory]
    [InlineData(126.4, 101.3, "-25\u00A0g (-20\u00A0%)")] // 126 g and 101 g are printed
    [InlineData(99.6, 79.1, "-20.5\u00A0g (-21\u00A0%)")]
    [InlineData(126.4, 126.4, "")]
    public void A_difference_is_that_of_the_printed_figures(double was, double now, string expected)
    {
        var mass = Figures.All.Single(figure => figure.Key == "trimmed_mass_kg");
        Assert.Equal(expected, Figures.Difference(mass, new QuantityText(null), was / 1000, now / 1000));
    }

    // 10 K more is 18 degF more: NIST SP 811, B.8, for intervals of temperature.
    [Theory]
    [InlineData(Model.UnitSystem.Metric, "+10\u00A0°C")]
    [InlineData(Model.UnitSystem.Us, "+18\u00A0°F")]
    public void A_difference_of_temperatures_is_no_reading(Model.UnitSystem units, string expected)
    {
        var hottest = Figures.All.Single(figure => figure.Key == "hottest_K");
        var from = Temperature.FromDegreesCelsius(50).Kelvins;
        Assert.Equal(expected, Figures.Difference(hottest, new QuantityText(null, units), from, from + 10));
    }
}
