namespace Recipe.Text;

/// <summary>Writes texts as the language wants them.</summary>
public static class QuotedText
{
    /// <summary>The text in double quotes, with a backslash before each quote and each backslash.</summary>
    /// <param name="text">The text, of one line.</param>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
    }
}
