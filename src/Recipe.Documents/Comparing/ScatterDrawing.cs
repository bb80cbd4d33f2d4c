using Recipe.Documents.Changes;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Comparing;

/// <summary>How a point of a picture stands out.</summary>
internal enum PointMark
{
    /// <summary>One of many.</summary>
    Speck,

    /// <summary>One that is looked at.</summary>
    Full,

    /// <summary>What the others are compared with.</summary>
    Square,
}

/// <summary>A point of a picture.</summary>
/// <param name="X">The figure across, SI.</param>
/// <param name="Y">The figure up, SI.</param>
/// <param name="Mark">How it stands out.</param>
/// <param name="Label">What stands beside it, or empty.</param>
internal readonly record struct ScatterPoint(double X, double Y, PointMark Mark, string Label = "");

/// <summary>What a picture of points is about.</summary>
/// <param name="Name">Its short name.</param>
/// <param name="Title">Its caption.</param>
/// <param name="What">What a point is: "part".</param>
/// <param name="Across">The figure across, and whether less of it is better.</param>
/// <param name="Up">The figure up, and whether less of it is better.</param>
internal sealed record ScatterSubject(string Name, string Title, string What, (Figure Figure, bool LeastIsBetter) Across, (Figure Figure, bool LeastIsBetter) Up);

/// <summary>One figure against another: a point for each part, with a name beside it where there is room, and words that say which corner is better.</summary>
internal static class ScatterDrawing
{
    private const double Width = 175;
    private const double Height = 125;
    private const double Left = 22;
    private const double Right = 4;
    private const double Top = 9;
    private const double Bottom = 17;
    private const double SizePt = 9;
    private static readonly Pen Hair = new(0.1);

    /// <summary>The drawing; null when there is no point.</summary>
    public static Drawing? Of(ScatterSubject subject, IReadOnlyCollection<ScatterPoint> points, QuantityText text)
    {
        if (points.Count == 0)
        {
            return null;
        }

        var across = new ScatterAxis(subject.Across.Figure, subject.Across.LeastIsBetter, text, [.. points.Select(point => point.X)], Left, Width - Right);
        var up = new ScatterAxis(subject.Up.Figure, subject.Up.LeastIsBetter, text, [.. points.Select(point => point.Y)], Height - Bottom, Top);
        var canvas = new Canvas(Width, Height);
        Frame(canvas, across, up);
        foreach (var point in points.OrderBy(point => point.Mark))
        {
            Mark(canvas, across.At(point.X), up.At(point.Y), point.Mark);
        }

        foreach (var point in points.Where(point => point.Mark != PointMark.Speck))
        {
            canvas.Keep(Room(across.At(point.X), up.At(point.Y)));
        }

        foreach (var edge in (Box[])[new(Left, Top, Width - Left - Right, 0.5), new(Left, Height - Bottom, Width - Left - Right, 0.5), new(Left, Top, 0.5, Height - Top - Bottom), new(Width - Right - 0.5, Top, 0.5, Height - Top - Bottom)])
        {
            canvas.Keep(edge);
        }

        // What the others are compared with is named first, so that it has a name whatever happens.
        foreach (var point in points.Where(point => point.Label.Length > 0).OrderByDescending(point => point.Mark))
        {
            PointLabels.Place(canvas, across.At(point.X), up.At(point.Y), point.Label, SizePt);
        }

        return canvas.Draw(subject.Name, subject.Title, Describe(subject, points.Count, across, up));
    }

    private static void Frame(Canvas canvas, ScatterAxis across, ScatterAxis up)
    {
        foreach (var value in across.Axis.Lines())
        {
            canvas.Line(across.Axis.At(value), up.Axis.Start, across.Axis.At(value), up.Axis.End, Hair);
        }

        foreach (var value in up.Axis.Lines())
        {
            canvas.Line(across.Axis.Start, up.Axis.At(value), across.Axis.End, up.Axis.At(value), Hair);
            _ = canvas.Text(Left - 1.5, up.Axis.At(value) + (Lettering.HeightMm(SizePt) / 2), up.Tick(value), SizePt, Anchor.End);
        }

        canvas.Add(PathShape.Box(Left, Top, Width - Left - Right, Height - Top - Bottom, Pen.Firm));
        Chart.LabelAcross(canvas, across.Axis, Height - Bottom + 4.5, across.Tick, SizePt);
        var (middle, height) = ((Left + Width - Right) / 2, (Top + Height - Bottom) / 2);
        _ = canvas.Text(middle, Height - 4, Fitted.To(across.Title, SizePt + 1, 110, strong: true), SizePt + 1, Anchor.Middle, strong: true);
        _ = canvas.Text(4.5, height, Fitted.To(up.Title, SizePt + 1, 80, strong: true), SizePt + 1, Anchor.Middle, strong: true, upright: true);
        Corner(canvas, across, up);
    }

    // Above the frame, where no point can lie; the arrow looks into the corner that is meant.
    private static void Corner(Canvas canvas, ScatterAxis across, ScatterAxis up)
    {
        var words = $"better: {CornerOf(across, up)}";
        var width = Lettering.WidthMm(words, SizePt, strong: true);
        var (from, to) = across.LeastIsBetter ? (7.0, 1.0) : (1.0, 7.0);
        var (start, end) = up.LeastIsBetter ? (1.5, 6.5) : (6.5, 1.5);
        var x = across.LeastIsBetter ? Left : Width - Right - width - 10;
        canvas.Arrow(x + from, start, x + to, end, Pen.Firm, headMm: 2.5);
        _ = canvas.Text(x + 9, 5.5, words, SizePt, strong: true);
    }

    private static string CornerOf(ScatterAxis across, ScatterAxis up) =>
        $"{(up.LeastIsBetter ? "lower" : "upper")} {(across.LeastIsBetter ? "left" : "right")}";

    private static void Mark(Canvas canvas, double x, double y, PointMark mark)
    {
        switch (mark)
        {
            case PointMark.Speck:
                canvas.Add(new CircleShape(new Spot(x, y), 0.4, null, Fill.Mid));
                break;
            case PointMark.Full:
                canvas.Add(new CircleShape(new Spot(x, y), 1, new Pen(0.3), Fill.Black));
                break;
            default:
                canvas.Add(PathShape.Box(x - 1.3, y - 1.3, 2.6, 2.6, Pen.Firm, Fill.White));
                break;
        }
    }

    private static Box Room(double x, double y) => new(x - 1.3, y - 1.3, 2.6, 2.6);

    private static string Describe(ScatterSubject subject, int count, ScatterAxis across, ScatterAxis up) =>
        $"{across.Title} across and {up.Title} up, one point for each {subject.What}, {Quantities.Numbers.Whole(count)} in all. Better lies at the {CornerOf(across, up)}: "
        + $"{(across.LeastIsBetter ? "less" : "more")} across, {(up.LeastIsBetter ? "less" : "more")} up.";
}
