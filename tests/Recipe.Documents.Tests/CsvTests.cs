using System.Globalization;
using System.Text;
using CsCheck;
using Recipe.Documents.Tests.Plans;

namespace Recipe.Documents.Tests;

/// <summary>The takeoff as CSV, read back by the grammar of RFC 4180 section 2.</summary>
public sealed class CsvTests
{
    [Fact]
    public void Every_record_has_as_many_fields_as_the_header()
    {
        foreach (var (name, input) in Cases.All)
        {
            var records = Read(Write(input));
            Assert.True(records.Count > 1, name);
            Assert.All(records, record => Assert.Equal(records[0].Count, record.Count));
            Assert.Equal("record", records[0][0]);
        }
    }

    [Fact]
    public void A_record_ends_with_carriage_return_and_line_feed()
    {
        var csv = Write(HatchLid.Input);
        Assert.EndsWith("\r\n", csv, StringComparison.Ordinal);
        Assert.Equal(csv.Count(c => c == '\r'), csv.Count(c => c == '\n'));
        Assert.DoesNotContain("\r\r", csv, StringComparison.Ordinal);
    }

    [Fact]
    public void Amounts_come_back_as_the_numbers_of_the_plan()
    {
        var input = HatchLid.Input;
        var records = Read(Write(input));
        var items = records.Where(record => record[0] == "item").ToList();
        Assert.Equal(input.Plan.Takeoff.Length, items.Count);
        foreach (var (line, item) in input.Plan.Takeoff.Zip(items))
        {
            Assert.Equal(line.Label, Field(records[0], item, "item"));
            Close(line.Net.Value.Value, Field(records[0], item, "net"));
            Close(line.Waste.Value * 100, Field(records[0], item, "waste_percent"));
            Close(line.Gross.Value.Value, Field(records[0], item, "gross"));
        }
    }

    [Fact]
    public void No_text_can_become_a_formula_or_break_its_record()
    {
        // OWASP, "CSV injection": a cell that starts with one of these is run by a spreadsheet.
        Gen.OneOf(Hostile.Words, Gen.String).Sample(
            text =>
            {
                var records = Read(Write(Hostile.With(text)));
                Assert.All(records, record => Assert.Equal(records[0].Count, record.Count));
                foreach (var field in records.Skip(1).SelectMany(record => record).Where(field => field.Trim().Length > 0 && !IsNumber(field)))
                {
                    Assert.DoesNotContain(field.TrimStart()[..1], (IEnumerable<string>)["=", "+", "-", "@", "\t", "\r"]);
                }
            },
            iter: 60);
    }

    [Fact]
    public void A_text_that_is_no_formula_comes_back_as_it_was()
    {
        Gen.String[Gen.Char["abc \",;|<>&'\u00e9\u00b5"], 1, 20].Where(text => !char.IsWhiteSpace(text[0]) && text[0] != '\'').Sample(
            text => Assert.Contains(text, Read(Write(Hostile.With(text))).Where(record => record[0] == "gap").Select(record => record[2])),
            iter: 60);
    }

    private static string Write(PaperInput input) => Papers.Write(input, Papers.Takeoff, PaperFormat.Csv);

    private static string Field(List<string> header, List<string> record, string column) => record[header.IndexOf(column)];

    private static bool IsNumber(string field) => double.TryParse(field, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static void Close(double expected, string field) =>
        Assert.Equal(expected, double.Parse(field, CultureInfo.InvariantCulture), Math.Abs(expected) * 1e-8);

    // RFC 4180: file = record *(CRLF record) [CRLF]; a field in quotes may hold commas, line ends and doubled quotes.
    private static List<List<string>> Read(string csv)
    {
        var records = new List<List<string>>();
        var record = new List<string>();
        for (var at = 0; at < csv.Length;)
        {
            var field = new StringBuilder();
            if (csv[at] == '"')
            {
                for (at++; csv[at] != '"' || (at + 1 < csv.Length && csv[at + 1] == '"'); at++)
                {
                    field.Append(csv[at]);
                    at += csv[at] == '"' ? 1 : 0;
                }

                at++;
                Assert.True(csv[at] is ',' or '\r', "A quote ends its field.");
            }
            else
            {
                for (; csv[at] is not (',' or '\r' or '\n'); at++)
                {
                    Assert.NotEqual('"', csv[at]);
                    field.Append(csv[at]);
                }
            }

            record.Add(field.ToString());
            if (csv[at] == ',')
            {
                at++;
                continue;
            }

            Assert.Equal("\r\n", csv.Substring(at, 2));
            at += 2;
            records.Add(record);
            record = [];
        }

        return records;
    }
}
