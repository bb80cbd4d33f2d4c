namespace Recipe.RulesProcess.Protocol;

/// <summary>A rule that is not to be run again.</summary>
/// <param name="File">Its file.</param>
/// <param name="Rule">Its name.</param>
internal sealed record SkippedRule(string File, string Rule);
