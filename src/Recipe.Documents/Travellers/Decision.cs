using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Travellers;

/// <summary>The decision, H9, and what is still done to a good part.</summary>
internal static class Decision
{
    /// <summary>H9.</summary>
    public static HoldPoint Hold(BenchContext context) => new(
        "H9", context.Say("decided: use, repair or scrap"), [], [new Blank(context.Say("Decision")), new Blank(context.Say("Laminator")), new Blank(context.Say("Checked by")), new Blank(context.Say("Photos"))]);

    /// <summary>What follows the decision.</summary>
    public static IEnumerable<Block> After(BenchContext context, FinishOrder order)
    {
        var lines = order.AfterInspection.Where(line => line.Verb != "inspect").Select((line, i) => (Phrase)$"{Numbers.Whole(i + 1)}. {FinishStation.Sentence(line, context.Wording)}").ToImmutableArray();
        if (!lines.IsEmpty)
        {
            yield return new Heading(context.Say("After H9, in this order"));
            yield return new TickList(lines);
        }
    }
}
