using Recipe.Syntax;
using Recipe.TestKit;

namespace Recipe.Semantics.Tests;

/// <summary>The texts that ship with the program, read from the repository: the book, the templates, the samples and the sound corpus.</summary>
internal static class Shipped
{
    public const string BookFolder = "src/Recipe.Compiler/Book";

    /// <summary>Folders of recipes in which there is nothing to find.</summary>
    public static readonly string[] SoundFolders = ["samples", "tests/corpus/sound", "src/Recipe.Compiler/Templates"];

    private static readonly Lazy<Book> LazyBook = new(() => Semantics.Book.Bind(Files(BookFolder).Select(Tree)));

    /// <summary>The book, named as it stands in the repository.</summary>
    public static Book Book => LazyBook.Value;

    /// <summary>The recipes of a folder, as paths from the root.</summary>
    public static string[] Files(string folder) =>
        [.. Directory.EnumerateFiles(Repository.PathOf(folder), "*.recipe").Select(f => $"{folder}/{Path.GetFileName(f)}").Order(StringComparer.Ordinal)];

    public static SyntaxTree Tree(string path) => Given.Tree(Repository.Read(path), path);

    /// <summary>The files of the repository, each parsed once for the scope.</summary>
    public static UseScope Uses()
    {
        var trees = new System.Collections.Concurrent.ConcurrentDictionary<string, SyntaxTree?>(StringComparer.Ordinal);
        return new UseScope((from, path) => trees.GetOrAdd(
            Path.GetRelativePath(Repository.Root, Repository.PathOf($"{Path.GetDirectoryName(from)}/{path}")).Replace('\\', '/'),
            static name => File.Exists(Repository.PathOf(name)) ? Tree(name) : null));
    }

    public static BoundFile Bind(string path) => Binder.Bind(Tree(path), Book, Uses());
}
