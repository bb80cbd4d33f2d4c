using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Documents.Layout;

/// <summary>Where the text of a column stands.</summary>
internal enum Align
{
    Left,
    Right,
    Centre,
}

/// <summary>How a table is read.</summary>
internal enum TableUse
{
    /// <summary>At a desk: small type, many rows.</summary>
    Reference,

    /// <summary>At the bench: large type, rows high enough to write in.</summary>
    Steps,
}

/// <summary>A column.</summary>
/// <param name="Title">Its heading; never empty, a screen reader needs it.</param>
/// <param name="Align">Where its text stands.</param>
/// <param name="WidthMm">Width on paper, mm; 0 to share what is left.</param>
/// <param name="NamesTheRow">Whether its cells are the headings of their rows.</param>
internal sealed record Column(string Title, Align Align = Align.Left, int WidthMm = 0, bool NamesTheRow = false);

/// <summary>A table.</summary>
internal sealed record Table(string Caption, ImmutableArray<Column> Columns, ImmutableArray<Row> Rows, TableUse Use = TableUse.Reference) : Block;

/// <summary>A row.</summary>
internal abstract record Row;

/// <summary>A row of cells, as many as there are columns.</summary>
internal sealed record CellRow(ImmutableArray<Cell> Cells, bool IsSum = false) : Row;

/// <summary>A heading over the rows that follow.</summary>
internal sealed record GroupRow(Phrase Text) : Row;

/// <summary>A cell.</summary>
internal abstract record Cell
{
    public static implicit operator Cell(string? text) => new TextCell(text ?? "");

    public static implicit operator Cell(Phrase text) => new TextCell(text);

    public static implicit operator Cell(Blank blank) => new BlankCell(blank);
}

/// <summary>Text, with a line of small print under it or not.</summary>
internal sealed record TextCell(Phrase Text, string? Note = null) : Cell;

/// <summary>The number that matters, alone on its line, with a remark under it or not.</summary>
internal sealed record BigCell(string Value, string? Note = null) : Cell;

/// <summary>A space to write in.</summary>
internal sealed record BlankCell(Blank Blank) : Cell;

/// <summary>Boxes to tick, each with a word beside it or not.</summary>
internal sealed record TickCell(ImmutableArray<string> Boxes) : Cell
{
    /// <summary>So many boxes without words.</summary>
    public static TickCell Of(int count) => new([.. Enumerable.Repeat("", count)]);
}

/// <summary>A number of a ply or a layer, in a ring.</summary>
internal sealed record RingCell(string Number) : Cell;

/// <summary>The direction of a ply, drawn and in figures.</summary>
/// <param name="Orientation">The direction.</param>
/// <param name="Label">A word before it ("left"), or null.</param>
internal readonly record struct Direction(Orientation Orientation, string? Label = null);

/// <summary>Directions of a ply: one, or one for each half of a mould.</summary>
internal sealed record DirectionCell(ImmutableArray<Direction> Directions) : Cell;
