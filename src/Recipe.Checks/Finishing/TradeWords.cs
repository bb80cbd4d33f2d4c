namespace Recipe.Checks;

/// <summary>
/// What a free line of a recipe says, judged by plain words of the trade. Generous on purpose: a word that may mean the sound thing
/// is taken to mean it.
/// </summary>
internal static class TradeWords
{
    private static readonly string[] Endings = ["", "s", "es", "e", "ed", "d", "ing", "er", "ers", "y", "ion", "ive"];

    /// <summary>
    /// Whether a text says one of these: a stem of a word ("sand" is also sanded and sanding, and not sandwich), or a phrase when it
    /// holds a blank or a hyphen.
    /// </summary>
    public static bool Says(string? text, params ReadOnlySpan<string> stems)
    {
        if (string.IsNullOrEmpty(text))
        {
            return false;
        }

        foreach (var stem in stems)
        {
            if (stem.AsSpan().IndexOfAny(' ', '-') >= 0 ? text.Contains(stem, StringComparison.OrdinalIgnoreCase) : HasWord(text, stem))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a text speaks of what is not to be done.</summary>
    public static bool Forbids(string? text) => Says(text, "no", "not", "never", "without", "instead", "avoid", "nor");

    private static bool HasWord(string text, string stem)
    {
        var at = -1;
        while ((at = text.IndexOf(stem, at + 1, StringComparison.OrdinalIgnoreCase)) >= 0)
        {
            var end = at + stem.Length;
            while (end < text.Length && char.IsLetter(text[end]))
            {
                end++;
            }

            var starts = at == 0 || !char.IsLetterOrDigit(text[at - 1]);
            if (starts && Endings.Contains(text[(at + stem.Length)..end].ToLowerInvariant()))
            {
                return true;
            }
        }

        return false;
    }
}
