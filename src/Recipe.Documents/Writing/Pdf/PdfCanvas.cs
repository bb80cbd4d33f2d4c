using PdfSharp.Drawing;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Draws shapes on a page of a PDF.</summary>
internal sealed class PdfCanvas(XGraphics page, Dictionary<(double Size, bool Strong), XFont> fonts)
{
    private const double PointsPerMm = 72 / 25.4;

    public void Draw(Shape shape)
    {
        switch (shape)
        {
            case PathShape path:
                Draw(path);
                break;
            case CircleShape circle:
                Draw(circle);
                break;
            case TextShape text:
                Draw(text);
                break;
            default:
                throw new ArgumentException($"No PDF for {shape.GetType().Name}.", nameof(shape));
        }
    }

    private void Draw(PathShape shape)
    {
        if (shape.Points.Length < 2)
        {
            return;
        }

        var points = shape.Points.Select(Point).ToArray();
        if (!shape.Closed && shape.Fill == Fill.None)
        {
            if (shape.Pen is { } line)
            {
                page.DrawLines(PenOf(line), points);
            }

            return;
        }

        var path = new XGraphicsPath();
        path.AddPolygon(points);
        Paint(path, shape.Pen, shape.Fill, Bounds(shape.Points));
    }

    private void Draw(CircleShape circle)
    {
        var (x, y, r) = (circle.Centre.X, circle.Centre.Y, circle.RadiusMm);
        var path = new XGraphicsPath();
        path.AddEllipse((x - r) * PointsPerMm, (y - r) * PointsPerMm, 2 * r * PointsPerMm, 2 * r * PointsPerMm);
        Paint(path, circle.Pen, circle.Fill, (x - r, y - r, x + r, y + r));
    }

    private void Draw(TextShape shape)
    {
        var text = PdfText.OneLine(shape.Text, shape.Strong);
        if (text.Trim().Length == 0)
        {
            return;
        }

        var size = Math.Round(shape.SizePt, 3);
        if (!fonts.TryGetValue((size, shape.Strong), out var font))
        {
            fonts.Add((size, shape.Strong), font = new XFont(PdfFonts.Family, size, shape.Strong ? XFontStyleEx.Bold : XFontStyleEx.Regular));
        }

        var width = PdfLines.WidthOf(text, shape.Strong, size);
        var shift = shape.Anchor switch
        {
            Anchor.Middle => width / 2,
            Anchor.End => width,
            _ => 0,
        };
        if (!shape.Upright)
        {
            page.DrawString(text, font, XBrushes.Black, (shape.At.X - shift) * PointsPerMm, shape.At.Y * PointsPerMm);
            return;
        }

        var state = page.Save();
        page.RotateAtTransform(-90, Point(shape.At));
        page.DrawString(text, font, XBrushes.Black, (shape.At.X - shift) * PointsPerMm, shape.At.Y * PointsPerMm);
        page.Restore(state);
    }

    private void Paint(XGraphicsPath path, Pen? pen, Fill fill, (double Left, double Top, double Right, double Bottom) bounds)
    {
        switch (fill)
        {
            case Fill.None:
                break;
            case Fill.Hatched or Fill.CrossHatched or Fill.Dotted:
                Pattern(path, fill, bounds);
                break;
            default:
                page.DrawPath(Brush(fill), path);
                break;
        }

        if (pen is { } p)
        {
            page.DrawPath(PenOf(p), path);
        }
    }

    // The same patterns as in SVG, from the corner of the page.
    private void Pattern(XGraphicsPath path, Fill fill, (double Left, double Top, double Right, double Bottom) bounds)
    {
        var state = page.Save();
        page.IntersectClip(path);
        if (fill == Fill.Dotted)
        {
            Dots(bounds);
        }
        else
        {
            Hatch(bounds, rises: true);
            if (fill == Fill.CrossHatched)
            {
                Hatch(bounds, rises: false);
            }
        }

        page.Restore(state);
    }

    private void Hatch((double Left, double Top, double Right, double Bottom) bounds, bool rises)
    {
        const double step = 2;
        var pen = PenOf(new Pen(0.2));
        var (height, sign) = (bounds.Bottom - bounds.Top, rises ? 1 : -1);

        // Lines x + y = k * step, or x - y = k * step.
        var low = rises ? bounds.Left + bounds.Top : bounds.Left - bounds.Bottom;
        var high = rises ? bounds.Right + bounds.Bottom : bounds.Right - bounds.Top;
        for (var at = Math.Ceiling(low / step) * step; at <= high; at += step)
        {
            page.DrawLine(pen, Point(new Spot(at - (sign * bounds.Top), bounds.Top)), Point(new Spot(at - (sign * (bounds.Top + height)), bounds.Bottom)));
        }
    }

    private void Dots((double Left, double Top, double Right, double Bottom) bounds)
    {
        const double step = 0.8, radius = 0.22;
        var dots = new XGraphicsPath();
        for (var j = (int)Math.Floor(bounds.Top / step); j * step <= bounds.Bottom; j++)
        {
            for (var i = (int)Math.Floor(bounds.Left / step); i * step <= bounds.Right; i++)
            {
                if ((i + j) % 2 == 0)
                {
                    dots.AddEllipse(((i * step) - radius) * PointsPerMm, ((j * step) - radius) * PointsPerMm, 2 * radius * PointsPerMm, 2 * radius * PointsPerMm);
                }
            }
        }

        page.DrawPath(XBrushes.Black, dots);
    }

    private static (double Left, double Top, double Right, double Bottom) Bounds(IReadOnlyList<Spot> points) =>
        (points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));

    private static XPoint Point(Spot spot) => new(spot.X * PointsPerMm, spot.Y * PointsPerMm);

    private static XPen PenOf(Pen pen)
    {
        var width = pen.WidthMm * PointsPerMm;
        var drawn = new XPen(XColors.Black, width) { LineJoin = XLineJoin.Miter };
        if (pen.Dashed && width > 0)
        {
            // In widths of the pen: dashes of 2 mm and gaps of 1.2 mm.
            drawn.DashPattern = [2 / pen.WidthMm, 1.2 / pen.WidthMm];
        }

        return drawn;
    }

    private static XSolidBrush Brush(Fill fill) => fill switch
    {
        Fill.White => XBrushes.White,
        Fill.Pale => new XSolidBrush(XColor.FromGrayScale(0.933)),
        Fill.Mid => new XSolidBrush(XColor.FromGrayScale(0.733)),
        _ => XBrushes.Black,
    };
}
