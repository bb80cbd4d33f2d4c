using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Writing;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.LayUps;

/// <summary>Ply by ply; H4 is on the traveller.</summary>
internal static class LayUpStation
{
    private const int MostBoxes = 8;
    private const int PliesToLook = 3;

    /// <summary>The stack in pictures, where there is something to show, and the plies one by one.</summary>
    public static IEnumerable<Station> Stations(BenchContext context)
    {
        ImmutableArray<Drawing> drawings = [.. new[] { PartSketch.Draw(context), StackSection.Draw(context), JoinSketch.Draw(context) }.OfType<Drawing>()];
        if (!drawings.IsEmpty)
        {
            yield return new Station(context.Say("The stack"), [First(context), .. drawings]);
        }

        yield return Build(context);
    }

    /// <summary>Whether plies are folded up at the corners of a box.</summary>
    public static bool Corners(BenchContext context) => context.Plan.Nests.Any(nest => nest.Sizes.Any(size => size.Corner > Length.Zero));

    /// <summary>What is laid on a line: what it holds, and what the bag then carries away; null when not known.</summary>
    public static Computed<Mass>? TargetOf(StackPlan line) => line.LaidResin ?? line.CutResin;

    private static Station Build(BenchContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(First(context));
        if (context.Paper.Tube is not null)
        {
            // Common practice: laps on one another make a ridge.
            blocks.Add(new Paragraph(context.Say("Start each ply at another hour, so that no lap lies on another. The lap of the last ply is 12 o'clock of the tap map: mark it before it is sanded off.")));
        }

        if (Corners(context))
        {
            // The trade's way with a folded box; a lap there is a ply of its own.
            blocks.Add(new Paragraph(context.Say(
                "At the corners of the box the edges of a ply meet: their squares are cut out by the cut list and nothing overlaps there. A corner that carries load wants a strip over it, written as a ply of its own.")));
        }

        if (context.Plan.Stack.IsEmpty)
        {
            blocks.Add(new Paragraph(context.Say("The recipe has no plies.")));
        }
        else
        {
            if (context.Part.Prepreg is { } handling)
            {
                blocks.Add(context.Steps("Before the first ply", PrepregSteps.Of(handling)));
            }

            blocks.Add(new Table("", Columns(context), [.. Rows(context)], TableUse.Steps));
        }

        blocks.Add(If(context));
        blocks.AddRange(context.Foot("H4", context.IsWet ? context.Plan.Stack.Select(line => TargetOf(line)?.RestsOn ?? []) : []));
        return new Station(context.Process == Process.Infused ? "Lay up dry" : "Lay up", blocks.ToImmutable());
    }

    private static Paragraph First(BenchContext context) => new(
        Phrase.Strong(context.StaysOn ? context.Say($"Ply 1 goes on first, against {context.Part.Mould!.Label}.") : context.IsWrapped ? context.Say("Ply 1 goes on first, against the mandrel.") : context.Say("Ply 1 goes in first, against the mould."))
        + " " + Axis(context.Part) + " "
        + (context.IsWrapped ? context.Say("+ is counter-clockwise, looking at it from outside.") : context.Say("+ is counter-clockwise, looking at the tool face.")));

    private static IfBox If(BenchContext context)
    {
        if (!context.IsWet)
        {
            return new IfBox(
            [
                new(context.IsWrapped ? "A ply slips or creases" : "A ply slips or spans a corner", "lift it and lay it again"),
                new("A ply is short", context.Process == Process.Infused ? "cut a new one; dry plies are not patched" : "cut a new one; do not piece it together"),
                new("A thread lies under the tape", "pull it out now; it is a leak"),
            ]);
        }

        var overlap = context.Part.Overlap is { } lap ? $"by {context.Text.Written(lap, value => context.Text.Size(value))}" : "well over the gap";
        return new IfBox(
        [
            new("Resin strings or warms on the part", context.IsBagged ? "STOP; lay no more; go to the bag" : "STOP; lay no more; roll out what lies"),
            context.IsBagged ? new("It gels before the bag is on", "stop; bag nothing; write a deviation") : new("It gels before the last ply", "stop; let it cure; write a deviation"),
            new("A ply is short", $"lap on a piece of the same cloth {overlap}"),
        ]);
    }

    // The author's words name 0 degrees; without them it runs along the part.
    private static string Axis(Part part) => part.Axis is { Length: > 0 } axis ? Words.Sentence(axis) : "0° is along the part.";

    private static ImmutableArray<Column> Columns(BenchContext context)
    {
        ImmutableArray<Column> wet = context.IsWet ? [new("Resin", Align.Left, 35), new("Done by", Align.Centre, 22)] : [];
        return
        [
            new("Ply", Align.Centre, 20), new("Material, where", NamesTheRow: true), new("Direction", WidthMm: 35), .. wet,
            new("Laid", Align.Centre, context.Sides.Length > 1 ? 32 : 16),
        ];
    }

    private static IEnumerable<Row> Rows(BenchContext context)
    {
        PotPlan? current = null;
        var sum = Mass.Zero;
        var plies = 0;
        for (var i = 0; i < context.Plan.Stack.Length; i++)
        {
            var line = context.Plan.Stack[i];
            var pots = context.IsWet ? context.Plan.Pots.Where(pot => pot.For.Contains(line.Item.Name)).ToList() : [];
            if (pots.Count > 0 && pots[0] != current)
            {
                current = pots[0];
                var time = context.Clock.TimeOfDay(current.UsedUpAt.Value, Rounding.Up) is { } by ? $" ({by})" : "";
                yield return new GroupRow($"Pot {Numbers.Whole(current.Number)}: used up by {WorkClock.Minute(context.Wording, current.UsedUpAt.Value, Rounding.Up)}{time}");
            }

            if (TargetOf(line) is { } target)
            {
                // The sum of what stands on the card, not of what stands behind it.
                sum += context.Text.OnScale(target.Value);
            }

            yield return Line(context, line, pots, sum);
            plies += line.Item is PlyItem ? StackNames.Plies(line.Item) : 0;
            if (plies >= PliesToLook && i + 1 < context.Plan.Stack.Length)
            {
                plies = 0;
                yield return new GroupRow(Look(context));
            }
        }
    }

    private static string Look(BenchContext context) => (context.IsWet, context.IsWrapped) switch
    {
        (true, false) => context.Say("Look: no white, no pool, corners down."),
        (false, false) => context.Say("Look: corners down, nothing moved."),
        (true, true) => context.Say("Look: no white, no pool, no crease, laps down."),
        (false, true) => context.Say("Look: laps down, no crease, nothing moved."),
    };

    private static CellRow Line(BenchContext context, StackPlan line, IReadOnlyList<PotPlan> pots, Mass sum)
    {
        var cells = ImmutableArray.CreateBuilder<Cell>();
        cells.Add(line.Item is PlyItem ? new RingCell(StackNames.Number(context.Plan, line)) : new TextCell(Phrase.Strong(line.Item is CoreItem ? "core" : "insert")));
        cells.Add(new TextCell(Phrase.Strong(line.Item.Name) + $": {Words.Of(StackNames.MaterialOf(line.Item))}", Where(context, line, pots)));
        cells.Add(line.Item is PlyItem ply ? Direction(context, ply) : "");
        if (context.IsWet)
        {
            cells.Add(TargetOf(line) is { } resin
                ? new BigCell(context.Text.Weight(resin.Value).Main, context.Say($"in all {context.Text.Weight(sum).Main}"))
                : line.Item is InsertItem ? "" : "not known");
            cells.Add(PlyMinutes.Of(context.Plan, line) is { } minute
                ? new TextCell(Phrase.Strong(QuantityText.Minutes(minute, Rounding.Up)), context.Clock.TimeOfDay(minute, Rounding.Up))
                : "");
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
        if (item is PlyItem { Material: { ArealWeight: { } weight } cloth } && !Words.Says(cloth.Label, weight.Written))
        {
            words.Add(context.Text.Written(weight, value => context.Text.ArealWeight(value)).ToString());
        }

        if (item is CoreItem { Thickness: { } thickness })
        {
            words.Add(context.Text.Written(thickness, value => context.Text.Thickness(value)).ToString());
        }

        if (item is { SizeLength: { } length, SizeWidth: { } width })
        {
            words.Add(context.Text.Sheet(length.Value, width.Value).ToString());
        }

        if (StackNames.Plies(item) > 1)
        {
            words.Add(Words.Count(item.Count, "ply", "plies") + ", one after the other");
        }
        else if (item.Count > 1)
        {
            words.Add(Words.Count(item.Count, "piece", "pieces"));
        }

        if (item is PlyItem { Face: { } face })
        {
            words.Add(face == PlyFace.Up ? context.Say("right side up") : context.IsWrapped ? context.Say("right side on the mandrel") : context.Say("right side on the mould"));
        }

        if (item.At is { } at)
        {
            words.Add(Words.Place(at));
        }

        if (item is PlyItem { Step: { } step })
        {
            words.Add($"ends {context.Text.Written(step, value => context.Text.Size(value))} inside the ply below");
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
        return context.TickEach(each);
    }
}
