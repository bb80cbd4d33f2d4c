using System.Text;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing;

/// <summary>
/// Text inside a Markdown line. What CommonMark or its usual table, task and link extensions would read as markup gets a backslash;
/// everything else stays as it is, so that papers read well and compare well as text.
/// </summary>
internal static class MarkdownText
{
    /// <summary>A space to write in.</summary>
    public static string Of(Blank blank) => blank.Unit.Length == 0 ? "\\_\\_\\_\\_\\_\\_" : "\\_\\_\\_\\_\\_\\_ " + Escape(blank.Unit);

    /// <summary>A phrase with its styles.</summary>
    public static string Of(Phrase phrase) => phrase.Runs.IsDefaultOrEmpty ? "" : string.Concat(phrase.Runs.Select(Of));

    /// <summary>A text that stands out.</summary>
    public static string Strong(string text) => text.Trim().Length == 0 ? Escape(text) : "**" + Escape(text.Trim()) + "**";

    /// <summary>A text of no style.</summary>
    public static string Escape(string text)
    {
        var clean = PlainText.Spaced(text);
        var escaped = new StringBuilder(clean.Length + 8);
        for (var i = 0; i < clean.Length; i++)
        {
            if (NeedsBackslash(clean, i))
            {
                escaped.Append('\\');
            }

            escaped.Append(clean[i]);
        }

        return escaped.ToString();
    }

    /// <summary>
    /// A line that stands by itself: what would make it a heading, a list, a rule or a quotation gets a backslash too.
    /// </summary>
    public static string AtLineStart(string line)
    {
        var digits = line.AsSpan().IndexOfAnyExceptInRange('0', '9');
        return line.Length > 0 && line[0] is '#' or '+' or '-' or '=' or '~' or ':'
            ? "\\" + line
            : digits > 0 && line[digits] is '.' or ')' ? line.Insert(digits, "\\") : line;
    }

    private static string Of(Run run) => run.Style switch
    {
        RunStyle.Strong => Strong(run.Text),
        RunStyle.Code => Code(run.Text),
        _ => Escape(run.Text),
    };

    private static string Code(string text)
    {
        // A table ends a cell at a bar even inside a code span, and there a backslash would show: such a text is no code span.
        var clean = PlainText.Spaced(text);
        return clean.AsSpan().ContainsAny('`', '|') || clean.Trim().Length == 0 ? Escape(clean) : "`" + clean + "`";
    }

    private static bool NeedsBackslash(string text, int at) => text[at] switch
    {
        '\\' or '`' or '*' or '[' or ']' or '<' or '>' or '|' or '~' or '$' or '&' => true,
        '_' => !(IsWordAt(text, at - 1) && IsWordAt(text, at + 1)),
        ':' => text.AsSpan(at).StartsWith("://"),
        '@' => IsWordAt(text, at - 1) && IsWordAt(text, at + 1),
        '.' => at >= 3 && text.AsSpan(at - 3, 3).Equals("www", StringComparison.OrdinalIgnoreCase),
        _ => false,
    };

    private static bool IsWordAt(string text, int at) => at >= 0 && at < text.Length && char.IsLetterOrDigit(text[at]);
}
