using System.Collections.Immutable;
using Recipe.Documents.Changes;
using Recipe.Planning;
using Recipe.Planning.Comparing;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/changes/1</c>.</summary>
internal sealed record ChangesRecord(string Schema, ImmutableArray<ComparedFileRecord> Files);

internal sealed record ComparedFileRecord(string Before, string After, ImmutableArray<ComparedPartRecord> Parts, ImmutableArray<WrittenChangeRecord> Lines)
{
    public static ComparedFileRecord Of(ComparedFile file) => new(
        file.Before, file.After, [.. file.Parts.Select(ComparedPartRecord.Of)], [.. file.Lines.Select(WrittenChangeRecord.Of)]);
}

internal sealed record ComparedPartRecord(
    string? Before, string? After, ImmutableArray<StackChangeRecord> Stack, ImmutableArray<FigureChangeRecord> Figures, ImmutableArray<FindingRecord> NewFindings, ImmutableArray<FindingRecord> GoneFindings)
{
    public static ComparedPartRecord Of(ComparedPart part)
    {
        var (before, after) = (part.Before, part.After);
        return new(
            before?.Plan.Part.Name,
            after?.Plan.Part.Name,
            [.. StackComparison.Of(before?.Plan.Stack ?? [], after?.Plan.Stack ?? []).Select(StackChangeRecord.Of)],
            [.. Changes.Figures.All.Select(figure => new FigureChangeRecord(figure.Key, Value(figure, before?.Plan), Value(figure, after?.Plan)))],
            [.. PartChanges.Fresh(before?.Findings ?? [], after?.Findings ?? []).Select(FindingRecord.Of)],
            [.. PartChanges.Fresh(after?.Findings ?? [], before?.Findings ?? []).Select(FindingRecord.Of)]);
    }

    private static double? Value(Figure figure, Plan? plan) => plan is null ? null : figure.Value(plan) is { } value && double.IsFinite(value) ? value : null;
}

/// <summary>A figure in SI; its key ends with the unit.</summary>
internal sealed record FigureChangeRecord(string Key, double? Before, double? After);

internal sealed record StackChangeRecord(string Fate, bool Moved, string? Before, int? NumberBefore, string? After, int? NumberAfter)
{
    public static StackChangeRecord Of(StackChange change) => new(
        change.Fate.ToString().ToLowerInvariant(), change.Moved, Line(change.Before), change.Before?.Number, Line(change.After), change.After?.Number);

    private static string? Line(StackPlan? line) => line is null ? null : $"{line.Item.Name} {StackComparison.RestOf(line.Item)}";
}

/// <summary>A line that was written differently; <c>from</c> names the file that it stands in where that is one that the compared file uses.</summary>
internal sealed record WrittenChangeRecord(string Thing, string Block, string Word, string? Was, string? Now, bool Moved, string? From)
{
    public static WrittenChangeRecord Of(WrittenChange change) => new(change.Thing, change.Block, change.Word, change.Was, change.Now, change.Moved, change.From);
}
