using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Spaces to write in, boxes to tick, rings and directions.</summary>
internal static class PdfMarks
{
    /// <summary>A space to write in, with its unit at its right end.</summary>
    public static Piece Blank(Blank blank, double width) => new MarkPiece(PdfMeasures.BlankHigh, (sheet, x, y) =>
    {
        sheet.Frame(x, y, width, PdfMeasures.BlankHigh, new Pen(0.5));
        Unit(sheet, blank.Unit, x + width, y + PdfMeasures.BlankHigh, width);
    });

    /// <summary>The unit in the lower right corner of a space.</summary>
    public static void Unit(Sheet sheet, string unit, double right, double bottom, double width)
    {
        if (unit.Length > 0)
        {
            var text = PdfText.OneLine(unit, strong: false);
            sheet.Text(right - 1.5, bottom - 1.8, text, Fit(text, PdfMeasures.InBlank, width - 3, strong: false), anchor: Anchor.End);
        }
    }

    /// <summary>A box to tick.</summary>
    public static Piece Tick(double side) => new MarkPiece(side, (sheet, x, y) => sheet.Frame(x, y, side, side, new Pen(0.6)));

    /// <summary>A number in a ring; a long one in a ring drawn out.</summary>
    public static Piece Ring(string number, double width)
    {
        var text = PdfText.OneLine(number, strong: true);
        var size = Fit(text, PdfMeasures.Ring, width - 4, strong: true);
        var wide = Math.Clamp(PdfLines.WidthOf(text, true, size) + 4, 15, Math.Max(15, width));
        return new MarkPiece(15, (sheet, x, y) =>
        {
            var left = x + ((width - wide) / 2);
            sheet.Add(wide <= 15 ? new CircleShape(new Spot(left + 7.5, y + 7.5), 7.1, new Pen(0.8)) : Pill(left + 0.4, y + 0.4, wide - 0.8, 14.2));
            sheet.Text(left + (wide / 2), y + 7.5 + (0.365 * size * 25.4 / 72), text, size, strong: true, Anchor.Middle);
        });
    }

    /// <summary>A direction, drawn with 0 degrees to the right, and in figures.</summary>
    public static Piece Direction(Direction direction, PdfMeasures measures, double width)
    {
        var lines = new List<Piece>();
        var room = Math.Max(width - 13.5, 8);
        if (direction.Label is { } label)
        {
            lines.Add(TextPiece.Of(label, room, measures.Note, measures.Leading));
        }

        lines.Add(TextPiece.Of(Angles.Text(direction.Orientation), room, measures.Body, measures.Leading, strong: true));
        return new RowPiece([new Beside(0, new MarkPiece(12, (sheet, x, y) => Rose(sheet, direction, x + 6, y + 6))), new Beside(13.5, new StackPiece(lines))]);
    }

    /// <summary>The size of type, at most the wanted one, in which a line is no wider than that.</summary>
    public static double Fit(string text, double sizePt, double widthMm, bool strong)
    {
        var width = PdfLines.WidthOf(text, strong, sizePt);
        return width <= widthMm || width <= 0 ? sizePt : sizePt * Math.Max(widthMm, 1) / width;
    }

    private static void Rose(Sheet sheet, Direction direction, double x, double y)
    {
        const double unit = 0.6;
        sheet.Add(new CircleShape(new Spot(x, y), 9.6 * unit, new Pen(0.2)));
        var angles = Angles.Lines(direction.Orientation).ToList();
        if (angles.Count > 0)
        {
            var thin = new Pen(0.3);
            sheet.Add(new PathShape([new(x, y), new(x + (7 * unit), y)], thin));
            sheet.Add(new PathShape([new(x + (5 * unit), y - (1.5 * unit)), new(x + (7 * unit), y), new(x + (5 * unit), y + (1.5 * unit))], thin));
        }

        foreach (var angle in angles)
        {
            var (dx, dy) = (9 * unit * Math.Cos(angle * Math.PI / 180), -9 * unit * Math.Sin(angle * Math.PI / 180));
            sheet.Line(x - dx, y - dy, x + dx, y + dy, 1);
        }
    }

    private static PathShape Pill(double x, double y, double width, double height)
    {
        const int steps = 12;
        var r = height / 2;
        var right = Enumerable.Range(0, steps + 1).Select(i => -Math.PI / 2 + (Math.PI * i / steps)).Select(a => new Spot(x + width - r + (r * Math.Cos(a)), y + r + (r * Math.Sin(a))));
        var left = Enumerable.Range(0, steps + 1).Select(i => (Math.PI / 2) + (Math.PI * i / steps)).Select(a => new Spot(x + r + (r * Math.Cos(a)), y + r + (r * Math.Sin(a))));
        return new PathShape([.. right, .. left], new Pen(0.8), Closed: true);
    }
}
