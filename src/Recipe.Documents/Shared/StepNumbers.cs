using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Shared;

/// <summary>Numbers of steps, which run through all stations: a step is called by its number alone.</summary>
internal static class StepNumbers
{
    /// <summary>Stands where the number of a step will stand.</summary>
    public static Cell ToCome { get; } = new TextCell("");

    /// <summary>The stations with their steps numbered in the order in which they are done.</summary>
    public static ImmutableArray<Station> Run(IEnumerable<Station> stations)
    {
        var last = 0;
        return [.. stations.Select(station => station with { Blocks = [.. station.Blocks.Select(Numbered)] })];

        Block Numbered(Block block) => block is Table table ? table with { Rows = [.. table.Rows.Select(NumberedRow)] } : block;

        Row NumberedRow(Row row) => row is CellRow { Cells: [var first, .. var rest] } step && ReferenceEquals(first, ToCome)
            ? step with { Cells = [new TextCell(Phrase.Strong(Numbers.Whole(++last))), .. rest] }
            : row;
    }
}
