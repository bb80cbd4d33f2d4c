using System.Collections.Immutable;

namespace Recipe.Planning.Exploring;

/// <summary>What became of a candidate.</summary>
public enum CandidateFate
{
    /// <summary>Its figures are known and it keeps every limit.</summary>
    Feasible,

    /// <summary>It breaks a limit.</summary>
    Broken,

    /// <summary>A figure that is limited or wanted could not be computed.</summary>
    Unknown,

    /// <summary>It is the same part as another candidate.</summary>
    Repeated,
}

/// <summary>A candidate, looked at.</summary>
/// <param name="Index">Its number.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Values">The figures of the study, SI, in its order; null where one is not known; empty for a repeated one.</param>
/// <param name="Breaks">Which of the limits it breaks.</param>
/// <param name="Missing">Why a figure is not known, in words; null otherwise.</param>
public sealed record Candidate(long Index, CandidateFate Fate, ImmutableArray<double?> Values, ImmutableArray<int> Breaks, string? Missing);
