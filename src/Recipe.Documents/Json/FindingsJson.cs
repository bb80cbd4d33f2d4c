using System.Text.Json;
using Recipe.Documents.Json;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>Findings for programs.</summary>
public static class FindingsJson
{
    /// <summary>The name and version of the schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/findings/1";

    /// <summary>
    /// All findings, accepted ones included, in the order given, and the checks that could not speak. The counts are of findings
    /// that nobody accepted. Lines and columns count from 1, columns in UTF-16 code units.
    /// </summary>
    public static string Write(IReadOnlyCollection<Finding> findings, IReadOnlyCollection<NotChecked> notChecked)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(notChecked);
        var record = new FindingsRecord(
            Schema,
            Open(findings, Severity.Error),
            Open(findings, Severity.Warning),
            Open(findings, Severity.Advice),
            findings.Count(finding => finding.AcceptedBecause is not null),
            [.. findings.Select(FindingRecord.Of)],
            [.. notChecked.Select(NotCheckedRecord.Of)]);
        return JsonSerializer.Serialize(record, JsonOutput.Shapes.FindingsRecord) + "\n";
    }

    private static int Open(IEnumerable<Finding> findings, Severity severity) =>
        findings.Count(finding => finding.Severity == severity && finding.AcceptedBecause is null);
}
