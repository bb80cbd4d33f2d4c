using System.Text.Json;
using Recipe.Documents.Histories;
using Recipe.Documents.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Writing;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents;

/// <summary>What became of the parts that were built, one line each, and a run chart of their masses.</summary>
public static class HistoryReport
{
    /// <summary>The name and version of the JSON schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/history/1";

    /// <summary>As text for a terminal, the run chart drawn with letters.</summary>
    public static string AsText(BuildLog log, Shop? shop)
    {
        ArgumentNullException.ThrowIfNull(log);
        var chart = RunChart.TextOf(log, new QuantityText(shop));
        return PlainWriter.Write(Document(log, shop)) + (chart.Length == 0 ? "" : "\n" + chart);
    }

    /// <summary>As Markdown.</summary>
    public static string AsMarkdown(BuildLog log, Shop? shop) => MarkdownWriter.Write(Document(log, shop));

    /// <summary>As one self-contained page with the chart drawn.</summary>
    public static string AsHtml(BuildLog log, Shop? shop) => HtmlWriter.Write(Document(log, shop));

    /// <summary>The run chart alone as SVG; null when fewer than two parts were weighed.</summary>
    public static string? AsSvg(BuildLog log, Shop? shop) => RunChart.DrawingOf(log, new QuantityText(shop)) is { } drawing ? SvgWriter.WriteFile(drawing) : null;

    /// <summary>For programs: SI units, the unit in each key.</summary>
    public static string AsJson(BuildLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return JsonSerializer.Serialize(HistoryRecord.Of(log), JsonOutput.Shapes.HistoryRecord) + "\n";
    }

    private static Document Document(BuildLog log, Shop? shop)
    {
        ArgumentNullException.ThrowIfNull(log);
        var text = new QuantityText(shop);
        return new Document
        {
            Kind = "History",
            Identity = new Identity(log.Part, log.Part, log.Builds.LastOrDefault()?.RevisionNow, null, "build records", OfOneBuild: false),
            Paper = shop?.Paper ?? PaperSize.A4,
            Landscape = true,
            ForTheBench = false,
            Stations = [new Station($"{log.Part}: {Built(log)}", [HistoryTable.Of(log, text), .. Chart(log, text), .. Faults(log)])],
        };
    }

    private static string Built(BuildLog log)
    {
        var scrapped = log.Builds.Count(build => build.Record.Disposition?.Decision == Disposition.Scrap);
        return $"{Numbers.Whole(log.Builds.Length)} built{(scrapped == 0 ? "" : $", {Numbers.Whole(scrapped)} scrapped")}";
    }

    private static IEnumerable<Block> Chart(BuildLog log, QuantityText text)
    {
        if (RunChart.Of(log) is not { } run)
        {
            yield break;
        }

        yield return new Paragraph(RunChart.Said(run, text));
        foreach (var said in RunChart.Signals(run))
        {
            yield return new Paragraph(Phrase.Strong(said));
        }

        if (RunChart.DrawingOf(log, text) is { } drawing)
        {
            yield return drawing;
        }
    }

    private static IEnumerable<Block> Faults(BuildLog log)
    {
        var faults = log.Builds.SelectMany(build => build.Record.Defects.Select(defect => (build.Record, defect)))
            .GroupBy(pair => pair.defect.Code ?? pair.defect.What, StringComparer.Ordinal)
            .OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).ToList();
        if (faults.Count > 0)
        {
            yield return new Table(
                "Faults",
                [new("Fault", NamesTheRow: true), new("Times", Align.Right), new("On")],
                [
                    .. faults.Select(group => new CellRow(
                    [
                        DefectCodes.MeaningOf(group.Key) is { } meaning ? $"{group.Key}, {meaning}" : group.Key,
                        Numbers.Whole(group.Count()),
                        string.Join("; ", group.Select(pair => HistoryTable.NumberOf(pair.Record) + (pair.defect.At is { } at ? $" at {at}" : ""))),
                    ])),
                ]);
        }
    }
}
