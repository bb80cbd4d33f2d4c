using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>A part that stands beside others on a comparison.</summary>
/// <param name="Name">What it is called there.</param>
/// <param name="Input">What its papers are made from.</param>
public sealed record PartOnReport(string Name, PaperInput Input)
{
    /// <summary>How many findings of a severity are open: nobody accepted them.</summary>
    internal int Open(Severity severity) => Input.Findings.Count(finding => finding.Severity == severity && finding.AcceptedBecause is null);
}
