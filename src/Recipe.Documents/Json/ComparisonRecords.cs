using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/comparison/1</c>.</summary>
internal sealed record ComparisonRecord(string Schema, ImmutableArray<PartFiguresRecord> Parts);

/// <summary>A part: figures in SI by their keys, which end with the unit, and what each is more than that of the first part.</summary>
internal sealed record PartFiguresRecord(
    string Name, string Part, string? VariantOf, string File, string? Revision, string? Currency, Dictionary<string, double?> Figures, Dictionary<string, double?> MoreThanFirst,
    ImmutableArray<string> LeftOutOfStiffness, int Errors, int Warnings, int Advice, ImmutableArray<OpenFindingRecord> OpenFindings)
{
    public static PartFiguresRecord Of(PartOnReport part, PartOnReport first) => new(
        part.Name,
        part.Input.Plan.Part.Name,
        part.Input.Plan.Part.VariantOf,
        part.Input.SourceName,
        part.Input.Revision,
        part.Input.Plan.Cost?.Currency,
        FiguresOf(part.Input.Plan),
        Differences(first.Input.Plan, part.Input.Plan),
        part.Input.Plan.Stiffness?.LeftOut ?? [],
        part.Open(Severity.Error),
        part.Open(Severity.Warning),
        part.Open(Severity.Advice),
        [.. part.Input.Findings.Where(finding => finding.AcceptedBecause is null).Select(OpenFindingRecord.Of)]);

    /// <summary>All figures of a plan by key; null where it has none.</summary>
    public static Dictionary<string, double?> FiguresOf(Plan plan) =>
        Changes.Figures.All.ToDictionary(figure => figure.Key, figure => Finite(figure.Value(plan)), StringComparer.Ordinal);

    private static Dictionary<string, double?> Differences(Plan first, Plan plan) =>
        Changes.Figures.All.ToDictionary(figure => figure.Key, figure => Finite(figure.Value(plan) - figure.Value(first)), StringComparer.Ordinal);

    private static double? Finite(double? value) => value is { } si && double.IsFinite(si) ? si : null;
}

/// <summary>A finding that nobody accepted, by its name; <c>recipe check</c> has the whole of it.</summary>
internal sealed record OpenFindingRecord(string Code, string Name, string Severity, string Message, PlaceRecord Where)
{
    public static OpenFindingRecord Of(Finding finding) => new(
        finding.Descriptor.Code, finding.Descriptor.Name, Keys.Of(finding.Severity), finding.Message, PlaceRecord.Of(finding.Where));
}
