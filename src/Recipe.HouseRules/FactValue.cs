using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.HouseRules;

/// <summary>What is known of a fact.</summary>
public sealed record FactValue
{
    /// <summary>Its number in SI; not a number when it has none.</summary>
    public double Si { get; init; } = double.NaN;

    /// <summary>ISO 4217 code of money.</summary>
    public string? Currency { get; init; }

    /// <summary>Its word or text.</summary>
    public string? Word { get; init; }

    /// <summary>Yes or no.</summary>
    public bool? Yes { get; init; }

    /// <summary>Keys of the assumptions of the plan behind it.</summary>
    public ImmutableArray<string> RestsOn { get; init; } = [];

    /// <summary>What is assumed behind it besides those, in words; or null.</summary>
    public string? Assumed { get; init; }

    /// <summary>Where it is written; null for what is computed or defaulted.</summary>
    public SourceSpan? Where { get; init; }
}
