using System.Text;
using Recipe.Syntax.Formatting;
using Recipe.Text;

namespace Recipe.Syntax;

/// <summary>
/// Lays a text out in the one way there is. Comments, and all tokens but blanks, line ends and semicolons, stay as they are and in
/// their order; laying out twice changes nothing. A line that cannot be read is indented and otherwise left alone.
/// </summary>
public static class Formatter
{
    /// <summary>The text of a tree, laid out. Where that would make broken text mean something else, it is the text as it was.</summary>
    public static string Format(SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var text = Write(tree);
        if (tree.Findings.IsEmpty)
        {
            return text;
        }

        // In broken text a quote or a brace may be missing, and where lines begin and end then decides what is read.
        var again = SyntaxTree.Parse(new SourceText(tree.Source.Name, text));
        return Sameness.IsSame(tree, again) && Write(again) == text ? text : tree.Source.Text;
    }

    private static string Write(SyntaxTree tree)
    {
        var lines = LayoutBuilder.Build(tree);
        Columns.Set(lines);
        var source = tree.Source.Text;
        var lineEnd = LineEnd(source);
        var text = new StringBuilder(source.Length + (source.Length / 8));
        if (source.StartsWith('\ufeff'))
        {
            text.Append('\ufeff');
        }

        foreach (var line in lines)
        {
            text.Append(line.BlankBefore ? lineEnd : "").Append(' ', line.Depth * 2).Append(line.Text);
            if (line.Comment is not null)
            {
                text.Append(' ', line.CommentColumn - line.Width).Append(line.Comment);
            }

            text.Append(lineEnd);
        }

        return text.ToString();
    }

    /// <summary>The first line end decides for all of them; a lone CR becomes LF.</summary>
    private static string LineEnd(string text) => LineEnds.FirstOf(text) == "\r\n" ? "\r\n" : "\n";
}
