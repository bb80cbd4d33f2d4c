using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.Writing;

namespace Recipe.Documents.Tests.Files;

/// <summary>Every text that a paper holds, found in the model by a way of its own.</summary>
internal static class Texts
{
    public static IEnumerable<string> Of(Document document) =>
        [document.Title, .. document.Stations.SelectMany(station => station.Blocks.SelectMany(Of).Prepend(station.Title))];

    /// <summary>Without blanks, so that it does not matter where a line was broken.</summary>
    public static string Packed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static IEnumerable<string> Of(Block block) => block switch
    {
        Heading heading => [heading.Text],
        Paragraph paragraph => [paragraph.Text.Plain],
        Facts facts => facts.Items.SelectMany(fact => (string[])[fact.Label, fact.Value.Plain, fact.Blank?.Unit ?? ""]),
        KeyNumbers numbers => numbers.Items.SelectMany(number => (string[])[number.Label, number.Value, number.Note ?? "", number.Blank?.What ?? "", number.Blank?.Unit ?? ""]).Prepend(numbers.Caption),
        HoldPoint hold => [hold.Id, hold.Title, .. hold.Checks.Select(check => check.Plain), .. hold.Blanks(Wording.English).SelectMany(blank => (string[])[blank.What, blank.Unit])],
        Caution caution => [caution.Title, .. caution.Lines.Select(line => line.Plain)],
        IfBox box => box.Lines.SelectMany(line => (string[])[line.If, line.Then]),
        BulletList list => list.Items.Select(item => item.Plain),
        TickList list => list.Items.Select(item => item.Plain),
        Table table => [table.Caption, .. table.Columns.Select(column => column.Title), .. table.Rows.SelectMany(Of)],
        Drawing drawing => [drawing.Title, .. drawing.Shapes.OfType<TextShape>().Select(text => text.Text)],
        _ => throw new ArgumentException($"No texts of {block.GetType().Name}.", nameof(block)),
    };

    private static IEnumerable<string> Of(Row row) => row switch
    {
        GroupRow group => [group.Text.Plain],
        CellRow cells => cells.Cells.SelectMany(Of),
        _ => throw new ArgumentException($"No texts of {row.GetType().Name}.", nameof(row)),
    };

    private static IEnumerable<string> Of(Cell cell) => cell switch
    {
        TextCell text => [text.Text.Plain, text.Note ?? ""],
        BigCell big => [big.Value, big.Note ?? ""],
        BlankCell blank => [blank.Blank.Unit],
        TickCell tick => tick.Boxes,
        RingCell ring => [ring.Number],
        DirectionCell directions => directions.Directions.SelectMany(direction => (string[])[direction.Label ?? "", Angles.Text(direction.Orientation)]),
        _ => throw new ArgumentException($"No texts of {cell.GetType().Name}.", nameof(cell)),
    };
}
