using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Engineering;
using Recipe.Planning;

namespace Recipe.Documents.Cuts;

/// <summary>
/// The layout of a roll, to scale: the roll runs from left to right, warp along it; where it is long, it goes on in the next row, parted at a
/// strip. Every piece carries its letter; the lengths of the strips stand beneath.
/// </summary>
internal static class NestDrawing
{
    private const double WidthMm = 180;
    private const double Left = 10;
    private const double RowWidth = WidthMm - Left - 2;
    private const double MostHeight = 100;
    private const double LeastHeight = 24;
    private const double HeightPerPiece = 7;
    private const double LetterPt = 12;
    private const double SmallPt = 9;
    private const double Under = 7;
    private const int MostRows = 4;

    public static Drawing Of(PaperContext context, NestPlan nest)
    {
        var strips = NestStrips.Of(nest);
        var width = nest.UsableWidth!.Value.Value.Meters;
        var height = Math.Min(MostHeight, LeastHeight + (HeightPerPiece * nest.Placements.Length));
        var (rows, scale) = Rows(strips, width, height);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var top = 1.0;
        foreach (var row in rows)
        {
            Row(context, nest, row, scale, top, shapes);
            top += (width * scale) + Under;
        }

        var text = context.Text;
        var one = rows.Length == 1 ? context.Wording.Say("One row.") : context.Wording.Say($"{Numbers.Whole(rows.Length)} rows, the next begins where the one above ends.");
        return new Drawing(
            "nest-" + Safe(nest.Material.Name),
            context.Wording.Say($"On the roll, {text.Size(nest.UsableWidth.Value.Value).Main} wide; warp from left to right"),
            context.Wording.Say($"{Words.Count(nest.Placements.Length, "piece", "pieces")} on {text.Size(nest.LengthUsed!.Value.Value).Main} of roll, {text.Size(nest.UsableWidth.Value.Value).Main} wide. {one}"),
            WidthMm,
            top,
            shapes.ToImmutable());
    }

    /// <summary>What is written on a piece: its letter, and a star on a mirror image.</summary>
    public static string Mark(NestSize size, NestPlacement place) => IsMirror(size, place.Copy) ? size.Letter + "*" : size.Letter;

    /// <summary>The corners of a piece, m from the cut end and the selvedge: the piece itself, turned inside the rectangle it takes.</summary>
    public static ImmutableArray<(double Along, double Across)> Outline(NestSize size, NestPlacement place)
    {
        var (x, y, l, w) = (place.AlongAt.Meters, place.AcrossAt.Meters, place.Along.Meters, place.Across.Meters);
        if (size.Strips > 1 || Math.Abs(size.Angle) is < 1 or > 89)
        {
            return [(x, y), (x + l, y), (x + l, y + w), (x, y + w)];
        }

        var angle = (IsMirror(size, place.Copy) ? -size.Angle : size.Angle) * Math.PI / 180;
        var (cosine, sine) = (Math.Cos(angle), Math.Sin(angle));
        var (a, b) = (size.Length.Meters / 2, size.Width.Meters / 2);
        var isOval = (2 * a * Math.Abs(cosine)) + (2 * b * Math.Abs(sine)) > size.Along.Meters * 1.001;
        var corners = isOval
            ? Enumerable.Range(0, 36).Select(i => (U: a * Math.Cos(i * Math.PI / 18), V: b * Math.Sin(i * Math.PI / 18)))
            : [(-a, -b), (a, -b), (a, b), (-a, b)];
        return [.. corners.Select(corner => (x + (l / 2) + (corner.U * cosine) - (corner.V * sine), y + (w / 2) + (corner.U * sine) + (corner.V * cosine)))];
    }

    private static bool IsMirror(NestSize size, int copy) => size.Mirrored && copy / size.Strips >= size.Count / size.Strips / 2;

    private static void Row(PaperContext context, NestPlan nest, ImmutableArray<NestStrip> row, double scale, double top, ImmutableArray<Shape>.Builder shapes)
    {
        var from = row[0].Start;
        var width = nest.UsableWidth!.Value.Value.Meters * scale;
        double X(double along) => Left + ((along - from) * scale);
        shapes.Add(PathShape.Box(Left, top, X(row[^1].End) - Left, width, Pen.Thin));
        foreach (var strip in row)
        {
            foreach (var place in strip.Pieces)
            {
                var size = nest.Sizes[place.Piece];
                shapes.Add(new PathShape([.. Outline(size, place).Select(spot => new Spot(X(spot.Along), top + (spot.Across * scale)))], Pen.Firm, Closed: true, Fill.Pale));
                Letter(shapes, Mark(size, place), X((place.AlongAt + (place.Along / 2)).Meters), top + ((place.AcrossAt + (place.Across / 2)).Meters * scale), place.Along.Meters * scale, place.Across.Meters * scale);
            }

            shapes.Add(PathShape.Line(X(strip.End), top, X(strip.End), top + width + 2, new Pen(0.3, Dashed: true)));
            var name = context.Wording.Say($"{Numbers.Whole(strip.Number)}: {context.Text.Size(UnitsNet.Length.FromMeters(strip.Length)).Main}");
            if (Lettering.WidthMm(name, SmallPt) + 1 < strip.Length * scale)
            {
                shapes.Add(new TextShape(new Spot((X(strip.Start) + X(strip.End)) / 2, top + width + 4.5), name, SmallPt, Anchor.Middle));
            }
        }
    }

    // A letter that does not fit its piece is left to the table, which names the strip.
    private static void Letter(ImmutableArray<Shape>.Builder shapes, string mark, double x, double y, double along, double across)
    {
        foreach (var size in (double[])[LetterPt, SmallPt])
        {
            var height = Lettering.HeightMm(size);
            if (Lettering.WidthMm(mark, size, strong: true) < along - 0.6 && height < across - 0.8)
            {
                shapes.Add(new TextShape(new Spot(x, y + (height / 2)), mark, size, Anchor.Middle, Strong: true));
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
