using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Exploring;

namespace Recipe.Documents;

/// <summary>What came of a study: everything that its reports are made from. The same result gives the same bytes.</summary>
/// <param name="Study">The study.</param>
/// <param name="Shop">The shop, or null.</param>
/// <param name="SourceName">Name of the recipe file as the user gave it.</param>
/// <param name="Revision">Short hash of the recipe's text.</param>
/// <param name="Figures">The figures that candidates have, the wanted ones first.</param>
/// <param name="AsWritten">The part as it is written.</param>
/// <param name="Tally">What was counted.</param>
/// <param name="Front">The front, by the wanted figures in their order and then by number.</param>
/// <param name="Refused">Candidates that would be on the front but for an open error, each with the codes of its errors.</param>
public sealed record StudyResult(
    Study Study, Shop? Shop, string SourceName, string Revision, ImmutableArray<PartFigure> Figures, Candidate AsWritten, TallyRecord Tally,
    ImmutableArray<Candidate> Front, ImmutableArray<RefusedCandidate> Refused)
{
    /// <summary>Plies and cores of the part as it is written that cover only part of its surface: no stiffness counts them.</summary>
    public ImmutableArray<string> LeftOutOfStiffness { get; init; } = [];

    /// <summary>Codes of the errors that the part as it is written has in it already; empty when it has none.</summary>
    public ImmutableArray<string> ErrorsAsWritten { get; init; } = [];

    /// <summary>Whether the part as it is written keeps every limit and some member of the front is nowhere worse and somewhere better.</summary>
    internal ImmutableArray<Candidate> Better => AsWritten.Fate != CandidateFate.Feasible
        ? []
        : Front.RemoveAll(member => !Dominance.Dominates(Costs(member).AsSpan(), Costs(AsWritten).AsSpan()));

    /// <summary>The wanted figures so that less is better.</summary>
    internal ImmutableArray<double> Costs(Candidate candidate) => [.. Study.Wants.Select((want, i) => Dominance.Snap(want.Cost(candidate.Values[i]!.Value)))];
}

/// <summary>A candidate that an open error keeps off the front.</summary>
/// <param name="Candidate">The candidate.</param>
/// <param name="Codes">Codes of its errors, in order.</param>
public sealed record RefusedCandidate(Candidate Candidate, ImmutableArray<string> Codes);
