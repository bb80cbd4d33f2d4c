using System.Collections.Immutable;

namespace Recipe.RuleProtocol;

/// <summary>What the files of rules hold.</summary>
/// <param name="Rules">The rules, by file and place.</param>
/// <param name="Diagnostics">Why files cannot be used, by file and place.</param>
/// <param name="Problems">What went wrong otherwise.</param>
public sealed record RuleSetAnswer(ImmutableArray<RuleDescription> Rules, ImmutableArray<RuleDiagnostic> Diagnostics, ImmutableArray<RuleProblem> Problems);
