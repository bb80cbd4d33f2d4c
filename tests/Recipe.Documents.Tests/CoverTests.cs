using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;

namespace Recipe.Documents.Tests;

/// <summary>The cover: the set of papers, and what everything rests on.</summary>
public sealed class CoverTests
{
    [Fact]
    public void It_names_every_other_paper_of_the_part_with_its_stations()
    {
        foreach (var input in Cases.All.Values)
        {
            var rows = Papers.Cover.Build(input).Stations.Single(station => station.Title == "The papers").Blocks.OfType<Table>().Single().Rows.OfType<CellRow>().ToList();
            var kinds = Papers.All.Where(kind => kind != Papers.Cover && kind.AppliesTo(input)).ToList();
            Assert.Equal(kinds.Select(kind => kind.Title), rows.Select(row => ((TextCell)row.Cells[0]).Text.Plain));
            Assert.Equal(kinds.Select(kind => kind.Build(input).Stations.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)), rows.Select(row => ((TextCell)row.Cells[2]).Text.Plain));
        }
    }

    [Fact]
    public void Its_panel_states_target_and_computed_mass()
    {
        var panel = Papers.Cover.Build(HatchLid.Input).Stations[0].Blocks.OfType<KeyNumbers>().Single().Items;
        Assert.Contains(panel, item => item.Label == "Target mass");
        var text = new QuantityText(HatchLid.Input.Plan.Shop);
        Assert.Equal(text.About(HatchLid.Input.Plan.Laminate!.TrimmedMass.Value.Value).Main, panel.Single(item => item.Label == "Computed mass").Value);
    }

    [Fact]
    public void The_helper_s_card_has_a_line_for_each_station_of_the_work()
    {
        var bagged = Lines(HatchLid.Input);
        Assert.Equal(["Cut", "Mix", "Lay", "Bag", "Cure", "Trim"], bagged);
        Assert.DoesNotContain("Mix", Lines(Bare.Of(Model.Process.Prepreg)));
    }

    /// <summary>25.4 mm are an inch, and 85 degC are 185 degF (exact, NIST SP 811): what is assumed is told in both where the papers are in US units.</summary>
    [Fact]
    public void What_is_assumed_is_told_in_the_units_of_a_us_shop_too()
    {
        var plan = HatchLid.Input.Plan with
        {
            Assumptions =
            [
                new("default.a", "the film runs past the plies by", "25.4 mm", "common practice", "write `beyond 30 mm`"),
                new("book.b", "it is kept at", "18 to 25 degC", "common practice", "write it"),
                new("book.c", "it softens at", "85 degC after 20 degC for 24 h", "common practice", "write it"),
                new("default.d", "waste", "10 %", "common practice", "write it"),
                new("default.e", "pot life", "halves for each 10 degC warmer", "common practice", "write it"),
            ],
        };
        string Cover(Model.UnitSystem units) => Papers.Write(HatchLid.Input with { Plan = plan, Units = units }, Papers.Cover, PaperFormat.Markdown).Replace('\u00A0', ' ');
        var us = Cover(Model.UnitSystem.Us);
        Assert.All((string[])["25.4 mm (1 in)", "18 to 25 °C (64 to 77 °F)", "85 °C after 20 °C for 24 h (185 °F after 68 °F for 24 h)", "| 10 % |", "| halves for each 10 °C warmer |"], told => Assert.Contains(told, us, StringComparison.Ordinal));
        Assert.DoesNotContain(" in)", Cover(Model.UnitSystem.Metric), StringComparison.Ordinal);
    }

    private static IEnumerable<string> Lines(PaperInput input) =>
        Papers.Cover.Build(input).Stations.Single(station => station.Title == "Card for the helper").Blocks.OfType<Table>().Single().Rows.OfType<CellRow>().Select(row => ((TextCell)row.Cells[0]).Text.Plain);
}
