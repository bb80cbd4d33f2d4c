using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Cuts;

/// <summary>Into the kit box: the last ply first, so that ply 1 comes out first.</summary>
internal static class KitPage
{
    public static Station Of(PaperContext context, ImmutableArray<CutRow> rows)
    {
        var (say, text, plan) = (context.Wording, context.Text, context.Plan);
        var cloth = rows.Where(row => row.Line is not null).ToList();
        var known = cloth.Where(row => row.Mass is not null).ToList();
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(new TickList(
        [
            say.Say("Put a new blade in. Change it when it drags."),
            say.Say("Write letter, ply and warp arrow on every piece."),
            say.Say("Lay pieces flat or rolled. Never fold them."),
        ]));
        blocks.Add(new Table(
            say.Say("Into the box from top to bottom of this list: the last ply goes in first, ply 1 lies on top"),
            [new(say.Say("Ply"), Align.Centre, 22), new(say.Say("What"), NamesTheRow: true), new(say.Say("Pieces"), Align.Centre, 34), new(say.Say("In"), Align.Centre, 16)],
            [.. Enumerable.Range(0, plan.Stack.Length).Reverse().Select(i => Line(context, i, [.. cloth.Where(row => row.Size.StackLine == i)]))],
            TableUse.Steps));
        if (known.Count > 0)
        {
            var note = known.Count == cloth.Count ? known.Exists(row => row.AsRectangles is not null) ? say.Say("all pieces cut to their outline; the mix cards start from it") : say.Say("all pieces as cut; the mix cards start from it") : say.Say("without the pieces whose weight is not known");
            blocks.Add(new KeyNumbers(
                say.Say("All cloth in the box"), [new(say.Say("Cloth, sum of the pieces"), text.Weight(CutRow.Sum(known)).Main, note, new Blank(say.Say("weighed"), text.ScaleUnit))]));
        }

        blocks.Add(new TickList(
        [
            say.Say("Offcuts larger than a hand: roll up, write material and lot on them."),
            say.Say("Keep one offcut of each cloth for a test piece."),
            say.Say("H2 is signed on the traveller."),
        ]));
        blocks.Add(new IfBox(
        [
            new(say.Say("The box weighs less than the sum"), say.Say("count the pieces; find the one that is missing")),
            new(say.Say("A piece weighs far from its target"), say.Say("check the roll's label: is it this cloth?")),
            new(say.Say("Two rolls of a lot are open"), say.Say("write both lots on the traveller")),
        ]));
        return new Station(say.Say("Fill the kit box"), blocks.ToImmutable());
    }

    /// <summary>What is counted into the box: pieces of cloth, the strips of a joined one each for itself, cores and inserts.</summary>
    public static int PiecesOf(Plan plan) => Enumerable.Range(0, plan.Stack.Length).Sum(i => PiecesOf(plan, i));

    private static int PiecesOf(Plan plan, int line)
    {
        var cut = plan.Nests.SelectMany(nest => nest.Sizes).Where(size => size.StackLine == line).Sum(size => size.Count);
        var (pieces, item) = (plan.Stack[line].Pieces.Sum(piece => piece.Count), plan.Stack[line].Item);

        // An insert has no size to cut; of a ply or a core whose size nobody knows, nobody knows the pieces either.
        // Each half gets its own, as the takeoff has it.
        return cut > 0 ? cut : pieces > 0 || item is not InsertItem ? pieces : Math.Max(1, item.Count) * Math.Max(1, plan.Geometry?.Sides ?? plan.Part.Mould?.Halves.Length ?? 1);
    }

    private static CellRow Line(PaperContext context, int index, ImmutableArray<CutRow> rows)
    {
        var (say, line, count) = (context.Wording, context.Plan.Stack[index], Numbers.Whole(Math.Max(1, PiecesOf(context.Plan, index))));
        var pieces = rows.IsEmpty ? new TextCell(count) : new TextCell(Phrase.Strong(string.Join(", ", rows.Select(row => row.Size.Letter))), say.Say($"{count} to count"));
        var core = line.Item is CoreItem && line.Pieces is [var first, ..] ? context.Text.Sheet(first.Length, first.Width).Main : null;
        return new CellRow(
        [
            line.Number > 0 ? new RingCell(StackNames.Number(context.Plan, line)) : StackNames.Number(context.Plan, line),
            new TextCell(Phrase.Strong(line.Item.Name) + $": {Words.Of(StackNames.MaterialOf(line.Item))}", core),
            pieces,
            TickCell.Of(1),
        ]);
    }
}
