using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Recipe.Model;
using Recipe.Planning.Exploring;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/exploration/1</c>.</summary>
internal sealed record ExplorationRecord(
    string Schema, string Study, string Part, string File, string Revision, ImmutableArray<ChoiceRecord> Choices, ImmutableArray<WantRecord> Wants, ImmutableArray<LimitRecord> Limits,
    long Candidates, long Tried, long Feasible, long BreakALimit, long SameAsAnother, ImmutableArray<ReasonRecord> NotComputed, string? Currency,
    CandidateRecord AsWritten, ImmutableArray<string> LeftOutOfStiffness, ImmutableArray<string> ErrorsAsWritten, ImmutableArray<CandidateRecord> Front, ImmutableArray<RefusedRecord> KeptOffByErrors)
{
    public static ExplorationRecord Of(StudyResult result, string schema) => new(
        schema,
        result.Study.Name,
        result.Study.Part!.Name,
        result.SourceName,
        result.Revision,
        [.. result.Study.Choices.Select(choice => new ChoiceRecord(choice.What, choice.Ply, [.. choice.Options.Select(option => option.Written)]))],
        [.. result.Study.Wants.Select(want => new WantRecord(want.Figure.Word(), Changes.Figures.Of(want.Figure).Key, want.Least ? "least" : "most"))],
        [.. result.Study.Limits.Select((limit, i) => new LimitRecord(limit.Figure.Word(), Changes.Figures.Of(limit.Figure).Key, limit.AtLeast, limit.AtMost, limit.Written, result.Tally.BrokenEach[i]))],
        result.Study.Candidates,
        result.Tally.Tried,
        result.Tally.Feasible,
        result.Tally.Broken,
        result.Tally.Repeated,
        [.. result.Tally.Unknown.Select(reason => new ReasonRecord(reason.Reason, reason.Count))],
        result.Shop?.Currency,
        CandidateRecord.Of(result, result.AsWritten),
        result.LeftOutOfStiffness,
        result.ErrorsAsWritten,
        [.. result.Front.Select(member => CandidateRecord.Of(result, member))],
        [.. result.Refused.Select(refused => new RefusedRecord(CandidateRecord.Of(result, refused.Candidate), refused.Codes))]);
}

internal sealed record ChoiceRecord(string What, string? Ply, ImmutableArray<string> Options);

/// <summary>A wanted figure; <c>key</c> is its key among the figures of a candidate.</summary>
internal sealed record WantRecord(string Figure, string Key, string Want);

/// <summary>A limit in SI, in the unit that its key ends with.</summary>
internal sealed record LimitRecord(string Figure, string Key, double? AtLeast, double? AtMost, string Written, long BrokenBy);

internal sealed record ReasonRecord(string Reason, long Candidates);

/// <summary>A candidate: its number (null for the part as it is written), the option it takes of each choice, its figures in SI by key.</summary>
internal sealed record CandidateRecord(
    long? Candidate, string Fate, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ImmutableArray<string>? Options, Dictionary<string, double?> Figures)
{
    public static CandidateRecord Of(StudyResult result, Candidate candidate) => new(
        candidate.Index < 0 ? null : candidate.Index,
        StudyReport.FateOf(candidate.Fate),
        candidate.Index < 0 ? null : [.. result.Study.OptionsOf(candidate.Index).Select((option, i) => result.Study.Choices[i].Options[option].Written)],
        result.Figures.Select((figure, i) => (Changes.Figures.Of(figure).Key, Value: candidate.Values.IsEmpty ? null : candidate.Values[i])).ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal));
}

internal sealed record RefusedRecord(CandidateRecord Candidate, ImmutableArray<string> Errors);
