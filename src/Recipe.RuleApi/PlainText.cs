using System.Globalization;

namespace Recipe.RuleApi;

/// <summary>
/// Texts of a rule go to terminals, editors and papers: they may neither break the line nor change the colour or the direction of
/// writing, nor be longer than a sentence or two.
/// </summary>
internal static class PlainText
{
    /// <summary>The text on one line, cut when it is too long.</summary>
    public static string Of(string text, int longest)
    {
        var cut = text.Length > longest ? text[..(longest - 1)] + "…" : text;
        return string.Create(cut.Length, cut, static (target, source) =>
        {
            for (var i = 0; i < source.Length; i++)
            {
                target[i] = IsPlain(source, i) ? source[i] : ' ';
            }
        }).Trim();
    }

    private static bool IsPlain(string text, int at) => char.GetUnicodeCategory(text[at]) switch
    {
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => false,
        UnicodeCategory.Surrogate => char.IsHighSurrogate(text[at])
            ? at + 1 < text.Length && char.IsLowSurrogate(text[at + 1])
            : at > 0 && char.IsHighSurrogate(text[at - 1]),
        _ => true,
    };
}
