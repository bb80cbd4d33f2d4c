using System.Text.RegularExpressions;

namespace Recipe.Architecture.Tests;

/// <summary>Links of Markdown pages: where they lead, and what they may be named in the page they lead to.</summary>
internal static partial class MarkdownLinks
{
    /// <summary>Targets of the links and pictures of a page, in order; what stands in code is no link.</summary>
    public static IEnumerable<string> Targets(string page) =>
        Link().Matches(InlineCode().Replace(Prose(page), "")).Select(link => link.Groups[1].Value);

    /// <summary>What its headings are reached by: in small letters, without marks, with a hyphen for each blank, and a number where two are alike.</summary>
    public static IReadOnlySet<string> Anchors(string page)
    {
        var anchors = new HashSet<string>(StringComparer.Ordinal);
        foreach (Match heading in Heading().Matches(Prose(page)))
        {
            var plain = Mark().Replace(heading.Groups[1].Value.Trim().ToLowerInvariant(), "").Replace(' ', '-');
            var anchor = plain;
            for (var n = 1; !anchors.Add(anchor); n++)
            {
                anchor = $"{plain}-{n}";
            }
        }

        return anchors;
    }

    /// <summary>What is wrong with the links of a page, each as a sentence.</summary>
    /// <param name="path">The page, by its path from the root.</param>
    /// <param name="page">Its text.</param>
    /// <param name="exists">Whether there is a file or folder, by its path from the root.</param>
    /// <param name="read">The text of a file.</param>
    public static IEnumerable<string> Dead(string path, string page, Func<string, bool> exists, Func<string, string> read)
    {
        foreach (var target in Targets(page).Where(target => !target.Contains("://", StringComparison.Ordinal) && !target.StartsWith("mailto:", StringComparison.Ordinal)))
        {
            var (file, anchor) = target.IndexOf('#') is var at and >= 0 ? (target[..at], target[(at + 1)..]) : (target, "");
            var full = file.Length == 0 ? path : FromRoot(path, file);
            if (!exists(full))
            {
                yield return $"{path}: {target} leads nowhere";
            }
            else if (anchor.Length > 0 && !Anchors(full == path ? page : read(full)).Contains(anchor))
            {
                yield return $"{path}: {full} has no heading for #{anchor}";
            }
        }
    }

    private static string FromRoot(string page, string target)
    {
        var parts = new List<string>(page.Split('/')[..^1]);
        foreach (var part in target.TrimEnd('/').Split('/'))
        {
            if (part == ".." && parts.Count > 0)
            {
                parts.RemoveAt(parts.Count - 1);
            }
            else if (part != ".")
            {
                parts.Add(part);
            }
        }

        return string.Join('/', parts);
    }

    /// <summary>The page without its fenced and indented blocks.</summary>
    private static string Prose(string page) => Indented().Replace(Fenced().Replace(page.ReplaceLineEndings("\n"), ""), "");

    [GeneratedRegex(@"^```.*?^```[^\n]*$", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Fenced();

    [GeneratedRegex(@"^    .*$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Indented();

    [GeneratedRegex("`[^`\n]*`", RegexOptions.CultureInvariant)]
    private static partial Regex InlineCode();

    [GeneratedRegex(@"\]\(([^)\s]+)\)", RegexOptions.CultureInvariant)]
    private static partial Regex Link();

    [GeneratedRegex(@"^#{1,6} (.+)$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\p{L}\p{N}\p{M} _-]", RegexOptions.CultureInvariant)]
    private static partial Regex Mark();
}
