using System.Text;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing;

/// <summary>
/// Writes a paper as Markdown: one fact a line and no padding in tables, so that a version-control diff reads as what changed.
/// </summary>
internal static class MarkdownWriter
{
    public static string Write(Document document)
    {
        var text = new StringBuilder();
        Line(text, "# " + MarkdownText.Escape(document.Title));
        Line(text, MarkdownText.AtLineStart(MarkdownText.Escape(IdentityLine.Of(document.Identity))));
        var number = 0;
        foreach (var station in document.Stations)
        {
            number++;
            Line(text, $"## {number}. {MarkdownText.Escape(station.Title)}");
            foreach (var block in station.Blocks)
            {
                Line(text, Of(block, document.Identity.Wording));
            }
        }

        return text.Length > 0 ? text.ToString(0, text.Length - 1) : "";
    }

    private static void Line(StringBuilder text, string block) => text.Append(block).Append("\n\n");

    private static string Of(Block block, Wording say) => block switch
    {
        Heading heading => "### " + MarkdownText.Escape(heading.Text),
        Paragraph paragraph => MarkdownText.AtLineStart(MarkdownText.Of(paragraph.Text)),
        Facts facts => Lines(facts.Items.Select(Of)),
        KeyNumbers numbers => MarkdownText.Strong(numbers.Caption) + "\n\n" + Lines(numbers.Items.Select(Of)),
        HoldPoint hold => Of(hold, say),
        Caution caution => Quote($"▲ {MarkdownText.Strong(caution.Title)}\n\n{Bullets(caution.Lines)}"),
        IfBox box => Quote(MarkdownText.Strong(say.Say("If it goes wrong")) + "\n\n" + Lines(box.Lines.Select(
            line => $"- {MarkdownText.Strong(line.If + ":")} {MarkdownText.Escape(line.Then)}"))),
        BulletList list => Bullets(list.Items),
        TickList list => Ticks(list.Items),
        Table table => Of(table),
        Drawing drawing => "*" + MarkdownText.Escape(drawing.Title) + "* (" + MarkdownText.Escape(say.Say("drawing")) + "): " + MarkdownText.Escape(drawing.Description),
        _ => throw new ArgumentException($"No Markdown for {block.GetType().Name}.", nameof(block)),
    };

    private static string Of(Fact fact)
    {
        var blank = fact.Blank is { } space ? MarkdownText.Of(space) : "";
        var value = MarkdownText.Of(fact.Value);
        return $"- {MarkdownText.Strong(fact.Label + ":")} {value}{(value.Length > 0 && blank.Length > 0 ? " · " : "")}{blank}".TrimEnd();
    }

    private static string Of(KeyNumber number)
    {
        var note = number.Note is null ? "" : $" ({MarkdownText.Escape(number.Note)})";
        var blank = number.Blank is { } space ? $" · {MarkdownText.Escape(space.What)} {MarkdownText.Of(space)}" : "";
        var mark = number.Alarm ? "▲ " : "";
        return $"- {mark}{MarkdownText.Escape(number.Label)}: {MarkdownText.Strong(number.Value)}{note}{blank}";
    }

    private static string Of(HoldPoint hold, Wording say)
    {
        var title = $"● {MarkdownText.Strong(say.Say($"{hold.Id} HOLD: {hold.Title}"))}";
        var blanks = string.Join(" · ", hold.Blanks(say).Select(blank => $"{MarkdownText.Escape(blank.What)} {MarkdownText.Of(blank)}"));
        return Quote($"{title}\n\n{(hold.Checks.IsEmpty ? "" : Ticks(hold.Checks) + "\n\n")}{blanks}");
    }

    private static string Of(Table table)
    {
        var text = new StringBuilder();
        if (table.Caption.Length > 0)
        {
            text.Append(MarkdownText.Strong(table.Caption)).Append("\n\n");
        }

        Append(text, table.Columns.Select(column => MarkdownText.Escape(column.Title)));
        text.Append('\n');
        Append(text, table.Columns.Select(column => column.Align switch
        {
            Align.Right => "---:",
            Align.Centre => ":---:",
            _ => "---",
        }));
        foreach (var row in table.Rows)
        {
            text.Append('\n');
            Append(text, row switch
            {
                GroupRow group => [group.Text.Runs is [_] ? MarkdownText.Strong(group.Text.Plain) : MarkdownText.Of(group.Text), .. Enumerable.Repeat("", table.Columns.Length - 1)],
                CellRow { IsSum: true } sum => sum.Cells.Select(cell => Strong(Of(cell))),
                CellRow cells => cells.Cells.Select(Of),
                _ => throw new ArgumentException($"No Markdown for {row.GetType().Name}.", nameof(table)),
            });
        }

        return text.ToString();
    }

    private static string Of(Cell cell) => cell switch
    {
        TextCell text => MarkdownText.Of(text.Text) + Note(text.Note, text.Text.IsEmpty),
        BigCell big => MarkdownText.Strong(big.Value) + Note(big.Note, big.Value.Length == 0),
        BlankCell blank => MarkdownText.Of(blank.Blank),
        TickCell tick => string.Join(' ', tick.Boxes.Select(word => word.Length == 0 ? "[ ]" : "[ ] " + MarkdownText.Escape(word))),
        RingCell ring => MarkdownText.Escape(ring.Number),
        DirectionCell directions => string.Join(", ", directions.Directions.Select(
            direction => MarkdownText.Escape((direction.Label is null ? "" : direction.Label + " ") + Angles.Text(direction.Orientation)))),
        _ => throw new ArgumentException($"No Markdown for {cell.GetType().Name}.", nameof(cell)),
    };

    private static string Note(string? note, bool alone) =>
        note is null ? "" : alone ? MarkdownText.Escape(note) : $" ({MarkdownText.Escape(note)})";

    private static string Strong(string markdown) => markdown.Length == 0 || markdown.StartsWith("**", StringComparison.Ordinal) ? markdown : $"**{markdown}**";

    private static string Bullets(IEnumerable<Phrase> items) => Lines(items.Select(item => "- " + MarkdownText.AtLineStart(MarkdownText.Of(item))));

    private static string Ticks(IEnumerable<Phrase> items) => Lines(items.Select(item => "- [ ] " + MarkdownText.Of(item)));

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);

    private static string Quote(string block) => string.Join('\n', block.Split('\n').Select(line => line.Length == 0 ? ">" : "> " + line));

    private static void Append(StringBuilder text, IEnumerable<string> cells)
    {
        text.Append('|');
        foreach (var cell in cells)
        {
            text.Append(cell.Length == 0 ? " |" : $" {cell} |");
        }
    }
}
