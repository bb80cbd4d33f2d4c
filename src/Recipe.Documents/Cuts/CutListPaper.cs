using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Cuts;

/// <summary>
/// The cut list: what is cut from which roll, where it lies on it, what it weighs, and in which order it goes into the kit box; then the sheets
/// of the bag. Everything is cut before anything is mixed.
/// </summary>
internal static class CutListPaper
{
    // What a page holds beside its head, mm; generous, so that a page of the smaller paper holds it too.
    private const double PageMm = 210;
    private const double RowMm = 15;
    private const double HeadMm = 55;

    // A table alone, without the panel of its roll.
    private const double TableMm = 20;
    private const int MostBoxes = 8;

    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        var rows = CutRow.Of(context);
        return new Document
        {
            Kind = "Cut list",
            OnePlace = true,
            Identity = context.Identity(ofOneBuild: true),
            Paper = context.Paper,
            ForTheBench = true,
            Stations =
            [
                .. Stations(context, "Cut the plies", Rolls(context, rows.Where(row => row.Line is not null))),
                KitPage.Of(context, rows),
                .. Stations(context, "Cut the bag", Bag(context, [.. rows.Where(row => row.Line is null)])),
            ],
            Data = CutData.Of(context, rows),
        };
    }

    // In the order in which they come, each on the first page that has room for it: a roll is cut by itself, and which comes first is all the same.
    private static IEnumerable<Station> Stations(PaperContext context, string title, IEnumerable<(ImmutableArray<Block> Blocks, double Height)> pieces)
    {
        var pages = new List<(List<Block> Blocks, double Used)>();
        foreach (var (blocks, height) in pieces)
        {
            var at = pages.FindIndex(page => page.Used + height <= PageMm);
            if (at < 0)
            {
                pages.Add(([.. blocks], height));
                continue;
            }

            pages[at].Blocks.AddRange(blocks);
            pages[at] = (pages[at].Blocks, pages[at].Used + height);
        }

        return pages.Select((page, i) => new Station(
            pages.Count == 1 ? context.Wording.Say(title) : context.Wording.Say($"{context.Wording.Say(title)}, {Numbers.Whole(i + 1)} of {Numbers.Whole(pages.Count)}"), [.. page.Blocks, Ifs(context)]));
    }

    private static IEnumerable<(ImmutableArray<Block> Blocks, double Height)> Rolls(PaperContext context, IEnumerable<CutRow> rows) => rows.GroupBy(row => row.Nest).Select(roll =>
    {
        ImmutableArray<Block> blocks = [.. RollPage.Of(context, roll.Key, [.. roll])];
        return (blocks, HeadMm + (roll.Count() * RowMm) + blocks.OfType<Drawing>().Sum(drawing => drawing.HeightMm + 3));
    });

    // Most sheets of a bag are one to a roll: a line each says all. What lies on its roll in another way has a drawing.
    private static IEnumerable<(ImmutableArray<Block> Blocks, double Height)> Bag(PaperContext context, ImmutableArray<CutRow> rows)
    {
        var alone = rows.Where(row => RollPage.IsOneBehindTheOther(row.Nest)).ToList();
        if (alone.Count > 0)
        {
            yield return ([RollPage.Sheets(context, alone)], TableMm + (alone.Count * RowMm));
        }

        foreach (var roll in Rolls(context, rows.Where(row => !RollPage.IsOneBehindTheOther(row.Nest))))
        {
            yield return roll;
        }

        foreach (var tape in Tape(context))
        {
            yield return ([tape], TableMm + (tape.Rows.Length * RowMm));
        }
    }

    private static IfBox Ifs(PaperContext context) => new(
    [
        new(context.Wording.Say("The roll is narrower than printed"), context.Wording.Say("stop; have the layout made anew")),
        new(context.Wording.Say("A piece is cut wrong"), context.Wording.Say("mark it with its letter and a cross; cut a new one")),
        new(context.Wording.Say("The cloth is wet, dirty or creased"), context.Wording.Say("cut that length off; begin again behind it")),
    ]);

    private static IEnumerable<Table> Tape(PaperContext context)
    {
        if (context.Plan.Bag is not { } bag)
        {
            yield break;
        }

        var say = context.Wording;
        var tape = context.Part.Bag?.SealantTape?.Material;
        var length = context.Text.Distance(bag.SealantTape.Value);
        yield return new Table(
                say.Say("Lay ready too, before mixing"),
                [new(say.Say("Item"), NamesTheRow: true), new(say.Say("How much"), WidthMm: 50), new(say.Say("Ready"), Align.Centre, context.Bags.Length > 1 ? 32 : 18)],
                [
                    new CellRow([tape is null ? say.Say("Sealant tape, none named") : Words.Of(tape), new BigCell(length.Main, length.Beside), TickCell.Of(1)]),
                    .. (context.Part.Bag?.Ports ?? []).Select(port => new CellRow([Words.Of(port.Material), port.At is { } at ? Words.Place(at) : "", context.TickEach()])),
                    .. context.Part.Bag?.Hose is { } hose ? [new CellRow([Words.Of(hose.Material), "", context.TickEach()])] : ImmutableArray<CellRow>.Empty,
                    .. context.Part.Bag?.CatchPot is { } pot ? [new CellRow([Words.Of(pot.Material), context.Bags.Length > 1 ? say.Say("one for all bags") : "", TickCell.Of(1)])] : ImmutableArray<CellRow>.Empty,
                    .. Feeds(context),
                    .. context.Part.Bag?.Layers.Where(layer => layer.Class == LayerClass.Caul)
                        .Select(layer => new CellRow([Words.Of(layer.Material), say.Say("clean, edges rounded"), TickCell.Of(1)])) ?? [],
                ],
                TableUse.Steps);
    }

    // Each line is cut to its length; what is in it when it is clamped cures there, so it is used once.
    private static IEnumerable<CellRow> Feeds(PaperContext context)
    {
        if (context.Plan.Feed is { Length: { } length } feed)
        {
            var each = context.Text.Size(length.Value);
            var note = context.RestsOn([feed.Lines.RestsOn, length.RestsOn]);
            var count = feed.Lines.Value;
            yield return new CellRow(
            [
                new TextCell(context.Wording.Say("Feed line"), note),
                new BigCell(count == 1 ? each.Main : context.Wording.Say($"{Numbers.Whole(count)} of {each.Main}"), each.Beside),
                context.TickEach(Math.Min(context.FeedsOfABag, MostBoxes)),
            ]);
        }
    }
}
