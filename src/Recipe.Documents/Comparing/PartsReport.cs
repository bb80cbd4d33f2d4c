using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Recipe.Documents.Changes;
using Recipe.Documents.Comparing;
using Recipe.Documents.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Writing;
using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>
/// Parts side by side: what each weighs, how stiff it is, what is mixed, the clock, the cure, the cost, open findings, each with the
/// difference to the first; and mass against bending stiffness as a picture. To compare parts on the desk, not for the bench.
/// </summary>
public static class PartsReport
{
    /// <summary>The name and version of the JSON schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/comparison/1";

    // Wide enough for two or three parts, and a terminal shows it.
    private const int TextWidth = 100;
    private const int PartsOnATable = 4;

    /// <summary>As plain text for a terminal; parts that do not fit beside each other come in further tables, the first part with each.</summary>
    public static string AsText(IReadOnlyList<PartOnReport> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var rows = PartsTable.Of(parts, Text(parts));
        var label = rows.Select(row => row.Label.Length).DefaultIfEmpty(0).Max();
        var widths = parts.Select((part, i) => rows.Select(row => Joined(row.Cells[i]).Length).Append(part.Name.Length).Max()).ToArray();
        var text = new StringBuilder();
        foreach (var columns in Columns(widths, label))
        {
            text.Append(text.Length > 0 ? "\n" : "");
            Line("", columns.Select(i => (i, parts[i].Name)));
            foreach (var row in Known(rows, columns))
            {
                Line(row.Label, columns.Select(i => (i, Joined(row.Cells[i]))));
            }
        }

        foreach (var note in Partial(parts))
        {
            text.Append('\n').Append(PlainText.Spaced(note)).Append('\n');
        }

        return text.ToString();

        // What stands in a recipe may not steer the terminal.
        void Line(string head, IEnumerable<(int Column, string Cell)> cells) =>
            text.Append(PlainText.Spaced(head.PadRight(label) + string.Concat(cells.Select(cell => "  " + cell.Cell.PadRight(widths[cell.Column])))).TrimEnd()).Append('\n');
    }

    /// <summary>As Markdown for a review comment.</summary>
    public static string AsMarkdown(IReadOnlyList<PartOnReport> parts) => MarkdownWriter.Write(Document(parts));

    /// <summary>As one HTML file with the picture in it.</summary>
    public static string AsHtml(IReadOnlyList<PartOnReport> parts) => HtmlWriter.Write(Document(parts));

    /// <summary>A record for each part: its figures in SI, the unit in the name of each column; findings that are open.</summary>
    public static string AsCsv(IReadOnlyList<PartOnReport> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return CsvWriter.Write(new DataTable(
            ["part", "file", .. Figures.All.Select(figure => figure.Key), "currency", "errors", "warnings", "advice"],
            [
                .. parts.Select(part => (ImmutableArray<object?>)
                [
                    part.Name, part.Input.SourceName, .. Figures.All.Select(figure => (object?)figure.Value(part.Input.Plan)), part.Input.Plan.Cost?.Currency,
                    part.Open(Severity.Error), part.Open(Severity.Warning), part.Open(Severity.Advice),
                ]),
            ]));
    }

    /// <summary>For programs.</summary>
    public static string AsJson(IReadOnlyList<PartOnReport> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return JsonSerializer.Serialize(new ComparisonRecord(Schema, [.. parts.Select(part => PartFiguresRecord.Of(part, parts[0]))]), JsonOutput.Shapes.ComparisonRecord) + "\n";
    }

    /// <summary>Mass against bending stiffness as a file; null when no part has both.</summary>
    public static string? AsSvg(IReadOnlyList<PartOnReport> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return Picture(parts) is { } drawing ? SvgWriter.WriteFile(drawing) : null;
    }

    /// <summary>The picture; null when no part has both figures.</summary>
    internal static Drawing? Picture(IReadOnlyList<PartOnReport> parts)
    {
        var (mass, bending) = (Figures.Of(PartFigure.Mass), Figures.Of(PartFigure.BendingAlong));
        var points = parts
            .Select((part, i) => (Part: part, X: mass.Value(part.Input.Plan), Y: bending.Value(part.Input.Plan), Mark: i == 0 ? PointMark.Square : PointMark.Full))
            .Where(point => point.X is not null && point.Y is not null)
            .Select(point => new ScatterPoint(point.X!.Value, point.Y!.Value, point.Mark, point.Part.Name));
        return ScatterDrawing.Of(new("mass-bending", "Mass and bending stiffness", "part", (mass, true), (bending, false)), [.. points], Text(parts));
    }

    private static Document Document(IReadOnlyList<PartOnReport> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var files = parts.Select(part => part.Input.SourceName).Distinct(StringComparer.Ordinal).ToList();
        return new Document
        {
            Kind = "Comparison",
            Identity = new Identity(
                string.Join(", ", parts.Select(part => part.Name)), "all", parts[0].Input.Revision, null, files is [var one] ? one : $"{Numbers.Whole(files.Count)} files", OfOneBuild: false),
            Paper = PaperSize.A4,
            Landscape = parts.Count > 3,
            ForTheBench = false,
            Stations = [new Station("Figures", [.. Tables(parts), .. Partial(parts).Select(note => new Paragraph(note, Fine: true))]), .. Picture(parts) is { } drawing ? [new Station("Picture", [drawing])] : (ImmutableArray<Station>)[]],
        };
    }

    private static IEnumerable<Block> Tables(IReadOnlyList<PartOnReport> parts)
    {
        var rows = PartsTable.Of(parts, Text(parts));
        foreach (var others in Enumerable.Range(1, parts.Count - 1).Chunk(PartsOnATable - 1).DefaultIfEmpty([]))
        {
            yield return new Table(
                others.Length == 0 ? parts[0].Name : $"Differences are to {parts[0].Name}",
                [new("Figure", NamesTheRow: true), new(parts[0].Name, Align.Right), .. others.Select(i => new Column(parts[i].Name, Align.Right))],
                [.. Known(rows, [0, .. others]).Select(row => new CellRow([row.Label, row.Cells[0].Value, .. others.Select(i => Cell(row.Cells[i]))]))]);
        }
    }

    // Parts that leave out the same lines share a sentence.
    private static IEnumerable<string> Partial(IReadOnlyList<PartOnReport> parts) => parts
        .Select(part => (part.Name, Said: PartialLines.Say(part.Input.Plan.Stiffness?.LeftOut ?? [])))
        .Where(part => part.Said is not null)
        .GroupBy(part => part.Said!, StringComparer.Ordinal)
        .Select(same => same.Count() == parts.Count ? same.Key : $"{string.Join(", ", same.Select(part => part.Name))}: {char.ToLowerInvariant(same.Key[0])}{same.Key[1..]}");

    // Of the parts on one table.
    private static IEnumerable<FigureRow> Known(IEnumerable<FigureRow> rows, IReadOnlyList<int> columns) =>
        rows.Where(row => columns.Any(i => row.Cells[i].Value != PartsTable.NotKnown));

    // Markdown puts the note in brackets: the share stands without its own.
    private static Cell Cell((string Value, string Difference) cell) =>
        cell.Difference.Length == 0 ? cell.Value : new TextCell(cell.Value, cell.Difference.Replace(" (", ", ", StringComparison.Ordinal).TrimEnd(')'));

    private static string Joined((string Value, string Difference) cell) => cell.Difference.Length == 0 ? cell.Value : $"{cell.Value}  {cell.Difference}";

    private static QuantityText Text(IReadOnlyList<PartOnReport> parts) => new(parts[0].Input.Plan.Shop);

    // The first part stands in front each time; at least one other beside it, however wide.
    private static IEnumerable<List<int>> Columns(int[] widths, int label)
    {
        var columns = new List<int> { 0 };
        var used = label + 2 + widths[0];
        for (var i = 1; i < widths.Length; i++)
        {
            if (columns.Count > 1 && used + 2 + widths[i] > TextWidth)
            {
                yield return columns;
                columns = [0];
                used = label + 2 + widths[0];
            }

            columns.Add(i);
            used += 2 + widths[i];
        }

        yield return columns;
    }
}
