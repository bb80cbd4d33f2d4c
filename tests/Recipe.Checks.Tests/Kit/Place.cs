using Recipe.Text;

namespace Recipe.Checks.Tests;

/// <summary>Finds places in a text by the words that stand there.</summary>
internal static class Place
{
    /// <summary>The first place where these words stand.</summary>
    public static SourceSpan Of(SourceText source, string words)
    {
        var at = source.Text.IndexOf(words, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{words}' does not stand in the text");
        return new SourceSpan(source, new TextSpan(at, words.Length));
    }

    /// <summary>The text after some edits.</summary>
    public static string After(SourceText source, params Text.Findings.TextEdit?[] edits) =>
        Text.Findings.TextEdit.Apply(source, edits.Select(e => Assert.IsType<Text.Findings.TextEdit>(e)));
}
