using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/findings/1</c>.</summary>
internal sealed record FindingsRecord(
    string Schema, int Errors, int Warnings, int Advice, int Accepted, ImmutableArray<FindingRecord> Findings, ImmutableArray<NotCheckedRecord> NotChecked);

internal sealed record FindingRecord(
    string Code, string Name, string Severity, string Title, string Message, string Reason, string Remedy, string Source, PlaceRecord Where,
    ImmutableArray<LabelRecord> Labels, ImmutableArray<FixRecord> Fixes, string? AcceptedBecause)
{
    public static FindingRecord Of(Finding finding) => new(
        finding.Descriptor.Code,
        finding.Descriptor.Name,
        Keys.Of(finding.Severity),
        finding.Descriptor.Title,
        finding.Message,
        finding.Descriptor.Reason,
        finding.Descriptor.Remedy,
        finding.Descriptor.Source,
        PlaceRecord.Of(finding.Where),
        [.. finding.Labels.Select(label => new LabelRecord(label.Text, PlaceRecord.Of(label.Where)))],
        [.. finding.Fixes.Select(FixRecord.Of)],
        finding.AcceptedBecause);
}

internal sealed record LabelRecord(string Text, PlaceRecord Where);

internal sealed record FixRecord(string Title, string Safety, ImmutableArray<EditRecord> Edits)
{
    public static FixRecord Of(Fix fix) => new(fix.Title, Keys.Of(fix.Safety), [.. fix.Edits.Select(edit => new EditRecord(PlaceRecord.Of(edit.Where), edit.NewText))]);
}

internal sealed record EditRecord(PlaceRecord Where, string NewText);

internal sealed record NotCheckedRecord(string Code, string Name, string Title, string Missing, PlaceRecord Where)
{
    public static NotCheckedRecord Of(NotChecked check) => new(
        check.Descriptor.Code, check.Descriptor.Name, check.Descriptor.Title, check.Missing, PlaceRecord.Of(check.Where));
}

/// <summary>A place: lines and columns count from 1, columns and offsets in UTF-16 code units, the end is just past the last one.</summary>
internal sealed record PlaceRecord(string File, int Line, int Column, int EndLine, int EndColumn, int Offset, int Length)
{
    public static PlaceRecord Of(SourceSpan where)
    {
        var end = where.Source.PositionOf(where.Span.End);
        return new(where.Source.Name, where.Start.Line + 1, where.Start.Column + 1, end.Line + 1, end.Column + 1, where.Span.Start, where.Span.Length);
    }
}
