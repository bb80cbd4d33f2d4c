using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using CsCheck;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;
using Recipe.Documents.Writing;

namespace Recipe.Documents.Tests;

/// <summary>The workbook, read again as what it is: XML in a ZIP file (ISO/IEC 29500).</summary>
public sealed partial class XlsxTests
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    [Fact]
    public void Every_value_of_every_table_stands_in_its_cell()
    {
        foreach (var (name, input) in Cases.All)
        {
            var documents = Tables(input);
            var book = Read(XlsxWriter.Write(documents));
            Assert.Equal(documents.Select(document => document.Kind), book.Names);
            for (var sheet = 0; sheet < documents.Count; sheet++)
            {
                Compare(name, documents[sheet].Data!, book.Sheets[sheet]);
            }
        }
    }

    [Fact]
    public void A_sum_is_a_formula_over_its_rows_and_comes_to_what_the_plan_says()
    {
        var sums = 0;
        foreach (var input in Cases.All.Values)
        {
            foreach (var document in Tables(input))
            {
                var rows = Read(XlsxWriter.Write([document])).Sheets[0];
                foreach (var cell in rows.SelectMany(row => row.Values).Where(cell => cell.Formula is not null))
                {
                    Assert.Matches(SumOfRanges(), cell.Formula!);
                    var added = Range().Matches(cell.Formula!).SelectMany(range => Between(range)).Sum(place => Value(rows, place));
                    Assert.Equal(double.Parse(cell.Value, CultureInfo.InvariantCulture), added, 1e-6);
                    sums++;
                }
            }
        }

        Assert.True(sums > 5);
    }

    [Fact]
    public void No_text_from_a_recipe_becomes_a_formula_or_leaves_its_cell() => Hostile.Words.Sample(
        text =>
        {
            var documents = Tables(Hostile.With(text));
            var rows = Read(XlsxWriter.Write(documents)).Sheets[0];
            Assert.All(rows.SelectMany(row => row.Values).Where(cell => cell.Formula is not null), cell => Assert.Matches(SumOfRanges(), cell.Formula!));
            Assert.Equal(documents[0].Data!.Rows.Length + 1, rows.Count);
        },
        iter: 60);

    [Fact]
    public void The_heading_stays_in_sight_and_columns_have_widths()
    {
        var xml = SheetXml(XlsxWriter.Write(Tables(HatchLid.Input)));
        var pane = xml.Descendants(Main + "pane").Single();
        Assert.Equal(("1", "frozen"), (pane.Attribute("ySplit")!.Value, pane.Attribute("state")!.Value));
        Assert.All(xml.Descendants(Main + "col"), column => Assert.InRange(double.Parse(column.Attribute("width")!.Value, CultureInfo.InvariantCulture), 5, 80));
    }

    [Fact]
    public void The_same_tables_give_the_same_bytes()
    {
        var tables = Tables(HatchLid.Input);
        Assert.Equal(XlsxWriter.Write(tables), XlsxWriter.Write(tables));
        using var zip = new ZipArchive(new MemoryStream(XlsxWriter.Write(tables)));
        Assert.All(zip.Entries, entry => Assert.Equal(new DateTime(1980, 1, 1), entry.LastWriteTime.DateTime));
        Assert.DoesNotContain(zip.Entries, entry => entry.FullName.Contains("core.xml", StringComparison.Ordinal));
    }

    [Fact]
    public void Names_of_sheets_keep_to_the_rules_and_are_never_alike()
    {
        var table = new DataTable(["a"], [["x"]]);
        var documents = new[] { "Cut/list: [1]", "cut-list- -1-", new string('x', 60), "" }.Select(kind => Tables(HatchLid.Input)[0] with { Kind = kind, Data = table }).ToList();
        var names = Read(XlsxWriter.Write(documents)).Names;
        Assert.Equal(4, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(names, name => Assert.InRange(name.Length, 1, 31));
        Assert.All(names, name => Assert.Equal(-1, name.IndexOfAny(['/', '\\', '?', '*', '[', ']', ':'])));
    }

    private sealed record Workbook(List<string> Names, List<List<Dictionary<string, CellXml>>> Sheets);

    private sealed record CellXml(string Value, bool IsText, string? Formula);

    private static List<Document> Tables(PaperInput input) => [.. Cases.Built(input).Where(document => document.Data is not null)];

    private static void Compare(string name, DataTable table, List<Dictionary<string, CellXml>> rows)
    {
        Assert.Equal(table.Rows.Length + 1, rows.Count);
        Assert.Equal(table.Columns, rows[0].Values.Select(cell => cell.Value));
        for (var r = 0; r < table.Rows.Length; r++)
        {
            for (var c = 0; c < table.Columns.Length; c++)
            {
                var cell = rows[r + 1].GetValueOrDefault(Letters(c));
                switch (table.Rows[r][c] is Sum sum ? sum.Total : table.Rows[r][c])
                {
                    case null or "":
                        Assert.True(cell is null || cell.Value.Length == 0, name);
                        break;
                    case string text:
                        Assert.True(cell!.IsText);
                        Assert.Equal(Quantities.PlainText.Spaced(text), cell.Value);
                        break;
                    case DateOnly day:
                        // Days since 1899-12-30, by the standard.
                        Assert.Equal(day.DayNumber - new DateOnly(1899, 12, 30).DayNumber, double.Parse(cell!.Value, CultureInfo.InvariantCulture));
                        break;
                    case var number:
                        Assert.False(cell!.IsText);
                        var expected = Convert.ToDouble(number, CultureInfo.InvariantCulture);
                        Assert.Equal(expected, double.Parse(cell.Value, CultureInfo.InvariantCulture), Math.Max(1e-9, Math.Abs(expected) * 1e-8));
                        break;
                }
            }
        }
    }

    private static Workbook Read(byte[] bytes)
    {
        using var zip = new ZipArchive(new MemoryStream(bytes));
        var book = Load(zip, "xl/workbook.xml");
        var names = book.Descendants(Main + "sheet").Select(sheet => sheet.Attribute("name")!.Value).ToList();
        return new Workbook(names, [.. names.Select((_, i) => Rows(Load(zip, $"xl/worksheets/sheet{i + 1}.xml")))]);
    }

    private static XDocument SheetXml(byte[] bytes)
    {
        using var zip = new ZipArchive(new MemoryStream(bytes));
        return Load(zip, "xl/worksheets/sheet1.xml");
    }

    private static XDocument Load(ZipArchive zip, string name)
    {
        using var stream = zip.GetEntry(name)!.Open();
        return XDocument.Load(stream, LoadOptions.PreserveWhitespace);
    }

    private static List<Dictionary<string, CellXml>> Rows(XDocument sheet) =>
        [.. sheet.Descendants(Main + "row").Select(row => row.Elements(Main + "c").Select((cell, i) => (Letters(i), Cell: Of(cell))).ToDictionary(pair => pair.Item1, pair => pair.Cell))];

    private static CellXml Of(XElement cell)
    {
        var isText = cell.Attribute("t")?.Value is "inlineStr" or "s" or "str";
        return new CellXml(isText ? string.Concat(cell.Descendants(Main + "t").Select(t => t.Value)) : cell.Element(Main + "v")?.Value ?? "", isText, cell.Element(Main + "f")?.Value);
    }

    private static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : $"{(char)('A' + (column / 26) - 1)}{(char)('A' + (column % 26))}";

    private static IEnumerable<(string Column, int Row)> Between(Match range)
    {
        var first = int.Parse(range.Groups[2].Value, CultureInfo.InvariantCulture);
        var last = range.Groups[4].Success ? int.Parse(range.Groups[4].Value, CultureInfo.InvariantCulture) : first;
        return Enumerable.Range(first, last - first + 1).Select(row => (range.Groups[1].Value, row));
    }

    private static double Value(List<Dictionary<string, CellXml>> rows, (string Column, int Row) place) =>
        rows[place.Row - 1].TryGetValue(place.Column, out var cell) && cell.Value.Length > 0 ? double.Parse(cell.Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^SUM\([A-Z]+[0-9]+(:[A-Z]+[0-9]+)?(,[A-Z]+[0-9]+(:[A-Z]+[0-9]+)?)*\)$", RegexOptions.CultureInvariant)]
    private static partial Regex SumOfRanges();

    [GeneratedRegex(@"([A-Z]+)([0-9]+)(?::([A-Z]+)([0-9]+))?(?=[,)])", RegexOptions.CultureInvariant)]
    private static partial Regex Range();
}
