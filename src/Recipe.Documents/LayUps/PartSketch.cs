using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Writing;
using Recipe.Model;

namespace Recipe.Documents.LayUps;

/// <summary>The part to scale with its size, 0 degrees and the directions of its plies; pieces of a size of their own beside it, to the same scale.</summary>
internal static class PartSketch
{
    public const string Name = "part-sketch";

    private const double Width = 180;
    private const double OutlineWidth = 92;
    private const double OutlineHeight = 58;
    private const double Size = 11;
    private const double Left = 4;
    private const double Top = 8;
    private const double RoseY = 28;
    private const double RoseRadius = 17;

    // A larger piece would fill the page; the table has its size and place.
    private const double TallestPiece = 22;

    /// <summary>The sketch; null when neither an outline nor a direction is known.</summary>
    public static Drawing? Draw(BenchContext context)
    {
        var outline = PartOutline.Of(context.Plan.Geometry?.Shape);
        var directions = Directions(context);
        if (outline is null && directions.IsEmpty)
        {
            return null;
        }

        var scale = outline?.ScaleTo(OutlineWidth, OutlineHeight) ?? 0;
        var height = Math.Max(outline is null ? 0 : (outline.Width.Millimeters * scale) + Top + 16, directions.IsEmpty ? 0 : RoseY + RoseRadius + 8 + (directions.Length * Lettering.LineMm(Size)));
        var pieces = outline is null ? [] : Pieces(context, scale);
        var canvas = new Canvas(Width, height + pieces.Sum(piece => piece.Height));
        if (outline is not null)
        {
            Outline(canvas, context, outline, scale);
        }

        if (!directions.IsEmpty)
        {
            Rose(canvas, context, directions, 146, RoseY);
        }

        var y = height;
        foreach (var piece in pieces)
        {
            canvas.Add(PathShape.Box(Left, y + 1, piece.LengthMm, piece.WidthMm, Pen.Firm, Fill.Pale));
            _ = canvas.Lines(Left + piece.LengthMm + 3, y + 1 + Lettering.LineMm(Size), piece.Words, Size);
            y += piece.Height;
        }

        var title = outline is { FromBeside: true } ? context.Say("The part from beside") : context.IsWrapped ? context.Say("The part, from outside") : context.Say("The part, looking at the tool face");
        return canvas.Draw(Name, title, Describe(context, outline));
    }

    /// <summary>Directions of the plies with the numbers of the plies that lie so, in the order of the stack.</summary>
    public static ImmutableArray<(double Angle, string Plies)> Directions(BenchContext context) =>
    [
        .. context.Plan.Stack.Where(line => line.Item is PlyItem { Orientation: not null })
            .SelectMany(line => Angles.Lines(((PlyItem)line.Item).Orientation!.Value).Select(angle => (Angle: Fold(angle), Ply: StackNames.Number(context.Plan, line))))
            .GroupBy(pair => pair.Angle).OrderBy(group => group.Key)
            .Select(group => (group.Key, string.Join(", ", group.Select(pair => pair.Ply).Distinct(StringComparer.Ordinal)))),
    ];

    // -90 and 90 are one direction.
    private static double Fold(double angle) => angle <= -90 ? angle + 180 : angle;

    private static void Outline(Canvas canvas, BenchContext context, PartOutline outline, double scale)
    {
        var (length, width) = (outline.Length.Millimeters * scale, outline.Width.Millimeters * scale);
        canvas.Add(new PathShape(outline.On(Left, Top, scale), outline.IsGuess ? new Pen(0.5, Dashed: true) : new Pen(0.7), Closed: true, Fill.Pale));
        var middle = Top + (width / 2);
        canvas.Arrow(Left + (length * 0.12), middle, Left + (length * 0.88), middle, Pen.Bold, 4);
        _ = canvas.Text(Left + (length / 2), middle - 2, "0°", 16, Anchor.Middle, strong: true);
        canvas.Across(Left, Left + length, Top + width + 6.5, context.Text.Size(outline.Length).Main, Size);
        canvas.Down(Left + length + 4, Top, Top + width, context.Text.Size(outline.Width).Main, Size);
        _ = canvas.Text(Left, Top + width + 13.5, context.Say($"Scale 1 : {Numbers.Significant(1 / scale, 2)}"), Size);
    }

    // Lines through a ring, the plies that lie so at their end. 0 degrees to the right, positive counter-clockwise.
    private static void Rose(Canvas canvas, BenchContext context, ImmutableArray<(double Angle, string Plies)> directions, double x, double y)
    {
        const double radius = RoseRadius;
        canvas.Add(new CircleShape(new Spot(x, y), radius, Pen.Thin));
        foreach (var (angle, _) in directions)
        {
            var (c, s) = (Math.Cos(angle * Math.PI / 180) * radius, Math.Sin(angle * Math.PI / 180) * radius);
            if (angle == 0)
            {
                canvas.Arrow(x - c, y + s, x + c, y - s, Pen.Bold, 4);
            }
            else
            {
                canvas.Line(x - c, y + s, x + c, y - s, Pen.Firm);
            }
        }

        foreach (var (angle, plies) in directions)
        {
            var (c, s) = (Math.Cos(angle * Math.PI / 180), Math.Sin(angle * Math.PI / 180));
            var anchor = c > 0.3 ? Anchor.Start : c < -0.3 ? Anchor.End : Anchor.Middle;
            var figure = Numbers.AtMost(angle, 1) + "°";
            var (tx, ty) = (x + (c * (radius + 1.5)), y - (s * (radius + 2.5)) + (Lettering.HeightMm(Size) * (0.5 - (0.5 * s))));
            _ = canvas.Text(tx, ty, figure, Size, anchor, strong: true);
        }

        // Which ply lies which way, under the ring: longer than what fits beside a line.
        var top = y + radius + 11;
        foreach (var (angle, plies) in directions)
        {
            var word = context.Say($"{Numbers.AtMost(angle, 1)}°: ply {plies}");
            _ = Lettering.WidthMm(word, Size) < 60 && canvas.Text(x - 28, top, word, Size);
            top += Lettering.LineMm(Size);
        }
    }

    private sealed record Piece(double LengthMm, double WidthMm, IReadOnlyList<string> Words)
    {
        public double Height => Math.Max(WidthMm, Words.Count * Lettering.LineMm(Size)) + 4;
    }

    private static ImmutableArray<Piece> Pieces(BenchContext context, double scale)
    {
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        foreach (var line in context.Plan.Stack)
        {
            if (line.Item is not { SizeLength.Value: var length, SizeWidth.Value: var width } || !(length.Millimeters * scale < OutlineWidth * 1.05) || !(width.Millimeters * scale < TallestPiece))
            {
                continue;
            }

            var number = line.Item is PlyItem ? context.Say($"ply {StackNames.Number(context.Plan, line)}") : StackNames.Number(context.Plan, line);
            var place = line.Item.At is { } at ? context.Say($"place: {Words.Place(at)}") : context.Say("place: not known");
            var (l, w) = (Math.Max(length.Millimeters * scale, 1), Math.Max(width.Millimeters * scale, 1));
            var words = $"{number} {line.Item.Name}, {context.Text.Sheet(length, width).Main}" + (line.Item.Count > 1 ? ", " + Words.Count(line.Item.Count, "piece", "pieces") : "");
            pieces.Add(new Piece(l, w, [.. TextLines.Wrap(words, Width - l - 12, Size), .. TextLines.Wrap(place, Width - l - 12, Size)]));
        }

        return pieces.ToImmutable();
    }

    private static string Describe(BenchContext context, PartOutline? outline) => outline is null
        ? context.Say("A ring with the directions of the plies, 0 degrees to the right. The table says the direction of each ply.")
        : context.Say($"The outline of the part, {context.Text.Sheet(outline.Length, outline.Width).Main}, with an arrow along 0 degrees and a ring with the directions of the plies. The table says the direction of each ply.");
}
