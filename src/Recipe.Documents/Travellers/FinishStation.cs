using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>Demoulding after H7, what of the cure follows it, and finishing.</summary>
internal static class FinishStation
{
    public static Station Build(TravellerContext context)
    {
        var after = CureStation.AfterDemould(context).ToList();
        var heated = after.Count > 1 ? context.Caution(Danger.Heat, Danger.Dust) : context.Caution(Danger.Dust);

        // A line that only says "weigh" is the weighing of the next station.
        var lines = context.Part.Finish.Where(line => line is not { Verb: "weigh", Text: "" }).Select(line => context.Tick(Sentence(line)));
        return new Station(
            "Demould and finish",
            [
                new HoldPoint(
                    "H7",
                    "may leave the mould",
                    ["Cool enough to touch; a fingernail leaves no mark", "Leftover from the pot is hard and rings"],
                    [new Blank("Part temperature", "°C")]),
                TravellerContext.Steps("", [.. after.Count > 0 ? after : [context.Tick("Take the part off the mould. Wedges of plastic or wood.")], context.Step("Weigh before trimming.", "", new Blank("mass before trimming", "g")), .. lines]),
                .. heated,
            ]);
    }

    /// <summary>A finishing line as written, as a sentence.</summary>
    public static string Sentence(FinishStep line)
    {
        // These words only say that a sentence of the author's own follows.
        var text = WrittenText.ForReading(line.Text);
        if (line.Verb is "step" or "prepare" or "")
        {
            return text;
        }

        var verb = char.ToUpperInvariant(line.Verb[0]) + line.Verb[1..];
        return text.Length == 0 ? verb : $"{verb}: {text}";
    }
}
