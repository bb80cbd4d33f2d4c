using System.Globalization;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using Recipe.Planning;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The bag sheet: section, plan view and list say the same.</summary>
public sealed class BagTests
{
    [Fact]
    public void Layers_have_the_same_numbers_in_the_section_and_in_the_list_from_the_part_outwards()
    {
        var bag = HatchLid.Input.Plan.Part.Bag!;
        var section = Named("bag-section", HatchLid.Input);
        var list = Table(HatchLid.Input);
        var rings = list.Rows.OfType<CellRow>().Where(row => row.Cells[0] is RingCell).ToList();
        Assert.Equal(bag.Layers.Length, rings.Count);
        for (var i = 0; i < bag.Layers.Length; i++)
        {
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            Assert.Equal(number, ((RingCell)rings[i].Cells[0]).Number);
            Assert.Contains(Quantities.WrittenText.InTitle(bag.Layers[i].Material.Label), ((TextCell)rings[i].Cells[1]).Text.Plain, StringComparison.Ordinal);
            Assert.Contains(section.Shapes.OfType<TextShape>(), text => text.Text == number && text.Strong);
        }

        // Outwards is upwards on paper: y falls.
        var heights = Enumerable.Range(1, bag.Layers.Length).Select(i => section.Shapes.OfType<TextShape>().Single(text => text.Strong && text.Text == i.ToString(CultureInfo.InvariantCulture)).At.Y).ToList();
        Assert.Equal(heights.OrderDescending(), heights);
    }

    [Fact]
    public void Letters_of_the_drawings_are_those_of_the_list()
    {
        foreach (var input in Cases.All.Values.Where(input => input.Plan.Part.Bag is not null))
        {
            var listed = Table(input).Rows.OfType<CellRow>().Select(row => row.Cells[0]).OfType<TextCell>().Select(cell => cell.Text.Plain).ToHashSet(StringComparer.Ordinal);
            var drawn = DrawingRules.Of(Papers.Bag, input).SelectMany(drawing => drawing.Shapes).OfType<TextShape>().Where(text => text is { Strong: true, Text.Length: 1 } && char.IsAsciiLetterUpper(text.Text[0]));
            Assert.All(drawn, text => Assert.Contains(text.Text, listed));
        }
    }

    [Fact]
    public void The_coolest_limit_is_that_of_the_weakest_thing_and_an_alarm_when_the_cure_is_hotter()
    {
        var bag = HatchLid.Input.Plan.Part.Bag!;
        var weak = bag.Layers[1] with { Material = bag.Layers[1].Material with { HeatLimit = Stated(C(45), "45 degC"), Title = "Weak film" } };
        var part = HatchLid.Input.Plan.Part with { Bag = bag with { Layers = bag.Layers.SetItem(1, weak) } };
        var number = Panel(HatchLid.Input with { Plan = HatchLid.Input.Plan with { Part = part } });
        Assert.Equal("45\u00A0°C", number.Value);
        Assert.Contains("Weak film", number.Note, StringComparison.Ordinal);
        Assert.True(number.Alarm);
        Assert.Contains("TOO HOT", number.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_of_the_view_from_above_are_those_of_the_plan_and_to_its_scale()
    {
        var drawing = Named("bag-plan", HatchLid.Input);
        Assert.Contains(drawing.Shapes.OfType<TextShape>(), text => text.Text == "300\u00A0mm");
        var scale = double.Parse(drawing.Shapes.OfType<TextShape>().Single(text => text.Text.Contains("1 : ", StringComparison.Ordinal)).Text.Split("1 : ")[1].TrimEnd('.'), CultureInfo.InvariantCulture);
        var part = drawing.Shapes.OfType<PathShape>().Single(path => path is { Closed: true, Fill: Fill.Pale });
        Assert.Equal(300, (part.Points.Max(spot => spot.X) - part.Points.Min(spot => spot.X)) * scale, 300 * 0.05);
    }

    [Fact]
    public void A_bag_round_the_whole_mould_has_no_tape_line_on_a_flange_to_show()
    {
        Assert.DoesNotContain(DrawingRules.Of(Papers.Bag, TubeInfused.Input), drawing => drawing.Name == "bag-plan");
        Assert.Contains("envelope round the mandrel", Papers.Write(TubeInfused.Input, Papers.Bag, PaperFormat.Markdown), StringComparison.Ordinal);
    }

    // The words are those of recipes in samples and corpus; what they mean is plain English.
    [Theory]
    [InlineData(null, "Unsaid")]
    [InlineData("on the board, on a tail of breather", "Unread")]
    [InlineData("trailing-edge side, behind 50 mm of bare peel ply", "Unread")]
    [InlineData("on the flange, on a tail of breather", "Flange")]
    [InlineData("beside the patch, on a tail of breather", "Flange")]
    [InlineData("on the flange, opposite the port", "Opposite")]
    [InlineData("at the far end, before the feed opens", "Opposite")]
    [InlineData("feed side, before the feed opens", "Feed")]
    [InlineData("at the feed in the middle, before it opens", "Feed")]
    [InlineData("vent side, behind 50 mm of bare peel ply", "Vent")]
    [InlineData("along the far long edge, 50 mm past the plies", "Vent")]
    [InlineData("in the middle, between the two feed lines, on its own strip of peel ply", "Middle")]
    [InlineData("along the middle", "Middle")]
    [InlineData("ring at the rim", "Rim")]
    [InlineData("left end", "Left")]
    public void Words_for_a_place_are_read(string? words, string place) => Assert.Equal(place, Bags.BagPlaces.Read(words).ToString());

    [Theory]
    [InlineData("vent side, behind 50 mm of bare peel ply", "feed side, before the feed opens", "along the far long edge", "above", "below")]
    [InlineData("feed side", "vent side", "along the far long edge", "below", "above")]
    [InlineData("in the middle, between the two feed lines", "at the far end", "along the middle", "middle", "beside")]
    [InlineData("ring line at the rim, on a strip of peel ply", "at the feed in the middle, before it opens", "ring at the rim", "above", "middle")]
    [InlineData("left end", "opposite the port", null, "beside", "beside")]
    [InlineData("trailing-edge side", "feed side", "along the trailing edge", "above", "below")]
    public void The_view_from_above_draws_port_and_gauge_where_the_recipe_says(string port, string gauge, string? vent, string portIs, string gaugeIs)
    {
        var drawing = Named("bag-plan", Infused(port, gauge, vent));
        var part = drawing.Shapes.OfType<PathShape>().Single(path => path is { Closed: true, Fill: Fill.Pale });
        Assert.Equal(portIs, Where(part, Mark(drawing, "P")));
        Assert.Equal(gaugeIs, Where(part, Mark(drawing, "G")));
        Assert.DoesNotContain(drawing.Shapes.OfType<TextShape>(), text => text.Text.StartsWith("gauge, place", StringComparison.Ordinal) || text.Text.StartsWith("port, place", StringComparison.Ordinal));
    }

    [Fact]
    public void A_vent_round_the_rim_of_a_round_part_is_round()
    {
        var input = Infused("on the vent", "at the feed", "ring at the rim");
        var drawing = Named("bag-plan", input with { Plan = input.Plan with { Geometry = input.Plan.Geometry! with { Shape = new DiscShape(Mm(300)) } } });
        var part = drawing.Shapes.OfType<PathShape>().Single(path => path is { Closed: true, Fill: Fill.Pale });
        var (middleX, middleY) = (part.Points.Average(spot => spot.X), part.Points.Average(spot => spot.Y));
        var vent = drawing.Shapes.OfType<PathShape>().Single(path => path is { Closed: true, Pen.WidthMm: 0.6 });
        var radii = vent.Points.Select(spot => Math.Sqrt(Math.Pow(spot.X - middleX, 2) + Math.Pow(spot.Y - middleY, 2))).ToList();
        Assert.Equal(radii.Min(), radii.Max(), 1e-6);
        Assert.True(radii.Min() > part.Points.Max(spot => spot.X) - middleX);
    }

    [Theory]
    [InlineData(null, "place assumed")]
    [InlineData("by the old crack", "side assumed, words in the list")]
    public void A_place_that_nobody_says_or_that_is_not_understood_is_said_to_be_assumed(string? words, string said)
    {
        var described = Named("bag-plan", Infused(words, words, words)).Description;
        foreach (var what in (string[])["port", "gauge", "vent line"])
        {
            Assert.Matches($"{what}[,;] {said}", described);
        }

        Assert.Contains("feed line, place assumed", described, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_half_has_a_bag_with_fittings_of_its_own_and_one_pot_serves_all()
    {
        var (input, pot) = (HatchLid.Input, new Fitting { Name = "pot", Keyword = "catch-pot", Where = Here, Kind = FittingKind.CatchPot });
        var part = input.Plan.Part with
        {
            Mould = input.Plan.Part.Mould! with { Halves = ["port", "starboard"] },
            Process = Stated(Process.Infused, "infused"),
            Bag = input.Plan.Part.Bag! with { CatchPot = new Placed<Fitting>(pot, false, null, Here) },
            Infusion = new Infusion { Where = Here, FeedLine = Stated(Mm(340), "340 mm") },
        };
        var feed = new FeedPlan { Lines = Known(4), Length = Known(Mm(340)), Bore = Known(Mm(12)) };
        var rows = Table(input with { Plan = input.Plan with { Part = part, Feed = feed } }).Rows.OfType<CellRow>().ToList();
        Assert.All(rows.Where(row => row.Cells[0] is TextCell), row => Assert.Equal(Text(row.Cells[0]) switch { "C" => 1, "F" => 4, _ => 2 }, ((TickCell)row.Cells[^1]).Boxes.Length));
        Assert.All(rows.Where(row => row.Cells[0] is RingCell), row => Assert.Equal(0, ((TickCell)row.Cells[^1]).Boxes.Length % 2));
        Assert.Contains("2 lines to each bag, each 340", Text(rows.Single(row => row.Cells[0] is TextCell cell && cell.Text.Plain == "F").Cells[2]), StringComparison.Ordinal);
    }

    // A port of an infusion sits on its line (common practice): felt under it would drink the resin that is on its way out.
    [Fact]
    public void A_pad_is_drawn_and_asked_for_only_where_a_port_sits_on_one()
    {
        Assert.Equal((1, 0), Seats(HatchLid.Input));
        Assert.Equal((0, 1), Seats(Infused("at the vent", null, null)));
        foreach (var (seat, expected) in ((PortSeat, (int, int))[])[(PortSeat.Breather, (1, 0)), (PortSeat.Line, (0, 1)), (PortSeat.Flange, (0, 0)), (PortSeat.Part, (0, 0))])
        {
            var plan = Infused("at the vent", null, null).Plan;
            var bag = plan.Part.Bag! with { Ports = [plan.Part.Bag!.Ports[0] with { Sits = seat }] };
            Assert.Equal(expected, Seats(HatchLid.Input with { Plan = plan with { Part = plan.Part with { Bag = bag } } }));
        }

        static (int Pads, int Lines) Seats(PaperInput input)
        {
            var section = Named("bag-section", input);
            var felts = input.Plan.Part.Bag!.Layers.Count(layer => layer.Class is LayerClass.Bleeder or LayerClass.Breather);
            var pads = section.Shapes.OfType<PathShape>().Count(path => path.Fill == Fill.Dotted) - felts;
            var asked = Papers.Bag.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Facts>().SelectMany(facts => facts.Items).Count(fact => fact.Label == "Pad under port");
            Assert.Equal(asked, pads);
            return (pads, section.Shapes.OfType<CircleShape>().Count(circle => circle.RadiusMm < 2));
        }
    }

    [Fact]
    public void Each_port_is_drawn_at_its_own_place()
    {
        var plan = Infused("at the left end", null, "along the far edge").Plan;
        var port = plan.Part.Bag!.Ports[0];
        var part = plan.Part with { Bag = plan.Part.Bag! with { Ports = [port, port with { At = "at the right end" }] } };
        var drawing = Named("bag-plan", HatchLid.Input with { Plan = plan with { Part = part } });
        var marks = drawing.Shapes.OfType<TextShape>().Where(text => text is { Strong: true, Text: "P" }).Select(text => text.At.X).Order().Take(2).ToList();
        var across = drawing.Shapes.OfType<PathShape>().Where(path => path is { Closed: true, Fill: Fill.Pale }).SelectMany(path => path.Points).Select(spot => spot.X).ToList();
        Assert.Equal(across.Min() + across.Max(), marks[0] + marks[1], 0.01);
    }

    [Fact]
    public void A_part_without_bag_and_vacuum_has_no_bag_sheet()
    {
        Assert.False(Papers.Bag.AppliesTo(RudderHalves.Input));
        Assert.False(Papers.Vacuum.AppliesTo(RudderHalves.Input));
        Assert.True(Papers.Bag.AppliesTo(HatchLid.Input));
    }

    private static PaperInput Infused(string? port, string? gauge, string? vent)
    {
        var (input, fitting) = (HatchLid.Input, new Fitting { Name = "port", Keyword = "port", Where = Here, Kind = FittingKind.Port });
        var part = input.Plan.Part with
        {
            Process = Stated(Process.Infused, "infused"),
            Bag = input.Plan.Part.Bag! with { Ports = [new Placed<Fitting>(fitting, false, port, Here)], GaugeAt = gauge },
            Infusion = new Infusion { Where = Here, FeedLine = Stated(Mm(340), "340 mm"), Vent = vent },
        };
        return input with { Plan = input.Plan with { Part = part, Geometry = input.Plan.Geometry! with { Shape = new FlatShape(Mm(360), Mm(120)) } } };
    }

    private static Spot Mark(Drawing drawing, string letter)
    {
        // The key has the letter too, to the right of everything.
        var at = drawing.Shapes.OfType<TextShape>().Where(text => text.Strong && text.Text == letter).MinBy(text => text.At.X)!.At;
        return drawing.Shapes.OfType<CircleShape>().MinBy(ring => Math.Abs(ring.Centre.X - at.X) + Math.Abs(ring.Centre.Y - at.Y))!.Centre;
    }

    private static string Where(PathShape part, Spot at)
    {
        var (left, right) = (part.Points.Min(spot => spot.X), part.Points.Max(spot => spot.X));
        var (top, bottom) = (part.Points.Min(spot => spot.Y), part.Points.Max(spot => spot.Y));
        return at.X < left || at.X > right ? "beside" : at.Y < top ? "above" : at.Y > bottom ? "below" : "middle";
    }

    private static string Text(Cell cell) => ((TextCell)cell).Text.Plain;

    private static Drawing Named(string name, PaperInput input) => DrawingRules.Of(Papers.Bag, input).Single(drawing => drawing.Name == name);

    private static Table Table(PaperInput input) => Papers.Bag.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Table>().Single();

    private static KeyNumber Panel(PaperInput input) => Papers.Bag.Build(input).Stations.SelectMany(station => station.Blocks).OfType<KeyNumbers>().Single().Items[0];
}
