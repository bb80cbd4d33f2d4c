using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Documents.Layout;
using Recipe.Documents.LayUps;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The lay-up card: what the plan says of each ply, in the order in which it is laid.</summary>
public sealed class LayUpTests
{
    [Fact]
    public void A_time_of_day_is_the_start_and_the_minutes_that_stand_beside_it()
    {
        var start = HatchLid.Input.Plan.Part.WetOut!.Start!.Value;
        var matches = Regex.Matches(Write(HatchLid.Input), @"Pot \d: used up by minute (\d+) \((\d\d:\d\d)\)");
        Assert.NotEmpty(matches);
        Assert.All(matches, match => Assert.Equal(
            start.AddMinutes(int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)),
            TimeOnly.ParseExact(match.Groups[2].Value, "HH:mm", CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void A_ply_of_the_second_half_is_turned_the_other_way()
    {
        Assert.Contains("port 30°, starboard -30°", Write(RudderHalves.Input), StringComparison.Ordinal);
    }

    [Fact]
    public void The_author_says_which_way_zero_runs()
    {
        var input = HatchLid.Input;
        var turned = input with { Plan = input.Plan with { Part = input.Plan.Part with { Axis = "0 degrees runs along the hinge line" } } };
        Assert.Contains("0 degrees runs along the hinge line.", Write(turned), StringComparison.Ordinal);
    }

    [Fact]
    public void Bands_of_the_section_are_as_thick_as_the_plies_to_one_scale()
    {
        var context = new Shared.BenchContext(HatchLid.Input);
        var bands = StackSection.Bands(context);
        var drawing = Named("stack-section");
        var scale = double.Parse(Regex.Match(drawing.Shapes.OfType<TextShape>().Single(text => text.Text.Contains("times its size", StringComparison.Ordinal)).Text, @"[\d.]+").Value, CultureInfo.InvariantCulture);
        var paths = drawing.Shapes.OfType<PathShape>().Where(path => path is { Closed: true, Fill: not Fill.Hatched } && path.Points.Length >= 8).ToList();
        Assert.Equal(bands.Length, paths.Count);
        foreach (var (band, path) in bands.Zip(paths).Where(pair => pair.First.Thickness is not null))
        {
            // The middle of the band, where short ones lie too: its lower and its upper line.
            var half = path.Points.Length / 2;
            var (below, above) = (path.Points[(half / 2) - 1].Y, path.Points[^(half / 2)].Y);
            Assert.Equal(band.Thickness!.Value.Millimeters * scale, below - above, 0.01);
        }
    }

    [Fact]
    public void Plies_have_the_same_numbers_in_the_section_as_in_the_table_from_the_mould_up()
    {
        var rings = Rows().Select(row => row.Cells[0]).OfType<RingCell>().Select(cell => cell.Number).ToList();
        var drawn = Named("stack-section").Shapes.OfType<TextShape>().Where(text => text is { Strong: true, Anchor: Anchor.Middle }).ToList();
        Assert.Equal(rings, drawn.Select(text => text.Text));
        Assert.Equal(drawn.Select(text => text.At.Y).OrderDescending(), drawn.Select(text => text.At.Y));
    }

    [Fact]
    public void The_sum_of_the_resin_is_the_sum_of_what_stands_above_it()
    {
        var sum = 0.0;
        foreach (var cell in Rows().SelectMany(row => row.Cells.OfType<BigCell>()))
        {
            sum += Grams(cell.Value);
            Assert.Equal(sum, Grams(cell.Note!), 6);
        }

        Assert.True(sum > 0);
        Assert.Contains($"Resin laid on the plies: **{sum.ToString("0.0", CultureInfo.InvariantCulture)} g**", Papers.Write(HatchLid.Input, Papers.Traveller, PaperFormat.Markdown), StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_ply_of_a_pot_is_done_when_the_pot_is_used_up_and_minutes_never_fall()
    {
        var plan = HatchLid.Input.Plan;
        foreach (var pot in plan.Pots)
        {
            var last = plan.Stack.Last(line => pot.For.Contains(line.Item.Name));
            Assert.Equal(pot.UsedUpAt.Value.Minutes, PlyMinutes.Of(plan, last)!.Value.Minutes, 6);
        }

        var minutes = plan.Stack.Select(line => PlyMinutes.Of(plan, line)?.Minutes).OfType<double>().ToList();
        Assert.Equal(minutes.Order(), minutes);
        Assert.Equal(plan.Pots[0].UsedUpAt.Value.Minutes - 4, PlyMinutes.Of(plan, plan.Stack[1])!.Value.Minutes, 6);
    }

    [Fact]
    public void Somebody_looks_after_every_third_ply()
    {
        var rows = Table().Rows;
        var looks = rows.OfType<GroupRow>().Count(row => row.Text.Plain.StartsWith("Look", StringComparison.Ordinal));
        Assert.Equal(1, looks);
        Assert.True(rows.IndexOf(rows.OfType<GroupRow>().First(row => row.Text.Plain.StartsWith("Look", StringComparison.Ordinal))) > 3);
    }

    [Fact]
    public void The_sketch_shows_the_size_of_the_part_to_the_scale_it_states()
    {
        var drawing = Named("part-sketch");
        Assert.Equal(2, drawing.Shapes.OfType<TextShape>().Count(text => text.Text == "300\u00A0mm"));
        var scale = double.Parse(drawing.Shapes.OfType<TextShape>().Single(text => text.Text.StartsWith("Scale 1 : ", StringComparison.Ordinal)).Text["Scale 1 : ".Length..], CultureInfo.InvariantCulture);
        var part = drawing.Shapes.OfType<PathShape>().First(path => path is { Closed: true, Fill: Fill.Pale });
        Assert.Equal(300, (part.Points.Max(spot => spot.X) - part.Points.Min(spot => spot.X)) * scale, 300 * 0.05);
        Assert.Contains(drawing.Shapes.OfType<TextShape>(), text => text.Text == "0°");
    }

    [Fact]
    public void The_ring_names_the_plies_of_each_direction()
    {
        var directions = PartSketch.Directions(new Shared.BenchContext(HatchLid.Input));
        foreach (var line in HatchLid.Input.Plan.Stack.Where(line => line.Item is PlyItem { Orientation.Value.Kind: OrientationKind.Pair }))
        {
            var orientation = ((PlyItem)line.Item).Orientation!.Value;
            Assert.Contains(directions, direction => direction.Angle == orientation.First && direction.Plies.Split(", ").Contains(line.Number.ToString(CultureInfo.InvariantCulture)));
            Assert.Contains(directions, direction => direction.Angle == orientation.Second && direction.Plies.Split(", ").Contains(line.Number.ToString(CultureInfo.InvariantCulture)));
        }
    }

    [Fact]
    public void Overlap_and_stagger_are_drawn_where_the_recipe_states_them()
    {
        var part = HatchLid.Input.Plan.Part;
        Assert.Null(JoinSketch.Draw(With(part with { Overlap = null, Stagger = Stated(Mm(50), "50 mm") })));
        var both = JoinSketch.Draw(With(part with { Overlap = Stated(Mm(20), "20 mm"), Stagger = Stated(Mm(50), "50 mm") }))!;
        Assert.Contains(both.Shapes.OfType<TextShape>(), text => text.Text.Contains("20\u00A0mm", StringComparison.Ordinal));
        Assert.Contains(both.Shapes.OfType<TextShape>(), text => text.Text.Contains("50\u00A0mm", StringComparison.Ordinal));
    }

    private static Shared.BenchContext With(Part part) => new(HatchLid.Input with { Plan = HatchLid.Input.Plan with { Part = part } });

    private static Drawing Named(string name) => DrawingRules.Of(Papers.LayUp, HatchLid.Input).Single(drawing => drawing.Name == name);

    private static Table Table() => Papers.LayUp.Build(HatchLid.Input).Stations.SelectMany(station => station.Blocks).OfType<Table>().Single();

    private static IEnumerable<CellRow> Rows() => Table().Rows.OfType<CellRow>();

    private static double Grams(string text) => double.Parse(Regex.Match(text, @"([\d.]+)\u00A0g").Groups[1].Value, CultureInfo.InvariantCulture);

    private static string Write(PaperInput input) => Papers.Write(input, Papers.LayUp, PaperFormat.Markdown);
}
