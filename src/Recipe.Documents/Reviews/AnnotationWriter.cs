using System.Text;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>Findings as lines that a build server turns into remarks beside the code: <c>::warning file=...,line=...::message</c>.</summary>
public static class AnnotationWriter
{
    /// <summary>Writes them, one a line.</summary>
    public static string Write(IReadOnlyCollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var text = new StringBuilder();
        foreach (var finding in findings)
        {
            var (start, end) = (finding.Where.Start, finding.Where.Source.PositionOf(finding.Where.Span.End));
            var level = finding.Severity switch
            {
                Severity.Error => "error",
                Severity.Warning => "warning",
                _ => "notice",
            };
            text.Append($"::{level} file={Property(finding.Where.Source.Name)},line={Numbers.Whole(start.Line + 1)},endLine={Numbers.Whole(end.Line + 1)}")
                .Append(start.Line == end.Line ? $",col={Numbers.Whole(start.Column + 1)},endColumn={Numbers.Whole(end.Column + 1)}" : "")
                .Append($",title={Property($"{finding.Descriptor.Label}")}::{Data($"{Words.Sentence(finding.Message)} {finding.Descriptor.Reason} {finding.Descriptor.Remedy}")}\n");
        }

        return text.ToString();
    }

    // Cleaned first: a line end or a command to a terminal in a recipe must not reach the log of a build server.
    private static string Data(string text) => PlainText.Spaced(text).Replace("%", "%25", StringComparison.Ordinal);

    private static string Property(string text) => Data(text).Replace(":", "%3A", StringComparison.Ordinal).Replace(",", "%2C", StringComparison.Ordinal);
}
