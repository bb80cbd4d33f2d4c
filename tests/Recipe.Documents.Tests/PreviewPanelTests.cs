using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Recipe.Documents.Layout;
using Recipe.Documents.Previews;
using Recipe.Documents.Shared;
using Recipe.Documents.Tests.Plans;
using Recipe.Documents.Writing;

namespace Recipe.Documents.Tests;

/// <summary>The panels of the live page: the clock as it is drawn, and the blocks of all papers as JSON.</summary>
public sealed class PreviewPanelTests
{
    [Fact]
    public void The_clock_has_a_bar_for_each_pot_as_long_as_its_use_and_an_end_where_it_is_dead()
    {
        var seen = 0;
        foreach (var (name, input) in Cases.All)
        {
            if (ClockDrawing.Draw(new BenchContext(input)) is not { } drawing)
            {
                continue;
            }

            DrawingRules.Check(drawing, $"{name} clock");
            var minutes = Scale(drawing);
            var bars = drawing.Shapes.OfType<PathShape>().Where(path => path is { Closed: true, Fill: Fill.Mid }).ToList();
            var ends = drawing.Shapes.OfType<PathShape>().Where(path => path.Pen is { WidthMm: 1.4 }).Select(path => minutes(path.Points[0].X)).ToList();
            foreach (var pot in input.Plan.Pots.Where(_ => new BenchContext(input).IsWet))
            {
                Assert.Contains(bars, bar => Math.Abs(minutes(bar.Points[0].X) - pot.MixedAt.Value.Minutes) < 0.2 && Math.Abs(minutes(bar.Points[1].X) - pot.UsedUpAt.Value.Minutes) < 1);
                if (pot.DeadAt is { Value.Minutes: < 400 } dead)
                {
                    Assert.Contains(ends, end => Math.Abs(end - dead.Value.Minutes) < 0.2);
                }

                seen++;
            }

            if (input.Plan.Clock?.FilmLife is { } film)
            {
                Assert.Contains(drawing.Shapes.OfType<PathShape>(), path => path.Pen is { Dashed: true } && Math.Abs(minutes(path.Points[0].X) - film.Value.Minutes) < 0.2);
            }
        }

        Assert.True(seen > 1);
    }

    [Fact]
    public void Without_a_bag_the_pots_are_on_the_clock_alone()
    {
        var input = HatchLid.Input with { Plan = HatchLid.Input.Plan with { Clock = null } };
        var drawing = ClockDrawing.Draw(new BenchContext(input))!;
        Assert.Equal(input.Plan.Pots.Length, drawing.Shapes.OfType<PathShape>().Count(path => path is { Closed: true, Fill: Fill.Mid }));
        Assert.DoesNotContain(drawing.Shapes.OfType<TextShape>(), text => text.Text.Contains("vacuum", StringComparison.Ordinal));
        Assert.Null(ClockDrawing.Draw(new BenchContext(input with { Plan = input.Plan with { Pots = [] } })));
    }

    [Fact]
    public void The_panels_show_the_drawings_of_the_papers()
    {
        var input = HatchLid.Input;
        var drawings = PreviewPanels.Of(input).SelectMany(panel => panel.Blocks).OfType<Drawing>().ToDictionary(drawing => drawing.Name);
        foreach (var (kind, name) in ((PaperKind, string)[])[(Papers.LayUp, "stack-section"), (Papers.Bag, "bag-section"), (Papers.Cure, "cure-chart")])
        {
            var onPaper = kind.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Drawing>().Single(drawing => drawing.Name == name);
            Assert.Equal(SvgWriter.Write(onPaper), SvgWriter.Write(drawings[name]));
        }
    }

    [Fact]
    public void Every_block_of_every_paper_is_said_in_json_with_the_same_cells_in_each_row_and_drawings_that_are_xml()
    {
        var kinds = new HashSet<string>();
        foreach (var (name, input) in Cases.All)
        {
            using var json = Json(writer =>
            {
                PreviewJson.WriteFigures(writer, input, null);
                PreviewJson.WritePanels(writer, input);
                PreviewJson.WriteStations(writer, input);
                PreviewJson.WritePots(writer, input);
            });
            var lists = json.RootElement.GetProperty("panels").EnumerateArray().Concat(json.RootElement.GetProperty("stations").EnumerateArray());
            foreach (var block in lists.SelectMany(list => list.GetProperty("blocks").EnumerateArray()))
            {
                var kind = block.GetProperty("kind").GetString()!;
                kinds.Add(kind);
                if (kind == "table")
                {
                    var columns = block.GetProperty("columns").GetArrayLength();
                    Assert.True(columns > 0, name);
                    Assert.All(block.GetProperty("rows").EnumerateArray().Where(row => row.TryGetProperty("cells", out _)), row => Assert.Equal(columns, row.GetProperty("cells").GetArrayLength()));
                }
                else if (kind == "drawing")
                {
                    var svg = XElement.Parse(block.GetProperty("svg").GetString()!);
                    Assert.Equal("svg", svg.Name.LocalName);

                    // Nothing in it runs, styles or leads away.
                    Assert.DoesNotContain(svg.DescendantsAndSelf(), element => element.Name.LocalName is "script" or "style" or "foreignObject" or "a" or "image" or "use");
                    Assert.DoesNotContain(
                        svg.DescendantsAndSelf().Attributes(),
                        attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || attribute.Name.LocalName is "style" or "href" || (attribute.Value.Contains("url(", StringComparison.Ordinal) && !attribute.Value.StartsWith("url(#", StringComparison.Ordinal)));
                }
            }
        }

        Assert.Superset(new HashSet<string> { "heading", "paragraph", "facts", "numbers", "hold", "caution", "ifs", "bullets", "ticks", "table", "drawing" }, kinds);
    }

    [Fact]
    public void A_space_to_write_in_is_no_cell_of_a_screen_and_a_box_to_tick_is_one_at_the_bench_only()
    {
        var table = new Table("", [new("A"), new("B"), new("C")], [new CellRow(["said", new Blank("reading"), TickCell.Of(1)])]);
        Assert.Equal(["A"], Columns(withTicks: false));
        Assert.Equal(["A", "C"], Columns(withTicks: true));

        List<string?> Columns(bool withTicks)
        {
            using var json = Json(writer => new BlockJson(writer, withTicks).Write("blocks", [table]));
            return [.. json.RootElement.GetProperty("blocks")[0].GetProperty("columns").EnumerateArray().Select(column => column.GetProperty("title").GetString())];
        }
    }

    // Minutes of a place, by two labels of the axis.
    private static Func<double, double> Scale(Drawing drawing)
    {
        var labels = drawing.Shapes.OfType<TextShape>().Where(text => text.Anchor == Anchor.Middle && text.Text.All(char.IsAsciiDigit)).ToList();
        var (first, last) = (labels[0], labels[^1]);
        var (from, to) = (double.Parse(first.Text, System.Globalization.CultureInfo.InvariantCulture), double.Parse(last.Text, System.Globalization.CultureInfo.InvariantCulture));
        return x => from + ((x - first.At.X) / (last.At.X - first.At.X) * (to - from));
    }

    private static JsonDocument Json(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));
    }
}
