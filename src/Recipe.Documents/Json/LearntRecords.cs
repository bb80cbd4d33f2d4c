using System.Collections.Immutable;
using System.Text.Json;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/learnt/1</c>.</summary>
internal sealed record LearntRecord(string Schema, ImmutableArray<LearntFigureRecord> Figures)
{
    public static LearntRecord Of(ImmutableArray<LearntFigure> figures) => new(LearningReport.Schema, [.. figures.Select(LearntFigureRecord.From)]);
}

/// <summary>A figure; its unit is that of every number in it.</summary>
internal sealed record LearntFigureRecord(
    string Kind, string Unit, string? Of, string? Process, bool Enough, double? Mean, double? MeanLow, double? MeanHigh, double? NextLow, double? NextHigh, double? Deviation, double? Confidence, ImmutableArray<LearntValueRecord> Values)
{
    public static LearntFigureRecord From(LearntFigure figure)
    {
        var known = figure.IsEnough ? figure.Estimate : null;
        return new(
            JsonNamingPolicy.SnakeCaseLower.ConvertName(figure.Kind.ToString()), UnitOf(figure.Kind), figure.Of, figure.Process?.ToString().ToLowerInvariant(), figure.IsEnough,
            known?.Mean, known?.Mean - known?.HalfWidth, known?.Mean + known?.HalfWidth, known?.Mean - known?.NextHalfWidth, known?.Mean + known?.NextHalfWidth, known?.Deviation, known?.Confidence,
            [.. figure.Values.Select((value, i) => new LearntValueRecord(value.Build.Part, value.Build.Number, value.Si, figure.Estimate?.Outliers.Contains(i) ?? false))]);
    }

    private static string UnitOf(LearntKind kind) => kind switch
    {
        LearntKind.ResinContent => "1",
        LearntKind.Pickup => "kg/m2",
        LearntKind.Pace => "s/m2",
        LearntKind.Loss => "kg",
        LearntKind.LeakRise => "Pa/s",
        _ => "s",
    };
}

internal sealed record LearntValueRecord(string Part, int? Serial, double Value, bool LeftOut);
