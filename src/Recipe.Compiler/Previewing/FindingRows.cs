using System.Text.Json;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler.Previewing;

/// <summary>The findings of a file as rows of the page: what, where with its line, why, and what to do.</summary>
internal static class FindingRows
{
    // Nobody reads more on a page that redraws itself; `recipe check` has them all.
    private const int Most = 200;
    private const int LongestLine = 400;

    /// <summary>Writes <c>findings</c>, and <c>unshown</c> where there are more than a page takes.</summary>
    public static void Write(Utf8JsonWriter json, CompiledFile? file)
    {
        json.WriteStartArray("findings");
        foreach (var finding in (file?.Findings ?? []).OrderByDescending(finding => finding.Severity).Take(Most))
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Descriptor.Code);
            json.WriteString("name", finding.Descriptor.Name);
            json.WriteString("severity", finding.Severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "advice" });
            json.WriteString("message", finding.Message);
            Place(json, finding.Where, file!);
            json.WriteString("why", finding.Descriptor.Reason);
            json.WriteStartArray("fixes");
            foreach (var title in finding.Fixes.IsEmpty ? [finding.Descriptor.Remedy] : finding.Fixes.Select(fix => fix.Title))
            {
                json.WriteStringValue(title);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("unshown", Math.Max(0, (file?.Findings.Length ?? 0) - Most));
    }

    private static void Place(Utf8JsonWriter json, SourceSpan where, CompiledFile file)
    {
        var start = where.Start;
        json.WriteNumber("line", start.Line + 1);
        if (!ReferenceEquals(where.Source, file.Source))
        {
            json.WriteString("in", PathNames.FileName(where.Source.Name));
        }

        var text = where.Source.Slice(where.Source.LineSpan(start.Line)).Trim();
        json.WriteString("text", text.Length > LongestLine ? text[..LongestLine] : text);
    }
}
