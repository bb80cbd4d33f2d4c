using System.Globalization;
using System.Text;

namespace Recipe.Syntax.Findings;

/// <summary>Shows a piece of a file in a message.</summary>
internal static class Quoted
{
    private const int Longest = 40;

    /// <summary>The text in quotes, cut when it is long; what cannot be seen in it is given by its number.</summary>
    public static string Text(string text)
    {
        var shown = text.Length <= Longest ? text : text[..Longest] + "\u2026";
        return shown.EnumerateRunes().Where(rune => !CanBeSeen(rune)).Take(4).ToList() is { Count: > 0 } unseen
            ? "a character that cannot be seen (" + string.Join(' ', unseen.Select(rune => $"U+{rune.Value:X4}")) + ")"
            : $"\u2018{shown}\u2019";
    }

    // Beyond U+FFFF few fonts of a terminal have anything to show.
    private static bool CanBeSeen(Rune rune) => rune.IsBmp && !Rune.IsControl(rune) && Rune.GetUnicodeCategory(rune) != UnicodeCategory.Format;
}
