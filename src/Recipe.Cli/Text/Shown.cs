namespace Recipe.Cli.Text;

/// <summary>Text from files and command lines as a terminal may have it.</summary>
internal static class Shown
{
    /// <summary>
    /// The text with U+FFFD for each control character, which a terminal would obey, and for what reorders the text round it (bidirectional overrides,
    /// Unicode UAX 9); line ends and tabs stay.
    /// </summary>
    public static string Text(string text)
    {
        if (!text.Any(IsCommand))
        {
            return text;
        }

        return string.Create(text.Length, text, static (shown, text) =>
        {
            for (var i = 0; i < text.Length; i++)
            {
                shown[i] = IsCommand(text[i]) ? '\uFFFD' : text[i];
            }
        });
    }

    /// <summary>The same on one line.</summary>
    public static string Line(string text) => Text(text).Replace('\r', ' ').Replace('\n', ' ');

    /// <summary>Whether a terminal would obey it rather than show it; line ends and tabs are not counted.</summary>
    public static bool IsCommand(char c) => (char.IsControl(c) && c is not ('\n' or '\r' or '\t')) || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
