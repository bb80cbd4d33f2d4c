using System.Text;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler.Records;

/// <summary>Puts lines into the <c>shop</c> block of a text: a line that begins with the same words is replaced, another is added at its end. Everything else stays as it is.</summary>
public static class ShopLines
{
    /// <summary>The text with the lines in it, laid out.</summary>
    /// <param name="name">Name of the text, for its layout.</param>
    /// <param name="text">The text; one without a shop gets one.</param>
    /// <param name="shop">Name of the shop that is made when there is none.</param>
    /// <param name="lines">The words that each line begins with, and the whole line.</param>
    public static string Put(string name, string text, string shop, IReadOnlyList<(string Key, string Line)> lines)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(lines);
        var tree = SyntaxTree.Parse(new SourceText(name, text));
        var block = tree.Root.Statements.OfType<EntrySyntax>().FirstOrDefault(entry => entry.Head.Text == "shop")?.Block;
        var edited = new StringBuilder(text);
        if (block is not { CloseBrace: { } end })
        {
            edited.Append(text.Length == 0 || text[^1] == '\n' ? "" : "\n").Append(text.Trim().Length == 0 ? "" : "\n").Append("shop ").Append(shop).Append(" {\n");
            foreach (var (_, line) in lines)
            {
                edited.Append("  ").Append(line).Append('\n');
            }

            return TextLayout.Format(name, edited.Append("}\n").ToString());
        }

        // From the end, so that earlier places stay where they are.
        var written = block.Entries.ToList();
        var fresh = lines.Where(line => !written.Any(entry => StartsWith(entry, line.Key))).ToList();
        edited.Insert(end.Start, string.Concat(fresh.Select(line => $"\n  {line.Line}")) + (fresh.Count > 0 ? "\n" : ""));
        foreach (var entry in written.OrderByDescending(entry => entry.Span.Start))
        {
            if (lines.FirstOrDefault(line => StartsWith(entry, line.Key)) is { Line: { } line })
            {
                edited.Remove(entry.LineSpan.Start, entry.LineSpan.Length).Insert(entry.LineSpan.Start, line);
            }
        }

        return TextLayout.Format(name, edited.ToString());
    }

    private static bool StartsWith(EntrySyntax entry, string key)
    {
        var words = key.Split(' ');
        return entry.Head.Text == words[0]
            && entry.Values.Length >= words.Length - 1
            && words.Skip(1).Select((word, i) => entry.Values[i] is WordSyntax value && value.Text == word).All(same => same);
    }
}
