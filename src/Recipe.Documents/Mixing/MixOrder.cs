using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>
/// Mixing a pot line by line, where the recipe writes it down. The rows stand in the order of the recipe and each weighing begins at zero, so that
/// nobody pours a peroxide before the accelerator is stirred in, or reads a pigment as hardener.
/// </summary>
internal static class MixOrder
{
    /// <summary>Whether the recipe says how a pot is mixed, resin and hardener among it.</summary>
    public static bool IsWritten(Part part) =>
        part.Mixing is { } mixing && mixing.Steps.Any(s => s.Action == MixAction.AddResin) && mixing.Steps.Any(s => s.Action == MixAction.AddHardener);

    /// <summary>The rows of one pot.</summary>
    public static IEnumerable<Row> Rows(BenchContext context, ResinSystem? system, Mass resin, Mass hardener, Mass? tolerance)
    {
        foreach (var step in context.Part.Mixing!.Steps)
        {
            yield return step.Action switch
            {
                MixAction.AddResin => Weigh(context, "Pour resin (A).", resin, "resin poured"),
                MixAction.AddHardener => Weigh(
                    context, Weighing.TakesPeroxide(system) ? "Add the peroxide." : "Add hardener (B).", hardener, "hardener added", tolerance),
                MixAction.Stir => BenchContext.Tick("Stir.", step.Time is { } time ? new BigCell(QuantityText.Span(time.Value)) : (Cell)"until no streak is left"),
                MixAction.Scrape => BenchContext.Tick("Scrape sides, corners and stick.", "into the pot"),
                MixAction.SecondCup => BenchContext.Tick("Pour it into a clean second cup. Stir again.", "leave the scrapings behind"),
                _ when step.Parts is { } parts => Weigh(
                    context, $"Add the {Name(step.Action)}, {Numbers.Significant(parts.Value, 3)} parts to 100 of resin.", resin * (parts.Value / 100), Name(step.Action)),
                _ => BenchContext.Tick($"Add the {Name(step.Action)}.", "as the maker says"),
            };
        }
    }

    private static CellRow Weigh(BenchContext context, string what, Mass mass, string blank, Mass? tolerance = null)
    {
        var text = context.Text;
        var band = tolerance is { } off ? $"{text.Weight(mass - off, Rounding.Up).Main} to {text.Weight(mass + off, Rounding.Down).Main}" : null;
        return BenchContext.Step("Set the scale to zero. " + what, new BigCell(text.Weight(mass).Main, band), new Blank(blank, text.ScaleUnit));
    }

    private static string Name(MixAction action) => action switch
    {
        MixAction.AddAccelerator => "accelerator",
        MixAction.AddFiller => "filler",
        MixAction.AddPigment => "pigment",
        _ => "thinner",
    };
}
