using System.Text;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Model;

namespace Recipe.Documents.Writing;

/// <summary>Tables of an HTML paper: every cell has a heading over it, and beside it where the column names the row.</summary>
internal static class HtmlTables
{
    /// <summary>A table of so few rows is not split over two pages: its heading would stand alone too often.</summary>
    private const int RowsKeptTogether = 8;

    public static string Of(Table table, Wording say)
    {
        var html = new StringBuilder();
        var isShort = table.Rows.Length <= RowsKeptTogether;
        html.Append($"<table class=\"{(table.Use == TableUse.Steps ? "steps" : "reference")}{(isShort ? " short" : "")}\">\n");
        if (table.Caption.Length > 0)
        {
            html.Append($"<caption>{HtmlText.Escape(table.Caption)}</caption>\n");
        }

        html.Append("<colgroup>").Append(string.Concat(table.Columns.Select(column =>
            column.WidthMm > 0 ? $"<col style=\"width:{column.WidthMm}mm\" />" : "<col />"))).Append("</colgroup>\n<thead>\n<tr>");
        html.Append(string.Concat(table.Columns.Select(column => $"<th scope=\"col\"{ClassOf(column)}>{HtmlText.Escape(column.Title)}</th>")));
        html.Append("</tr>\n</thead>\n<tbody>\n");
        for (var i = 0; i < table.Rows.Length; i++)
        {
            // Each group is a body of its own, so that its heading is the heading of its rows and of no others.
            if (table.Rows[i] is GroupRow group)
            {
                html.Append(i > 0 ? "</tbody>\n<tbody>\n" : "")
                    .Append($"<tr class=\"group\"><th scope=\"rowgroup\" colspan=\"{table.Columns.Length}\">{HtmlText.Of(group.Text)}</th></tr>\n");
            }
            else if (table.Rows[i] is CellRow row)
            {
                html.Append(row.IsSum ? "<tr class=\"sum\">" : "<tr>")
                    .Append(string.Concat(row.Cells.Select((cell, at) => Of(cell, table.Columns[at], say)))).Append("</tr>\n");
            }
        }

        return html.Append("</tbody>\n</table>").ToString();
    }

    /// <summary>A box to tick.</summary>
    public static string Tick(Wording say) => $"<span class=\"tick\" role=\"img\" aria-label=\"{HtmlText.Escape(say.Say("box to tick"))}\"></span>";

    /// <summary>What a screen reader says of a space: what is to be written there, and in which unit.</summary>
    public static string Named(Blank blank, Wording say) =>
        HtmlText.Escape(blank.Unit.Length == 0 ? say.Say($"space to write {blank.What}") : say.Say($"space to write {blank.What} in {blank.Unit}"));

    private static string Of(Cell cell, Column column, Wording say)
    {
        var tag = column.NamesTheRow ? "th scope=\"row\"" : "td";
        return $"<{tag}{ClassOf(column, cell is BlankCell ? "write" : "")}>{Inner(cell, say)}</{tag[..2]}>";
    }

    private static string Inner(Cell cell, Wording say) => cell switch
    {
        TextCell text => HtmlText.Of(text.Text) + Note(text.Note),
        BigCell big => $"<span class=\"big\">{HtmlText.Big(big.Value)}</span>{Note(big.Note)}",
        BlankCell blank => $"<span class=\"in\" role=\"img\" aria-label=\"{Named(blank.Blank, say)}\">{HtmlText.Escape(blank.Blank.Unit)}</span>",
        TickCell tick => string.Join(' ', tick.Boxes.Select(word => word.Length == 0 ? Tick(say) : $"<span class=\"labelled{(HasLongWord(word) ? " long" : "")}\">{Tick(say)} {HtmlText.Escape(word)}</span>")),
        RingCell ring => $"<span class=\"ring{(ring.Number.Length > 2 ? " long" : "")}\">{HtmlText.Escape(ring.Number)}</span>",
        DirectionCell directions => string.Concat(directions.Directions.Select(Of)),
        _ => throw new ArgumentException($"No HTML for {cell.GetType().Name}.", nameof(cell)),
    };

    // A name of a half or a side is never parted; what is longer than names are must not push the table off the paper.
    private static bool HasLongWord(string text) => text.Split(' ').Any(word => word.Length > 14);

    private static string Note(string? note) => note is null ? "" : $"<span class=\"note\">{HtmlText.Escape(note)}</span>";

    private static string Of(Direction direction)
    {
        var text = Angles.Text(direction.Orientation);
        var label = direction.Label is null ? "" : $"<span class=\"note\">{HtmlText.Escape(direction.Label)}</span>";
        return $"<span class=\"direction\">{Drawing(direction.Orientation)}<span>{label}<strong>{HtmlText.Escape(text)}</strong></span></span>";
    }

    // 0 degrees points right, along the part; positive turns counter-clockwise, so the drawing's y (which points down) is negated.
    private static string Drawing(Orientation orientation)
    {
        var lines = string.Concat(Angles.Lines(orientation).Select(angle =>
        {
            var x = Numbers.AtMost(9 * Math.Cos(angle * Math.PI / 180), 2);
            var y = Numbers.AtMost(-9 * Math.Sin(angle * Math.PI / 180), 2);
            return $"<line x1=\"{Negated(x)}\" y1=\"{Negated(y)}\" x2=\"{x}\" y2=\"{y}\" />";
        }));
        var zero = lines.Length > 0 ? "<path d=\"M0 0H7M5 -1.5L7 0L5 1.5\" />" : "";
        return $"<svg viewBox=\"-10 -10 20 20\" aria-hidden=\"true\"><circle r=\"9.6\" />{zero}{lines}</svg>";
    }

    private static string Negated(string number) => number == "0" ? number : number.StartsWith('-') ? number[1..] : "-" + number;

    private static string ClassOf(Column column, string more = "")
    {
        var align = column.Align switch
        {
            Align.Right => "right",
            Align.Centre => "centre",
            _ => "",
        };
        var names = string.Join(' ', new[] { align, more }.Where(name => name.Length > 0));
        return names.Length == 0 ? "" : $" class=\"{names}\"";
    }
}
