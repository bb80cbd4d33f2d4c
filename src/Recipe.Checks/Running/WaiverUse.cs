using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>What became of a waiver.</summary>
internal enum WaiverFate
{
    /// <summary>It silenced something.</summary>
    Used,

    /// <summary>Nothing was found that it speaks of.</summary>
    Unused,

    /// <summary>It cannot be told: its check could not look, or not every part that carries it was looked at.</summary>
    Unknown,

    /// <summary>Its day is over.</summary>
    Lapsed,

    /// <summary>It names no finding there is.</summary>
    NamesNothing,

    /// <summary>It names a finding that cannot be accepted.</summary>
    Refused,

    /// <summary>It gives no reason, which is a finding about meaning already.</summary>
    WithoutReason,
}

/// <summary>A waiver and what became of it.</summary>
/// <param name="Waiver">The waiver.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="About">The finding it speaks of, or null when it names none.</param>
/// <param name="Candidates">Codes and names that could have been meant.</param>
internal sealed record WaiverUse(Waiver Waiver, WaiverFate Fate, FindingDescriptor? About, ImmutableArray<string> Candidates);
