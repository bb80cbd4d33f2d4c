using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Engineering;
using Recipe.Planning;

namespace Recipe.Documents.Cuts;

/// <summary>
/// The layout of a roll, to scale. A short length of a wide roll hangs down from its cut end; a longer one runs from left to right, and
/// where it is long it goes on in the next row, parted at a strip. Every piece carries its letter; the lengths of the strips stand beside it.
/// </summary>
internal static class NestDrawing
{
    private const double WidthMm = 180;
    private const double Left = 1;
    private const double Beside = 36;
    private const double RowWidth = WidthMm - Left - 1;
    private const double MostHeight = 100;
    private const double LeastHeight = 16;
    private const double HeightPerPiece = 8;
    private const double LetterPt = 12;
    private const double SmallPt = 9;
    private const double Under = 7;
    private const int MostRows = 4;

    public static Drawing Of(PaperContext context, NestPlan nest)
    {
        var (say, text) = (context.Wording, context.Text);
        var strips = NestStrips.Of(nest);
        var width = nest.UsableWidth!.Value.Value.Meters;
        var length = nest.LengthUsed!.Value.Value.Meters;
        var height = Math.Min(MostHeight, LeastHeight + (HeightPerPiece * nest.Placements.Length));
        var hangs = length < width;
        var (rows, scale) = hangs ? ([strips], Math.Min((WidthMm - Beside) / width, height / length)) : Rows(strips, width, height);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var top = 1.0;
        foreach (var row in rows)
        {
            Row(context, nest, row, new Frame(row[0].Start, hangs ? 1 : Left, top, scale, hangs), shapes);
            top += hangs ? (length * scale) + 1 : (width * scale) + Under;
        }

        var wide = text.Size(nest.UsableWidth.Value.Value).Main;
        var one = rows.Length == 1 ? "" : say.Say($" {Numbers.Whole(rows.Length)} rows; the next begins where the one above ends.");
        return new Drawing(
            "nest-" + Safe(nest.Material.Name),
            hangs ? say.Say($"On the roll, {wide} wide; warp runs down") : say.Say($"On the roll, {wide} wide; warp from left to right"),
            say.Say($"{Words.Count(nest.Placements.Length, "piece", "pieces")} on {text.Size(nest.LengthUsed.Value.Value).Main} of roll, {wide} wide.{one}"),
            WidthMm,
            top,
            shapes.ToImmutable());
    }

    /// <summary>What is written on a piece: its letter, and a star on a mirror image.</summary>
    public static string Mark(NestSize size, NestPlacement place) => IsMirror(size, place.Copy) ? size.Letter + "*" : size.Letter;

    /// <summary>The angle to the roll at which a piece lies, degrees, more than -90 and at most 90.</summary>
    public static double AngleOf(NestSize size, NestPlacement place) => !place.IsTurned ? size.Angle : size.Angle > 0 ? size.Angle - 90 : size.Angle + 90;

    /// <summary>The corners of a piece, m from the cut end and the selvedge: the piece itself, turned inside the rectangle it takes.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="place">Where it lies.</param>
    /// <param name="hangs">Whether the roll is drawn hanging: across to the right, along downwards, which is the mirror image of a roll that runs to the right.</param>
    public static ImmutableArray<(double Along, double Across)> Outline(NestSize size, NestPlacement place, bool hangs = false)
    {
        var (x, y, l, w) = (place.AlongAt.Meters, place.AcrossAt.Meters, place.Along.Meters, place.Across.Meters);
        var corner = size.Strips > 1 ? 0 : size.Corner.Meters;
        if (size.Strips > 1 || Math.Abs(size.Angle) is < 1 or > 89)
        {
            return [.. Corners(l / 2, w / 2, corner).Select(at => (x + (l / 2) + at.U, y + (w / 2) + at.V))];
        }

        var angle = (IsMirror(size, place.Copy) != hangs ? -size.Angle : size.Angle) * Math.PI / 180;
        var (cosine, sine) = (Math.Cos(angle), Math.Sin(angle));
        var (a, b) = (size.Length.Meters / 2, size.Width.Meters / 2);
        var isOval = (2 * a * Math.Abs(cosine)) + (2 * b * Math.Abs(sine)) > size.Along.Meters * 1.001;
        var corners = isOval
            ? Enumerable.Range(0, 36).Select(i => (U: a * Math.Cos(i * Math.PI / 18), V: b * Math.Sin(i * Math.PI / 18)))
            : Corners(a, b, corner);
        return [.. corners.Select(at => (x + (l / 2) + (at.U * cosine) - (at.V * sine), y + (w / 2) + (at.U * sine) + (at.V * cosine)))];
    }

    // Of a rectangle about its middle, with a square cut out of each corner where it is the net of a box.
    private static IEnumerable<(double U, double V)> Corners(double a, double b, double corner) => corner <= 0
        ? [(-a, -b), (a, -b), (a, b), (-a, b)]
        :
        [
            (corner - a, -b), (a - corner, -b), (a - corner, corner - b), (a, corner - b), (a, b - corner), (a - corner, b - corner),
            (a - corner, b), (corner - a, b), (corner - a, b - corner), (-a, b - corner), (-a, corner - b), (corner - a, corner - b),
        ];

    private static bool IsMirror(NestSize size, int copy) => size.Mirrored && copy / size.Strips >= size.Count / size.Strips / 2;

    private static void Row(PaperContext context, NestPlan nest, ImmutableArray<NestStrip> row, Frame frame, ImmutableArray<Shape>.Builder shapes)
    {
        var width = nest.UsableWidth!.Value.Value.Meters;
        shapes.Add(frame.Box(row[0].Start, 0, row[^1].End, width, Pen.Thin));
        foreach (var strip in row)
        {
            foreach (var place in strip.Pieces)
            {
                var size = nest.Sizes[place.Piece];
                shapes.Add(new PathShape([.. Outline(size, place, frame.Hangs).Select(spot => frame.At(spot.Along, spot.Across))], Pen.Firm, Closed: true, Fill.Pale));
                var (along, across) = (place.Along.Meters * frame.Scale, place.Across.Meters * frame.Scale);
                Letter(
                    shapes, Mark(size, place), frame.At((place.AlongAt + (place.Along / 2)).Meters, (place.AcrossAt + (place.Across / 2)).Meters),
                    frame.Hangs ? across : along, frame.Hangs ? along : across);
            }

            var (near, far) = (frame.At(strip.End, 0), frame.At(strip.End, width));
            shapes.Add(PathShape.Line(near.X, near.Y, frame.Hangs ? far.X + 2 : far.X, frame.Hangs ? far.Y : far.Y + 2, new Pen(0.3, Dashed: true)));
            Length(context, strip, width, frame, shapes);
        }
    }

    // The length of a strip, where there is room for it; else it can be read from the table of the sizes.
    private static void Length(PaperContext context, NestStrip strip, double width, Frame frame, ImmutableArray<Shape>.Builder shapes)
    {
        var name = context.Wording.Say($"{Numbers.Whole(strip.Number)}: {context.Text.Size(UnitsNet.Length.FromMeters(strip.Length)).Main}");
        var middle = frame.At((strip.Start + strip.End) / 2, width);
        if (frame.Hangs && strip.Length * frame.Scale > Lettering.LineMm(SmallPt))
        {
            shapes.Add(new TextShape(new Spot(middle.X + 2.5, middle.Y + (Lettering.HeightMm(SmallPt) / 2)), name, SmallPt));
        }
        else if (!frame.Hangs && Lettering.WidthMm(name, SmallPt) + 1 < strip.Length * frame.Scale)
        {
            shapes.Add(new TextShape(new Spot(middle.X, middle.Y + 4.5), name, SmallPt, Anchor.Middle));
        }
    }

    /// <summary>From the roll to the paper.</summary>
    private readonly record struct Frame(double From, double X, double Y, double Scale, bool Hangs)
    {
        public Spot At(double along, double across) => Hangs
            ? new(X + (across * Scale), Y + ((along - From) * Scale))
            : new(X + ((along - From) * Scale), Y + (across * Scale));

        public PathShape Box(double along, double across, double alongEnd, double acrossEnd, Pen pen) =>
            new([At(along, across), At(alongEnd, across), At(alongEnd, acrossEnd), At(along, acrossEnd)], pen, Closed: true);
    }

    // A letter that does not fit its piece is left to the table, which names the strip.
    private static void Letter(ImmutableArray<Shape>.Builder shapes, string mark, Spot at, double wide, double high)
    {
        foreach (var size in (double[])[LetterPt, SmallPt])
        {
            var height = Lettering.HeightMm(size);
            if (Lettering.WidthMm(mark, size, strong: true) < wide - 0.6 && height < high - 0.8)
            {
                shapes.Add(new TextShape(new Spot(at.X, at.Y + (height / 2)), mark, size, Anchor.Middle, Strong: true));
                return;
            }
        }
    }

    private static (ImmutableArray<ImmutableArray<NestStrip>> Rows, double Scale) Rows(ImmutableArray<NestStrip> strips, double width, double height)
    {
        (ImmutableArray<ImmutableArray<NestStrip>> Rows, double Scale) best = ([], 0);
        for (var count = 1; count <= Math.Min(MostRows, strips.Length); count++)
        {
            var rows = Split(strips, count);
            var longest = rows.Max(row => row[^1].End - row[0].Start);
            var scale = Math.Min(RowWidth / longest, (height - (rows.Length * Under)) / rows.Length / width);
            best = scale > best.Scale * 1.1 ? (rows, scale) : best;
        }

        return best;
    }

    // Each row takes strips until its share of the length is full.
    private static ImmutableArray<ImmutableArray<NestStrip>> Split(ImmutableArray<NestStrip> strips, int count)
    {
        var share = strips[^1].End / count;
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<NestStrip>>();
        var row = ImmutableArray.CreateBuilder<NestStrip>();
        foreach (var strip in strips)
        {
            if (row.Count > 0 && rows.Count < count - 1 && strip.End - (strip.Length / 2) > share * (rows.Count + 1))
            {
                rows.Add(row.ToImmutable());
                row.Clear();
            }

            row.Add(strip);
        }

        rows.Add(row.ToImmutable());
        return rows.ToImmutable();
    }

    private static string Safe(string name) => string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-'));
}
