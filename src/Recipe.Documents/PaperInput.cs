using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>Everything a paper is made from. The same input gives the same bytes.</summary>
/// <param name="Plan">The plan of one part.</param>
/// <param name="Findings">What the checks found in that part, accepted findings included.</param>
/// <param name="NotChecked">Checks that could not speak.</param>
/// <param name="Revision">Short hash of the recipe's text, or null when there is none.</param>
/// <param name="Printed">The day it is printed, or null to print none (papers kept under version control).</param>
/// <param name="SourceName">Name of the recipe file as the user gave it.</param>
public sealed record PaperInput(
    Plan Plan,
    ImmutableArray<Finding> Findings,
    ImmutableArray<NotChecked> NotChecked,
    string? Revision,
    DateOnly? Printed,
    string SourceName)
{
    /// <summary>Serial number of the piece that is built, or null to leave a space for it.</summary>
    public string? Serial { get; init; }

    /// <summary>How many good parts are wanted, 1 or more; null for as many as the recipe says.</summary>
    public int? Quantity { get; init; }

    /// <summary>Units of the papers, or null for the shop's.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>Size of the paper, or null for the shop's.</summary>
    public PaperSize? Paper { get; init; }

    /// <summary>BCP 47 tag of the language of the papers.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Words in place of those of the language, or null.</summary>
    internal Languages.Wording? Wording { get; init; }

    /// <summary>The papers that are made together with this one, or null when it is made alone.</summary>
    internal BuiltPapers? Together { get; init; }

    /// <summary>The version that this one is compared with on the change note, or null when there is none.</summary>
    public EarlierVersion? Earlier { get; init; }
}
