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
}
