namespace Recipe.Syntax.Formatting;

/// <summary>How a line of the output takes part in columns.</summary>
internal enum LineKind
{
    /// <summary>Stands as it is: a brace, a line that could not be read, an entry at the top level.</summary>
    Fixed,

    /// <summary>The line that opens a block.</summary>
    Opener,

    /// <summary>An entry on one line inside a block: its cells line up with those of its neighbours.</summary>
    Entry,

    /// <summary>A named value: equals signs line up.</summary>
    Let,

    /// <summary>A comment on a line of its own.</summary>
    Comment,
}

/// <summary>One line of the output before its columns are known.</summary>
/// <param name="kind">How it takes part in columns.</param>
/// <param name="depth">How many blocks it stands in.</param>
/// <param name="cells">Its text in cells, one or more.</param>
internal sealed class LayoutLine(LineKind kind, int depth, List<Cell> cells)
{
    public LineKind Kind { get; } = kind;

    public int Depth { get; } = depth;

    public List<Cell> Cells { get; } = cells;

    /// <summary>Whether an empty line stands before it.</summary>
    public bool BlankBefore { get; init; }

    /// <summary>The comment behind it, or null.</summary>
    public string? Comment { get; set; }

    /// <summary>The line without indentation and comment; known once its columns are.</summary>
    public string Text { get; set; } = cells[0].Text;

    /// <summary>Columns it takes, its indentation included; of its last line when it has several.</summary>
    public int Width => Text.LastIndexOfAny(['\r', '\n']) is var last && last >= 0 ? Text.Length - last - 1 : (Depth * 2) + Text.Length;

    /// <summary>Column of the comment behind it.</summary>
    public int CommentColumn { get; set; }
}

/// <summary>Text that stands in one column.</summary>
/// <param name="Text">The text.</param>
/// <param name="Shape">What the column makes of it.</param>
internal readonly record struct Cell(string Text, CellShape Shape = CellShape.Plain);

/// <summary>What a column makes of a cell.</summary>
internal enum CellShape
{
    /// <summary>The column is as wide as this, when something follows in the line.</summary>
    Plain,

    /// <summary>An orientation, <c>0/90</c> or <c>+/-45</c>, by its form: the column is as wide as this in any case.</summary>
    Angle,

    /// <summary>A word with its role before it, <c>patch glass-tape-200</c>: from here on the line keeps to no column.</summary>
    Free,
}
