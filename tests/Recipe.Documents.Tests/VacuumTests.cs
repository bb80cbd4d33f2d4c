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
        foreach (var input in (PaperInput[])[With(Min(5), Mbar(30)), TubeInfused.Input])
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

    // 1 inHg is 33.86 mbar (NIST SP 811): what is stated stays, what is converted is never rounded up.
    [Theory]
    [InlineData("30.9 mbar", 30.9, "60 mbar absolute", "30.9\u00A0mbar", "at most")]
    [InlineData("1 inHg", 33.86, "60 mbar absolute", "33\u00A0mbar", "at most; 1\u00A0inHg")]
    [InlineData("1 inHg", 33.86, "25 inHg below ambient", "1\u00A0inHg", "at most; 33\u00A0mbar")]
    [InlineData("30 mbar", 30, "25 inHg below ambient", "0.8\u00A0inHg", "at most; 30\u00A0mbar")]
    public void The_limit_stands_at_the_end_of_the_test_as_stated_and_in_the_unit_of_the_gauge(string rise, double mbar, string draw, string limit, string note)
    {
        var table = Papers.Vacuum.Build(With(Min(5), Mbar(mbar), rise, draw)).Stations[1].Blocks.OfType<Table>().Single(table => table.Columns[0].Title == "After");
        var last = (BigCell)((CellRow)table.Rows[^1]).Cells[^1];
        Assert.Equal(limit, last.Value);
        Assert.Equal(note, last.Note);
        Assert.All(table.Rows.SkipLast(1), row => Assert.IsType<TextCell>(((CellRow)row).Cells[^1]));

        // Who writes the gauge down has the unit of the limit before him.
        Assert.Equal(limit.Split('\u00A0')[1], ((BlankCell)((CellRow)table.Rows[1]).Cells[1]).Blank.Unit);
    }

    [Fact]
    public void Three_numbers_stand_beside_each_other_and_none_alone_under_two()
    {
        var plan = HatchLid.Input.Plan;
        var input = HatchLid.Input with { Plan = plan with { Vacuum = plan.Vacuum! with { PumpDown = null } } };
        var panel = Papers.Vacuum.Build(input).Stations[0].Blocks.OfType<KeyNumbers>().Single();
        Assert.Equal(3, panel.Items.Length);
        Assert.Equal(3, Writing.PanelColumns.AtTheBench(panel));
        Assert.Contains("panel three", Papers.Write(input, Papers.Vacuum, PaperFormat.Html), StringComparison.Ordinal);

        // Of five the last has its row to itself, from edge to edge; so has the third where three do not fit beside each other.
        var wide = panel with { Items = panel.Items.SetItem(0, panel.Items[0] with { Value = "1 h 30\u00A0min to 2 h" }) };
        Assert.Equal(2, Writing.PanelColumns.AtTheBench(wide));
        foreach (var (numbers, columns) in ((KeyNumbers, int[])[])[(panel, [3]), (wide, [2, 1]), (panel with { Items = [.. panel.Items, .. panel.Items.Take(2)] }, [2, 2, 1])])
        {
            const double width = 180;
            var sheet = new Writing.Pdf.Sheet();
            foreach (var row in Writing.Pdf.PdfNumbers.Panel(numbers, width, new Writing.Pdf.PdfMeasures(IsBench: true, 1)).Skip(1))
            {
                row.Draw(sheet, 0, 0);
            }

            var frames = sheet.Shapes.OfType<PathShape>().Where(path => path is { Closed: true, Fill: Fill.None }).Select(path => path.Points.Max(spot => spot.X) - path.Points.Min(spot => spot.X) + 0.4).ToList();
            Assert.Equal(columns.SelectMany(count => Enumerable.Repeat(width / count, count)).Select(mm => Math.Round(mm, 3)), frames.Select(mm => Math.Round(mm, 3)));
        }
    }

    // 1 floz is 29.57 mL, 1 in is 25.4 mm (NIST SP 811, B.9).
    [Theory]
    [InlineData(Model.UnitSystem.Metric, "42 mL of air a minute: one hole of 0.07 mm.")]
    [InlineData(Model.UnitSystem.Us, "1.4 floz of air a minute: one hole of 0.003 in.")]
    public void A_leak_is_said_in_the_units_of_the_paper(Model.UnitSystem units, string said)
    {
        var plan = HatchLid.Input.Plan;
        var vacuum = plan.Vacuum! with { LeakOfAir = Known(UnitsNet.VolumeFlow.FromMillilitersPerMinute(42)), Hole = Known(Mm(0.07)) };
        Assert.Contains(said, Papers.Write(HatchLid.Input with { Units = units, Plan = plan with { Vacuum = vacuum } }, Papers.Vacuum, PaperFormat.Markdown).Replace('\u00A0', ' '), StringComparison.Ordinal);
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

    private static PaperInput With(UnitsNet.Duration time, UnitsNet.Pressure rise, string written = "30 mbar", string draw = "847 mbar below ambient")
    {
        var plan = HatchLid.Input.Plan;
        var vacuum = plan.Part.Vacuum! with
        {
            Draw = plan.Part.Vacuum!.Draw! with { Written = draw },
            LeakCheck = plan.Part.Vacuum!.LeakCheck! with { RiseAtMost = Stated(rise, written) },
        };
        return HatchLid.Input with { Plan = plan with { Part = plan.Part with { Vacuum = vacuum }, Vacuum = plan.Vacuum! with { LeakCheck = Known(time), RiseAtMost = Known(rise) } } };
    }

    private static double Value(string page, string label) => double.Parse(Regex.Match(page, $@"{label}: \*\*([\d.]+) mbar\*\*").Groups[1].Value, CultureInfo.InvariantCulture);
}
