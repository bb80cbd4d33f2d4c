using System.Globalization;
using System.Text;
using Recipe.Documents.Fonts;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Text as the font of a PDF can show it.</summary>
internal static class PdfText
{
    /// <summary>
    /// Clean text in which a character that the font does not have is U+FFFD, so that a reader sees that something is missing. What
    /// shows nothing by itself (joiners, selectors, soft hyphens) is dropped. No-break spaces stay.
    /// </summary>
    public static string Clean(string text, bool strong)
    {
        var clean = PlainText.Clean(text);
        if (!clean.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return clean;
        }

        var font = FontFile.Of(strong);
        var shown = new StringBuilder(clean.Length);
        foreach (var rune in clean.EnumerateRunes())
        {
            if (!IsSilent(rune))
            {
                shown.Append(font.Has(rune) ? rune.ToString() : "\uFFFD");
            }
        }

        return shown.ToString();
    }

    /// <summary>The same for a text that is set in one line: ordinary spaces only.</summary>
    public static string OneLine(string text, bool strong) => Clean(text, strong).Replace('\u00A0', ' ');

    private static bool IsSilent(Rune rune) =>
        Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format || rune.Value is (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0100 and <= 0xE01EF);
}
