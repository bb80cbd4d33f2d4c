namespace Recipe.RuleProtocol;

/// <summary>Something that a rule would have needed to know.</summary>
/// <param name="File">The file of the rule.</param>
/// <param name="Rule">The name of the rule.</param>
/// <param name="Part">The index of the part among those that were handed in.</param>
/// <param name="Missing">What is missing.</param>
public sealed record RuleNotChecked(string File, string Rule, int Part, string Missing);
