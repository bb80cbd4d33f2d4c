using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What a proposal is.</summary>
public enum CompletionKind
{
    /// <summary>A word that begins a line.</summary>
    Word,

    /// <summary>A word inside a line, before a value or by itself.</summary>
    Clause,

    /// <summary>A name of the recipe: a mould, a part, a ply, a value.</summary>
    Name,

    /// <summary>A material.</summary>
    Material,

    /// <summary>A unit.</summary>
    Unit,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>Several lines to fill in.</summary>
    Snippet,
}

/// <summary>A proposal for what could stand at the cursor.</summary>
/// <param name="Label">What the list shows.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Replaces">What it takes the place of: the word being typed.</param>
/// <param name="NewText">What stands there afterwards; with <c>$1</c> and <c>${1:text}</c> places when it is a snippet.</param>
public sealed record CompletionItem(string Label, CompletionKind Kind, TextSpan Replaces, string NewText)
{
    /// <summary>A few words beside the label: an areal weight, what a word says.</summary>
    public string? Detail { get; init; }

    /// <summary>Whether the new text has places to fill in.</summary>
    public bool IsSnippet { get; init; }

    /// <summary>By what the list is sorted: the likeliest first.</summary>
    public required string SortKey { get; init; }

    /// <summary>What to ask <see cref="Completion.Doc"/> for, or null when there is no page.</summary>
    public string? DocKey { get; init; }
}
