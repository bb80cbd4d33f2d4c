using System.Collections.Immutable;
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

    /// <summary>Names of the figures that a run chart can be drawn of.</summary>
    public static ImmutableArray<string> Charts { get; } = [.. RunFigure.All.Select(figure => figure.Name)];

    /// <summary>As text for a terminal, the run chart drawn with letters.</summary>
    /// <param name="log">The records of the part.</param>
    /// <param name="shop">The shop, for its units.</param>
    /// <param name="chart">The figure of the run chart, one of <see cref="Charts"/>.</param>
    /// <exception cref="ArgumentException">There is no such chart.</exception>
    public static string AsText(BuildLog log, Shop? shop, string chart = "mass")
    {
        ArgumentNullException.ThrowIfNull(log);
        var drawn = RunChart.TextOf(log, RunFigure.Of(chart), new QuantityText(shop));
        return PlainWriter.Write(Document(log, shop, chart)) + (drawn.Length == 0 ? "" : "\n" + drawn);
    }

    /// <summary>As Markdown. See <see cref="AsText"/>.</summary>
    public static string AsMarkdown(BuildLog log, Shop? shop, string chart = "mass") => MarkdownWriter.Write(Document(log, shop, chart));

    /// <summary>As one self-contained page with the chart drawn. See <see cref="AsText"/>.</summary>
    public static string AsHtml(BuildLog log, Shop? shop, string chart = "mass") => HtmlWriter.Write(Document(log, shop, chart));

    /// <summary>The run chart alone as SVG; null when the figure is known of fewer than two parts.</summary>
    public static string? AsSvg(BuildLog log, Shop? shop, string chart = "mass") => RunChart.DrawingOf(log, RunFigure.Of(chart), new QuantityText(shop)) is { } drawing ? SvgWriter.WriteFile(drawing) : null;

    /// <summary>One row for each build with everything that a record tells in one figure, as CSV (RFC 4180): the log of a shop.</summary>
    public static string AsCsv(BuildLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return CsvWriter.Write(HistoryRows.Of(log));
    }

    /// <summary>For programs: SI units, the unit in each key.</summary>
    public static string AsJson(BuildLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return JsonSerializer.Serialize(HistoryRecord.Of(log), JsonOutput.Shapes.HistoryRecord) + "\n";
    }

    private static Document Document(BuildLog log, Shop? shop, string chart)
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
            Stations = [new Station($"{log.Part}: {Built(log)}", [HistoryTable.Of(log, text), .. Chart(log, RunFigure.Of(chart), text), .. Faults(log)])],
        };
    }

    private static string Built(BuildLog log)
    {
        var scrapped = log.Builds.Count(build => build.Record.Disposition?.Decision == Disposition.Scrap);
        return $"{Numbers.Whole(log.Builds.Length)} built{(scrapped == 0 ? "" : $", {Numbers.Whole(scrapped)} scrapped")}";
    }

    private static IEnumerable<Block> Chart(BuildLog log, RunFigure figure, QuantityText text)
    {
        if (RunChart.Of(log, figure) is not { } run)
        {
            yield break;
        }

        yield return new Paragraph(RunChart.Said(run, figure, text));
        foreach (var said in RunChart.Signals(run))
        {
            yield return new Paragraph(Phrase.Strong(said));
        }

        if (RunChart.DrawingOf(log, figure, text) is { } drawing)
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
