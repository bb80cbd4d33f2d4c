using System.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The index of all findings there are, as a page of text: what the program can say, by family.</summary>
public static class ChecksPage
{
    private static readonly (string Prefix, string Title)[] Families =
    [
        ("RC10", "Reading the text"),
        ("RC11", "Units and values"),
        ("RC12", "Names and structure"),
        ("RC2", "Mould and release"),
        ("RC3", "Plies"),
        ("RC4", "Resin and working time"),
        ("RC5", "The bag"),
        ("RC6", "Vacuum"),
        ("RC7", "Cure"),
        ("RC8", "Joining and stock"),
        ("RC9", "Waivers"),
    ];

    /// <summary>Writes the page: Markdown, lines ended by LF, the same text every time.</summary>
    public static string Write()
    {
        var page = new StringBuilder();
        page.Append("""
            # Findings

            Everything that can be found wrong with a recipe. This page is made from the descriptors beside the checks; change those, not this.
            `recipe explain CODE` shows one of them with its reason, its exceptions and two examples.

            * **error**: would ruin the part or the mould or hurt someone in any shop. A finding that rests on an assumed figure is at most a warning.
            * **warning**: usually wrong. `accept CODE because "..." until DATE` in the part or at the top of the file settles it, and is printed with the papers.
            * **advice**: good practice that is missing.

            """);
        foreach (var (prefix, title) in Families)
        {
            WriteFamily(page, title, [.. FindingCatalogue.All.Where(d => d.Code.StartsWith(prefix, StringComparison.Ordinal))]);
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    private static void WriteFamily(StringBuilder page, string title, FindingDescriptor[] findings)
    {
        if (findings.Length == 0)
        {
            return;
        }

        page.Append("\n## ").Append(title).Append("\n\n| code | name | severity | what is wrong | what to do | source |\n|---|---|---|---|---|---|\n");
        foreach (var finding in findings)
        {
            var mark = CheckCatalogue.Find(finding.Code) is { CanBeAccepted: false } ? " *" : "";
            page.Append("| ").Append(finding.Code)
                .Append(" | `").Append(finding.Name).Append('`')
                .Append(" | ").Append(Word(finding.Severity)).Append(mark)
                .Append(" | ").Append(Cell(finding.Title))
                .Append(" | ").Append(Cell(finding.Remedy))
                .Append(" | ").Append(Cell(finding.Source))
                .Append(" |\n");
        }

        if (findings.Any(f => CheckCatalogue.Find(f.Code) is { CanBeAccepted: false }))
        {
            page.Append("\n\\* cannot be accepted with a reason.\n");
        }
    }

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "advice",
    };

    private static string Cell(string text) => text.ReplaceLineEndings(" ").Replace("|", "\\|", StringComparison.Ordinal);
}
