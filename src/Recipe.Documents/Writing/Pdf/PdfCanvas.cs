using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>
/// Draws the shapes of a page as operators. A page has its origin in the lower left corner, points upwards; shapes theirs in the upper
/// left one, millimetres downwards.
/// </summary>
/// <param name="to">Where the operators go.</param>
/// <param name="faces">The faces of the file; on a page they are called R and B.</param>
/// <param name="heightMm">Height of the page, mm.</param>
internal sealed class PdfCanvas(PdfOperators to, (PdfFace Regular, PdfFace Bold) faces, double heightMm)
{
    private const double PointsPerMm = 72 / 25.4;

    // The distance of the control points of a quarter of a circle drawn as a Bézier curve, in radii: 4 (sqrt 2 - 1) / 3.
    private const double Quarter = 0.5522847498307936;

    // What a page begins with (ISO 32000-1, 8.4.1).
    private State _state = new(WidthMm: 25.4 / 72, IsDashed: false, Grey: 0, Size: 0, Strong: false);

    private readonly record struct State(double WidthMm, bool IsDashed, double Grey, double Size, bool Strong);

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

        if (shape.Closed || shape.Fill != Fill.None)
        {
            Paint(() => Polygon(shape), shape.Pen, shape.Fill, Bounds(shape));
        }
        else if (shape.Pen is { } line)
        {
            Use(line);
            Lines(shape);
            to.Write("S\n"u8);
        }
    }

    private void Draw(CircleShape circle)
    {
        var (x, y, r) = (circle.Centre.X, circle.Centre.Y, circle.RadiusMm);
        Paint(() => Circle(x, y, r), circle.Pen, circle.Fill, (x - r, y - r, x + r, y + r));
    }

    private void Draw(TextShape shape)
    {
        var text = PdfText.OneLine(shape.Text, shape.Strong);
        if (text.AsSpan().Trim().IsEmpty)
        {
            return;
        }

        var size = Math.Round(shape.SizePt, 3);
        var width = PdfLines.WidthOf(text, shape.Strong, size);
        var shift = shape.Anchor switch
        {
            Anchor.Middle => width / 2,
            Anchor.End => width,
            _ => 0,
        };
        Use(0);
        to.Write("BT\n"u8);
        if (_state.Size != size || _state.Strong != shape.Strong)
        {
            to.Write(shape.Strong ? "/B "u8 : "/R "u8).Number(size).Write("Tf\n"u8);
            _state = _state with { Size = size, Strong = shape.Strong };
        }

        if (shape.Upright)
        {
            At(to.Write("0 1 -1 0 "u8), shape.At.X, shape.At.Y + shift).Write("Tm\n"u8);
        }
        else
        {
            At(to, shape.At.X - shift, shape.At.Y).Write("Td\n"u8);
        }

        (shape.Strong ? faces.Bold : faces.Regular).Write(to, text);
        to.Write("Tj\nET\n"u8);
    }

    private void Paint(Action path, Pen? pen, Fill fill, (double Left, double Top, double Right, double Bottom) bounds)
    {
        if (fill is Fill.Hatched or Fill.CrossHatched or Fill.Dotted)
        {
            Pattern(path, fill, bounds);
            fill = Fill.None;
        }

        if (fill != Fill.None)
        {
            Use(Grey(fill));
        }

        if (pen is { } p)
        {
            Use(p);
        }

        if (pen is not null || fill != Fill.None)
        {
            path();
            to.Write(fill == Fill.None ? "S\n"u8 : pen is null ? "f*\n"u8 : "B*\n"u8);
        }
    }

    // The same patterns as in SVG, from the corner of the page.
    private void Pattern(Action path, Fill fill, (double Left, double Top, double Right, double Bottom) bounds)
    {
        var before = _state;
        to.Write("q\n"u8);
        path();
        to.Write("W* n\n"u8);
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

        to.Write("Q\n"u8);
        _state = before;
    }

    private void Hatch((double Left, double Top, double Right, double Bottom) bounds, bool rises)
    {
        const double step = 2;
        Use(new Pen(0.2));
        var (height, sign) = (bounds.Bottom - bounds.Top, rises ? 1 : -1);

        // Lines x + y = k * step, or x - y = k * step.
        var low = rises ? bounds.Left + bounds.Top : bounds.Left - bounds.Bottom;
        var high = rises ? bounds.Right + bounds.Bottom : bounds.Right - bounds.Top;
        for (var at = Math.Ceiling(low / step) * step; at <= high; at += step)
        {
            At(to, at - (sign * bounds.Top), bounds.Top).Write("m "u8);
            At(to, at - (sign * (bounds.Top + height)), bounds.Bottom).Write("l\n"u8);
        }

        to.Write("S\n"u8);
    }

    // A dot is a line of no length with round ends.
    private void Dots((double Left, double Top, double Right, double Bottom) bounds)
    {
        const double step = 0.8, radius = 0.22;
        Use(new Pen(2 * radius));
        to.Write("1 J\n"u8);
        for (var j = (int)Math.Floor(bounds.Top / step); j * step <= bounds.Bottom; j++)
        {
            for (var i = (int)Math.Floor(bounds.Left / step); i * step <= bounds.Right; i++)
            {
                if ((i + j) % 2 == 0)
                {
                    At(At(to, i * step, j * step).Write("m "u8), i * step, j * step).Write("l\n"u8);
                }
            }
        }

        to.Write("S\n"u8);
    }

    private void Polygon(PathShape shape)
    {
        if (shape.Points is [var a, var b, var c, var d] && a.Y == b.Y && b.X == c.X && c.Y == d.Y && d.X == a.X)
        {
            At(to, d.X, d.Y).Number((c.X - d.X) * PointsPerMm).Number((d.Y - a.Y) * PointsPerMm).Write("re\n"u8);
            return;
        }

        Lines(shape);
        to.Write("h\n"u8);
    }

    private void Lines(PathShape shape)
    {
        for (var i = 0; i < shape.Points.Length; i++)
        {
            At(to, shape.Points[i].X, shape.Points[i].Y).Write(i == 0 ? "m "u8 : "l\n"u8);
        }
    }

    private void Circle(double x, double y, double r)
    {
        const double k = Quarter;
        At(to, x + r, y).Write("m "u8);
        At(At(At(to, x + r, y - (k * r)), x + (k * r), y - r), x, y - r).Write("c\n"u8);
        At(At(At(to, x - (k * r), y - r), x - r, y - (k * r)), x - r, y).Write("c\n"u8);
        At(At(At(to, x - r, y + (k * r)), x - (k * r), y + r), x, y + r).Write("c\n"u8);
        At(At(At(to, x + (k * r), y + r), x + r, y + (k * r)), x + r, y).Write("c h\n"u8);
    }

    private PdfOperators At(PdfOperators operators, double x, double y) => operators.Number(x * PointsPerMm).Number((heightMm - y) * PointsPerMm);

    private void Use(Pen pen)
    {
        if (_state.WidthMm != pen.WidthMm)
        {
            to.Number(pen.WidthMm * PointsPerMm).Write("w\n"u8);
            _state = _state with { WidthMm = pen.WidthMm };
        }

        if (_state.IsDashed != pen.Dashed)
        {
            // Dashes of 2 mm and gaps of 1.2 mm.
            to.Write(pen.Dashed ? "["u8 : "[] 0 d\n"u8);
            if (pen.Dashed)
            {
                to.Number(2 * PointsPerMm).Number(1.2 * PointsPerMm).Write("] 0 d\n"u8);
            }

            _state = _state with { IsDashed = pen.Dashed };
        }
    }

    private void Use(double grey)
    {
        if (_state.Grey != grey)
        {
            to.Number(grey).Write("g\n"u8);
            _state = _state with { Grey = grey };
        }
    }

    private static double Grey(Fill fill) => fill switch
    {
        Fill.White => 1,
        Fill.Pale => 0.933,
        Fill.Mid => 0.733,
        _ => 0,
    };

    private static (double Left, double Top, double Right, double Bottom) Bounds(PathShape shape)
    {
        var (left, top, right, bottom) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var point in shape.Points)
        {
            (left, top, right, bottom) = (Math.Min(left, point.X), Math.Min(top, point.Y), Math.Max(right, point.X), Math.Max(bottom, point.Y));
        }

        return (left, top, right, bottom);
    }
}
