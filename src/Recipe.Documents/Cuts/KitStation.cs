using System.Collections.Immutable;
using Recipe.Documents.Bags;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Cuts;

/// <summary>Everything that is cut, before anything is mixed, to H2.</summary>
internal static class KitStation
{
    public static Station Build(BenchContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        var pieces = Pieces(context).ToImmutableArray();
        if (pieces.IsEmpty)
        {
            blocks.Add(new Paragraph("No piece could be sized. Cut from templates, before the resin is mixed."));
        }
        else
        {
            blocks.Add(new Table(
                "Cut everything before the resin is mixed. Sizes are with trim; ply 1 goes on top of the kit",
                [
                    new("Ply", Align.Centre, 14), new("Material", NamesTheRow: true), new("Cut size", WidthMm: 45), new("To the roll", Align.Centre, 17),
                    new("Pieces", Align.Centre, 20), new("Cut", Align.Centre, 14),
                ],
                [.. pieces],
                TableUse.Steps));
        }

        if (context.Plan.Bag is { Layers.IsEmpty: false } bag)
        {
            blocks.Add(new Table(
                "Bag, cut now: numbers run from the part outwards",
                [new("Layer", Align.Centre, 14), new("Material", NamesTheRow: true), new("Cut size", WidthMm: 45), new("Sheets", Align.Centre, 20), new("Cut", Align.Centre, 14)],
                [.. bag.Layers.Select((layer, i) => Layer(context, layer, i + 1)), Tape(context, bag)],
                TableUse.Steps));
        }

        blocks.AddRange(context.Foot("H2"));
        return new Station("Cut and kit", blocks.ToImmutable());
    }

    private static IEnumerable<Row> Pieces(BenchContext context)
    {
        foreach (var line in context.Plan.Stack)
        {
            for (var i = 0; i < line.Pieces.Length; i++)
            {
                yield return Piece(context, line, line.Pieces[i], line.Pieces.Length > 1 ? PieceLetter(i) : "");
            }
        }
    }

    // a, b, ... z, then aa: the number of sizes of one ply is small, but not bounded.
    private static string PieceLetter(int index) => index < 26 ? ((char)('a' + index)).ToString() : PieceLetter((index / 26) - 1) + PieceLetter(index % 26);

    private static CellRow Piece(BenchContext context, StackPlan line, PiecePlan piece, string letter)
    {
        var size = context.Text.Sheet(piece.Length, piece.Width);
        var notes = new List<string>();
        if (size.Beside is { } beside)
        {
            notes.Add(beside);
        }

        if (piece.Joins > 0)
        {
            notes.Add(Words.Count(piece.Joins, "join", "joins"));
        }

        return new CellRow(
        [
            new TextCell(Phrase.Strong(StackNames.Number(context.Plan, line) + letter)),
            new TextCell(Phrase.Strong(line.Item.Name) + $": {Words.Of(StackNames.MaterialOf(line.Item))}"),
            new TextCell(Phrase.Strong(size.Main), notes.Count == 0 ? null : string.Join("; ", notes)),
            line.Item is PlyItem ? Numbers.AtMost(piece.RollAngle, 1) + "°" : "",
            new TextCell(Phrase.Strong(Numbers.Whole(piece.Count)), piece.Mirrored ? "half mirrored" : null),
            TickCell.Of(1),
        ]);
    }

    private static CellRow Layer(BenchContext context, BagLayerPlan layer, int number)
    {
        var size = context.Text.Sheet(layer.Length.Value, layer.Width.Value);
        return new CellRow(
        [
            new TextCell(Phrase.Strong(Numbers.Whole(number))),
            BagStation.Describe(layer.Layer),
            new TextCell(Phrase.Strong(size.Main), size.Beside),
            new TextCell(Phrase.Strong(Numbers.Whole(layer.Sheets))),
            TickCell.Of(1),
        ]);
    }

    private static CellRow Tape(BenchContext context, BagPlan bag)
    {
        var length = context.Text.Distance(bag.SealantTape.Value);
        return new CellRow(
        [
            "", BagStation.Named("sealant tape", context.Part.Bag?.SealantTape?.Material, context.Part.Bag?.SealantTape?.ChosenByDefault ?? false), new TextCell(Phrase.Strong(length.Main), length.Beside), "", TickCell.Of(1),
        ]);
    }
}
