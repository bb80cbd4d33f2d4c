using System.Collections.Immutable;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Previews;

/// <summary>One panel of the page that follows a recipe.</summary>
/// <param name="Id">Its name in the page: letters and hyphens.</param>
/// <param name="Title">What heads it.</param>
/// <param name="Blocks">What stands in it.</param>
internal sealed record PreviewPanel(string Id, string Title, ImmutableArray<Block> Blocks)
{
    /// <summary>Whether it is shut until somebody opens it: long, and for who asks.</summary>
    public bool IsFolded { get; init; }
}
