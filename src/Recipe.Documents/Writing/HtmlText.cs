using System.Buffers;
using System.Globalization;
using System.Text;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing;

/// <summary>Text inside HTML that is XML as well.</summary>
internal static class HtmlText
{
    private static readonly SearchValues<char> Special = SearchValues.Create("&<>\"'\u00A0");

    /// <summary>A text as element content or as an attribute value in double quotes.</summary>
    public static string Escape(string text)
    {
        var clean = PlainText.Clean(text);
        if (!clean.AsSpan().ContainsAny(Special))
        {
            return clean;
        }

        var escaped = new StringBuilder(clean.Length + 16);
        foreach (var c in clean)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                '\u00A0' => escaped.Append("&#160;"),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }

    /// <summary>A phrase with its styles.</summary>
    public static string Of(Phrase phrase) => phrase.Runs.IsDefaultOrEmpty ? "" : string.Concat(phrase.Runs.Select(run => run.Style switch
    {
        RunStyle.Strong => $"<strong>{Escape(run.Text)}</strong>",
        RunStyle.Code => $"<code>{Escape(run.Text)}</code>",
        _ => Escape(run.Text),
    }));

    /// <summary>A number that matters: its digits large, its unit less so; no unit is parted from its number.</summary>
    public static string Big(string value) => string.Join(' ', value.Split(' ').Select(pair => string.Join("&#160;", pair.Split('\u00A0').Select(
        word => word.Length > 0 && (char.IsAsciiDigit(word[0]) || word[0] == '-') ? Escape(word) : $"<span class=\"unit\">{Escape(word)}</span>"))));

    /// <summary>A text as a string of a style sheet, quotes included: everything but letters, digits and blanks by its number.</summary>
    public static string CssString(string text)
    {
        var css = new StringBuilder("\"");
        foreach (var rune in PlainText.Spaced(text).EnumerateRunes())
        {
            if (rune.IsAscii && (char.IsAsciiLetterOrDigit((char)rune.Value) || rune.Value == ' '))
            {
                css.Append((char)rune.Value);
            }
            else
            {
                css.Append('\\').Append(rune.Value.ToString("x6", CultureInfo.InvariantCulture)).Append(' ');
            }
        }

        return css.Append('"').ToString();
    }
}
