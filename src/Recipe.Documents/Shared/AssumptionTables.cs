using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Planning;
using Recipe.Text.Units;

namespace Recipe.Documents.Shared;

/// <summary>The defaults and unmeasured figures behind a paper, each with its number, value and source.</summary>
internal static class AssumptionTables
{
    // Stands for the word of a figure where what to write is the same for all figures of a material.
    private const string Placeholder = "FIGURE";
    private const int Few = 3;

    /// <summary>All of them, with what to write to replace each; for the figures of one material that is said once.</summary>
    public static IEnumerable<Block> All(PaperContext context)
    {
        if (context.Plan.Assumptions.IsEmpty)
        {
            yield return new Paragraph("Nothing is assumed: every figure was stated or comes from the book with a source.");
            yield break;
        }

        // A few figures of materials are no table of their own: what to write stands beside each.
        var lines = Lines(context).ToList();
        var figures = lines.Where(line => line.OfAll is not null).ToList();
        figures = figures.Count > Few ? figures : [];
        var others = lines.Except(figures).ToList();
        yield return new Paragraph(
            $"Nobody stated or measured these figures. To replace one, write in the recipe what stands over it or beside it; {Placeholder} stands for the word that the figure begins with.", Fine: true);
        if (figures.Count > 0)
        {
            yield return new Table(
                "Unmeasured figures of materials, with their sources",
                Columns,
                [.. figures.GroupBy(line => line.OfAll, StringComparer.Ordinal).SelectMany(group => group.Select(line => (Row)Cells(context, line)).Prepend(new GroupRow(Phrase.WithCode($"To replace: {group.Key}"))))]);
        }

        if (others.Count > 0)
        {
            yield return new Table(
                "Defaults, with their sources",
                [new("No.", WidthMm: 11, NamesTheRow: true), new("What", WidthMm: 74), new("Value", WidthMm: 42), new("Source", WidthMm: 66), new("To replace it")],
                [.. others.Select(line => new CellRow([.. Cells(context, line).Cells, Phrase.WithCode(line.Assumption.HowToReplace)]))]);
        }
    }

    /// <summary>Those that the figures of one paper rest on. What to write to replace one stands on the cover.</summary>
    public static IEnumerable<Block> Of(PaperContext context, IReadOnlySet<string> keys)
    {
        var lines = Lines(context).Where(line => keys.Contains(line.Assumption.Key)).ToList();
        yield return lines.Count == 0
            ? new Paragraph("No figure of this paper rests on an assumption.")
            : new Table("Defaults and unmeasured figures, with their sources", Columns, [.. lines.Select(line => Cells(context, line))]);
    }

    private static ImmutableArray<Column> Columns => [new("No.", WidthMm: 11, NamesTheRow: true), new("What", WidthMm: 92), new("Value", WidthMm: 40), new("Source")];

    /// <summary>An assumption with its number, and what to write for any figure of its material; null where it is no figure of a material.</summary>
    private sealed record Line(string Id, Assumption Assumption, string? OfAll);

    private static IEnumerable<Line> Lines(PaperContext context) =>
        context.Plan.Assumptions.Select((assumption, i) => new Line(PaperContext.AssumptionId(i + 1), assumption, OfAll(assumption)));

    private static CellRow Cells(PaperContext context, Line line) => new CellRow(
    [
        line.Id,
        WrittenText.InTitle(line.Assumption.What),
        WrittenText.ForReading(line.Assumption.Value) + (context.Text.IsUs && InUs(line.Assumption) is { } us ? $" ({WrittenText.ForReading(us)})" : ""),
        Phrase.WithCode(WrittenText.InTitle(line.Assumption.Source)),
    ]);

    // The same figures in the units of a US shop; null where all of them are the same there. Nobody knows a default to more than three figures. Temperatures are
    // those of materials only: what a default counts in degC is how far two of them lie apart ("halves for each 10 degC warmer").
    private static string? InUs(Assumption assumption)
    {
        var value = assumption.Value;
        var apart = assumption.Key.StartsWith("default.", StringComparison.Ordinal);
        var text = WrittenQuantities.Replace(value, quantity => !(apart && quantity.Unit.Scale == UnitScale.Offset) && WrittenQuantities.UsFor(quantity.Unit, quantity.Numbers.Max(quantity.Unit.ToSi)) is { } unit
            ? $"{string.Join(" to ", quantity.Numbers.Select(number => Numbers.Significant(unit.FromSi(quantity.Unit.ToSi(number)), Math.Clamp(quantity.Digits, 2, 3))))} {unit.Symbol}"
            : null);
        return text == value ? null : text;
    }

    // "heat-limit of Film" is replaced by "declare `... { heat-limit ... }`": the same for every other figure of Film.
    private static string? OfAll(Assumption assumption)
    {
        var end = assumption.What.IndexOf(" of ", StringComparison.Ordinal);
        if (end <= 0 || !(assumption.Key.StartsWith("book.", StringComparison.Ordinal) || assumption.Key.StartsWith("recipe.", StringComparison.Ordinal)))
        {
            return null;
        }

        var (word, how) = (assumption.What[..end], assumption.HowToReplace);
        var shared = how.Replace($"{{ {word} ", $"{{ {Placeholder} ", StringComparison.Ordinal).Replace($"`{word}`", $"`{Placeholder}`", StringComparison.Ordinal);
        return shared == how ? null : shared;
    }
}
