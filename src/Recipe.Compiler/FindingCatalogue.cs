using System.Collections.Immutable;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>Every kind of finding there is, whichever stage finds it.</summary>
public static class FindingCatalogue
{
    /// <summary>All of them, in order of code.</summary>
    public static ImmutableArray<FindingDescriptor> All => Checks.FindingCatalogue.All;

    /// <summary>The one with this code or readable name, in capitals or not; or null.</summary>
    public static FindingDescriptor? Find(string codeOrName) => Checks.FindingCatalogue.Find(codeOrName);

    /// <summary>Whether a written reason can settle it: not what is found in the text itself, nor what no reason makes safe.</summary>
    public static bool CanBeAccepted(string codeOrName) => Checks.CheckCatalogue.Find(codeOrName) is { CanBeAccepted: true };
}
