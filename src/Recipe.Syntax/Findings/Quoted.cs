namespace Recipe.Syntax.Findings;

/// <summary>Shows a piece of a file in a message.</summary>
internal static class Quoted
{
    private const int Longest = 40;

    /// <summary>The text in quotes, cut when it is long; what cannot be seen is given by its number.</summary>
    public static string Text(string text)
    {
        var shown = text.Length <= Longest ? text : text[..Longest] + "\u2026";
        return shown.Any(c => char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.Format)
            ? "a character that cannot be seen (" + string.Join(' ', text.EnumerateRunes().Take(4).Select(rune => $"U+{rune.Value:X4}")) + ")"
            : $"\u2018{shown}\u2019";
    }
}
