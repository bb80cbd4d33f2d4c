using System.Collections.Immutable;
using Recipe.Documents;
using Recipe.Model;
using Recipe.Planning.Exploring;

namespace Recipe.Compiler.Exploring;

/// <summary>Writes what came of a study.</summary>
public static class ExplorationReport
{
    /// <summary>The formats, by their names.</summary>
    public static ImmutableArray<string> Formats { get; } = ["text", "md", "html", "csv", "json", "svg"];

    /// <summary>Writes it in one of the <see cref="Formats"/>; null for a picture of a study that has none.</summary>
    /// <exception cref="ArgumentException">There is no such format.</exception>
    public static string? Write(StudyResult result, string format) => format switch
    {
        "text" => StudyReport.AsText(result),
        "md" => StudyReport.AsMarkdown(result),
        "html" => StudyReport.AsHtml(result),
        "csv" => StudyReport.AsCsv(result),
        "json" => StudyReport.AsJson(result),
        "svg" => StudyReport.AsSvg(result),
        _ => throw new ArgumentException($"There is no format {format}.", nameof(format)),
    };

    /// <summary>The header of records of candidates.</summary>
    public static string Head(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return StudyReport.CsvHead(study, study.Figures);
    }

    /// <summary>Records of candidates, to be put behind the header.</summary>
    public static string Rows(Study study, IEnumerable<Candidate> candidates) => StudyReport.CsvRows(study, candidates);
}
