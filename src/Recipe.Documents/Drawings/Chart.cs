using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Drawings;

/// <summary>One axis of a chart: values from <paramref name="Low"/> to <paramref name="High"/> lie from <paramref name="Start"/> to <paramref name="End"/>, mm on the drawing.</summary>
internal sealed record Axis(double Low, double High, double Start, double End, double Step)
{
    /// <summary>Where a value lies, mm; one beyond the axis lies at its end.</summary>
    public double At(double value) => Start + ((Math.Clamp(value, Low, High) - Low) / (High - Low) * (End - Start));

    /// <summary>Whether a value lies on it.</summary>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>The values that have a line of the squares.</summary>
    public IEnumerable<double> Lines() => Enumerable.Range(0, (int)Math.Round((High - Low) / Step) + 1).Select(i => Low + (i * Step));
}

/// <summary>What charts share: squares to draw on by hand, ticks at round values, lines clipped to the squares, labels that keep apart.</summary>
internal static class Chart
{
    /// <summary>Side of a square, mm: graph squares of 5 mm, as a school pad has them.</summary>
    public const double Square = 5;

    // Thin enough that a pencil shows over it.
    private static readonly Pen Hair = new(0.1);

    private static readonly ImmutableArray<double> Round = [1, 2, 5];
    private static readonly ImmutableArray<double> RoundMinutes = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440];

    /// <summary>The smallest of 1, 2, 5, 10, 20, ... that spans a range in so many steps.</summary>
    public static double NiceStep(double range, int mostSteps)
    {
        if (!(range > 0) || !double.IsFinite(range) || mostSteps < 1)
        {
            return 1;
        }

        var power = Math.Pow(10, Math.Floor(Math.Log10(range / mostSteps)));
        foreach (var step in Round.Append(10))
        {
            if (Math.Ceiling(range / (step * power) * (1 - 1e-9)) <= mostSteps)
            {
                return step * power;
            }
        }

        return 20 * power;
    }

    /// <summary>The smallest step of a clock, minutes, that spans a range in so many steps; whole days beyond that.</summary>
    public static double NiceMinutes(double range, int mostSteps)
    {
        foreach (var step in RoundMinutes)
        {
            if (Math.Ceiling(range / step * (1 - 1e-9)) <= mostSteps)
            {
                return step;
            }
        }

        return 1440 * Math.Ceiling(range / 1440 / mostSteps);
    }

    /// <summary>An axis across, from 0 to a time in minutes: as many squares as it takes, no more than fit.</summary>
    public static Axis Across(double minutes, double x, int mostSquares)
    {
        var step = NiceMinutes(Math.Max(minutes, 1), mostSquares);
        var squares = Math.Max(1, (int)Math.Ceiling(Math.Max(minutes, 1) / step * (1 - 1e-9)));
        return new Axis(0, squares * step, x, x + (squares * Square), step);
    }

    /// <summary>An axis up, over values from a low to a high: round values at the lines, the lowest at the bottom.</summary>
    public static Axis Up(double low, double high, double bottom, int mostSquares)
    {
        var step = NiceStep(Math.Max(high - low, 1e-6), mostSquares - 1);
        var first = Math.Floor((low / step) + 1e-9) * step;
        var squares = Math.Max(2, (int)Math.Ceiling(((high - first) / step) - 1e-9));
        return new Axis(first, first + (squares * step), bottom, bottom - (squares * Square), step);
    }

    /// <summary>The squares of two axes.</summary>
    public static void Grid(Canvas canvas, Axis across, Axis up)
    {
        foreach (var value in across.Lines())
        {
            canvas.Line(across.At(value), up.Start, across.At(value), up.End, Hair);
        }

        foreach (var value in up.Lines())
        {
            canvas.Line(across.Start, up.At(value), across.End, up.At(value), Hair);
        }

        canvas.Add(PathShape.Box(across.Start, up.End, across.End - across.Start, up.Start - up.End, Pen.Firm));
    }

    /// <summary>Labels along an axis across, thinned until none meets its neighbour.</summary>
    public static void LabelAcross(Canvas canvas, Axis across, double y, Func<double, string> label, double sizePt)
    {
        var values = across.Lines().ToList();
        var every = 1;
        while (every < values.Count && Crowded(every))
        {
            every++;
        }

        for (var i = 0; i < values.Count; i += every)
        {
            _ = canvas.Text(across.At(values[i]), y, label(values[i]), sizePt, Anchor.Middle);
        }

        bool Crowded(int each) => Enumerable.Range(0, ((values.Count - 1) / each) + 1).Select(i => values[i * each]).Zip(
            Enumerable.Range(1, Math.Max(0, (values.Count - 1) / each)).Select(i => values[i * each]),
            (a, b) => across.At(b) - across.At(a) < ((Lettering.WidthMm(label(a), sizePt) + Lettering.WidthMm(label(b), sizePt)) / 2) + 1.5).Any(crowds => crowds);
    }

    /// <summary>Labels along an axis up, thinned until none meets its neighbour.</summary>
    public static void LabelUp(Canvas canvas, Axis up, double x, double sizePt)
    {
        var every = Math.Max(1, (int)Math.Ceiling(Lettering.LineMm(sizePt) / Square));
        var values = up.Lines().ToList();
        for (var i = 0; i < values.Count; i += every)
        {
            _ = canvas.Text(x, up.At(values[i]) + (Lettering.HeightMm(sizePt) / 2), Numbers.AtMost(values[i], 3), sizePt, Anchor.End);
        }
    }

    /// <summary>A line through points, clipped to the squares.</summary>
    public static void Line(Canvas canvas, Axis across, Axis up, IReadOnlyList<(double X, double Y)> points, Pen pen)
    {
        for (var i = 1; i < points.Count; i++)
        {
            if (Clip(points[i - 1], points[i], across, up) is var (a, b))
            {
                canvas.Line(across.At(a.X), up.At(a.Y), across.At(b.X), up.At(b.Y), pen);
            }
        }
    }

    // Liang and Barsky, A New Concept and Method for Line Clipping, ACM Transactions on Graphics 3 (1984).
    private static ((double X, double Y) From, (double X, double Y) To)? Clip((double X, double Y) from, (double X, double Y) to, Axis across, Axis up)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var (start, end) = (0.0, 1.0);
        foreach (var (p, q) in (ReadOnlySpan<(double, double)>)[(-dx, from.X - across.Low), (dx, across.High - from.X), (-dy, from.Y - up.Low), (dy, up.High - from.Y)])
        {
            if (p == 0)
            {
                if (q < 0)
                {
                    return null;
                }
            }
            else if (p < 0)
            {
                start = Math.Max(start, q / p);
            }
            else
            {
                end = Math.Min(end, q / p);
            }
        }

        return start > end ? null : ((from.X + (start * dx), from.Y + (start * dy)), (from.X + (end * dx), from.Y + (end * dy)));
    }
}
