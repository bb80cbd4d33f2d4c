using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Binding;
using Recipe.Syntax;
using Recipe.Text.Findings;

namespace Recipe.Semantics;

/// <summary>
/// The materials that are always in scope. Its files see each other without <c>use</c>; an entry is bound when somebody asks for it.
/// Safe to share between threads.
/// </summary>
public sealed class Book
{
    private readonly Lazy<ImmutableArray<Finding>> _findings;

    private Book(ImmutableArray<SyntaxTree> files)
    {
        Files = files;
        Scope = new BookScope(files);
        Materials = new ScopeView<MaterialDeclaration, Material>(Scope.FindMaterial, () => Scope.NamesOf(NameKind.Material), d => d.Material);
        _findings = new Lazy<ImmutableArray<Finding>>(() => FileBinder.FindingsOf(Scope));
    }

    /// <summary>A book with nothing in it.</summary>
    public static Book Empty { get; } = Bind([]);

    /// <summary>The files it was made from, in the order given.</summary>
    public ImmutableArray<SyntaxTree> Files { get; }

    /// <summary>All materials by name; looking one up binds that one only.</summary>
    public IReadOnlyDictionary<string, Material> Materials { get; }

    /// <summary>What is wrong with the meaning of the book itself; asking binds all of it.</summary>
    public ImmutableArray<Finding> Findings => _findings.Value;

    internal BookScope Scope { get; }

    /// <summary>Indexes the files of a book. Nothing is bound yet, so this is cheap.</summary>
    public static Book Bind(IEnumerable<SyntaxTree> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return new Book([.. files]);
    }
}
