using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>A candidate with what is wanted of it. Less of every value is better; for what there should be much of, the value is negated.</summary>
/// <param name="Index">Number of the candidate; points of one set have different ones.</param>
/// <param name="Values">The values, finite, as many for every point of a set; at least one.</param>
public readonly record struct ParetoPoint(long Index, ImmutableArray<double> Values);
