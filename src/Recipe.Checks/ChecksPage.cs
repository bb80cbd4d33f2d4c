using System.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The index of all findings there are, as a page of text: what the program can say, by family.</summary>
public static class ChecksPage
{
    /// <summary>Writes the page: Markdown, lines ended by LF, the same text every time.</summary>
    public static string Write()
    {
        var page = new StringBuilder();
        page.Append("""
            # Findings

            Everything that can be found wrong with a recipe. This page is made from the descriptors beside the checks; change those, not this.
            `recipe explain CODE` shows one of them with its reason, its exceptions, and the lines that earn it and mend it.

            * **error**: would ruin the part or the mould or hurt someone in any shop. A finding that rests on an assumed figure is at most a warning.
            * **warning**: usually wrong.
            * **advice**: good practice that is missing.

            `accept CODE because "..." until DATE` in the part or at the top of the file settles a finding of the checks (RC2001 and up), and is
            printed with the papers. `findings { NAME advice }` in `settings.recipe` makes a finding milder or worse for every recipe of that
            folder and below; what can hurt somebody (marked S) stays a warning at least. What is marked \* cannot be accepted, nor can what is found in the text and its meaning.

            """);
        WriteStages(page);
        WriteSymptoms(page);
        foreach (var (prefix, title) in FindingFamilies.All)
        {
            WriteFamily(page, title, [.. FindingCatalogue.All.Where(d => d.Code.StartsWith(prefix, StringComparison.Ordinal))]);
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    private static void WriteStages(StringBuilder page)
    {
        page.Append("\n## By stage\n\n");
        foreach (var (prefix, title) in FindingFamilies.All.Where(family => FindingCatalogue.All.Any(d => d.Code.StartsWith(family.Prefix, StringComparison.Ordinal))))
        {
            page.Append("- [").Append(title).Append("](#").Append(AnchorOf(title)).Append("): ").Append(prefix).Append("xx\n");
        }
    }

    private static void WriteSymptoms(StringBuilder page)
    {
        page.Append("\n## By what you see\n\nWhat went wrong, and which findings speak of what may have caused it, the likeliest first. It leads to a check and is no diagnosis. `recipe explain NAME` shows one.\n\n| what you see | look at |\n|---|---|\n");
        foreach (var (seen, names) in Symptoms.All)
        {
            var findings = names.Select(name => FindingCatalogue.All.Single(d => d.Name == name)).Select(d => $"[`{d.Name}`](#{AnchorOf(FamilyOf(d.Code))}) {d.Code}");
            page.Append("| ").Append(Cell(seen)).Append(" | ").AppendJoin(", ", findings).Append(" |\n");
        }
    }

    private static string FamilyOf(string code) => FindingFamilies.All.First(family => code.StartsWith(family.Prefix, StringComparison.Ordinal)).Title;

    /// <summary>What a heading is reached by.</summary>
    private static string AnchorOf(string title) =>
        string.Concat(title.ToLowerInvariant().Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-')).Replace(' ', '-');

    private static void WriteFamily(StringBuilder page, string title, FindingDescriptor[] findings)
    {
        if (findings.Length == 0)
        {
            return;
        }

        page.Append("\n## ").Append(title).Append("\n\n| code | name | severity | what is wrong | what to do | source |\n|---|---|---|---|---|---|\n");
        foreach (var finding in findings)
        {
            var mark = CheckCatalogue.Find(finding.Code) switch
            {
                { CanBeAccepted: false } => " *",
                { IsSafety: true } => " S",
                _ => "",
            };
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
