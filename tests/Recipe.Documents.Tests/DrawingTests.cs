using CsCheck;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>Every drawing of every paper, and what drawings are made with.</summary>
public sealed class DrawingTests
{
    [Fact]
    public void No_drawing_lays_letters_on_letters_or_leaves_its_frame()
    {
        var seen = 0;
        foreach (var (name, kind) in Cases.Papers.Select(paper => (paper.Case, paper.Kind)).Distinct())
        {
            foreach (var drawing in DrawingRules.Of(kind, Cases.All[name]))
            {
                DrawingRules.Check(drawing, $"{name} {kind}");
                seen++;
            }
        }

        Assert.True(seen > 10);
    }

    [Fact]
    public void Names_of_the_drawings_of_one_paper_differ()
    {
        foreach (var (name, kind) in Cases.Papers.Select(paper => (paper.Case, paper.Kind)).Distinct())
        {
            var names = DrawingRules.Of(kind, Cases.All[name]).Select(drawing => drawing.Name).ToList();
            Assert.Equal(names.Distinct(), names);
            Assert.All(names, text => Assert.Matches("^[a-z0-9-]+$", text));
        }
    }

    [Fact]
    public void The_rules_find_letters_on_letters_and_a_line_through_letters()
    {
        var word = new TextShape(new Spot(10, 10), "word", 11);
        DrawingRules.Check(Sheet(word), "sound");
        Assert.ThrowsAny<Exception>(() => DrawingRules.Check(Sheet(word, word with { At = new Spot(12, 11) }), "two words"));
        Assert.ThrowsAny<Exception>(() => DrawingRules.Check(Sheet(word with { At = new Spot(95, 10) }), "outside"));
        Assert.ThrowsAny<Exception>(() => DrawingRules.Check(Sheet(word, PathShape.Line(0, 9, 50, 9, Pen.Bold)), "a line"));
        Assert.ThrowsAny<Exception>(() => DrawingRules.Check(Sheet(PathShape.Line(0, 9, 150, 9, Pen.Thin)), "a long line"));
    }

    [Theory]
    [InlineData(0.6, 0.4, 0.02, 3)]
    [InlineData(0.02, 0.03, 0.01, 1)]
    [InlineData(4, 0.2, 0.1, 12)]
    [InlineData(0.25, 2.5, 1.2, 30)]
    public void Parts_of_every_shape_and_size_keep_the_rules(double length, double width, double depth, int layers)
    {
        var (l, w, d) = (UnitsNet.Length.FromMeters(length), UnitsNet.Length.FromMeters(width), UnitsNet.Length.FromMeters(depth));
        SurfaceShape[] shapes =
        [
            new FlatShape(l, w), new DiscShape(l), new CylinderShape(w, l), new ConeShape(w, d, l), new SphericalCapShape(l, d), new HalfEllipsoidShape(l, w, d), new ParaboloidShape(l, d), new BoxShape(l, w, d),
            new GivenAreaShape(l * w, l, w, d), new GivenAreaShape(l * w, null, null, null),
        ];
        var input = HatchLid.Input;
        foreach (var shape in shapes)
        {
            foreach (var process in Enum.GetValues<Process>())
            {
                var bag = input.Plan.Part.Bag! with { Layers = [.. Enumerable.Range(0, Math.Min(layers, 9)).Select(i => input.Plan.Part.Bag!.Layers[i % input.Plan.Part.Bag.Layers.Length])] };
                var plan = input.Plan with
                {
                    Geometry = input.Plan.Geometry! with { Shape = shape },
                    Part = input.Plan.Part with { Process = Stated(process, ""), Bag = bag, Overlap = Stated(l * 0.1, "overlap"), Stagger = Stated(w, "stagger") },
                    Stack = [.. Enumerable.Range(0, Math.Min(layers, 12)).Select(i => (Line: input.Plan.Stack[i % input.Plan.Stack.Length], Name: $"line-{i}"))
                        .Select(pair => pair.Line with { Item = pair.Line.Item with { Name = pair.Name } })],
                };
                foreach (var kind in Papers.All.Where(kind => kind.AppliesTo(input with { Plan = plan })))
                {
                    foreach (var drawing in DrawingRules.Of(kind, input with { Plan = plan }))
                    {
                        DrawingRules.Check(drawing, $"{shape} {process} {kind}");
                    }
                }
            }
        }
    }

    [Fact]
    public void Names_of_any_kind_keep_the_rules()
    {
        Gen.OneOf(Hostile.Words, Gen.String[Gen.Char.AlphaNumeric, 1, 300]).Sample(
            text =>
            {
                var input = Hostile.With(text);
                foreach (var kind in Papers.All.Where(kind => kind.AppliesTo(input)))
                {
                    foreach (var drawing in DrawingRules.Of(kind, input))
                    {
                        DrawingRules.Check(drawing, $"{kind} {text}");
                    }
                }
            },
            iter: 40);
    }

    [Fact]
    public void Steps_of_an_axis_are_round_and_span_the_range()
    {
        Gen.Select(Gen.Double[1e-6, 1e6], Gen.Int[1, 40]).Sample((range, most) =>
        {
            var step = Chart.NiceStep(range, most);
            var first = step / Math.Pow(10, Math.Floor(Math.Log10(step * (1 + 1e-9))));
            Assert.Contains((double[])[1, 2, 5], digit => Math.Abs(first - digit) < 1e-6);
            Assert.True(step * most >= range * (1 - 1e-6));
            Assert.True(step * most <= range * 5.01 || most == 1, "no coarser than it must be");
        });
    }

    [Fact]
    public void A_line_that_runs_off_a_chart_ends_at_its_edge()
    {
        var (across, up) = (new Axis(0, 10, 20, 70, 1), new Axis(0, 100, 60, 10, 10));
        Gen.Select(Gen.Double[-30, 30], Gen.Double[-300, 300], Gen.Double[-30, 30], Gen.Double[-300, 300]).Sample((x1, y1, x2, y2) =>
        {
            var canvas = new Canvas(100, 80);
            Chart.Line(canvas, across, up, [(x1, y1), (x2, y2)], Pen.Firm);
            foreach (var spot in canvas.Draw("line", "line", "line").Shapes.OfType<PathShape>().SelectMany(path => path.Points))
            {
                Assert.InRange(spot.X, 20 - 1e-9, 70 + 1e-9);
                Assert.InRange(spot.Y, 10 - 1e-9, 60 + 1e-9);

                // What is left lies on the line itself: cross product of the way along it and the way to the end.
                var (x, y) = ((spot.X - 20) / 5, (60 - spot.Y) * 2);
                Assert.Equal(0, ((x2 - x1) * (y - y1)) - ((y2 - y1) * (x - x1)), 6 * Math.Max(1, 1e-3));
            }
        });
    }

    [Fact]
    public void Words_are_broken_between_words_and_all_of_them_come_back()
    {
        Gen.String[Gen.Char["abc def "], 0, 80].Sample(text =>
        {
            var lines = TextLines.Wrap(text, 30, 11);
            Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
            Assert.All(lines, line => Assert.True(Lettering.WidthMm(line, 11) <= 30));
        });
    }

    private static Drawing Sheet(params Shape[] shapes) => new("sheet", "Sheet", "A sheet.", 100, 50, [.. shapes]);
}
