namespace Recipe.RulesProcess;

/// <summary>A file of rules that is about to be compiled.</summary>
/// <param name="File">The file.</param>
/// <param name="Number">Which it is among those of the question, from 1.</param>
/// <param name="Of">How many those are.</param>
public sealed record RuleCompiling(string File, int Number, int Of);
