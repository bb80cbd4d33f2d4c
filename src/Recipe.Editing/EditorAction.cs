using System.Collections.Immutable;
using Recipe.Text.Findings;

namespace Recipe.Editing;

/// <summary>What kind of change an action makes.</summary>
public enum ActionKind
{
    /// <summary>Settles a finding.</summary>
    QuickFix,

    /// <summary>Makes all safe fixes.</summary>
    FixAll,

    /// <summary>Takes something out into a declaration of its own.</summary>
    Extract,

    /// <summary>Says the same in another way.</summary>
    Rewrite,
}

/// <summary>A change that an editor offers.</summary>
/// <param name="Title">An instruction.</param>
/// <param name="Kind">What kind of change.</param>
/// <param name="Edits">The change.</param>
public sealed record EditorAction(string Title, ActionKind Kind, ImmutableArray<TextEdit> Edits)
{
    /// <summary>The finding it settles, or null.</summary>
    public Finding? Settles { get; init; }

    /// <summary>Whether it is the one to take when only one is taken: safe, and the first of its finding.</summary>
    public bool IsPreferred { get; init; }
}
