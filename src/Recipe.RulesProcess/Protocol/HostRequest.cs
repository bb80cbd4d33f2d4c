using System.Collections.Immutable;
using Recipe.RuleApi;

namespace Recipe.RulesProcess.Protocol;

/// <summary>What is asked of the host.</summary>
/// <param name="Id">A number that comes back with the answer.</param>
/// <param name="Files">The files of rules.</param>
/// <param name="Parts">The parts to examine; null when only the rules are asked for.</param>
/// <param name="Skip">Rules that are not to be run again, by file and name.</param>
/// <param name="SkipFiles">Files that are not to be compiled again.</param>
internal sealed record HostRequest(
    int Id,
    IReadOnlyList<RuleSource> Files,
    IReadOnlyList<FactSheet>? Parts,
    ImmutableArray<SkippedRule> Skip,
    ImmutableArray<string> SkipFiles);
