using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing;

/// <summary>
/// Writes a table as RFC 4180 asks: commas, CRLF after every record, a header record, quotes where they are needed. A text that a
/// spreadsheet would run as a formula gets an apostrophe in front (OWASP, "CSV injection"); numbers are never touched.
/// </summary>
internal static class CsvWriter
{
    /// <summary>Significant digits of a number: more than any figure of the bench has, fewer than two machines might differ in.</summary>
    private const int Digits = 9;

    private static readonly SearchValues<char> Quoted = SearchValues.Create(",;\"");

    public static string Write(DataTable table)
    {
        var csv = new StringBuilder();
        Append(csv, table.Columns.Select(Text));
        return csv.Append(WriteRows(table.Rows)).ToString();
    }

    /// <summary>Records alone, to be put behind others.</summary>
    public static string WriteRows(IEnumerable<ImmutableArray<object?>> rows)
    {
        var csv = new StringBuilder();
        foreach (var row in rows)
        {
            Append(csv, row.Select(Field));
        }

        return csv.ToString();
    }

    private static void Append(StringBuilder csv, IEnumerable<string> fields) => csv.AppendJoin(',', fields).Append("\r\n");

    private static string Field(object? value) => value switch
    {
        null => "",
        string text => Text(text),
        double number => double.IsFinite(number) ? Numbers.Significant(number, Digits) : "",
        decimal money => money.ToString(CultureInfo.InvariantCulture),
        int count => Numbers.Whole(count),
        long count => count.ToString(CultureInfo.InvariantCulture),
        DateOnly day => Numbers.Day(day),
        Sum sum => Field(sum.Total),
        _ => throw new ArgumentException($"A field holds text, a number or a day, not {value.GetType().Name}.", nameof(value)),
    };

    private static string Text(string value)
    {
        var text = PlainText.Spaced(value);
        if (StartsFormula(text.AsSpan().TrimStart()))
        {
            text = "'" + text;
        }

        var quoted = text.AsSpan().ContainsAny(Quoted) || text.StartsWith(' ') || text.EndsWith(' ');
        return quoted ? "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : text;
    }

    // The full-width forms too: some spreadsheets fold them into the ordinary ones.
    private static bool StartsFormula(ReadOnlySpan<char> text) =>
        text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20';
}
