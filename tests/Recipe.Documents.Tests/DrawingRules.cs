using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Tests;

/// <summary>What holds for every drawing: it fits a page, nothing of it lies outside, no letters lie on letters or under a bold line.</summary>
internal static class DrawingRules
{
    private const double MmPerPoint = 25.4 / 72;
    private const double Slack = 0.05;

    /// <summary>Drawings of a paper.</summary>
    public static IEnumerable<Drawing> Of(PaperKind kind, PaperInput input) => kind.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Drawing>();

    public static void Check(Drawing drawing, string about)
    {
        // A4 and Letter with 20 mm on the left and 9 mm on the right leave 181 mm and more.
        Assert.InRange(drawing.WidthMm, 10, 180);
        Assert.InRange(drawing.HeightMm, 5, 230);
        Assert.False(string.IsNullOrWhiteSpace(drawing.Title) || string.IsNullOrWhiteSpace(drawing.Description), about);
        var texts = drawing.Shapes.OfType<TextShape>().Select(text => (Text: text, Box: BoxOf(text))).ToList();
        foreach (var (text, box) in texts)
        {
            Assert.True(
                box.X >= -Slack && box.Y >= -Slack && box.X + box.Width <= drawing.WidthMm + Slack && box.Y + box.Height <= drawing.HeightMm + Slack,
                $"{about}, {drawing.Name}: “{text.Text}” leaves the drawing.");
        }

        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = i + 1; j < texts.Count; j++)
            {
                Assert.False(texts[i].Box.Meets(texts[j].Box), $"{about}, {drawing.Name}: “{texts[i].Text.Text}” lies on “{texts[j].Text.Text}”.");
            }
        }

        foreach (var spot in drawing.Shapes.SelectMany(Spots))
        {
            Assert.True(
                double.IsFinite(spot.X) && double.IsFinite(spot.Y) && spot.X >= -Slack && spot.Y >= -Slack && spot.X <= drawing.WidthMm + Slack && spot.Y <= drawing.HeightMm + Slack,
                $"{about}, {drawing.Name}: a line leaves the drawing at {spot}.");
        }

        for (var k = 0; k < drawing.Shapes.Length; k++)
        {
            if (drawing.Shapes[k] is not PathShape { Pen: { WidthMm: >= 1, Dashed: false } } path)
            {
                continue;
            }

            foreach (var (text, box) in texts.Where(text => !IsCovered(drawing, k, text.Box)))
            {
                Assert.False(Segments(path).Any(segment => Crosses(segment.From, segment.To, box)), $"{about}, {drawing.Name}: a bold line crosses “{text.Text}”.");
            }
        }
    }

    // Capitals and the strokes under the base line of p and g; the width is what the drawing itself reckons with.
    private static Box BoxOf(TextShape text)
    {
        var width = Lettering.WidthMm(text.Text, text.SizePt, text.Strong) * 0.98;
        var (above, below) = (0.73 * text.SizePt * MmPerPoint, 0.2 * text.SizePt * MmPerPoint);
        var before = text.Anchor switch { Anchor.Start => 0, Anchor.Middle => width / 2, _ => width };
        return text.Upright
            ? new Box(text.At.X - above, text.At.Y - width + before, above + below, width)
            : new Box(text.At.X - before, text.At.Y - above, width, above + below);
    }

    private static IEnumerable<Spot> Spots(Shape shape) => shape switch
    {
        PathShape path => path.Points,
        CircleShape { Centre: var c, RadiusMm: var r } => [new(c.X - r, c.Y - r), new(c.X + r, c.Y + r)],
        _ => [],
    };

    // A ring with a white inside lies over a line that was drawn before it.
    private static bool IsCovered(Drawing drawing, int line, Box box) => drawing.Shapes.Skip(line + 1).Any(shape =>
        shape is CircleShape { Fill: Fill.White } ring && Math.Abs(ring.Centre.X - (box.X + (box.Width / 2))) < ring.RadiusMm && Math.Abs(ring.Centre.Y - (box.Y + (box.Height / 2))) < ring.RadiusMm);

    private static IEnumerable<(Spot From, Spot To)> Segments(PathShape path) => Enumerable.Range(1, path.Points.Length - (path.Closed ? 0 : 1)).Select(i => (path.Points[i - 1], path.Points[i % path.Points.Length]));

    private static bool Crosses(Spot from, Spot to, Box box)
    {
        for (var i = 0; i <= 200; i++)
        {
            var (x, y) = (from.X + ((to.X - from.X) * i / 200), from.Y + ((to.Y - from.Y) * i / 200));
            if (x > box.X && x < box.X + box.Width && y > box.Y && y < box.Y + box.Height)
            {
                return true;
            }
        }

        return false;
    }
}
