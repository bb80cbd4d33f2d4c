using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.LayUps;

/// <summary>How two pieces of a ply overlap, and how far the joins of the next ply lie from them; as far as the recipe says.</summary>
internal static class JoinSketch
{
    public const string Name = "ply-joins";

    private const double Size = 11;

    /// <summary>The sketch; null when the recipe states no overlap.</summary>
    public static Drawing? Draw(BenchContext context)
    {
        // Where no ply of a box is joined, nothing overlaps: at its corners edges meet.
        var joins = context.Plan.Stack.Any(line => line.Pieces.Any(piece => piece.Joins > 0));
        if (context.Part.Overlap is not { } overlap || (!joins && LayUpStation.Corners(context)))
        {
            return null;
        }

        var lap = context.Text.Written(overlap, value => context.Text.Size(value)).Main;
        var canvas = new Canvas(180, context.Part.Stagger is null ? 21 : 31);
        Ply(canvas, 12, 60);
        canvas.Across(50, 70, 7, context.Say($"overlap {lap}"), Size);
        if (context.Part.Stagger is { } stagger)
        {
            var apart = context.Text.Written(stagger, value => context.Text.Size(value)).Main;
            Ply(canvas, 20, 120);
            canvas.Across(60, 120, 28, context.Say($"joins of the next ply at least {apart} on"), Size);
        }

        return canvas.Draw(
            Name,
            context.Say("Where two pieces of one ply meet"),
            context.Part.Stagger is { } said
                ? context.Say($"Two pieces overlap by {lap}; the join of the next ply lies {context.Text.Written(said, value => context.Text.Size(value)).Main} away.")
                : context.Say($"Two pieces overlap by {lap}."));
    }

    private static void Ply(Canvas canvas, double y, double join)
    {
        canvas.Add(new PathShape([new(4, y + 2), new(join + 10, y + 2), new(join + 10, y + 4.5), new(4, y + 4.5)], Pen.Firm, Closed: true, Fill.Pale));
        canvas.Add(new PathShape(
            [new(join - 10, y), new(join + 10, y), new(join + 14, y + 2), new(176, y + 2), new(176, y + 4.5), new(join + 13, y + 4.5), new(join + 10, y + 2), new(join - 10, y + 2)],
            Pen.Firm,
            Closed: true,
            Fill.Mid));
    }
}
