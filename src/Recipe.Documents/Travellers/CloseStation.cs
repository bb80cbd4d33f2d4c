using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Travellers;

/// <summary>The last page: what is still done to a good part, what was done otherwise, what was accepted, which lots went in, what the checks found.</summary>
internal static class CloseStation
{
    private const int DeviationLines = 5;

    public static Station Build(BenchContext context, FinishOrder order) => new(
        context.Say("Deviations and lots"),
        [.. Decision.After(context, order), Deviations(context), .. Waivers(context), LotTable.Of(context), .. Notes.ForBench(context.Paper)]);

    private static Table Deviations(BenchContext context) => new(
        context.Say("Deviations: whatever was not done as written"),
        [new(context.Say("What")), new(context.Say("Why"), WidthMm: 56), new(context.Say("Who decided"), WidthMm: 41)],
        [.. Enumerable.Range(0, DeviationLines).Select(_ => new CellRow([new Blank(context.Say("what was done otherwise")), new Blank(context.Say("why")), new Blank(context.Say("who decided"))]))],
        TableUse.Steps);

    // Waivers in words stand among the notes, when there are any.
    private static IEnumerable<Block> Waivers(BenchContext context)
    {
        if (Notes.WaiverLines(context.Paper).IsEmpty)
        {
            yield return new Paragraph(context.Say("Waivers: none."));
        }
    }
}
