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

    private static IEnumerable<string> Lines(PaperInput input) =>
        Papers.Cover.Build(input).Stations.Single(station => station.Title == "Card for the helper").Blocks.OfType<Table>().Single().Rows.OfType<CellRow>().Select(row => ((TextCell)row.Cells[0]).Text.Plain);
}
