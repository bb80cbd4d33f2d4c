using System.Text.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing;

/// <summary>
/// Writes blocks as JSON for a page that draws them: texts as they are read, drawings as SVG. A screen is not written on by hand, so spaces to
/// write in are left out, and columns of nothing else with them.
/// </summary>
/// <param name="json">Where they are written.</param>
/// <param name="withTicks">Whether boxes to tick are kept: at the bench they are, beside a drawing of the plan they are not.</param>
internal sealed class BlockJson(Utf8JsonWriter json, bool withTicks)
{
    /// <summary>Writes an array of blocks.</summary>
    public void Write(string name, IEnumerable<Block> blocks)
    {
        json.WriteStartArray(name);
        foreach (var block in blocks)
        {
            // A table that is only filled in by hand has nothing to show.
            if (block is not Table table || Enumerable.Range(0, table.Columns.Length).Any(i => IsShown(table, i)))
            {
                json.WriteStartObject();
                Write(block);
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case Heading heading:
                Kind("heading");
                Text("text", heading.Text);
                break;
            case Paragraph paragraph:
                Kind("paragraph");
                Phrase("text", paragraph.Text);
                json.WriteBoolean("fine", paragraph.Fine);
                break;
            case Facts facts:
                Kind("facts");
                List("items", facts.Items.Where(fact => !fact.Value.IsEmpty), fact =>
                {
                    Text("label", fact.Label);
                    Phrase("value", fact.Value);
                });
                break;
            case KeyNumbers numbers:
                Kind("numbers");
                Text("caption", numbers.Caption);
                List("items", numbers.Items, number =>
                {
                    Text("label", number.Label);
                    Text("value", number.Value);
                    Text("note", number.Note);
                    json.WriteBoolean("alarm", number.Alarm);
                });
                break;
            case HoldPoint hold:
                Kind("hold");
                Text("id", hold.Id);
                Text("title", hold.Title);
                Phrases("checks", hold.Checks);
                break;
            case Caution caution:
                Kind("caution");
                Text("title", caution.Title);
                Phrases("lines", caution.Lines);
                break;
            case IfBox box:
                Kind("ifs");
                List("lines", box.Lines, line =>
                {
                    Text("if", line.If);
                    Text("then", line.Then);
                });
                break;
            case BulletList list:
                Kind("bullets");
                Phrases("items", list.Items);
                json.WriteBoolean("fine", list.Fine);
                break;
            case TickList list:
                Kind(withTicks ? "ticks" : "bullets");
                Phrases("items", list.Items);
                break;
            case Table table:
                Write(table);
                break;
            case Drawing drawing:
                Kind("drawing");
                Text("name", drawing.Name);
                Text("title", drawing.Title);
                Text("description", drawing.Description);
                json.WriteString("svg", SvgWriter.Write(drawing));
                break;
            default:
                throw new ArgumentException($"No JSON for {block.GetType().Name}.", nameof(block));
        }
    }

    private void Write(Table table)
    {
        Kind("table");
        Text("caption", table.Caption);
        var shown = Enumerable.Range(0, table.Columns.Length).Where(i => IsShown(table, i)).ToList();
        List("columns", shown.Select(i => table.Columns[i]), column =>
        {
            Text("title", column.Title);
            json.WriteString("align", column.Align switch { Align.Right => "right", Align.Centre => "centre", _ => "left" });
            json.WriteBoolean("names", column.NamesTheRow);
        });
        List("rows", table.Rows, row =>
        {
            if (row is GroupRow group)
            {
                Phrase("group", group.Text);
            }
            else if (row is CellRow cells)
            {
                json.WriteBoolean("sum", cells.IsSum);
                List("cells", shown.Select(i => cells.Cells[i]), Write);
            }
        });
    }

    private bool IsShown(Table table, int column)
    {
        var cells = table.Rows.OfType<CellRow>().Select(row => row.Cells[column]).ToList();
        return cells.Count == 0 || !cells.TrueForAll(cell => cell is BlankCell || (cell is TickCell && !withTicks));
    }

    private void Write(Cell cell)
    {
        switch (cell)
        {
            case TextCell text:
                Phrase("text", text.Text);
                Text("note", text.Note);
                break;
            case BigCell big:
                Text("big", big.Value);
                Text("note", big.Note);
                break;
            case RingCell ring:
                Text("ring", ring.Number);
                break;
            case DirectionCell directions:
                Text("text", string.Join(", ", directions.Directions.Select(direction => (direction.Label is null ? "" : direction.Label + " ") + Angles.Text(direction.Orientation))));
                break;
            case TickCell tick when withTicks:
                json.WriteStartArray("ticks");
                foreach (var box in tick.Boxes)
                {
                    json.WriteStringValue(PlainText.Clean(box));
                }

                json.WriteEndArray();
                break;
            default:
                // A space to write in: nothing stands there.
                break;
        }
    }

    private void Kind(string kind) => json.WriteString("kind", kind);

    private void Text(string name, string? text)
    {
        if (text is { Length: > 0 })
        {
            json.WriteString(name, PlainText.Clean(text));
        }
    }

    private void Phrase(string name, Phrase phrase) => List(name, phrase.Runs.IsDefault ? [] : phrase.Runs.Where(run => run.Text.Length > 0), run =>
    {
        json.WriteString("text", PlainText.Clean(run.Text));
        if (run.Style != RunStyle.Plain)
        {
            json.WriteString("style", run.Style == RunStyle.Strong ? "strong" : "code");
        }
    });

    private void Phrases(string name, IEnumerable<Phrase> phrases)
    {
        json.WriteStartArray(name);
        foreach (var phrase in phrases)
        {
            json.WriteStartObject();
            Phrase("text", phrase);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void List<T>(string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
