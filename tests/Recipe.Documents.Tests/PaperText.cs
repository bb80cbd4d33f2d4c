namespace Recipe.Documents.Tests;

/// <summary>What tests ask of the text of a paper.</summary>
internal static class PaperText
{
    /// <summary>The texts follow one another on the page.</summary>
    public static void InOrder(string page, params ReadOnlySpan<string> texts)
    {
        var at = 0;
        foreach (var text in texts)
        {
            var next = page.IndexOf(text, at, StringComparison.Ordinal);
            Assert.True(next >= 0, $"“{text}” does not follow.");
            at = next + text.Length;
        }
    }
}
