namespace Recipe.RulesProcess.Protocol;

/// <summary>What the host is about to do, said before it begins, so that a client that must stop it knows whose fault it was.</summary>
/// <param name="Id">The number of the request.</param>
/// <param name="File">The file that is compiled, or that the rule is in.</param>
/// <param name="Rule">The rule that is run; null while compiling.</param>
/// <param name="Part">The part that it looks at; null while compiling or describing.</param>
internal sealed record HostProgress(int Id, string File, string? Rule, int? Part);
