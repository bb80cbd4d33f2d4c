using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Semantics.Findings;
using Recipe.Syntax.Findings;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>Every kind of finding there is, whichever stage finds it.</summary>
public static class FindingCatalogue
{
    /// <summary>All of them, in order of code.</summary>
    public static ImmutableArray<FindingDescriptor> All { get; } =
    [
        .. SyntaxFindings.All
            .Concat(SemanticFindings.All)
            .Concat(CheckCatalogue.All.Select(check => check.Descriptor))
            .OrderBy(descriptor => descriptor.Code, StringComparer.Ordinal),
    ];

    /// <summary>The one with this code or readable name, or null.</summary>
    public static FindingDescriptor? Find(string codeOrName) => All.FirstOrDefault(descriptor =>
        string.Equals(descriptor.Code, codeOrName, StringComparison.OrdinalIgnoreCase)
        || string.Equals(descriptor.Name, codeOrName, StringComparison.OrdinalIgnoreCase));
}
