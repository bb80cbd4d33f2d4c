using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Tables: a head that is said again on each page, rows that are not parted, groups and sums marked by heavier lines.</summary>
internal static class PdfTables
{
    private const double Thin = 0.3;
    private const double Heavy = 0.8;

    // As in HTML: the heading of so short a table would stand alone too often.
    private const int RowsKeptTogether = 8;

    public static IEnumerable<Piece> Of(Table table, double width, PdfMeasures measures)
    {
        var cells = new PdfCells(table.Use, measures);
        var widths = PdfColumns.Widths(table, width, cells);
        if (table.Caption.Length > 0)
        {
            var caption = TextPiece.Of(table.Caption, width, measures.IsBench ? 11 : 9.5, measures.Leading, strong: true);
            (caption.Before, caption.After, caption.Keep) = (measures.Gap(1), 0.3 + measures.Gap(0.7), Keep.Firmly);
            yield return caption;
        }

        var head = Head(table, widths, cells, measures);
        head.Keep = Keep.Firmly;
        yield return head;
        var isShort = table.Rows.Length <= RowsKeptTogether;
        for (var i = 0; i < table.Rows.Length; i++)
        {
            var isLast = i == table.Rows.Length - 1;
            var next = isLast ? null : table.Rows[i + 1];
            var piece = table.Rows[i] is GroupRow group ? Group(group, width, cells, measures) : Cells((CellRow)table.Rows[i], table, widths, cells, measures);
            piece.Keep = table.Rows[i] is GroupRow && !isLast ? Keep.Firmly
                : next is CellRow { IsSum: true } || i == table.Rows.Length - 2 ? Keep.Closely
                : !isLast && (isShort || (cells.IsSteps && next is not GroupRow && table.Rows.Any(row => row is GroupRow))) ? Keep.Together
                : Keep.None;
            piece.Repeated = head;
            piece.After = isLast ? measures.Gap(measures.IsBench ? 3 : 4) : 0;
            yield return piece;
        }
    }

    private static MarkPiece Head(Table table, double[] widths, PdfCells cells, PdfMeasures measures)
    {
        var texts = table.Columns.Select((column, i) => TextPiece.Of(column.Title, widths[i] - (2 * cells.Side), cells.HeadSize, measures.Leading, strong: true, column.Align)).ToList();
        var height = texts.Max(text => text.Height) + 0.6 + measures.Gap(1);
        return new MarkPiece(height, (sheet, x, y) =>
        {
            var left = x;
            for (var i = 0; i < widths.Length; i++)
            {
                Lines(sheet, left, y, widths[i], height, Thin);
                texts[i].Draw(sheet, left + cells.Side, y + height - 0.4 - measures.Gap(0.3) - texts[i].Height);
                left += widths[i];
            }

            sheet.Line(x, y + height, left, y + height, Heavy);
        });
    }

    private static FramedPiece Group(GroupRow group, double width, PdfCells cells, PdfMeasures measures)
    {
        var text = TextPiece.Of(PdfLines.Inks(group.Text, cells.Size, strong: true), width - (2 * cells.Side), cells.Size, measures.Leading);
        return new FramedPiece(text, cells.Side, 0.4 + measures.Gap(0.6), 0.4 + measures.Gap(0.6), (sheet, x, y, height) =>
        {
            Lines(sheet, x, y, width, height, Thin);
            sheet.Line(x, y, x + width, y, Heavy);
        });
    }

    private static FramedPiece Cells(CellRow row, Table table, double[] widths, PdfCells cells, PdfMeasures measures)
    {
        var lefts = new double[widths.Length];
        var items = new List<Beside>();
        for (var i = 0; i < widths.Length; i++)
        {
            lefts[i] = i == 0 ? 0 : lefts[i - 1] + widths[i - 1];
            if (i < row.Cells.Length)
            {
                var column = table.Columns[i];
                var isStrong = row.IsSum || (column.NamesTheRow && !cells.IsSteps);
                items.Add(new Beside(lefts[i] + cells.Side, cells.Of(row.Cells[i], widths[i] - (2 * cells.Side), column.Align, isStrong)));
            }
        }

        var isWritten = row.Cells.Any(cell => cell is BlankCell);
        var least = cells.IsSteps ? measures.StepRow(isWritten) : isWritten ? PdfMeasures.BlankHigh + measures.Gap(1) : 0;
        return new FramedPiece(new RowPiece(items, Math.Max(0, least - (2 * cells.Pad))), 0, cells.Pad, cells.Pad, (sheet, x, y, height) =>
        {
            for (var i = 0; i < widths.Length; i++)
            {
                var isSpace = i < row.Cells.Length && row.Cells[i] is BlankCell;
                Lines(sheet, x + lefts[i], y, widths[i], height, isSpace ? 0.5 : Thin);
                if (isSpace)
                {
                    PdfMarks.Unit(sheet, ((BlankCell)row.Cells[i]).Blank.Unit, x + lefts[i] + widths[i], y + height, widths[i]);
                }
            }

            if (row.IsSum)
            {
                sheet.Line(x, y, x + lefts[^1] + widths[^1], y, Heavy);
            }
        });
    }

    // Lines of neighbours lie over each other.
    private static void Lines(Sheet sheet, double x, double y, double width, double height, double pen) =>
        sheet.Add(PathShape.Box(x, y, width, height, new Pen(pen)));
}
