using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>What is drawn on one page, mm from its upper left corner, in the order of reading.</summary>
internal sealed class Sheet
{
    private readonly List<Shape> _shapes = [];
    private double _x;
    private double _y;
    private double _scale = 1;

    /// <summary>Everything drawn so far.</summary>
    public IReadOnlyList<Shape> Shapes => _shapes;

    /// <summary>Draws with another origin and scale.</summary>
    public void Within(double x, double y, double scale, Action draw)
    {
        var before = (_x, _y, _scale);
        (_x, _y, _scale) = (_x + (x * _scale), _y + (y * _scale), _scale * scale);
        draw();
        (_x, _y, _scale) = before;
    }

    /// <summary>Draws a shape at the present origin and scale.</summary>
    public void Add(Shape shape) => _shapes.Add(shape switch
    {
        PathShape path => path with { Points = [.. path.Points.Select(Moved)], Pen = Scaled(path.Pen) },
        CircleShape circle => circle with { Centre = Moved(circle.Centre), RadiusMm = circle.RadiusMm * _scale, Pen = Scaled(circle.Pen) },
        TextShape text => text with { At = Moved(text.At), SizePt = text.SizePt * _scale },
        _ => throw new ArgumentException($"No page holds {shape.GetType().Name}.", nameof(shape)),
    });

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, double widthMm) => Add(PathShape.Line(x1, y1, x2, y2, new Pen(widthMm)));

    /// <summary>A frame whose outer edges are the given ones.</summary>
    public void Frame(double x, double y, double width, double height, Pen pen)
    {
        var half = pen.WidthMm / 2;
        Add(PathShape.Box(x + half, y + half, width - pen.WidthMm, height - pen.WidthMm, pen));
    }

    /// <summary>An area without an outline.</summary>
    public void Area(double x, double y, double width, double height, Fill fill) => Add(PathShape.Box(x, y, width, height, null, fill));

    /// <summary>A text in one face.</summary>
    public void Text(double x, double baseline, string text, double sizePt, bool strong = false, Anchor anchor = Anchor.Start) =>
        Add(new TextShape(new Spot(x, baseline), text, sizePt, anchor, strong));

    private Spot Moved(Spot spot) => new(_x + (spot.X * _scale), _y + (spot.Y * _scale));

    private Pen? Scaled(Pen? pen) => pen is { } p ? p with { WidthMm = p.WidthMm * _scale } : null;
}
