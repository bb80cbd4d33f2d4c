using System.Collections.Immutable;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Changes;

/// <summary>Changes as tables.</summary>
internal static class ChangeBlocks
{
    /// <summary>What was written differently, grouped by where; nothing when nothing was.</summary>
    public static IEnumerable<Block> Lines(ImmutableArray<ChangeRow> rows, string caption, Column? last = null, Func<ChangeRow, Cell>? lastCell = null)
    {
        if (rows.IsEmpty)
        {
            yield break;
        }

        var columns = ImmutableArray.Create<Column>(new("What", NamesTheRow: true), new("How", WidthMm: 18), new("Was"), new("Now"));
        yield return new Table(
            caption,
            last is null ? columns : columns.Add(last),
            [
                .. rows.GroupBy(row => row.Group, StringComparer.Ordinal).SelectMany(group => (IEnumerable<Row>)
                [
                    new GroupRow(group.Key),
                    .. group.Select(row => new CellRow([row.What, row.Word, row.Was, row.Difference.Length == 0 ? (Cell)row.Now : new TextCell(row.Now, row.Difference), .. lastCell is null ? (IEnumerable<Cell>)[] : [lastCell(row)]])),
                ]),
            ]);
    }

    /// <summary>What it does, in figures.</summary>
    public static IEnumerable<Block> Effect(ImmutableArray<ChangeRow> rows, string caption)
    {
        if (!rows.IsEmpty)
        {
            yield return new Table(
                caption,
                [new("Figure", NamesTheRow: true), new("Was", Align.Right, 34), new("Now", Align.Right, 34), new("Difference", Align.Right, 44)],
                [.. rows.Select(row => new CellRow([row.What, row.Was, row.Now, row.Difference]))]);
        }
    }
}
