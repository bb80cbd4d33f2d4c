using System.Collections.Immutable;
using Recipe.Documents.Changes;
using Recipe.Documents.Quantities;
using Recipe.Text.Findings;

namespace Recipe.Documents.Comparing;

/// <summary>A figure of several parts, as it is written, with the difference to the first.</summary>
/// <param name="Label">What the figure is called.</param>
/// <param name="Cells">A value and a difference for each part; the difference of the first is empty.</param>
internal sealed record FigureRow(string Label, ImmutableArray<(string Value, string Difference)> Cells);

/// <summary>The figures of several parts side by side. One that no part has is left out.</summary>
internal static class PartsTable
{
    public const string NotKnown = "not known";

    private static readonly ImmutableArray<(Severity Severity, string Label)> Severities =
        [(Severity.Error, "Errors"), (Severity.Warning, "Warnings"), (Severity.Advice, "Advice")];

    public static ImmutableArray<FigureRow> Of(IReadOnlyList<PartOnReport> parts, QuantityText text)
    {
        var rows = ImmutableArray.CreateBuilder<FigureRow>();
        foreach (var figure in Figures.All)
        {
            var values = parts.Select(part => Known(figure.Value(part.Input.Plan))).ToArray();
            if (values.Any(value => value is not null))
            {
                var written = values.Select(value => value is { } si ? figure.Text(text, si) : NotKnown).ToArray();
                rows.Add(new(figure.Label, [.. values.Select((value, i) => (written[i], value is { } own && values[0] is { } first && written[i] != written[0] ? Figures.Difference(figure, text, first, own) : ""))]));
            }
        }

        foreach (var (severity, label) in Severities)
        {
            var counts = parts.Select(part => part.Open(severity)).ToArray();
            if (counts.Any(count => count > 0))
            {
                rows.Add(new(label, [.. counts.Select((count, i) => (Numbers.Whole(count), i > 0 && count != counts[0] ? (count > counts[0] ? "+" : "-") + Numbers.Whole(Math.Abs(count - counts[0])) : ""))]));
            }
        }

        return rows.ToImmutable();
    }

    private static double? Known(double? value) => value is { } si && double.IsFinite(si) ? si : null;
}
