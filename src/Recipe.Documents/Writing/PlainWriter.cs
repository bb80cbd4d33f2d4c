using System.Text;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing;

/// <summary>Writes a document of headings, paragraphs, lists, facts and tables as text for a terminal; a drawing is left out, since the text says what it shows.</summary>
internal static class PlainWriter
{
    /// <summary>The document without its heading. Lines end with LF.</summary>
    public static string Write(Document document)
    {
        var text = new StringBuilder();
        foreach (var station in document.Stations)
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            Line(text, station.Title);
            foreach (var block in station.Blocks)
            {
                Append(text, block);
            }
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, Block block)
    {
        switch (block)
        {
            case Heading heading:
                text.Append('\n');
                Line(text, heading.Text);
                break;
            case Paragraph paragraph:
                Line(text, paragraph.Text.Plain, "  ");
                break;
            case BulletList list:
                foreach (var item in list.Items)
                {
                    Line(text, item.Plain, "  - ");
                }

                break;
            case Facts facts:
                var width = facts.Items.Max(fact => fact.Label.Length);
                foreach (var fact in facts.Items)
                {
                    Line(text, $"{fact.Label.PadRight(width)}  {fact.Value.Plain}", "  ");
                }

                break;
            case KeyNumbers numbers:
                Line(text, numbers.Caption, "  ");
                foreach (var number in numbers.Items)
                {
                    Line(text, $"{number.Label}: {number.Value}{(number.Note is { } note ? $" ({note})" : "")}", "    ");
                }

                break;
            case IfBox box:
                Line(text, "If it goes wrong", "  ");
                foreach (var line in box.Lines)
                {
                    Line(text, $"{line.If}: {line.Then}", "  - ");
                }

                break;
            case Table table:
                Append(text, table);
                break;
            case Drawing:
                break;
            default:
                throw new ArgumentException($"A {block.GetType().Name} is not written as plain text.", nameof(block));
        }
    }

    private static void Append(StringBuilder text, Table table)
    {
        if (table.Caption.Length > 0)
        {
            Line(text, table.Caption, "  ");
        }

        var rows = table.Rows.OfType<CellRow>().Select(row => row.Cells.Select(Plain).ToArray()).Prepend([.. table.Columns.Select(column => column.Title)]).ToList();
        var widths = table.Columns.Select((_, i) => rows.Max(row => row[i].Length)).ToArray();
        foreach (var row in rows)
        {
            var cells = row.Select((cell, i) => table.Columns[i].Align == Align.Right ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i]));
            Line(text, string.Join("  ", cells).TrimEnd(), "  ");
        }
    }

    private static string Plain(Cell cell) => cell switch
    {
        TextCell { Note: { } note } noted => Spaced($"{noted.Text.Plain} ({note})"),
        TextCell plain => Spaced(plain.Text.Plain),
        BigCell big => Spaced(big.Value),
        _ => throw new ArgumentException($"A {cell.GetType().Name} is not written as plain text.", nameof(cell)),
    };

    private static string Spaced(string text) => PlainText.Spaced(text);

    // What stands in a recipe may not steer the terminal.
    private static void Line(StringBuilder text, string said, string indent = "") => text.Append(indent).Append(Spaced(said)).Append('\n');
}
