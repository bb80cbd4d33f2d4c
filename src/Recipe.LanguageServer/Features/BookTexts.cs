namespace Recipe.LanguageServer.Features;

/// <summary>The shipped book is inside the program: its texts have names and no place that an editor could open.</summary>
internal static class BookTexts
{
    public static bool IsOne(string name) => name.StartsWith("book/", StringComparison.Ordinal);
}
