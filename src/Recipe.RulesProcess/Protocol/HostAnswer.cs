using System.Collections.Immutable;

namespace Recipe.RulesProcess.Protocol;

/// <summary>What the host answers.</summary>
/// <param name="Id">The number of the request.</param>
/// <param name="Run">What was found; without findings when only the rules were asked for.</param>
/// <param name="Compiled">The files that were compiled and did not come from the cache.</param>
/// <param name="Assemblies">The assemblies that are loaded in the host, which tells whether the C# compiler is among them.</param>
internal sealed record HostAnswer(int Id, RuleRunAnswer Run, ImmutableArray<string> Compiled, ImmutableArray<string> Assemblies);
