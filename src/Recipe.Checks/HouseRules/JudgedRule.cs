using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Checks;

/// <summary>A rule of the house, and what it says of its own examples.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Examples">Its examples, in order.</param>
public sealed record JudgedRule(HouseRule Rule, ImmutableArray<JudgedExample> Examples);

/// <summary>What a rule says of one of its examples.</summary>
/// <param name="Example">The example.</param>
/// <param name="Fires">Whether the rule finds something; null when it cannot tell.</param>
/// <param name="Said">What it finds, or what is missing to tell; null when neither.</param>
public sealed record JudgedExample(RuleExample Example, bool? Fires, string? Said);
