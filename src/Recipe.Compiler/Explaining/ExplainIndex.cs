using System.Globalization;
using System.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>The short list of what can be explained: groups with their numbers, and what to type to see a group.</summary>
internal static class ExplainIndex
{
    /// <summary>The index, its lines ended by LF.</summary>
    public static string Write(IEnumerable<ExplainedPage> all)
    {
        var pages = all.ToList();
        var text = new StringBuilder("`recipe explain NAME` explains a finding, a material, a word of the language or, with `--in FILE`, a part of that file.\n");
        text.Append("A group below, or any word (`carbon`, `sticky`), lists what there is of it; `recipe explain all` lists every name.\n");

        text.Append("\nFindings\n");
        foreach (var (prefix, title) in FindingFamilies.All)
        {
            Append(text, prefix, title, pages.Count(page => page.Kind.StartsWith(prefix, StringComparison.Ordinal)));
        }

        text.Append("\nMaterials\n");
        foreach (var kind in pages.Where(page => !page.IsFinding && !page.IsHouseRule && page.Kind != ExplainedPage.Part).GroupBy(page => page.Kind).OrderBy(kind => kind.Key, StringComparer.Ordinal))
        {
            Append(text, kind.Key, kind.First().Name + (kind.Count() > 1 ? ", ..." : ""), kind.Count());
        }

        foreach (var (title, those) in new[] { ("Rules of the house", pages.Where(page => page.IsHouseRule)), ("Parts", pages.Where(page => page.Kind == ExplainedPage.Part)) })
        {
            if (those.Any())
            {
                text.Append('\n').Append(title).Append("\n  ").AppendJoin("\n  ", those.Select(page => page.Name)).Append('\n');
            }
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, string name, string what, int count) =>
        text.Append(CultureInfo.InvariantCulture, $"  {name,-15} {count,3}  {what}\n");
}
