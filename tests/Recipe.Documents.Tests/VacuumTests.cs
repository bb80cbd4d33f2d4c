using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The vacuum card: one level in both conventions, a test that ends when the recipe says.</summary>
public sealed class VacuumTests
{
    [Fact]
    public void Below_ambient_and_absolute_add_up_to_the_air_outside()
    {
        // By definition: a gauge that counts from the air, and one that counts from nothing, differ by the air.
        foreach (var input in (PaperInput[])[HatchLid.Input, TubeInfused.Input])
        {
            var page = Papers.Write(input, Papers.Vacuum, PaperFormat.Markdown);
            Assert.Equal(input.Plan.Conditions.Ambient.Value.Millibars, Value(page, "counts from the air shows") + Value(page, "counts from nothing shows"), 1.0);
        }
    }

    [Theory]
    [InlineData(5, new double[] { 0, 1, 2, 5 })]
    [InlineData(10, new double[] { 0, 1, 2, 5, 10 })]
    [InlineData(8, new double[] { 0, 1, 2, 5, 8 })]
    [InlineData(1, new double[] { 0, 1 })]
    public void The_gauge_is_read_until_the_test_ends(double minutes, double[] at)
    {
        var input = With(Min(minutes), Mbar(30));
        Assert.Equal(at, Vacuums.VacuumStation.ReadAt(new Shared.BenchContext(input)).Select(time => Math.Round(time.Minutes, 6)));
    }

    [Fact]
    public void The_limit_stands_at_the_end_of_the_test_and_is_never_rounded_up()
    {
        var table = Papers.Vacuum.Build(With(Min(5), Mbar(30.9))).Stations[1].Blocks.OfType<Table>().Single(table => table.Columns[0].Title == "After");
        Assert.Equal("30\u00A0mbar", ((BigCell)((CellRow)table.Rows[^1]).Cells[^1]).Value);
        Assert.All(table.Rows.SkipLast(1), row => Assert.IsType<TextCell>(((CellRow)row).Cells[^1]));
    }

    [Fact]
    public void Without_a_limit_the_card_asks_for_one()
    {
        var bare = Papers.Write(Bare.Input, Papers.Vacuum, PaperFormat.Markdown);
        Assert.Contains("No limit is written", bare, StringComparison.Ordinal);
        Assert.Contains("no level is written", bare, StringComparison.Ordinal);
    }

    [Fact]
    public void Pump_and_pot_have_their_cautions_and_an_infusion_opens_no_feed_on_a_leak()
    {
        Assert.Contains("implodes", Papers.Write(HatchLid.Input, Papers.Vacuum, PaperFormat.Markdown), StringComparison.Ordinal);
        Assert.Contains("open no feed", Papers.Write(TubeInfused.Input, Papers.Vacuum, PaperFormat.Markdown), StringComparison.Ordinal);
    }

    private static PaperInput With(UnitsNet.Duration time, UnitsNet.Pressure rise) =>
        HatchLid.Input with { Plan = HatchLid.Input.Plan with { Vacuum = HatchLid.Input.Plan.Vacuum! with { LeakCheck = Known(time), RiseAtMost = Known(rise) } } };

    private static double Value(string page, string label) => double.Parse(Regex.Match(page, $@"{label}: \*\*([\d.]+) mbar\*\*").Groups[1].Value, CultureInfo.InvariantCulture);
}
