using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What can be folded.</summary>
public enum FoldKind
{
    /// <summary>A block in braces.</summary>
    Block,

    /// <summary>Lines of comment.</summary>
    Comment,
}

/// <summary>Something of more than one line that can be folded.</summary>
/// <param name="Span">From the first character that stays to the last that is hidden.</param>
/// <param name="Kind">What it is.</param>
public sealed record Fold(TextSpan Span, FoldKind Kind);
