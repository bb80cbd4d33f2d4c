using Recipe.RuleApi;

namespace Recipe.RuleProtocol;

/// <summary>Something that a rule found.</summary>
/// <param name="File">The file of the rule.</param>
/// <param name="Rule">The name of the rule.</param>
/// <param name="Part">The index of the part among those that were handed in.</param>
/// <param name="Group">The group of the element that it is about, such as <c>ply</c>; null for the part itself.</param>
/// <param name="Index">The place of the element in its group, from 0; 0 for the part itself.</param>
/// <param name="Severity">How bad it is: as the finding says, or its rule.</param>
/// <param name="Message">The facts, on one line.</param>
public sealed record RuleRunFinding(string File, string Rule, int Part, string? Group, int Index, RuleSeverity Severity, string Message);
