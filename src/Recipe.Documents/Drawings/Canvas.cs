using Recipe.Documents.Layout;

namespace Recipe.Documents.Drawings;

/// <summary>A rectangle on a drawing, mm.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    public bool Meets(Box other) => X < other.X + other.Width && other.X < X + Width && Y < other.Y + other.Height && other.Y < Y + Height;

    public bool Holds(Box other) => other.X >= X && other.Y >= Y && other.X + other.Width <= X + Width && other.Y + other.Height <= Y + Height;
}

/// <summary>
/// A drawing while it is made. It knows where letters stand already: a text that would lie over another or leave the drawing is not
/// drawn, and the caller hears so. What a drawing leaves out for want of room stands in the text of its sheet.
/// </summary>
internal sealed class Canvas(double widthMm, double heightMm)
{
    private readonly List<Shape> _shapes = [];
    private readonly List<Box> _texts = [];

    public double WidthMm { get; } = widthMm;

    public double HeightMm { get; } = heightMm;

    /// <summary>The room that a text takes, by the place of its base line.</summary>
    public static Box BoxOf(TextShape text)
    {
        var width = Lettering.WidthMm(text.Text, text.SizePt, text.Strong);
        var (above, below) = (Lettering.HeightMm(text.SizePt) * 1.1, Lettering.DepthMm(text.SizePt) * 1.1);
        var before = text.Anchor switch { Anchor.Start => 0, Anchor.Middle => width / 2, _ => width };

        // Turned by a quarter counter-clockwise: it runs upwards, its top looks left.
        return text.Upright
            ? new Box(text.At.X - above, text.At.Y - (width - before), above + below, width)
            : new Box(text.At.X - before, text.At.Y - above, width, above + below);
    }

    public void Add(Shape shape)
    {
        _shapes.Add(shape);
        if (shape is TextShape text)
        {
            _texts.Add(BoxOf(text));
        }
    }

    public void Line(double x1, double y1, double x2, double y2, Pen pen) => Add(PathShape.Line(x1, y1, x2, y2, pen));

    /// <summary>A text, unless it would lie over another or leave the drawing.</summary>
    public bool Text(double x, double y, string text, double sizePt, Anchor anchor = Anchor.Start, bool strong = false, bool upright = false)
    {
        var shape = new TextShape(new Spot(x, y), text, sizePt, anchor, strong, upright);
        if (text.Length == 0 || !IsFree(BoxOf(shape)))
        {
            return false;
        }

        Add(shape);
        return true;
    }

    /// <summary>Lines of text under one another, the first base line at a height; all of them or none.</summary>
    public bool Lines(double x, double y, IReadOnlyList<string> lines, double sizePt, Anchor anchor = Anchor.Start, bool firstStrong = false)
    {
        var shapes = lines.Select((line, i) => new TextShape(new Spot(x, y + (i * Lettering.LineMm(sizePt))), line, sizePt, anchor, firstStrong && i == 0)).ToList();
        if (shapes.Any(shape => !IsFree(BoxOf(shape))))
        {
            return false;
        }

        shapes.ForEach(Add);
        return true;
    }

    /// <summary>Keeps texts out of a place.</summary>
    public void Keep(Box box) => _texts.Add(box);

    /// <summary>Whether no text stands there yet.</summary>
    public bool IsFree(Box box) => new Box(0, 0, WidthMm, HeightMm).Holds(box) && !_texts.Any(box.Meets);

    /// <summary>A short mark in a ring, a number or a letter; like a text only where there is room.</summary>
    public bool Ring(double x, double y, string mark, double sizePt = 9)
    {
        var text = new TextShape(new Spot(x, y + (Lettering.HeightMm(sizePt) / 2)), mark, sizePt, Anchor.Middle, Strong: true);
        var radius = Math.Max((BoxOf(text).Width / 2) + 0.5, Lettering.HeightMm(sizePt) * 0.95);
        var room = new Box(x - radius, y - radius, 2 * radius, 2 * radius);
        if (!IsFree(room))
        {
            return false;
        }

        Add(new CircleShape(new Spot(x, y), radius, new Pen(0.35), Fill.White));
        Add(text);
        _texts.Add(room);
        return true;
    }

    /// <summary>A line with a head at its end.</summary>
    public void Arrow(double x1, double y1, double x2, double y2, Pen pen, double headMm = 3)
    {
        var (dx, dy) = (x2 - x1, y2 - y1);
        var length = Math.Max(Math.Sqrt((dx * dx) + (dy * dy)), 1e-6);
        var (ux, uy) = (dx / length, dy / length);
        Line(x1, y1, x2 - (ux * headMm * 0.8), y2 - (uy * headMm * 0.8), pen);
        Add(new PathShape(
            [new(x2, y2), new(x2 - (ux * headMm) - (uy * headMm * 0.4), y2 - (uy * headMm) + (ux * headMm * 0.4)), new(x2 - (ux * headMm) + (uy * headMm * 0.4), y2 - (uy * headMm) - (ux * headMm * 0.4))],
            null,
            Closed: true,
            Fill.Black));
    }

    /// <summary>A dimension across: a line with ticks at both ends and its figure above the middle.</summary>
    public void Across(double x1, double x2, double y, string figure, double sizePt = 9)
    {
        Line(x1, y, x2, y, Pen.Thin);
        Line(x1, y - 1.5, x1, y + 1.5, Pen.Thin);
        Line(x2, y - 1.5, x2, y + 1.5, Pen.Thin);
        _ = Text((x1 + x2) / 2, y - 1, figure, sizePt, Anchor.Middle) || Text(x2 + 1.5, y + 1, figure, sizePt) || Text(x1 - 1.5, y + 1, figure, sizePt, Anchor.End);
    }

    /// <summary>A dimension down: a line with ticks at both ends and its figure beside the middle.</summary>
    public void Down(double x, double y1, double y2, string figure, double sizePt = 9)
    {
        Line(x, y1, x, y2, Pen.Thin);
        Line(x - 1.5, y1, x + 1.5, y1, Pen.Thin);
        Line(x - 1.5, y2, x + 1.5, y2, Pen.Thin);
        _ = Text(x + 1.5, ((y1 + y2) / 2) + 1, figure, sizePt) || Text(x - 1.5, ((y1 + y2) / 2) + 1, figure, sizePt, Anchor.End);
    }

    /// <summary>The drawing.</summary>
    public Drawing Draw(string name, string title, string description) => new(name, title, description, WidthMm, HeightMm, [.. _shapes]);
}
