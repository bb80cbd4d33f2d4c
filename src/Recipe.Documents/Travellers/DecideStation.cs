using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Travellers;

/// <summary>The decision, H9; what is still done to a good part; what differed and what was accepted.</summary>
internal static class DecideStation
{
    private const int DeviationLines = 5;

    public static Station Build(BenchContext context, FinishOrder order) => new(
        "Decide",
        [Decision(), .. After(order), Deviations(), .. Waivers(context)]);

    private static HoldPoint Decision() => new(
        "H9", "decided: use, repair or scrap", [], [new Blank("Decision"), new Blank("Laminator"), new Blank("Checked by"), new Blank("Photos")]);

    private static IEnumerable<Block> After(FinishOrder order)
    {
        var lines = order.AfterInspection.Where(line => line.Verb != "inspect").Select((line, i) => (Phrase)$"{Numbers.Whole(i + 1)}. {FinishStation.Sentence(line)}").ToImmutableArray();
        if (!lines.IsEmpty)
        {
            yield return new Heading("After H9, in this order");
            yield return new TickList(lines);
        }
    }

    private static Table Deviations() => new(
        "Deviations: whatever was not done as written",
        [new("What"), new("Why", WidthMm: 56), new("Who decided", WidthMm: 41)],
        [.. Enumerable.Range(0, DeviationLines).Select(_ => new CellRow([new Blank("what was done otherwise"), new Blank("why"), new Blank("who decided")]))],
        TableUse.Steps);

    private static IEnumerable<Block> Waivers(BenchContext context)
    {
        var lines = Notes.WaiverLines(context.Paper);
        yield return lines.IsEmpty ? new Paragraph("Waivers: none.") : new BulletList(lines);
    }
}
