using System.Collections.Immutable;

namespace Recipe.RulesHost.Compiling;

/// <summary>A class of a rule.</summary>
/// <param name="Type">Its name in the assembly.</param>
/// <param name="Start">The offset of its name in the source.</param>
/// <param name="End">The offset behind it.</param>
internal sealed record RuleClass(string Type, int Start, int End);

/// <summary>A file of rules as the compiler left it: an assembly, or why there is none.</summary>
internal sealed record CompiledFile(byte[]? Image, ImmutableArray<RuleClass> Classes, ImmutableArray<RuleDiagnostic> Diagnostics)
{
    private const int MostDiagnostics = 50;

    /// <summary>A file that cannot be used.</summary>
    public static CompiledFile Refused(params IEnumerable<RuleDiagnostic> diagnostics) => new(null, [], [.. diagnostics.Take(MostDiagnostics)]);
}
