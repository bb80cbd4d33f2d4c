using System.Collections.Immutable;
using Recipe.Documents.Changes;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>A part in two versions.</summary>
/// <param name="Before">What its papers were made from; null when it is new.</param>
/// <param name="After">What its papers are made from; null when it is gone.</param>
public sealed record ComparedPart(PaperInput? Before, PaperInput? After)
{
    /// <summary>Its name now, or the one it had.</summary>
    public string Name => (After ?? Before)!.Plan.Part.Name;

    /// <summary>Whether it has another name than before.</summary>
    public bool IsRenamed => Before is not null && After is not null && Before.Plan.Part.Name != After.Plan.Part.Name;

    /// <summary>What it is called in a recipe: <c>part hatch-lid</c>.</summary>
    internal string Thing => WrittenChange.ThingOf((After ?? Before)!.Plan.Part);
}

/// <summary>A file in two versions.</summary>
/// <param name="Before">What the earlier version is called.</param>
/// <param name="After">What the later version is called.</param>
/// <param name="Parts">Its parts, in the order of the later version, then what is gone.</param>
/// <param name="Lines">All lines that were written differently, of the files it uses too.</param>
public sealed record ComparedFile(
    string Before, string After, ImmutableArray<ComparedPart> Parts, ImmutableArray<WrittenChange> Lines)
{
    /// <summary>Its name without the version, by which other files use it.</summary>
    public string Name { get; init; } = After;

    /// <summary>What could not be read or understood in each version: it belongs to no plan.</summary>
    public (ImmutableArray<Finding> Before, ImmutableArray<Finding> After) Unread { get; init; } = ([], []);

    /// <summary>Whether nothing is different.</summary>
    public bool IsSame => Lines.IsEmpty && PartChanges.OfFindings(Unread.Before, Unread.After).IsEmpty && Parts.All(part => part is { Before: not null, After: not null, IsRenamed: false });
}
