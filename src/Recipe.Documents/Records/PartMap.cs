using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Records;

/// <summary>
/// The outline of the part, spread flat, with clock positions round it: where a defect lies is said by the hour and by how far it is from the
/// rim. One outline for each side.
/// </summary>
internal static class PartMap
{
    private const double Width = 180;
    private const double Tall = 104;
    private const double Rim = 9;
    private const double HourPt = 10;
    private const int Arc = 48;

    public static Drawing Of(PaperContext context, ImmutableArray<string> sides)
    {
        var say = context.Wording;
        var count = Math.Max(1, sides.Length);
        var field = Width / Math.Min(count, 2);
        var rows = (count + 1) / 2;
        var (length, width) = Size(context);
        var round = IsRound(context.Plan.Geometry?.Shape);
        var scale = Math.Min((field - (2 * Rim)) / length, (Tall - (2 * Rim)) / width);
        var caption = sides.Length > 1 ? 6.0 : 0;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        for (var i = 0; i < count; i++)
        {
            var centre = new Spot((field * (i % 2)) + (field / 2), (i / 2 * (Tall + caption)) + (Tall / 2));
            One(shapes, centre, length * scale / 2, width * scale / 2, round);
            if (sides.Length > 1)
            {
                shapes.Add(new TextShape(new Spot(centre.X, centre.Y + (Tall / 2) + 4), Fitted.To(sides[i], HourPt, field - 4, strong: true), HourPt, Anchor.Middle, Strong: true));
            }
        }

        var axis = context.Part.Axis is { } words ? say.Say($"0 degrees: {words}.") : say.Say("0 degrees runs from 9 to 3.");
        return new Drawing(
            "part-map",
            context.IsWrapped ? say.Say("Tap map and light map, seen from outside") : say.Say("Tap map and light map, seen from the mould side"),
            say.Say($"The outline of the part, spread flat, with the hours of a clock round it and a cross in its middle. {axis}"),
            Width,
            rows * (Tall + caption),
            shapes.ToImmutable());
    }

    private static void One(ImmutableArray<Shape>.Builder shapes, Spot centre, double a, double b, bool round)
    {
        shapes.Add(new PathShape(Outline(centre, a, b, round), Pen.Bold, Closed: true));
        shapes.Add(PathShape.Line(centre.X - 3, centre.Y, centre.X + 3, centre.Y, Pen.Thin));
        shapes.Add(PathShape.Line(centre.X, centre.Y - 3, centre.X, centre.Y + 3, Pen.Thin));
        for (var hour = 1; hour <= 12; hour++)
        {
            var (x, y) = Edge(a, b, round, hour * Math.PI / 6);
            shapes.Add(PathShape.Line(centre.X + x, centre.Y + y, centre.X + (x * 0.94), centre.Y + (y * 0.94), Pen.Firm));
            var far = Math.Max(1e-6, double.Hypot(x, y));
            var (outX, outY) = (x + (x / far * 5), y + (y / far * 5));
            shapes.Add(new TextShape(new Spot(centre.X + outX, centre.Y + outY + (Lettering.HeightMm(HourPt) / 2)), Quantities.Numbers.Whole(hour), HourPt, Anchor.Middle));
        }
    }

    // The point of the rim in the direction of an hour, 12 up.
    private static (double X, double Y) Edge(double a, double b, bool round, double turn)
    {
        var (x, y) = (Math.Sin(turn), -Math.Cos(turn));
        var reach = round ? 1 / double.Hypot(x / a, y / b) : 1 / Math.Max(Math.Abs(x) / a, Math.Abs(y) / b);
        return (x * reach, y * reach);
    }

    private static ImmutableArray<Spot> Outline(Spot centre, double a, double b, bool round) => round
        ? [.. Enumerable.Range(0, Arc).Select(i => new Spot(centre.X + (a * Math.Cos(i * 2 * Math.PI / Arc)), centre.Y + (b * Math.Sin(i * 2 * Math.PI / Arc))))]
        : [new(centre.X - a, centre.Y - b), new(centre.X + a, centre.Y - b), new(centre.X + a, centre.Y + b), new(centre.X - a, centre.Y + b)];

    private static bool IsRound(SurfaceShape? shape) => shape is DiscShape or SphericalCapShape or HalfEllipsoidShape or ParaboloidShape;

    // Its proportions, no more; a sheet of paper's when nothing is known, and nothing so long that it becomes a line.
    private static (double Length, double Width) Size(PaperContext context)
    {
        var (length, width) = context.Plan.Geometry is { } surface ? (surface.DevelopedLength.Meters, surface.DevelopedWidth.Meters) : (1.414, 1);
        return length > 0 && width > 0 ? (Math.Max(length, width / 4), Math.Max(width, length / 4)) : (1.414, 1);
    }
}
