using System.Collections.Immutable;
using Recipe.Documents;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Compiler.Records;

/// <summary>The build records of many files, put together: the memory of a shop.</summary>
public sealed class ShopRecords
{
    private readonly ImmutableArray<BuildLog> _logs;
    private readonly Shop? _shop;

    private ShopRecords(ImmutableArray<BuildLog> logs, Shop? shop) => (_logs, _shop) = (logs, shop);

    /// <summary>Names of the parts that were built, in order.</summary>
    public IEnumerable<string> Parts => _logs.Select(log => log.Part);

    /// <summary>Gathers the records of files.</summary>
    public static ShopRecords Of(IReadOnlyList<CompiledFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return new(BuildLog.Of(files.SelectMany(file => file.Builds)), files.Select(file => file.Bound.Model.Shop).FirstOrDefault(shop => shop is not null));
    }

    /// <summary>Names of the figures that a run chart can be drawn of.</summary>
    public static ImmutableArray<string> Charts => HistoryReport.Charts;

    /// <summary>What became of a part, build by build; null when it was never built, or when the chart alone is wanted and its figure is known of fewer than two.</summary>
    /// <param name="part">Name of the part.</param>
    /// <param name="format">text, md, html, json, csv or svg.</param>
    /// <param name="chart">The figure of the run chart, one of <see cref="Charts"/>.</param>
    public string? History(string part, string format, string chart = "mass") => _logs.FirstOrDefault(log => log.Part == part) is not { } log ? null : format switch
    {
        "md" => HistoryReport.AsMarkdown(log, _shop, chart),
        "html" => HistoryReport.AsHtml(log, _shop, chart),
        "json" => HistoryReport.AsJson(log),
        "csv" => HistoryReport.AsCsv(log),
        "svg" => HistoryReport.AsSvg(log, _shop, chart),
        _ => HistoryReport.AsText(log, _shop, chart),
    };

    /// <summary>What the records say of the shop's own figures.</summary>
    /// <param name="format">text, md or json.</param>
    public string Learnt(string format) => format switch
    {
        "md" => LearningReport.AsMarkdown(_logs, _shop),
        "json" => LearningReport.AsJson(_logs),
        _ => LearningReport.AsText(_logs, _shop),
    };

    /// <summary>A text with what was learnt put into its shop block; null when there are too few records to put anything.</summary>
    /// <param name="name">Name of the text.</param>
    /// <param name="text">The text as it is.</param>
    public string? WithLearnt(string name, string text) =>
        LearningReport.ShopLines(_logs, _shop) is { Count: > 0 } lines ? ShopLines.Put(name, text, _shop?.Name ?? "ours", lines) : null;
}
