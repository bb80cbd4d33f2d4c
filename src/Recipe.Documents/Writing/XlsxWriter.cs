using System.Globalization;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;
using Cell = SpreadCheetah.Cell;

namespace Recipe.Documents.Writing;

/// <summary>
/// Writes the tables of papers as one workbook (ISO/IEC 29500), a sheet for each paper that has one: numbers as numbers, days as
/// days, sums as formulas over the rows they add up, the heading always in sight. A text is a text whatever it begins with; nothing
/// from a recipe is ever a formula.
/// </summary>
internal static class XlsxWriter
{
    private const int Digits = 9;

    // The length of a text in one cell, by the standard.
    private const int LongestText = 32767;

    public static byte[] Write(IReadOnlyList<Document> documents)
    {
        using var stream = new MemoryStream();
        var task = Write(stream, documents);

        // A stream in memory never waits.
        task.GetAwaiter().GetResult();
        return ZipDates.Settle(stream.ToArray());
    }

    private static async Task Write(MemoryStream stream, IReadOnlyList<Document> documents)
    {
        var options = new SpreadCheetahOptions { DefaultDateTimeFormat = null, DocumentProperties = null };
        await using var book = await Spreadsheet.CreateNewAsync(stream, options).ConfigureAwait(false);
        var head = book.AddStyle(new Style { Font = { Bold = true } });
        var day = book.AddStyle(new Style { Format = NumberFormat.Custom("yyyy-mm-dd") });
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var document in documents)
        {
            if (document.Data is { } table)
            {
                await Write(book, Name(document.Kind, names), table, head, day).ConfigureAwait(false);
            }
        }

        await book.FinishAsync().ConfigureAwait(false);
    }

    private static async Task Write(Spreadsheet book, string name, DataTable table, StyleId head, StyleId day)
    {
        var options = new WorksheetOptions { FrozenRows = 1 };
        for (var i = 0; i < table.Columns.Length; i++)
        {
            options.Column(i + 1).Width = WidthOf(table, i);
        }

        await book.StartWorksheetAsync(name, options).ConfigureAwait(false);
        await book.AddRowAsync(table.Columns.Select(column => new DataCell(Text(column))).Select(cell => new Cell(cell, head)).ToList()).ConfigureAwait(false);
        foreach (var row in table.Rows)
        {
            await book.AddRowAsync(row.Select((value, column) => CellOf(value, column, day)).ToList()).ConfigureAwait(false);
        }
    }

    private static Cell CellOf(object? value, int column, StyleId day) => value switch
    {
        null => new Cell(default(DataCell)),
        string text => new Cell(new DataCell(Text(text))),
        double number => new Cell(new DataCell(Rounded(number))),
        decimal money => new Cell(new DataCell(money)),
        int count => new Cell(new DataCell(count)),
        DateOnly date => new Cell(new DataCell(date.ToDateTime(TimeOnly.MinValue)), day),
        Sum sum => Of(sum, column),
        _ => throw new ArgumentException($"A cell holds text, a number, a sum or a day, not {value.GetType().Name}.", nameof(value)),
    };

    private static Cell Of(Sum sum, int column)
    {
        var letters = Letters(column);
        var total = sum.Total switch
        {
            decimal money => new Cell(new Formula(FormulaOf(letters, sum)), money),
            double number => new Cell(new Formula(FormulaOf(letters, sum)), Rounded(number)),
            _ => throw new ArgumentException("A sum is a number.", nameof(sum)),
        };
        return total;
    }

    // Row 1 is the heading. Neighbouring rows become a range.
    private static string FormulaOf(string letters, Sum sum)
    {
        var ranges = new List<string>();
        for (var i = 0; i < sum.Rows.Length; i++)
        {
            var first = sum.Rows[i];
            while (i + 1 < sum.Rows.Length && sum.Rows[i + 1] == sum.Rows[i] + 1)
            {
                i++;
            }

            ranges.Add(string.Create(CultureInfo.InvariantCulture, $"{letters}{first + 2}") + (sum.Rows[i] == first ? "" : string.Create(CultureInfo.InvariantCulture, $":{letters}{sum.Rows[i] + 2}")));
        }

        return $"SUM({string.Join(',', ranges)})";
    }

    private static string Letters(int column)
    {
        var letters = "";
        for (var rest = column + 1; rest > 0; rest = (rest - 1) / 26)
        {
            letters = (char)('A' + ((rest - 1) % 26)) + letters;
        }

        return letters;
    }

    // The same digits as in CSV.
    private static double? Rounded(double number) =>
        double.IsFinite(number) ? double.Parse(Numbers.Significant(number, Digits), CultureInfo.InvariantCulture) : null;

    private static string Text(string text)
    {
        var clean = PlainText.Spaced(text);
        return clean.Length <= LongestText ? clean : clean[..LongestText];
    }

    private static double WidthOf(DataTable table, int column)
    {
        var longest = table.Rows.Select(row => row[column] switch
        {
            string text => text.Length,
            null => 0,
            _ => 10,
        }).Append(table.Columns[column].Length).Max();
        return Math.Clamp(longest + 2, 8, 60);
    }

    // Excel's rule for names of sheets: at most 31 characters, none of these, no two alike.
    private static string Name(string kind, HashSet<string> taken)
    {
        var clean = string.Concat(PlainText.Spaced(kind).Select(c => c is '\\' or '/' or '?' or '*' or '[' or ']' or ':' or '\'' ? '-' : c));
        clean = clean.Length > 28 ? clean[..28] : clean.Length == 0 ? "Sheet" : clean;
        var name = clean;
        for (var i = 2; !taken.Add(name); i++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{clean} {i}");
        }

        return name;
    }
}
