using System.Collections.Immutable;
using Recipe.Documents.Cures;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>From the mould to the weighed, inspected and decided part, H8 and H9; with a cured join, the halves before it at a station of their own.</summary>
internal static class FinishStation
{
    /// <summary>Demoulding and all finishing of a part that is not joined later; to H9.</summary>
    public static Station Build(BenchContext context, FinishOrder order) => new(
        context.IsLeftOn ? context.Say("Finish") : context.Say("Demould and finish"),
        [.. Demould(context, [.. Lines(context, order.BeforeInspection), .. InspectSteps.Weigh(context)]), InspectSteps.Hold(context, order), Decision.Hold(context)]);

    /// <summary>Demoulding and finishing of halves or parts that are still apart.</summary>
    public static Station BuildApart(BenchContext context, FinishOrder order) => new(
        context.Say("Demould and trim"),
        [.. Demould(context, Lines(context, order.BeforeJoin))]);

    /// <summary>Finishing after the join; to H9.</summary>
    public static Station BuildJoined(BenchContext context, FinishOrder order) => new(
        context.Say("Weigh and inspect"),
        [context.SignedSteps("", [.. Lines(context, order.BeforeInspection), .. InspectSteps.Weigh(context)]), InspectSteps.Hold(context, order), Decision.Hold(context)]);

    /// <summary>A finishing line as written, as a sentence.</summary>
    public static string Sentence(FinishStep line, Wording say)
    {
        // These words only say that a sentence of the author's own follows.
        var text = WrittenText.ForReading(line.Text);
        if (line.Verb is "step" or "prepare" or "")
        {
            return Words.Sentence(text);
        }

        var word = Words.Finishing(line.Verb, say);
        return Words.Sentence(text.Length == 0 ? word : $"{word}: {text}");
    }

    private static IEnumerable<Block> Demould(BenchContext context, IEnumerable<Row> rows)
    {
        var after = CureStation.AfterDemould(context).ToList();
        IReadOnlyList<Row> off = after.Count > 0 ? after : [TakingOff.Step(context)];
        if (after.Count > 1)
        {
            yield return context.SignedSteps("", after);
            foreach (var caution in context.Caution(Danger.Heat))
            {
                yield return caution;
            }

            off = [];
        }

        ImmutableArray<Row> all = [.. off, .. rows];
        if (!all.IsEmpty)
        {
            yield return context.SignedSteps("", all);
        }

        foreach (var caution in context.Caution(Danger.Dust))
        {
            yield return caution;
        }
    }

    // An inspection is ticked at H8, item by item; the weighing has its target there too.
    private static bool IsInspection(FinishStep line) => line.Verb == "inspect" || FinishOrder.IsWeighing(line);

    private static IEnumerable<Row> Lines(BenchContext context, ImmutableArray<FinishStep> lines)
    {
        var weighed = false;
        foreach (var line in lines.Where(line => !IsInspection(line)))
        {
            if (line.Verb == "trim" && !weighed)
            {
                weighed = true;
                var what = context.Sides.Length > 1 ? context.Say("Weigh all halves together before trimming.") : context.Say("Weigh before trimming.");
                yield return BenchContext.Step(what, "", new Blank(context.Say("mass before trimming"), context.Text.ScaleUnit));
            }

            yield return line.Verb == "weigh"
                ? BenchContext.Step(Sentence(line, context.Wording), "", new Blank(context.Say("mass"), context.Text.ScaleUnit))
                : BenchContext.Tick(Sentence(line, context.Wording));
        }
    }
}
