using System.Collections.Immutable;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>Everything a paper is made from. The same input gives the same bytes.</summary>
/// <param name="Plan">The plan of one part.</param>
/// <param name="Findings">What the checks found in that part, accepted findings included.</param>
/// <param name="NotChecked">Checks that could not speak.</param>
/// <param name="Revision">Short hash of the recipe's text, or null when there is none.</param>
/// <param name="Printed">The day it is printed, or null to print none (papers kept under version control).</param>
/// <param name="SourceName">Name of the recipe file as the user gave it.</param>
public sealed record PaperInput(
    Plan Plan,
    ImmutableArray<Finding> Findings,
    ImmutableArray<NotChecked> NotChecked,
    string? Revision,
    DateOnly? Printed,
    string SourceName);
