using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.LayUps;

/// <summary>How a prepreg is handled where the recipe writes it down.</summary>
internal static class PrepregSteps
{
    public static IEnumerable<Row> Of(PrepregHandling handling)
    {
        if (handling.Thaw is { } thaw)
        {
            yield return BenchContext.Step(
                handling.ThawsSealed == false ? "Let it warm up. Wipe off the dew." : "Let it warm up in its sealed wrap until no dew stands on it.",
                new BigCell(QuantityText.Span(thaw.Value)),
                new Blank("time out of the freezer"));
        }

        if (handling.OutTime is { } spent)
        {
            yield return BenchContext.Step("Write on the roll how long it was out.", $"{QuantityText.Span(spent.Value)} so far", new Blank("hours out, in all"));
        }

        if (handling.DebulkEvery is { } every)
        {
            var time = handling.DebulkFor is { } length ? $", {QuantityText.Span(length.Value)} each time" : "";
            yield return BenchContext.Tick($"Debulk the first ply, then after every {Numbers.Whole(every.Value)}.", $"vacuum on{time}");
        }

        if (handling.EdgesBreathe is { Value: true })
        {
            yield return BenchContext.Tick("Set edge dams that let air out.", "glass strands to the breather");
        }
    }
}
