namespace Recipe.RuleProtocol;

/// <summary>Something that went wrong with the running of rules.</summary>
/// <param name="Kind">What.</param>
/// <param name="File">The file of rules that it is about; null when it is about all.</param>
/// <param name="Rule">The rule that it is about; null when it is about a file, or about all.</param>
/// <param name="Part">The index of the part that the rule was looking at; null when it is about none.</param>
/// <param name="Message">What happened, in a sentence for a person.</param>
public sealed record RuleProblem(RuleProblemKind Kind, string? File, string? Rule, int? Part, string Message);
