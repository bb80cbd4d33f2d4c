using Recipe.Text;

namespace Recipe.Syntax.Formatting;

/// <summary>
/// Parts an entry into cells. The formatter knows the meaning of no word, so it takes the columns from the page: the head is a cell, two
/// or more blanks between values part cells, a <c>source</c> clause begins a cell, and an orientation stands in a cell of its own.
/// </summary>
internal sealed class CellReader(SourceText source, ValueText values)
{
    /// <summary>Cells wider than this keep to no column, so that one long text does not push its neighbours off the page.</summary>
    private const int WidestCell = 40;

    /// <summary>The cells of an entry that stands on one line.</summary>
    public List<Cell> Cells(EntrySyntax entry)
    {
        var cells = new List<Cell>(4) { Shaped(values.Of(entry.Head), CellShape.Plain) };
        for (var first = 0; first < entry.Values.Length;)
        {
            var end = first + 1;
            while (end < entry.Values.Length && !StartsCell(entry, end))
            {
                end++;
            }

            cells.Add(Shaped(values.Of(entry.Values.AsSpan()[first..end]), Shape(entry.Values.AsSpan()[first..end])));
            first = end;
        }

        return cells;
    }

    private static Cell Shaped(string text, CellShape shape) => new(text, text.Length > WidestCell ? CellShape.Free : shape);

    private static CellShape Shape(ReadOnlySpan<ValueSyntax> cell) => cell switch
    {
        [WordSyntax, WordSyntax, ..] => IsSource(cell[0], cell[1]) ? CellShape.Plain : CellShape.Free,
        [var only] when IsAngle(only) => CellShape.Angle,
        _ => CellShape.Plain,
    };

    private static bool IsAngle(ValueSyntax value) => value is PairSyntax { Unit: null } or PlusMinusSyntax { Quantity.Unit: null };

    private static bool IsSource(ValueSyntax value, ValueSyntax next) =>
        value is WordSyntax { Text: "source" } && next is TextSyntax or WordSyntax { Text: "assumed" };

    private bool StartsCell(EntrySyntax entry, int index)
    {
        var value = entry.Values[index];
        var before = entry.Values[index - 1];
        return IsAngle(value) || IsAngle(before) || IsWideGap(before.Span.End, value.Span.Start)
            || (index + 1 < entry.Values.Length && IsSource(value, entry.Values[index + 1]));
    }

    /// <summary>Two or more blanks, or a tab, were typed between two values.</summary>
    private bool IsWideGap(int start, int end)
    {
        var gap = source.Text.AsSpan(start, end - start);
        return gap.Length > 1 || gap.Contains('\t');
    }
}
