using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Documents;

/// <summary>A line that was written differently.</summary>
/// <param name="Thing">What it belongs to: <c>part hatch-lid</c>, <c>shop</c>.</param>
/// <param name="Block">The block inside it, names of blocks joined by a blank, or empty.</param>
/// <param name="Word">The word the line begins with.</param>
/// <param name="Was">What stood behind it; null when there was no such line.</param>
/// <param name="Now">What stands behind it now; null when the line is gone.</param>
/// <param name="Moved">Whether the same line stands between other lines than before.</param>
public sealed record WrittenChange(string Thing, string Block, string Word, string? Was, string? Now, bool Moved = false)
{
    /// <summary>The name of the file it stands in; null where that is the one compared.</summary>
    public string? From { get; init; }

    /// <summary>What a part is called in a recipe: <c>part hatch-lid</c>, <c>variant hatch-lid-no-veil</c>.</summary>
    public static string ThingOf(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return (part.VariantOf is null ? "part " : "variant ") + part.Name;
    }
}

/// <summary>The version of a part that it is compared with.</summary>
/// <param name="Input">What its papers were made from.</param>
/// <param name="Name">What the version is called: a file, a revision.</param>
/// <param name="Changes">The lines that were written differently, in order.</param>
public sealed record EarlierVersion(PaperInput Input, string Name, ImmutableArray<WrittenChange> Changes);
