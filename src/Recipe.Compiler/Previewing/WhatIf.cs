using System.Collections.Immutable;
using System.Globalization;
using Recipe.Model;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Compiler.Previewing;

/// <summary>
/// What the text of a recipe would be if a number it declares were another one. Only numbers that stand in the file itself, as plain numbers, can be
/// moved; what comes from another file, from a named value or from a default of the program is left alone.
/// </summary>
public static class WhatIf
{
    private const int MostRepeats = 8;
    private const int MostLaminators = 6;
    private const int MostPlies = 12;

    /// <summary>The numbers of a part that can be tried otherwise: those of the day first, then the plies from the mould.</summary>
    /// <param name="file">The file of the part.</param>
    /// <param name="part">The part.</param>
    internal static ImmutableArray<Lever> LeversOf(CompiledFile file, CompiledPart part)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(part);
        var entries = Entries(file.Tree.Root.Statements).ToList();
        var wetOut = part.Part.WetOut;
        var levers = new List<Lever?>();
        levers.Add(Number(file, entries, wetOut?.Content?.Where, "resin-content", "Resin content", unit => unit?.Symbol == "%" ? (25, 70, 0.5) : null));
        levers.Add(Number(file, entries, wetOut?.Room?.Where, "room", "Room temperature", HeatRange));
        levers.Add(Number(file, entries, wetOut?.Laminators?.Where, "laminators", "Laminators", unit => unit is null ? (1, MostLaminators, 1) : null));
        foreach (var (ply, i) in part.Part.Stack.OfType<PlyItem>().Take(MostPlies).Select((ply, i) => (ply, i)))
        {
            levers.Add(Repeats(file, entries, ply, i));
        }

        return [.. levers.OfType<Lever>()];
    }

    /// <summary>The text with some levers moved; the text as it is when none is, and null when there is no such lever or a value is out of its range.</summary>
    /// <param name="file">The file of the part.</param>
    /// <param name="part">The part.</param>
    /// <param name="values">The values, by the names of the levers.</param>
    public static string? Text(CompiledFile file, CompiledPart part, IReadOnlyDictionary<string, double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var levers = LeversOf(file, part).ToDictionary(lever => lever.Id, StringComparer.Ordinal);
        var edits = new List<TextEdit>();
        foreach (var (id, value) in values)
        {
            if (!levers.TryGetValue(id, out var lever) || !(value >= lever.Low && value <= lever.High))
            {
                return null;
            }

            if (value != lever.Value)
            {
                edits.Add(lever.Edit(value));
            }
        }

        return edits.Count == 0 ? file.Source.Text : TextEdit.Apply(file.Source, edits);
    }

    private static (double Low, double High, double Step)? HeatRange(Unit? unit) => unit?.Symbol switch
    {
        "degC" => (10, 35, 0.5),
        "degF" => (50, 95, 1),
        _ => null,
    };

    private static Lever? Number(
        CompiledFile file, List<EntrySyntax> entries, SourceSpan? where, string word, string label, Func<Unit?, (double Low, double High, double Step)?> rangeOf)
    {
        if (EntryAt(file, entries, where, word) is not { } entry || entry.Values.OfType<QuantitySyntax>().FirstOrDefault() is not { } number || entry.Values[0] != number || rangeOf(number.Unit) is not var (low, high, step))
        {
            return null;
        }

        // What is written is always within reach, and on a step.
        var (least, most) = (Math.Min(low, number.Number), Math.Max(high, number.Number));
        return new Lever(word, label, number.Number, least, most, number.Number % step == 0 ? step : step / 10, number.Unit?.Symbol ?? "")
        {
            Edit = value => new TextEdit(new SourceSpan(file.Source, number.NumberSpan), Written(value)),
        };
    }

    private static Lever? Repeats(CompiledFile file, List<EntrySyntax> entries, PlyItem ply, int index)
    {
        if (EntryAt(file, entries, ply.Where, ply.Name) is not { } entry)
        {
            return null;
        }

        var label = ply.IsPatch ? $"Pieces of {ply.Name}" : $"Repeats of {ply.Name}";
        var times = entry.Values.OfType<WordSyntax>().FirstOrDefault(word => word.Text.Length > 1 && word.Text[0] == 'x' && word.Text.AsSpan(1).ContainsAnyExceptInRange('0', '9') is false);
        return new Lever(string.Create(CultureInfo.InvariantCulture, $"ply-{index}"), label, ply.Count, 1, Math.Max(MostRepeats, ply.Count), 1, "")
        {
            Edit = value => times is not null
                ? new TextEdit(new SourceSpan(file.Source, times.Span), "x" + Written(value))
                : new TextEdit(new SourceSpan(file.Source, new TextSpan(entry.LineSpan.End, 0)), "  x" + Written(value)),
        };
    }

    private static EntrySyntax? EntryAt(CompiledFile file, List<EntrySyntax> entries, SourceSpan? where, string word) =>
        where is { } place && ReferenceEquals(place.Source, file.Source)
            ? entries.FirstOrDefault(entry => entry.Head.Text == word && entry.Span.Start <= place.Span.Start && place.Span.Start <= entry.Span.End)
            : null;

    private static IEnumerable<EntrySyntax> Entries(IEnumerable<StatementSyntax> statements) =>
        statements.OfType<EntrySyntax>().SelectMany(entry => Entries(entry.Block?.Statements ?? []).Prepend(entry));

    private static string Written(double value) => Math.Round(value, 4).ToString("0.####", CultureInfo.InvariantCulture);
}
