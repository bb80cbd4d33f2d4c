using System.Globalization;
using Recipe.Documents.Cures;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The cure chart: the curve is that of the plan, read off the drawing by its own labels.</summary>
public sealed class CureTests
{
    [Fact]
    public void The_curve_passes_through_every_corner_of_the_planned_cure()
    {
        foreach (var (name, input) in Cases.All.Where(each => each.Value.Plan.Cure is not null))
        {
            var (drawing, minutes, degrees) = Read(input);
            var ends = drawing.Shapes.OfType<PathShape>().Where(path => path.Pen == Pen.Bold && path.Points.Length == 2).SelectMany(path => path.Points)
                .Select(spot => (X: minutes(spot.X), Y: degrees(spot.Y))).ToList();
            foreach (var step in input.Plan.Cure!.Steps.Where(step => step.End.Value > step.Start.Value))
            {
                foreach (var (at, value) in (ReadOnlySpan<(Duration, Temperature)>)[(step.Start.Value, step.From), (step.End.Value, step.To)])
                {
                    var shown = input.Plan.Shop?.Units == Model.UnitSystem.Us ? value.DegreesFahrenheit : value.DegreesCelsius;
                    Assert.True(ends.Any(end => Math.Abs(end.X - at.Minutes) < 1 && Math.Abs(end.Y - shown) < 0.2), $"{name}: {at.Minutes} min, {shown}");
                }
            }
        }
    }

    [Fact]
    public void The_softening_curve_is_that_of_the_plan()
    {
        var (drawing, minutes, degrees) = Read(HatchLid.Input);
        var dashed = drawing.Shapes.OfType<PathShape>().Where(path => path.Pen is { Dashed: true, WidthMm: 0.5 }).SelectMany(path => path.Points).Select(spot => (X: minutes(spot.X), Y: degrees(spot.Y))).ToList();
        var last = HatchLid.Input.Plan.Cure!.Progress!.Curve[^1];
        Assert.Contains(dashed, spot => Math.Abs(spot.X - last.At.Minutes) < 1 && Math.Abs(spot.Y - last.Transition!.Value.DegreesCelsius) < 0.2);
    }

    [Fact]
    public void The_limit_of_the_weakest_thing_is_a_line_with_its_figure()
    {
        var (drawing, _, degrees) = Read(HatchLid.Input);
        var label = drawing.Shapes.OfType<TextShape>().Single(text => text.Text == "70\u00A0°C");
        Assert.Contains(drawing.Shapes.OfType<PathShape>(), path => path.Points.Length == 2 && Math.Abs(degrees(path.Points[0].Y) - 70) < 0.2 && path.Points[0].Y == path.Points[1].Y && Math.Abs(path.Points[0].Y - label.At.Y) < 3);
    }

    // A post-cure off the mould, hotter than bag and release stand: both are off by then, and a cut-out set to them would stop it.
    [Fact]
    public void What_is_off_before_the_hottest_sets_no_cut_out_for_it()
    {
        var input = WithPostCure(80);
        var page = Papers.Write(input, Papers.Cure, PaperFormat.Markdown).Replace('\u00A0', ' ');
        Assert.Contains("set the cut-out to this or less until it is off", page, StringComparison.Ordinal);
        Assert.DoesNotContain("TOO WEAK", page, StringComparison.Ordinal);
        var core = input.Plan.Cure!.Limits[1];
        Assert.Matches($"Weakest thing at the hottest stands[^\n]*{core.Item}; set the cut-out to this or less", page.Replace("\n", " ", StringComparison.Ordinal));
        Assert.DoesNotContain("until it is off", Papers.Write(HatchLid.Input, Papers.Cure, PaperFormat.Markdown), StringComparison.Ordinal);
    }

    // The traveller's cure is what H6 and H7 stand behind; the post-cure has rows of its own after them.
    [Fact]
    public void The_cure_of_the_traveller_ends_where_the_part_comes_off()
    {
        var whole = CureStation.InMould(HatchLid.Input.Plan.Cure!);
        Assert.Equal((20.5, 50.0), (Math.Round(whole.Time.Hours, 6), Math.Round(whole.Hottest.DegreesCelsius, 6)));
        Assert.Equal(whole, CureStation.InMould(WithPostCure(80).Plan.Cure!));
    }

    private static PaperInput WithPostCure(double degrees)
    {
        var cure = HatchLid.Input.Plan.Cure!;
        var hold = cure.Steps.First(step => step.Step.Action == Model.CureAction.Hold && !(step.To < C(40)));
        var (end, last) = (cure.Total.Value, H(8));
        return HatchLid.Input with
        {
            Plan = HatchLid.Input.Plan with
            {
                Cure = cure with
                {
                    Steps = [.. cure.Steps, hold with { From = C(degrees), To = C(degrees), Start = Known(end), End = Known(end + last), Bagged = false, InMould = false }],
                    Peak = Known(C(degrees)),
                    Total = Known(end + last),
                    Limits = [cure.Limits[0], cure.Limits[0] with { Item = "core foam", Limit = Known(C(95)), Hottest = C(degrees), HottestStep = cure.Steps.Length }],
                },
            },
        };
    }

    [Fact]
    public void The_vacuum_is_on_until_the_first_step_that_ends_it()
    {
        var context = new Shared.BenchContext(HatchLid.Input);
        Assert.Equal(20.5, CureMoments.VacuumEnds(context, HatchLid.Input.Plan.Cure!)!.Value.Hours, 6);
        Assert.Null(CureMoments.VacuumEnds(new Shared.BenchContext(RudderHalves.Input), HatchLid.Input.Plan.Cure!));
    }

    [Fact]
    public void Numbers_on_the_chart_are_those_of_the_list_in_the_order_of_time()
    {
        var station = Papers.Cure.Build(HatchLid.Input).Stations[0];
        var rows = station.Blocks.OfType<Table>().Single().Rows.OfType<CellRow>().Select(row => ((TextCell)row.Cells[0]).Text.Plain).ToList();
        var rings = station.Blocks.OfType<Drawing>().Single().Shapes.OfType<TextShape>().Where(text => text is { Strong: true, Anchor: Anchor.Middle, Upright: false }).Select(text => text.Text).ToList();
        Assert.Equal(rows, rings);
        Assert.Equal(Enumerable.Range(1, rows.Count).Select(i => i.ToString(CultureInfo.InvariantCulture)), rows);
        var marks = CureMoments.Of(new Shared.BenchContext(HatchLid.Input), HatchLid.Input.Plan.Cure!);
        Assert.Equal(marks.Select(mark => mark.At.Minutes).Order(), marks.Select(mark => mark.At.Minutes));
        Assert.Contains(marks, mark => mark.What.Contains("gel", StringComparison.Ordinal) && Math.Abs(mark.At.Hours - 5.1) < 1e-9);
    }

    [Theory]
    [InlineData(4, 30)]
    [InlineData(7, 30)]
    [InlineData(20.5, 120)]
    [InlineData(72, 360)]
    public void Readings_are_due_every_half_hour_or_as_often_as_the_page_has_lines(double hours, double minutes)
    {
        var cure = HatchLid.Input.Plan.Cure! with { Total = Known(H(hours)) };
        Assert.Equal(minutes, CureReadings.Interval(cure));
        var table = CureReadings.Build(new Shared.BenchContext(HatchLid.Input), cure).Blocks.OfType<Table>().Single();
        Assert.Equal((int)Math.Ceiling(hours * 60 / minutes) + 1, table.Rows.Length);
        Assert.InRange(table.Rows.Length, 2, 15);
    }

    // 121 degF is 49.44 degC (NIST SP 811): rounded to whole degrees Celsius first, the card would plan 120 degF beside a step of 121.
    [Theory]
    [InlineData(Model.UnitSystem.Us, 49.444444, "plan 121 °F")]
    [InlineData(Model.UnitSystem.Metric, 62.5, "plan 62.5 °C")]
    public void A_reading_is_planned_at_what_the_step_says(Model.UnitSystem units, double celsius, string plan)
    {
        var cure = HatchLid.Input.Plan.Cure! with
        {
            Steps = [Timed(Cure(Model.CureAction.Hold, celsius, 8), celsius, celsius, 0, 8)],
            Total = Known(H(8)),
        };
        var input = HatchLid.Input with { Units = units, Plan = HatchLid.Input.Plan with { Cure = cure } };
        var page = Papers.Write(input, Papers.Cure, PaperFormat.Markdown);
        Assert.Contains(plan, page, StringComparison.Ordinal);
        Assert.Contains(plan.Replace("plan", "Hold", StringComparison.Ordinal), page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_step_of_the_cure_stands_in_the_table_of_steps()
    {
        foreach (var (name, input) in Cases.All.Where(each => each.Value.Plan.Cure is not null))
        {
            var table = Papers.Cure.Build(input).Stations[1].Blocks.OfType<Table>().Single();
            Assert.True(input.Plan.Cure!.Steps.Length == table.Rows.Length, name);
        }
    }

    [Fact]
    public void A_part_without_a_cure_has_a_page_to_write_down_what_was_done()
    {
        Assert.Contains("write what was done", Papers.Write(Bare.Input, Papers.Cure, PaperFormat.Markdown), StringComparison.Ordinal);
    }

    // The chart read as a person reads it: two labels of an axis say what lies where.
    private static (Drawing Drawing, Func<double, double> Minutes, Func<double, double> Degrees) Read(PaperInput input)
    {
        var drawing = DrawingRules.Of(Papers.Cure, input).Single();
        var texts = drawing.Shapes.OfType<TextShape>().ToList();
        var up = texts.Where(text => text.Anchor == Anchor.End && double.TryParse(text.Text, CultureInfo.InvariantCulture, out _)).ToList();
        var half = Drawings.Lettering.HeightMm(up[0].SizePt) / 2;
        var unit = texts.Single(text => text is { Anchor: Anchor.End, Text: "h" or "min" });
        var across = texts.Where(text => text.Anchor == Anchor.Middle && text.At.Y == unit.At.Y && double.TryParse(text.Text, CultureInfo.InvariantCulture, out _)).ToList();
        var factor = unit.Text == "h" ? 60 : 1;
        return (drawing, Map(across[0].At.X, Number(across[0]) * factor, across[^1].At.X, Number(across[^1]) * factor), Map(up[0].At.Y - half, Number(up[0]), up[^1].At.Y - half, Number(up[^1])));
    }

    private static double Number(TextShape text) => double.Parse(text.Text, CultureInfo.InvariantCulture);

    private static Func<double, double> Map(double at1, double value1, double at2, double value2) => at => value1 + ((at - at1) / (at2 - at1) * (value2 - value1));
}
