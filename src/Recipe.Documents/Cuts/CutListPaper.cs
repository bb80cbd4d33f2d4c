using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Travellers;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Cuts;

/// <summary>
/// The cut list: what is cut from which roll, where it lies on it, what it weighs, and in which order it goes into the kit box; then the sheets
/// of the bag. Everything is cut before anything is mixed.
/// </summary>
internal static class CutListPaper
{
    // What a page holds beside its head, mm; generous, so that a page of the smaller paper holds it too.
    private const double PageMm = 205;
    private const double RowMm = 15;
    private const double HeadMm = 42;

    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        var rows = CutRow.Of(context);
        return new Document
        {
            Kind = "Cut list",
            Identity = context.Identity(ofOneBuild: true),
            Paper = context.Paper,
            ForTheBench = true,
            Stations =
            [
                .. Rolls(context, [.. rows.Where(row => row.Line is not null)], "Cut the plies"),
                KitPage.Of(context, rows),
                .. Rolls(context, [.. rows.Where(row => row.Line is null)], "Cut the bag"),
                .. Tape(context),
            ],
            Data = CutData.Of(context, rows),
        };
    }

    // Rolls follow each other on a page as long as they fit.
    private static IEnumerable<Station> Rolls(PaperContext context, ImmutableArray<CutRow> rows, string title)
    {
        var say = context.Wording;
        var blocks = new List<Block>();
        var used = 0.0;
        foreach (var roll in rows.GroupBy(row => row.Nest).ToList())
        {
            ImmutableArray<Block> next = [.. RollPage.Of(context, roll.Key, [.. roll])];
            var height = HeadMm + (roll.Count() * RowMm) + next.OfType<Drawing>().Sum(drawing => drawing.HeightMm + 8);
            if (blocks.Count > 0 && used + height > PageMm)
            {
                yield return new Station(say.Say(title), [.. blocks, Ifs(context)]);
                (blocks, used) = ([], 0);
            }

            blocks.AddRange(next);
            used += height;
        }

        if (blocks.Count > 0)
        {
            yield return new Station(say.Say(title), [.. blocks, Ifs(context)]);
        }
    }

    private static IfBox Ifs(PaperContext context) => new(
    [
        new(context.Wording.Say("The roll is narrower than printed"), context.Wording.Say("stop; tell the planner the width; cut nothing by guess")),
        new(context.Wording.Say("A piece is cut wrong"), context.Wording.Say("mark it with its letter and a cross; cut a new one")),
        new(context.Wording.Say("The cloth is wet, dirty or creased"), context.Wording.Say("cut that length off; begin again behind it")),
    ]);

    private static IEnumerable<Station> Tape(PaperContext context)
    {
        if (context.Plan.Bag is not { } bag)
        {
            yield break;
        }

        var say = context.Wording;
        var tape = context.Part.Bag?.SealantTape?.Material;
        var length = context.Text.Distance(bag.SealantTape.Value);
        yield return new Station(say.Say("Lay the bag ready"),
        [
            new Table(
                say.Say("Not from a drawing"),
                [new(say.Say("Item"), NamesTheRow: true), new(say.Say("How much"), WidthMm: 50), new(say.Say("Ready"), Align.Centre, 18)],
                [
                    new CellRow([tape is null ? say.Say("Sealant tape, none named") : Words.Of(tape), new BigCell(length.Main, length.Beside), TickCell.Of(1)]),
                    .. (context.Part.Bag?.Ports ?? []).Select(port => new CellRow([Words.Of(port.Material), port.At is { } at ? Words.Place(at) : "", TickCell.Of(1)])),
                    .. context.Part.Bag?.Hose is { } hose ? [new CellRow([Words.Of(hose.Material), "", TickCell.Of(1)])] : ImmutableArray<CellRow>.Empty,
                    .. context.Part.Bag?.CatchPot is { } pot ? [new CellRow([Words.Of(pot.Material), "", TickCell.Of(1)])] : ImmutableArray<CellRow>.Empty,
                    .. context.Part.Bag?.Layers.Where(layer => layer.Class == LayerClass.Caul)
                        .Select(layer => new CellRow([Words.Of(layer.Material), say.Say("clean, edges rounded"), TickCell.Of(1)])) ?? [],
                ],
                TableUse.Steps),
            new TickList([say.Say("Everything above was cut before mixing."), say.Say("H2 is signed on the traveller.")]),
        ]);
    }
}
