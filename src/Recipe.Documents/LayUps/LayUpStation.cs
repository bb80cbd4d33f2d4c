using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Writing;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.LayUps;

/// <summary>Ply by ply, to H4.</summary>
internal static class LayUpStation
{
    private const int MostBoxes = 8;

    public static Station Build(BenchContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(new Paragraph(
            Phrase.Strong("Ply 1 goes in first, against the mould.")
            + $" {Axis(context.Part)} + is counter-clockwise, looking at the tool face."));
        if (context.Plan.Stack.IsEmpty)
        {
            blocks.Add(new Paragraph("The recipe has no plies."));
        }
        else
        {
            if (context.Part.Prepreg is { } handling)
            {
                blocks.Add(BenchContext.Steps("Before the first ply", PrepregSteps.Of(handling)));
            }

            blocks.Add(new Table("", Columns(context), [.. Rows(context)], TableUse.Steps));
        }

        if (!context.IsWet)
        {
            blocks.Add(new IfBox(
            [
                new("A ply slips or spans a corner", "lift it and lay it again"),
                new("A ply is short", "cut a new one; dry plies are not patched"),
            ]));
        }
        else
        {
            var overlap = context.Part.Overlap is { } lap ? $"by {context.Text.Written(lap, value => context.Text.Size(value))}" : "well over the gap";
            blocks.Add(new IfBox(
            [
                new("Resin strings or warms on the part", "lay no more; go to the bag"),
                new("It gels before the bag is on", "stop; bag nothing; write a deviation"),
                new("A ply is short", $"lap on a piece of the same cloth {overlap}"),
            ]));
        }

        blocks.AddRange(context.Foot("H4"));
        return new Station(context.IsWet ? "Lay up" : "Lay up dry", blocks.ToImmutable());
    }

    // The author's words name 0 degrees; without them it runs along the part.
    private static string Axis(Part part) => part.Axis is { Length: > 0 } axis ? Words.Sentence(axis) : "0° is along the part.";

    private static ImmutableArray<Column> Columns(BenchContext context)
    {
        var resin = context.IsWet ? ImmutableArray.Create(new Column("Resin", Align.Left, 35)) : [];
        return
        [
            new("Ply", Align.Centre, 20), new("Material", NamesTheRow: true), new("Direction", WidthMm: 37), .. resin,
            new("Laid", Align.Centre, context.Sides.Length > 1 ? 32 : 25),
        ];
    }

    private static IEnumerable<Row> Rows(BenchContext context)
    {
        PotPlan? current = null;
        foreach (var line in context.Plan.Stack)
        {
            var pots = context.IsWet ? context.Plan.Pots.Where(pot => pot.For.Contains(line.Item.Name)).ToList() : [];
            if (pots.Count > 0 && pots[0] != current)
            {
                current = pots[0];
                var time = context.Clock.TimeOfDay(current.UsedUpAt.Value, Rounding.Up) is { } by ? $" ({by})" : "";
                yield return new GroupRow($"Pot {Numbers.Whole(current.Number)}: used up by {WorkClock.Minute(current.UsedUpAt.Value, Rounding.Up)}{time}");
            }

            yield return Line(context, line, pots);
        }
    }

    private static CellRow Line(BenchContext context, StackPlan line, IReadOnlyList<PotPlan> pots)
    {
        var cells = ImmutableArray.CreateBuilder<Cell>();
        cells.Add(line.Item is PlyItem ? new RingCell(StackNames.Number(context.Plan, line)) : new TextCell(Phrase.Strong(line.Item is CoreItem ? "core" : "insert")));
        cells.Add(new TextCell(Phrase.Strong(line.Item.Name) + $": {Words.Of(StackNames.MaterialOf(line.Item))}", Where(context, line, pots)));
        cells.Add(line.Item is PlyItem ply ? Direction(context, ply) : "");
        if (context.IsWet)
        {
            cells.Add(line.CutResin is { } resin ? new BigCell(context.Text.Weight(resin.Value).Main, context.Text.Weight(resin.Value).Beside) : line.Item is InsertItem ? "" : "not known");
        }

        cells.Add(Laid(context, line.Item));
        return new CellRow(cells.ToImmutable());
    }

    private static Cell Direction(BenchContext context, PlyItem ply)
    {
        if (ply.Orientation is not { } orientation)
        {
            return "none given";
        }

        // The second half is the mirror image: a list that is copied and not mirrored gives a part that twists.
        var mirrored = Angles.Mirrored(orientation.Value);
        return context.Sides.Length == 2 && mirrored != orientation.Value && !(orientation.Value.Kind == OrientationKind.Pair && orientation.Value.First == -orientation.Value.Second)
            ? new DirectionCell([new(orientation.Value, context.Sides[0]), new(mirrored, context.Sides[1])])
            : new DirectionCell([new(orientation.Value)]);
    }

    private static string? Where(BenchContext context, StackPlan line, IReadOnlyList<PotPlan> pots)
    {
        var item = line.Item;
        var words = new List<string>();
        if (item is PlyItem { Material: { ArealWeight: { } weight } cloth } && !cloth.Label.Contains(weight.Written.Split(' ')[0], StringComparison.Ordinal))
        {
            words.Add(context.Text.Written(weight, value => context.Text.ArealWeight(value)).Main);
        }

        if (item is CoreItem { Thickness: { } thickness })
        {
            words.Add(context.Text.Written(thickness, value => context.Text.Thickness(value)).Main);
        }

        if (item is { SizeLength: { } length, SizeWidth: { } width })
        {
            words.Add(context.Text.Sheet(length.Value, width.Value).Main);
        }

        if (StackNames.Plies(item) > 1)
        {
            words.Add(Words.Count(item.Count, "ply", "plies") + ", one after the other");
        }
        else if (item.Count > 1)
        {
            words.Add(Words.Count(item.Count, "piece", "pieces"));
        }

        if (item.At is { } at)
        {
            words.Add(Words.Place(at));
        }

        if (item is PlyItem { Step: { } step })
        {
            words.Add($"ends {context.Text.Written(step, value => context.Text.Size(value)).Main} inside the ply below");
        }

        if (pots.Count > 1)
        {
            words.Add($"pots {string.Join(" and ", pots.Select(pot => Numbers.Whole(pot.Number)))}");
        }

        return words.Count == 0 ? null : string.Join(", ", words);
    }

    private static TickCell Laid(BenchContext context, StackItem item)
    {
        // Each ply has a box of its own; of many small pieces all have one.
        var each = StackNames.Plies(item) > 1 ? Math.Min(item.Count, MostBoxes) : item.Count <= 2 ? Math.Max(item.Count, 1) : 1;
        return context.Sides.Length > 1
            ? new TickCell([.. Enumerable.Range(0, each).SelectMany(_ => context.Sides)])
            : TickCell.Of(each);
    }
}
