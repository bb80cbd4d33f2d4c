using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Travellers;

/// <summary>The decision, H9, and what is still done to a good part.</summary>
internal static class Decision
{
    /// <summary>H9.</summary>
    public static HoldPoint Hold() => new(
        "H9", "decided: use, repair or scrap", [], [new Blank("Decision"), new Blank("Laminator"), new Blank("Checked by"), new Blank("Photos")]);

    /// <summary>What follows the decision.</summary>
    public static IEnumerable<Block> After(FinishOrder order)
    {
        var lines = order.AfterInspection.Where(line => line.Verb != "inspect").Select((line, i) => (Phrase)$"{Numbers.Whole(i + 1)}. {FinishStation.Sentence(line)}").ToImmutableArray();
        if (!lines.IsEmpty)
        {
            yield return new Heading("After H9, in this order");
            yield return new TickList(lines);
        }
    }
}
