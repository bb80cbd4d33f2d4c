using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.HouseRules;

/// <summary>What a rule says of a part.</summary>
/// <param name="Broken">What is broken, in the order of the rule and then of the part.</param>
/// <param name="Missing">What is missing to tell the rest, or null.</param>
public sealed record RuleOutcome(ImmutableArray<RuleBreach> Broken, string? Missing);

/// <summary>Something that a rule found.</summary>
/// <param name="Where">The place that it points at.</param>
/// <param name="Message">What it says.</param>
public sealed record RuleBreach(SourceSpan Where, string Message)
{
    /// <summary>Keys of the plan's assumptions behind it.</summary>
    public ImmutableArray<string> RestsOn { get; init; } = [];

    /// <summary>What else is assumed behind it, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>The line of the rule that is broken.</summary>
    public SourceSpan? Rule { get; init; }

    /// <summary>What could be changed.</summary>
    public ImmutableArray<Fix> Fixes { get; init; } = [];
}
