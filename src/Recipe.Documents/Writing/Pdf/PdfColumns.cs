using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>
/// Widths of the columns of a table: what the paper asks for, more where a word or a number would not fit and there is room, and
/// the rest shared by what the other columns hold.
/// </summary>
internal static class PdfColumns
{
    public static double[] Widths(Table table, double width, PdfCells cells)
    {
        var count = table.Columns.Length;
        var least = new double[count];
        var whole = new double[count];
        for (var i = 0; i < count; i++)
        {
            (least[i], whole[i]) = cells.Head(table.Columns[i]);
        }

        foreach (var row in table.Rows.OfType<CellRow>())
        {
            for (var i = 0; i < Math.Min(count, row.Cells.Length); i++)
            {
                var (l, w) = cells.Widths(row.Cells[i], row.IsSum);
                (least[i], whole[i]) = (Math.Max(least[i], l), Math.Max(whole[i], w));
            }
        }

        return Share(table, width, least, whole);
    }

    private static double[] Share(Table table, double width, double[] least, double[] whole)
    {
        var widths = table.Columns.Select(column => (double)column.WidthMm).ToArray();
        var open = Enumerable.Range(0, widths.Length).Where(i => widths[i] == 0).ToList();
        foreach (var i in open)
        {
            // A long word may be broken rather than push the others off the paper.
            widths[i] = Math.Min(least[i], width / 3);
        }

        for (var i = 0; i < widths.Length; i++)
        {
            var rest = width - widths.Sum();
            widths[i] += Math.Clamp(Math.Min(least[i], width / 3) - widths[i], 0, Math.Max(0, rest));
        }

        var spare = width - widths.Sum();
        if (spare < 0)
        {
            return [.. widths.Select(w => w * width / widths.Sum())];
        }

        var takers = open.Count > 0 ? open : [.. Enumerable.Range(0, widths.Length)];
        var wants = takers.Sum(i => Math.Max(whole[i] - widths[i], 0));
        foreach (var i in takers)
        {
            var want = Math.Max(whole[i] - widths[i], 0);
            var extra = wants > spare ? spare * want / wants : want + ((spare - wants) * (1 + whole[i]) / takers.Sum(k => 1 + whole[k]));
            widths[i] += extra;
        }

        return widths;
    }
}
