using System.Collections.Immutable;

namespace Recipe.Syntax.Merging;

/// <summary>
/// A run of whole lines that is merged as one: a statement, the frame of a block with pieces inside, or a comment. All pieces
/// of a text, with the blank lines before them, are all of its lines.
/// </summary>
internal sealed record Piece
{
    /// <summary>The blank lines before it.</summary>
    public required ImmutableArray<MergeLine> Space { get; init; }

    /// <summary>Its lines; of a block those up to the brace.</summary>
    public required ImmutableArray<MergeLine> Lines { get; init; }

    /// <summary>Its lines as one text that does not hear about blanks: two pieces say the same when these are the same.</summary>
    public required string Says { get; init; }

    /// <summary>What it is known by among its neighbours, or null when by its text alone.</summary>
    public string? Key { get; init; }

    /// <summary>The word it begins with; empty for a comment.</summary>
    public string Word { get; init; } = "";

    /// <summary>What is in its block; null when it is not taken apart.</summary>
    public PieceBlock? Block { get; init; }

    /// <summary>Whether it is a comment on a line of its own.</summary>
    public bool IsRemark { get; init; }

    /// <summary>What stands in the lines up to the brace.</summary>
    public string HeadSays { get; init; } = "";

    /// <summary>All its lines, those of its block included and the blank lines before it left out.</summary>
    public IEnumerable<MergeLine> AllLines => Block is null ? Lines : Lines.Concat(Block.AllLines);
}

/// <summary>The inside of a block and the line that closes it.</summary>
/// <param name="Pieces">What stands in it.</param>
/// <param name="EndSpace">The blank lines before its closing brace.</param>
/// <param name="Foot">The lines of its closing brace.</param>
/// <param name="FootSays">What stands in them.</param>
/// <param name="IsOrdered">Whether the order of the pieces is part of the meaning.</param>
internal sealed record PieceBlock(
    ImmutableArray<Piece> Pieces, ImmutableArray<MergeLine> EndSpace, ImmutableArray<MergeLine> Foot, string FootSays, bool IsOrdered)
{
    /// <summary>Its lines behind those that open it.</summary>
    public IEnumerable<MergeLine> AllLines => Pieces.SelectMany(piece => piece.Space.Concat(piece.AllLines)).Concat(EndSpace).Concat(Foot);
}
