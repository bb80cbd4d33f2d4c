namespace Recipe.RuleApi;

/// <summary>One thing that a rule found.</summary>
/// <param name="Message">The facts in one sentence; control characters are blanks.</param>
/// <param name="Severity">How bad it is, or null for the severity of its rule.</param>
/// <param name="Group">The group of the element that it is about, or null for the part itself.</param>
/// <param name="Index">The place of the element in its group, from 0; 0 for the part itself.</param>
public sealed record RuleFinding(string Message, RuleSeverity? Severity, string? Group, int Index);
