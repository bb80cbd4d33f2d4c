using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Travellers;

/// <summary>How a pot is mixed where the recipe writes it down: what is weighed besides, and the order of the steps.</summary>
internal static class MixOrder
{
    /// <summary>A row for each thing that is weighed by parts to the resin of the pot.</summary>
    public static IEnumerable<Row> Extras(TravellerContext context, Mass resin)
    {
        foreach (var step in context.Part.Mixing?.Steps ?? [])
        {
            if (step.Parts is { } parts && Name(step.Action) is { } name)
            {
                yield return TravellerContext.Step(
                    $"Weigh the {name}, {Numbers.Significant(parts.Value, 3)} parts to 100 of resin.",
                    new BigCell(context.Text.Weight(resin * (parts.Value / 100)).Main),
                    new Blank(name, context.Text.ScaleUnit));
            }
        }
    }

    /// <summary>The steps as one line to tick; null where the recipe does not say.</summary>
    public static string? InWords(Part part)
    {
        if (part.Mixing is not { Steps.IsEmpty: false } mixing)
        {
            return null;
        }

        var cup = mixing.Cup is { Value: MixingCup.Clean } ? " A clean cup." : "";
        return $"Mix in this order: {string.Join(", ", mixing.Steps.Select(Step))}.{cup}";
    }

    private static string Step(MixStep step) => step.Action switch
    {
        MixAction.Stir => step.Time is { } time ? $"stir {QuantityText.Span(time.Value)}" : "stir",
        MixAction.Scrape => "scrape sides and stick",
        MixAction.SecondCup => "second cup and stir",
        _ => Name(step.Action) ?? "",
    };

    private static string? Name(MixAction action) => action switch
    {
        MixAction.AddResin => "resin",
        MixAction.AddHardener => "hardener",
        MixAction.AddAccelerator => "accelerator",
        MixAction.AddFiller => "filler",
        MixAction.AddPigment => "pigment",
        MixAction.AddSolvent => "thinner",
        _ => null,
    };
}
