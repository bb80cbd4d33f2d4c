using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Cuts;

/// <summary>One roll of the cut list: how much of it, the layout, its pieces.</summary>
internal static class RollPage
{
    /// <summary>The roll with its pieces.</summary>
    /// <param name="context">The paper.</param>
    /// <param name="nest">The roll.</param>
    /// <param name="rows">What is cut from it.</param>
    /// <param name="drawsAll">Whether even a single sheet at the cut end is drawn, of which the figures say all.</param>
    public static IEnumerable<Block> Of(PaperContext context, NestPlan nest, ImmutableArray<CutRow> rows, bool drawsAll = false)
    {
        var (say, text) = (context.Wording, context.Text);
        if (nest is { LengthUsed: { } length, UsableWidth: { } width, Waste: { } waste })
        {
            var rests = context.RestsOn(length.RestsOn);
            var share = QuantityText.Share(Math.Round(waste.Value, 2));
            yield return new KeyNumbers(
                Title(context, nest),
                [
                    new(say.Say("Cut off the roll"), text.Size(length.Value).Main, rests is null ? say.Say($"{share} of it is waste") : say.Say($"{share} of it is waste; {rests}")),
                    new(say.Say("Roll, usable width"), text.Size(width.Value).Main, say.Say("measure it first"), new Blank(say.Say("measured"), text.ThicknessUnit)),
                ]);
            if (drawsAll || !IsOneSheet(nest))
            {
                yield return NestDrawing.Of(context, nest);
            }
        }
        else
        {
            yield return new Heading(Title(context, nest));
            yield return new Paragraph(nest.Obstacle switch
            {
                NestObstacle.TooWide => say.Say($"No layout: a sheet is wider than the roll, {Width(context, nest)}. Join lengths of it with overlap, or take a wider roll."),
                NestObstacle.TooMany => say.Say("No layout: there are too many pieces to draw. Cut by the sizes below."),
                _ => say.Say("No layout: the usable width of the roll is not known. Measure it; cut by the sizes below."),
            });
        }

        yield return Pieces(context, rows);
    }

    /// <summary>Sheets of the bag that lie alone across their rolls, one roll a line: off which roll, how long, how wide the roll is.</summary>
    public static Table Sheets(PaperContext context, IEnumerable<CutRow> rows)
    {
        var (say, text) = (context.Wording, context.Text);
        return new Table(
            say.Say("Numbers run from the part outwards. Measure the roll first"),
            [
                new(say.Say("Layer"), Align.Centre, 17, NamesTheRow: true), new(say.Say("What")), new(say.Say("Size"), WidthMm: 44), new(say.Say("Off the roll"), WidthMm: 44),
                new(say.Say("Cut before mixing"), Align.Centre, 24),
            ],
            [
                .. rows.Select(row => new CellRow(
                [
                    new BigCell(row.Size.Letter),
                    new TextCell(Phrase.Strong(LayerOf(row)), Title(context, row.Nest)),
                    new TextCell(Phrase.Strong(text.Sheet(row.Size.Length, row.Size.Width).Main), Beneath(context, row)),
                    new BigCell(text.Size(row.Nest.LengthUsed!.Value.Value).Main, OffTheRoll(context, row.Nest)),
                    TickCell.Of(1),
                ])),
            ],
            TableUse.Steps);
    }

    /// <summary>Whether a roll gives nothing but one straight sheet at its cut end.</summary>
    public static bool IsOneSheet(NestPlan nest) =>
        nest is { Sizes: [{ Strips: 1, Count: 1 } size], Placements.Length: 1 } && size.Corner <= UnitsNet.Length.Zero && Math.Abs(size.Angle) is < 1 or > 89;

    /// <summary>Whether a roll gives sheets of one size that lie one behind the other, each alone across it.</summary>
    public static bool IsOneBehindTheOther(NestPlan nest) =>
        nest is { Sizes: [{ Strips: 1 }], Placements.IsEmpty: false } && NestStrips.Of(nest) is var strips && strips.Length == nest.Placements.Length;

    private static string? Beneath(PaperContext context, CutRow row)
    {
        var beside = context.Text.Sheet(row.Size.Length, row.Size.Width).Beside;
        var count = row.Size.Count == 1 ? null : context.Wording.Say($"{Numbers.Whole(row.Size.Count)} sheets, one behind the other");
        return beside is null ? count : count is null ? beside : $"{beside}; {count}";
    }

    private static string OffTheRoll(PaperContext context, NestPlan nest)
    {
        var wide = context.Wording.Say($"roll usable {Width(context, nest)} wide");
        return context.RestsOn(nest.LengthUsed!.Value.RestsOn) is { } rests ? $"{wide}; {rests}" : wide;
    }

    private static string Width(PaperContext context, NestPlan nest) => nest.UsableWidth is { } width ? context.Text.Size(width.Value).Main : "";

    private static string Title(PaperContext context, NestPlan nest)
    {
        var weight = nest.Material switch
        {
            Reinforcement { ArealWeight: { } own } => own,
            Consumable { ArealWeight: { } own } => own,
            _ => null,
        };
        return weight is null || Words.Says(nest.Material.Label, weight.Written) ? Words.Of(nest.Material) : context.Wording.Say($"{Words.Of(nest.Material)}, {context.Text.Written(weight, value => context.Text.ArealWeight(value))}");
    }

    private static Table Pieces(PaperContext context, ImmutableArray<CutRow> rows)
    {
        var say = context.Wording;
        var ofPlies = rows.Any(row => row.Line is not null);
        ImmutableArray<Column> columns = ofPlies
            ?
            [
                new(say.Say("Piece"), Align.Centre, 17, NamesTheRow: true), new(say.Say("Size with trim")), new(say.Say("To the roll"), Align.Centre, 25), new(say.Say("Cut"), Align.Centre, 22),
                new(say.Say("Weight"), WidthMm: 28), new(say.Say("Actual"), WidthMm: 41),
            ]
            : [new(say.Say("Layer"), Align.Centre, 17, NamesTheRow: true), new(say.Say("What"), WidthMm: 50), new(say.Say("Size")), new(say.Say("Sheets"), Align.Centre, 22), new(say.Say("Cut before mixing"), Align.Centre, 24)];
        return new Table(
            !ofPlies ? say.Say("Numbers run from the part outwards.") : Legend(context, rows),
            columns,
            [.. rows.Select(row => row.Line is null ? Sheet(context, row) : Piece(context, row))],
            TableUse.Steps);
    }

    // Where length and warp lie alike there is nothing to tell apart.
    private static string Legend(PaperContext context, ImmutableArray<CutRow> rows)
    {
        var say = context.Wording;
        return (rows.Any(row => row.Angles.Any(angle => angle.Degrees != 0)), rows.Any(row => row.Size.Mirrored)) switch
        {
            (false, false) => "",
            (false, true) => say.Say("A star marks a mirror image."),
            (true, false) => say.Say("Arrow: the length of the piece. Bold line: the warp, as it is laid."),
            (true, true) => say.Say("Arrow: the length of the piece. Bold line: the warp, as it is laid. A star marks a mirror image."),
        };
    }

    private static CellRow Piece(PaperContext context, CutRow row)
    {
        var (say, text, size) = (context.Wording, context.Text, row.Size);
        var sheet = text.Sheet(size.Length, size.Width);
        var notes = new List<string>();
        if (sheet.Beside is { } beside)
        {
            notes.Add(beside);
        }

        if (row.Outline(context) is { } outline)
        {
            notes.Add(outline);
        }

        if (size.Strips > 1)
        {
            notes.Add(say.Say($"of {Numbers.Whole(size.Strips)} strips, each {text.Sheet(size.Along, size.Across).Main}"));
        }

        var angles = row.Angles;
        if (row.Nest.Placements.Any(place => place.Piece == row.Index && place.IsTurned))
        {
            notes.Add(row.IsLoose ? say.Say("turned on the roll: it has no direction") : say.Say("turned on the roll: warp and weft are alike"));
        }

        if (!row.Strips.IsEmpty)
        {
            notes.Add(row.Strips.Length == 1 ? say.Say($"strip {Numbers.Whole(row.Strips[0])}") : say.Say($"strips {string.Join(", ", row.Strips.Select(Numbers.Whole))}"));
        }

        if (row.Face is { } face)
        {
            notes.Add(face == PlyFace.Up ? say.Say("right side up") : say.Say("right side down"));
        }

        var pieces = size.Count / size.Strips;
        return new CellRow(
        [
            new BigCell(size.Letter, say.Say($"ply {row.Ply(context.Plan)}")),
            new TextCell(Phrase.Strong(sheet.Main), notes.Count == 0 ? null : string.Join("; ", notes)),
            new DirectionCell(
            [
                .. angles.Select(angle => new Direction(
                    new Orientation(OrientationKind.Single, angle.Degrees, 0), angles.Length == 1 ? null : say.Say($"{Numbers.Whole(angle.Count)} of {Numbers.Whole(size.Count)}"))),
            ]),
            new TextCell(Phrase.Strong(Numbers.Whole(pieces)), size.Mirrored ? say.Say($"{Numbers.Whole(pieces / 2)} mirrored") : null),
            row.Mass is { } mass ? new TextCell(Phrase.Strong(text.Weight(mass).Main), Weighed(context, row, pieces)) : new TextCell(say.Say("not known")),
            new Blank(say.Say($"weight of {size.Letter}"), text.ScaleUnit),
        ]);
    }

    private static string? Weighed(PaperContext context, CutRow row, int pieces) => (row.AsRectangles, pieces > 1) switch
    {
        ({ } whole, true) => context.Wording.Say($"together; with the corners on {context.Text.Weight(whole).Main}"),
        ({ } whole, false) => context.Wording.Say($"with the corners on {context.Text.Weight(whole).Main}"),
        (null, true) => context.Wording.Say("together"),
        _ => null,
    };

    private static CellRow Sheet(PaperContext context, CutRow row)
    {
        var (size, text) = (row.Size, context.Text);
        var sheet = text.Sheet(size.Length, size.Width);
        return new CellRow(
        [
            new BigCell(size.Letter),
            LayerOf(row),
            new TextCell(Phrase.Strong(sheet.Main), sheet.Beside),
            new TextCell(Phrase.Strong(Numbers.Whole(size.Count))),
            TickCell.Of(1),
        ]);
    }

    private static string LayerOf(CutRow row) => row.Layer is { } layer ? Words.Sentence(Words.Of(layer.Layer.Class)).TrimEnd('.') : "";
}
