using System.Text;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Writing;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>
/// Findings as results of tests, in the XML that build servers read (the schema of the JUnit project): each file is a suite, each finding a
/// case; an error fails, anything milder passes with its words in the output. A file without a finding is one case that passes.
/// </summary>
public static class JUnitWriter
{
    /// <summary>Writes them.</summary>
    /// <param name="files">The files looked at, each with its findings.</param>
    public static string Write(IReadOnlyList<(string Name, IReadOnlyCollection<Finding> Findings)> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n");
        var all = files.SelectMany(file => file.Findings).ToList();
        xml.Append($"<testsuites name=\"recipe check\" tests=\"{Numbers.Whole(files.Sum(file => Math.Max(1, file.Findings.Count)))}\" failures=\"{Numbers.Whole(Errors(all))}\" errors=\"0\">\n");
        foreach (var (name, findings) in files)
        {
            xml.Append($"  <testsuite name=\"{HtmlText.Escape(name)}\" tests=\"{Numbers.Whole(Math.Max(1, findings.Count))}\" failures=\"{Numbers.Whole(Errors(findings))}\" errors=\"0\" skipped=\"0\">\n");
            if (findings.Count == 0)
            {
                xml.Append($"    <testcase classname=\"{HtmlText.Escape(name)}\" name=\"nothing wrong found\" />\n");
            }

            foreach (var finding in findings)
            {
                var text = HtmlText.Escape($"{finding.Where}: {Words.Sentence(finding.Message)} {finding.Descriptor.Reason} {finding.Descriptor.Remedy}");
                xml.Append($"    <testcase classname=\"{HtmlText.Escape(name)}\" name=\"{HtmlText.Escape($"{finding.Descriptor.Label}, line {Numbers.Whole(finding.Where.Start.Line + 1)}")}\">\n")
                    .Append(finding.Severity == Severity.Error
                        ? $"      <failure type=\"{finding.Descriptor.Code}\" message=\"{HtmlText.Escape(PlainText.Spaced(finding.Message))}\">{text}</failure>\n"
                        : $"      <system-out>{text}</system-out>\n")
                    .Append("    </testcase>\n");
            }

            xml.Append("  </testsuite>\n");
        }

        return xml.Append("</testsuites>\n").ToString();
    }

    private static int Errors(IEnumerable<Finding> findings) => findings.Count(finding => finding.Severity == Severity.Error);
}
