using Recipe.Syntax;

namespace Recipe.Semantics;

/// <summary>Finds out what a file means.</summary>
public static class Binder
{
    /// <summary>
    /// Binds a file: a name is looked up in it, then in the files it uses, then in the book. Never throws for anything that stands
    /// in a text. Asking again with the same scope gives the same object.
    /// </summary>
    /// <param name="file">The file.</param>
    /// <param name="book">The shipped materials.</param>
    /// <param name="uses">The files it can use.</param>
    public static BoundFile Bind(SyntaxTree file, Book book, UseScope uses)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(uses);
        return uses.ScopeOf(file, book).Bound;
    }
}
