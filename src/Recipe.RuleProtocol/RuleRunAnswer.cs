using System.Collections.Immutable;

namespace Recipe.RuleProtocol;

/// <summary>What the rules found.</summary>
/// <param name="Rules">The rules, by file and place.</param>
/// <param name="Diagnostics">Why files cannot be used; none of their rules was run.</param>
/// <param name="Findings">What was found, by rule, then by part, in the order in which it was reported.</param>
/// <param name="NotChecked">What rules would have needed to know.</param>
/// <param name="Problems">What went wrong otherwise; a rule named here gave no findings about the part named.</param>
public sealed record RuleRunAnswer(
    ImmutableArray<RuleDescription> Rules,
    ImmutableArray<RuleDiagnostic> Diagnostics,
    ImmutableArray<RuleRunFinding> Findings,
    ImmutableArray<RuleNotChecked> NotChecked,
    ImmutableArray<RuleProblem> Problems);
