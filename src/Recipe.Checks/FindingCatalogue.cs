using System.Collections.Immutable;
using Recipe.Semantics.Findings;
using Recipe.Syntax.Findings;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Every kind of finding the program makes: in the text, in its meaning, by the checks.</summary>
public static class FindingCatalogue
{
    /// <summary>What is found before the checks run: none of it can be accepted with a reason.</summary>
    public static ImmutableArray<FindingDescriptor> BeforeTheChecks { get; } = [.. SyntaxFindings.All, .. SemanticFindings.All];

    /// <summary>All of them, in order of code.</summary>
    public static ImmutableArray<FindingDescriptor> All { get; } =
    [
        .. BeforeTheChecks
            .Concat(CheckCatalogue.All.Select(c => c.Descriptor))
            .OrderBy(d => d.Code, StringComparer.Ordinal),
    ];

    /// <summary>The finding with this code or name, in capitals or not; or null.</summary>
    public static FindingDescriptor? Find(string codeOrName) => All.FirstOrDefault(descriptor =>
        string.Equals(descriptor.Code, codeOrName, StringComparison.OrdinalIgnoreCase)
        || string.Equals(descriptor.Name, codeOrName, StringComparison.OrdinalIgnoreCase));
}
