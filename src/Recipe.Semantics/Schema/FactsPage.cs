using System.Text;
using Recipe.Model;

namespace Recipe.Semantics.Schema;

/// <summary>Writes the page that lists every fact a rule of the house may ask for, from the table of facts.</summary>
public static class FactsPage
{
    /// <summary>The page as Markdown, lines ended by LF.</summary>
    public static string Write()
    {
        var page = new StringBuilder();
        page.Append("# Facts that a rule may ask for\n\n");
        page.Append("Written from `FactTable` in `Recipe.Model`; a test compares the two. How rules are written: [house-rules.md](house-rules.md).\n");
        page.Append("A fact that is not known of a part is unknown, never nought: the rule is then listed under \"not checked\".\n");
        Write(page, FactTable.Part, "asked by a line of the rule itself");
        foreach (var group in FactTable.Elements)
        {
            Write(page, group, $"asked in the block of `any {group.Word}`, `every {group.Word}`, `no {group.Word}`, `count {group.Word}` and so on");
        }

        return page.ToString();
    }

    private static void Write(StringBuilder page, FactGroup group, string how)
    {
        page.Append("\n## `").Append(group.Word).Append("`: ").Append(group.Doc).Append("\n\nThey are ").Append(how).Append(".\n\n");
        page.Append("| fact | takes | what it is |\n|---|---|---|\n");
        foreach (var fact in group.Facts)
        {
            page.Append("| `").Append(fact.Word).Append("` | ").Append(Takes(fact)).Append(" | ").Append(fact.Doc).Append(" |\n");
        }
    }

    private static string Takes(FactWord fact) => fact.Kind switch
    {
        FactKind.Quantity => fact.IsTemperature ? $"a temperature, `{fact.Unit!.Symbol}`" : $"`{fact.Unit!.Symbol}` and units of the same kind",
        FactKind.Number => "a number",
        FactKind.Money => "money, as in `20 EUR`",
        FactKind.YesNo => "`is yes`, `is no`",
        FactKind.Text => "`is` a text",
        _ => fact.Choices.IsEmpty ? fact.NamesMaterial ? "`is` the names of materials" : "`is` a name" : "`is` " + string.Join(", ", fact.Choices.Select(choice => $"`{choice}`")),
    };
}
