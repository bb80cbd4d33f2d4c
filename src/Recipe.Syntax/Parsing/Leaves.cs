using System.Globalization;
using System.Text;
using Recipe.Text;

namespace Recipe.Syntax.Parsing;

/// <summary>Makes the nodes of single tokens.</summary>
internal static class Leaves
{
    public static WordSyntax Word(string text, TextSpan span) =>
        new(span.Length == 1 && text[span.Start] == '\u00d7' ? "x" : text.Substring(span.Start, span.Length), span);

    /// <summary>A date; a day that no calendar has becomes 0001-01-01, and has its finding already.</summary>
    public static DateSyntax Date(string text, TextSpan span) => new(
        DateOnly.TryParseExact(text.AsSpan(span.Start, span.Length), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : DateOnly.MinValue,
        span);

    /// <summary>A text with its quotes taken off and its escapes resolved; an unknown escape stands for itself.</summary>
    public static TextSyntax Text(string text, TextSpan span)
    {
        var inner = text.AsSpan(span.Start + 1, span.Length - 1);
        var special = inner.IndexOfAny('"', '\\');
        if (special < 0 || (inner[special] == '"' && special == inner.Length - 1))
        {
            return new TextSyntax(inner[..(special < 0 ? inner.Length : special)].ToString(), span);
        }

        var value = new StringBuilder(inner.Length);
        for (var i = 0; i < inner.Length && inner[i] != '"'; i++)
        {
            if (inner[i] == '\\' && i + 1 < inner.Length && inner[i + 1] is '"' or '\\')
            {
                i++;
            }

            value.Append(inner[i]);
        }

        return new TextSyntax(value.ToString(), span);
    }
}
