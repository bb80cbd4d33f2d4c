using Recipe.Documents.Changes;
using Recipe.Documents.Quantities;
using Recipe.Planning;

namespace Recipe.Documents;

/// <summary>The figures of a plan, a line each: for texts that are compared line by line.</summary>
public static class FigureLines
{
    /// <summary>Each figure that is known, in the units of the shop: <c>Mass, trimmed: 126 g</c>.</summary>
    public static IEnumerable<string> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var text = new QuantityText(plan.Shop);
        return from figure in Figures.All
               let value = figure.Value(plan)
               where value is not null
               select PlainText.Spaced($"{figure.Label}: {figure.Text(text, value.Value)}");
    }
}
