using System.Text;

namespace Recipe.Documents.Quantities;

/// <summary>Text from outside made harmless for every format alike.</summary>
internal static class PlainText
{
    /// <summary>
    /// The text with line ends and tabs as blanks, and what no format can carry (control characters, halves of surrogate pairs,
    /// non-characters) or what reorders the text round it (bidirectional overrides, Unicode UAX 9) as U+FFFD.
    /// </summary>
    public static string Clean(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            // EnumerateRunes already gives U+FFFD for a lone half of a surrogate pair.
            clean.Append(rune.Value switch
            {
                '\t' or '\n' or '\r' or 0x85 or 0x2028 or 0x2029 => " ",
                < 0x20 or (>= 0x7F and < 0xA0) => "\uFFFD",
                (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) => "\uFFFD",
                0xFFFE or 0xFFFF => "\uFFFD",
                _ => rune.ToString(),
            });
        }

        return clean.ToString();
    }

    /// <summary>Clean, and with ordinary spaces for no-break ones: for formats that are not set in lines.</summary>
    public static string Spaced(string text) => Clean(text).Replace('\u00A0', ' ');
}
