using System.Collections.Immutable;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>What the checks say.</summary>
/// <param name="Findings">What is wrong and nobody accepted, in the order of <see cref="Finding.Compare"/>.</param>
/// <param name="Accepted">What is wrong and was accepted, each with the reason; kept, because papers print it.</param>
/// <param name="NotChecked">What could not be looked at, and what is missing for it, ordered by code.</param>
public sealed record CheckReport(ImmutableArray<Finding> Findings, ImmutableArray<Finding> Accepted, ImmutableArray<NotChecked> NotChecked)
{
    /// <summary>Whether anything is bad enough to stop: an error that is not accepted.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}
