namespace Recipe.LanguageServer.Features;

/// <summary>The shipped book is inside the program: its texts have names and no place of their own that an editor could open (<see cref="Documents.BookCopies"/>).</summary>
internal static class BookTexts
{
    public static bool IsOne(string name) => name.StartsWith("book/", StringComparison.Ordinal);
}
