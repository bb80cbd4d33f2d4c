using Recipe.Documents.Cuts;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Documents.Tests.Plans;
using Recipe.Planning;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The cut list: the layout that is drawn is the one of the plan, and what is printed adds up.</summary>
public sealed class CutListTests
{
    public static TheoryData<string> Inputs => ["hatch-lid", "rudder-halves", "tube-infused"];

    // A box laid flat: a rectangle less four squares, whichever way it lies. Plane geometry.
    [Theory]
    [InlineData(0)]
    [InlineData(45)]
    [InlineData(90)]
    public void The_net_of_a_box_is_drawn_without_its_corners(double angle)
    {
        var (l, w) = (angle == 90 ? 0.19 : 0.43, angle == 90 ? 0.43 : 0.19);
        var box = angle == 45 ? (0.43 + 0.19) / Math.Sqrt(2) : 0;
        var size = new NestSize("A", 0, null, Mm(430), Mm(190), angle, Mm((box > 0 ? box : l) * 1000), Mm((box > 0 ? box : w) * 1000), 1, 2, false, Engineering.NestTurn.Half) { Corner = Mm(35) };
        var outline = NestDrawing.Outline(size, new Engineering.NestPlacement(0, 0, Mm(0), Mm(0), size.Along, size.Across, false));
        Assert.Equal(12, outline.Length);
        Assert.Equal((0.43 * 0.19) - (4 * 0.035 * 0.035), AreaOf(outline), 1e-9);
    }

    [Theory]
    [MemberData(nameof(Inputs))]
    public void The_drawing_of_a_roll_shows_every_piece_where_the_plan_lays_it(string name)
    {
        var context = new PaperContext(Cases.All[name]);
        foreach (var nest in context.Plan.Nests.Where(nest => nest.LengthUsed is not null))
        {
            var drawing = NestDrawing.Of(context, nest);
            var pieces = drawing.Shapes.OfType<PathShape>().Where(path => path.Fill == Fill.Pale).ToList();
            Assert.Equal(nest.Placements.Length, pieces.Count);

            // The outline of the roll and the plan give the scale; a piece's area on paper must then be its own.
            foreach (var (place, piece) in nest.Placements.Zip(pieces))
            {
                var outline = NestDrawing.Outline(nest.Sizes[place.Piece], place);
                var scale = Math.Sqrt(AreaOf([.. piece.Points.Select(spot => (spot.X, spot.Y))]) / AreaOf([.. outline]));
                Assert.InRange(scale, 1, 1000);
                Assert.All(outline, corner => Assert.True(
                    corner.Along >= place.AlongAt.Meters - 1e-6 && corner.Along <= (place.AlongAt + place.Along).Meters + 1e-6
                    && corner.Across >= place.AcrossAt.Meters - 1e-6 && corner.Across <= (place.AcrossAt + place.Across).Meters + 1e-6));
                Assert.Equal(scale, Math.Sqrt(AreaOf([.. pieces[0].Points.Select(spot => (spot.X, spot.Y))]) / AreaOf([.. NestDrawing.Outline(nest.Sizes[nest.Placements[0].Piece], nest.Placements[0])])), 3);
            }

            Assert.All(pieces.SelectMany(piece => piece.Points), spot => Assert.True(spot.X >= 0 && spot.X <= drawing.WidthMm && spot.Y >= 0 && spot.Y <= drawing.HeightMm));
        }
    }

    /// <summary>A round piece weighs the rectangle round it times its own share of that area: what is cut off is said, with both weights. Plane geometry.</summary>
    [Fact]
    public void A_piece_that_is_no_rectangle_says_what_is_cut_off_and_what_it_weighs_before()
    {
        var rows = CutRow.Of(new PaperContext(HatchLid.Input)).Where(row => row.Line is not null).ToList();
        foreach (var row in rows.Where(row => row.Size.Letter is "A" or "C"))
        {
            var line = row.Line!;
            var rectangle = row.Size.Length * row.Size.Width;
            Assert.Equal("cut round", row.Outline(new PaperContext(HatchLid.Input)));
            Assert.Equal(line.CutMass!.Value.Value.Grams * (rectangle / line.CutArea!.Value.Value), row.AsRectangles!.Value.Grams, 0.051);
        }

        var patch = rows.Single(row => row.Size.Letter == "E");
        Assert.Null(patch.AsRectangles);
        Assert.Null(patch.Outline(new PaperContext(HatchLid.Input)));
    }

    [Theory]
    [MemberData(nameof(Inputs))]
    public void No_two_texts_of_a_drawing_overlap_and_none_is_smaller_than_8_points_or_leaves_it(string name)
    {
        foreach (var kind in new[] { Papers.CutList, Papers.Record, Papers.Passport, Papers.Labels })
        {
            foreach (var drawing in kind.Build(Cases.All[name]).Stations.SelectMany(station => station.Blocks).OfType<Drawing>())
            {
                Assert.InRange(drawing.WidthMm, 1, 180);
                Assert.InRange(drawing.HeightMm, 1, 230);
                var boxes = drawing.Shapes.OfType<TextShape>().Select(Box).ToList();
                for (var i = 0; i < boxes.Count; i++)
                {
                    var (a, size) = boxes[i];
                    Assert.True(size >= 8);
                    Assert.True(a.Left >= -0.01 && a.Right <= drawing.WidthMm + 0.01 && a.Top >= -0.01 && a.Bottom <= drawing.HeightMm + 0.01, $"{kind} {drawing.Name}: {drawing.Shapes.OfType<TextShape>().ElementAt(i).Text}");
                    Assert.DoesNotContain(boxes.Take(i), other => a.Left < other.Box.Right && other.Box.Left < a.Right && a.Top < other.Box.Bottom && other.Box.Top < a.Bottom);
                }
            }
        }
    }

    // A ply at +30 has its warp 30 degrees counter-clockwise of the piece's length, as it is laid; so the piece's length lies 30 degrees clockwise of the warp,
    // whether the roll is drawn to the right or hanging down. Plane geometry.
    [Theory]
    [InlineData(1000, 300)]
    [InlineData(200, 2000)]
    public void A_piece_is_drawn_with_the_same_hand_however_the_roll_is_drawn(double used, double wide)
    {
        var (along, across) = ((100 * Math.Cos(Math.PI / 6)) + (40 * Math.Sin(Math.PI / 6)), (100 * Math.Sin(Math.PI / 6)) + (40 * Math.Cos(Math.PI / 6)));
        var size = new NestSize("A", 0, null, Mm(100), Mm(40), 30, Mm(along), Mm(across), 1, 1, false, Engineering.NestTurn.Half);
        var nest = HatchLid.Input.Plan.Nests[0] with
        {
            Sizes = [size],
            UsableWidth = Known(Mm(wide)),
            LengthUsed = Known(Mm(used)),
            Placements = [new Engineering.NestPlacement(0, 0, Mm(0), Mm(0), Mm(along), Mm(across), false)],
        };
        var drawing = NestDrawing.Of(new PaperContext(HatchLid.Input), nest);
        var piece = drawing.Shapes.OfType<PathShape>().Single(path => path.Fill == Fill.Pale).Points;
        var (from, to) = (piece[0], piece[1]);
        var hangs = drawing.Title.Contains("runs down", StringComparison.Ordinal);
        Assert.Equal(used < wide, hangs);

        // Turns on paper, counter-clockwise, y downwards; a length has no head.
        var turn = (Math.Atan2(-(to.Y - from.Y), to.X - from.X) * 180 / Math.PI) - (hangs ? -90 : 0);
        Assert.Equal(150, ((turn % 180) + 180) % 180, 6);
    }

    // A quarter turn makes 0 into 90: the table, its file and the layout say the angle at which a piece really lies. Plane geometry.
    [Theory]
    [InlineData(0, 90)]
    [InlineData(1, 90)]
    [InlineData(2, 90)]
    [InlineData(2, 0)]
    public void A_piece_that_the_layout_turns_is_listed_as_it_lies(int turned, double angle)
    {
        var turnedAngle = angle > 0 ? angle - 90 : angle + 90;
        var plan = HatchLid.Input.Plan;
        var size = new NestSize("A", 0, null, Mm(430), Mm(190), angle, Mm(190), Mm(430), 1, 2, false, Engineering.NestTurn.Quarter);
        var nest = plan.Nests[0] with
        {
            Sizes = [size],
            UsableWidth = Known(Mm(1000)),
            LengthUsed = Known(Mm(500)),
            Placements = [.. Enumerable.Range(0, 2).Select(i => new Engineering.NestPlacement(0, i, Mm(0), Mm(435 * i), i < turned ? Mm(430) : Mm(190), i < turned ? Mm(190) : Mm(430), i < turned))],
        };
        var input = HatchLid.Input with { Plan = plan with { Nests = [nest] } };
        var table = Papers.CutList.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Table>().First(table => table.Columns.Any(column => column.Title == "To the roll"));
        var cells = Assert.Single(table.Rows.OfType<CellRow>()).Cells;
        var directions = cells.OfType<DirectionCell>().Single().Directions;
        Assert.Equal(
            turned switch { 0 => [(angle, null)], 1 => [(angle, "1 of 2"), (turnedAngle, "1 of 2")], _ => new (double, string?)[] { (turnedAngle, null) } },
            directions.Select(direction => (direction.Orientation.First, direction.Label)));
        Assert.Equal(turned > 0, cells.OfType<TextCell>().Any(cell => cell.Note?.Contains("turned on the roll: warp and weft are alike", StringComparison.Ordinal) == true));

        // Mat has neither warp nor weft.
        var ply = (Model.PlyItem)plan.Stack[0].Item;
        var mat = plan.Stack[0] with { Item = ply with { Material = ply.Material with { Form = Model.ReinforcementForm.Mat } } };
        var loose = Papers.Write(input with { Plan = input.Plan with { Stack = plan.Stack.SetItem(0, mat) } }, Papers.CutList, PaperFormat.Markdown);
        Assert.Equal(turned > 0, loose.Contains("turned on the roll: it has no direction", StringComparison.Ordinal));
        Assert.DoesNotContain("weft", loose, StringComparison.Ordinal);

        var lines = Papers.Write(input, Papers.CutList, PaperFormat.Csv).Split("\r\n");
        var column = Array.IndexOf(lines[0].Split(','), "angle_deg");
        string Angle(double degrees) => degrees.ToString(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(turned switch { 0 => Angle(angle), 1 => "", _ => Angle(turnedAngle) }, Field("piece").Single());
        Assert.Equal(Enumerable.Range(0, 2).Select(i => Angle(i < turned ? turnedAngle : angle)), Field("place"));
        IEnumerable<string> Field(string record) => lines.Where(line => line.StartsWith(record + ",A,", StringComparison.Ordinal)).Select(line => line.Split(',')[column]);
    }

    [Theory]
    [MemberData(nameof(Inputs))]
    public void Strips_part_the_roll_and_every_piece_lies_on_one(string name)
    {
        foreach (var nest in Cases.All[name].Plan.Nests.Where(nest => nest.LengthUsed is not null))
        {
            var strips = NestStrips.Of(nest);
            Assert.Equal(nest.LengthUsed!.Value.Value.Meters, strips.Sum(strip => strip.Length), 9);
            Assert.Equal(nest.Placements.Length, strips.Sum(strip => strip.Pieces.Length));
            Assert.All(strips, strip => Assert.All(strip.Pieces, place => Assert.True(place.AlongAt.Meters >= strip.Start - 1e-9 && (place.AlongAt + place.Along).Meters <= strip.End + 1e-9)));
        }
    }

    [Fact]
    public void The_weights_that_are_printed_add_up_to_the_sum_that_is_printed()
    {
        var blocks = Papers.CutList.Build(HatchLid.Input).Stations.SelectMany(station => station.Blocks).ToList();
        var weights = blocks.OfType<Table>().Where(table => table.Columns.Any(column => column.Title == "Weight"))
            .SelectMany(table => table.Rows.OfType<CellRow>()).Select(row => Number(((TextCell)row.Cells[4]).Text.Plain)).ToList();
        var sum = blocks.OfType<KeyNumbers>().SelectMany(panel => panel.Items).Single(item => item.Label.StartsWith("Cloth", StringComparison.Ordinal));
        Assert.True(weights.Count > 2);
        Assert.Equal(weights.Sum(), Number(sum.Value), 9);
        var cut = HatchLid.Input.Plan.Stack.Where(line => line.Item is Model.PlyItem).Sum(line => line.CutMass!.Value.Value.Grams);
        Assert.InRange(weights.Sum(), cut - (0.05 * weights.Count), cut + (0.05 * weights.Count));
    }

    // What the kit's list says to count is what H2 asks to have counted: strips of a joined piece one by one, and inserts too.
    [Fact]
    public void What_is_counted_at_H2_is_what_the_kit_list_says_to_count()
    {
        var plan = HatchLid.Input.Plan;
        var insert = new Model.InsertItem
        {
            Name = "bolts",
            NameWhere = Here,
            Where = Here,
            Count = 4,
            Material = new Model.Insert { Name = "bolt", Keyword = "insert", Where = Here },
            MaterialWhere = Here,
        };
        var nests = plan.Nests.SetItem(0, plan.Nests[0] with { Sizes = [plan.Nests[0].Sizes[0] with { Strips = 2, Count = 2 }] });
        var input = HatchLid.Input with { Plan = plan with { Stack = plan.Stack.Add(new StackPlan { Item = insert, Number = 0 }), Nests = nests } };
        var kit = Papers.CutList.Build(input).Stations.Single(station => station.Title == "Fill the kit box").Blocks.OfType<Table>().Single();
        var counted = kit.Rows.OfType<CellRow>().Select(row => (TextCell)row.Cells[2]).Sum(cell => Number((cell.Note ?? cell.Text.Plain).Replace(" to count", "", StringComparison.Ordinal)));
        var inserts = input.Plan.Stack.Select(line => line.Item).OfType<Model.InsertItem>().Sum(item => item.Count);
        Assert.Equal(plan.Stack.Sum(line => line.Pieces.Sum(piece => piece.Count)) + 1 + inserts, counted);
        var hold = Papers.Traveller.Build(input).Stations.SelectMany(station => station.Blocks).OfType<HoldPoint>().Single(hold => hold.Id == "H2");
        Assert.StartsWith($"{counted}\u00A0pieces counted", hold.Checks[0].Plain, StringComparison.Ordinal);
    }

    // A pair of halves with one bolt in each has two bolts (arithmetic): the takeoff buys two, so two go into the box.
    [Fact]
    public void Each_half_has_inserts_of_its_own_in_the_kit()
    {
        var lid = HatchLid.Input.Plan;
        var insert = lid.Stack.First(line => line.Item is Model.InsertItem);
        var cloth = HatchLid.Input.Plan with { Stack = [.. lid.Stack.Where(line => line.Item is not Model.InsertItem)] };
        int Inserts(int sides) => KitPage.PiecesOf(cloth with { Stack = cloth.Stack.Add(insert), Geometry = lid.Geometry! with { Sides = sides } }) - KitPage.PiecesOf(cloth);
        Assert.Equal(insert.Item.Count, Inserts(1));
        Assert.Equal(2 * insert.Item.Count, Inserts(2));
    }

    [Fact]
    public void A_roll_does_not_say_its_weight_twice_and_a_sheet_alone_on_its_roll_has_a_line_and_no_drawing()
    {
        var blocks = Papers.CutList.Build(HatchLid.Input).Stations.SelectMany(station => station.Blocks).ToList();
        Assert.All(blocks.OfType<KeyNumbers>(), panel => Assert.True(panel.Caption.Split("g/m²").Length <= 2, panel.Caption));
        foreach (var nest in HatchLid.Input.Plan.Nests.Where(nest => nest.LengthUsed is not null))
        {
            var isDrawn = blocks.OfType<Drawing>().Any(drawing => drawing.Name == NestDrawing.Of(new PaperContext(HatchLid.Input), nest).Name);
            Assert.Equal(nest.Sizes[0].StackLine is not null ? nest.Placements.Length > 1 || nest.Sizes[0].Angle is > 1 and < 89 : !RollPage.IsOneBehindTheOther(nest), isDrawn);
        }

        // Every sheet of the bag keeps its size and the length to cut off its roll.
        var text = new QuantityText(HatchLid.Input.Plan.Shop);
        var page = Papers.Write(HatchLid.Input, Papers.CutList, PaperFormat.Markdown);
        foreach (var nest in HatchLid.Input.Plan.Nests.Where(nest => nest is { LengthUsed: not null } && nest.Sizes[0].BagLayer is not null))
        {
            Assert.Contains(text.Sheet(nest.Sizes[0].Length, nest.Sizes[0].Width).Main.Replace('\u00A0', ' '), page, StringComparison.Ordinal);
            Assert.Contains($"**{text.Size(nest.LengthUsed!.Value.Value).Main.Replace('\u00A0', ' ')}**", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_last_ply_goes_into_the_box_first()
    {
        var kit = Papers.CutList.Build(HatchLid.Input).Stations.Single(station => station.Title == "Fill the kit box").Blocks.OfType<Table>().Single();
        var numbers = kit.Rows.OfType<CellRow>().Select(row => row.Cells[0]).OfType<RingCell>().Select(ring => int.Parse(ring.Number.Split('-')[0], System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(numbers.OrderDescending(), numbers);
        Assert.Equal(1, numbers[^1]);
        Assert.Equal(HatchLid.Input.Plan.Stack.Length, kit.Rows.Length);
    }

    [Fact]
    public void A_roll_of_unknown_width_gets_no_layout_and_its_sizes_all_the_same()
    {
        var plan = HatchLid.Input.Plan;
        var nest = plan.Nests[0] with { Obstacle = NestObstacle.WidthUnknown, UsableWidth = null, LengthUsed = null, Waste = null, LeastLength = null, Placements = [] };
        var page = Papers.Write(HatchLid.Input with { Plan = plan with { Nests = [nest] } }, Papers.CutList, PaperFormat.Markdown);
        Assert.Contains("No layout: the usable width of the roll is not known", page, StringComparison.Ordinal);
        Assert.Contains(new QuantityText(null).Sheet(nest.Sizes[0].Length, nest.Sizes[0].Width).Main.Replace('\u00A0', ' '), page, StringComparison.Ordinal);
    }

    private static double Number(string text) => double.Parse(text.Split('\u00A0', ' ')[0], System.Globalization.CultureInfo.InvariantCulture);

    private static double AreaOf(IReadOnlyList<(double X, double Y)> points)
    {
        var sum = 0.0;
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Count]);
            sum += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(sum) / 2;
    }

    private static ((double Left, double Right, double Top, double Bottom) Box, double Size) Box(TextShape text)
    {
        var width = Lettering.WidthMm(text.Text, text.SizePt, text.Strong);
        var left = text.At.X - (text.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        return ((left, left + width, text.At.Y - Lettering.HeightMm(text.SizePt), text.At.Y), text.SizePt);
    }
}
