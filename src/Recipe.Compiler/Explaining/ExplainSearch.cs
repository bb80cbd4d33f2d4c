using System.Text;
using Recipe.Checks;

namespace Recipe.Compiler;

/// <summary>Looks a word up that is the name of no finding, material or part.</summary>
internal static class ExplainSearch
{
    /// <summary>What is found, its lines ended by LF, or null.</summary>
    /// <param name="word">The word.</param>
    /// <param name="pages">All that can be explained.</param>
    public static string? Find(string word, IReadOnlyList<ExplainedPage> pages)
    {
        if (string.IsNullOrWhiteSpace(word))
        {
            return null;
        }

        // "oven" is no part of "woven"; only what nothing begins with is looked for inside words.
        return Find(word, pages, where => ExplainWords.Begin(where, word)) ?? Find(word, pages, where => where.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    private static string? Find(string word, IReadOnlyList<ExplainedPage> pages, Func<string, bool> has)
    {
        var text = new StringBuilder();
        ExplainWords.Add(text, word);
        var written = text.Length;
        if (Group(word, pages) is { Count: > 0 } group)
        {
            Add(text, $"Of {word} there are", group.Select(page => page.LineWithTitle));
        }
        else
        {
            var near = pages.Where(page => has(page.Name) || has(page.Title)).ToList();
            Add(text, $"Materials and parts with \"{word}\" in name or title", near.Where(page => !page.IsFinding && !page.IsHouseRule).Select(page => page.LineWithTitle));
            Add(text, $"Findings with \"{word}\" in name or title", near.Where(page => page.IsFinding || page.IsHouseRule).Select(page => page.LineWithTitle));
        }

        foreach (var (seen, findings) in Symptoms.All.Where(symptom => has(symptom.Seen)))
        {
            Add(text, $"What may have caused \"{seen}\"", findings.Select(name => pages.First(page => page.Name == name).LineWithTitle));
        }

        return text.Length == 0 ? null : text.Append(text.Length == written ? "" : "\n`recipe explain NAME` shows one of them.\n").ToString();
    }

    /// <summary>A family of findings, or a kind of material.</summary>
    private static List<ExplainedPage> Group(string word, IReadOnlyList<ExplainedPage> pages) =>
        [.. pages.Where(page => string.Equals(page.Kind, word, StringComparison.OrdinalIgnoreCase) || (page.IsFinding && word.Length == 4 && page.Kind.StartsWith(word, StringComparison.OrdinalIgnoreCase)))];

    private static void Add(StringBuilder text, string head, IEnumerable<string> lines)
    {
        var found = lines.ToList();
        if (found.Count > 0)
        {
            text.Append(text.Length == 0 ? "" : "\n").Append(head).Append(":\n  ").AppendJoin("\n  ", found).Append('\n');
        }
    }
}
