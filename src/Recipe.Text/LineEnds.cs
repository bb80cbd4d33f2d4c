namespace Recipe.Text;

/// <summary>How the lines of a text end.</summary>
public static class LineEnds
{
    /// <summary>The first line end of a text: LF, CRLF or CR; null when it has none.</summary>
    public static string? FirstOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var at = text.AsSpan().IndexOfAny('\r', '\n');
        return at < 0 ? null
            : text[at] == '\n' ? "\n"
            : at + 1 < text.Length && text[at + 1] == '\n' ? "\r\n"
            : "\r";
    }
}
