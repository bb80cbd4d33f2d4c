using System.Collections.Concurrent;
using Recipe.Model;
using Recipe.Semantics.Binding;
using Recipe.Syntax;

namespace Recipe.Semantics;

/// <summary>
/// Finds the file that a <c>use</c> line means. No file is opened here: the workspace that knows the files answers. May be asked
/// from several threads, and more than once for one line.
/// </summary>
/// <param name="fromName">Name of the text that holds the <c>use</c> line.</param>
/// <param name="usePath">The path as written there, relative to that text.</param>
/// <returns>The tree, the same object each time for the same file; or null when there is no such file.</returns>
public delegate SyntaxTree? UseResolver(string fromName, string usePath);

/// <summary>Finds the file of a shape that a line names. As with <see cref="UseResolver"/>, the workspace answers.</summary>
/// <param name="fromName">Name of the text that holds the line.</param>
/// <param name="path">The path as written there, relative to that text.</param>
/// <returns>The file, the same object each time for the same bytes; or null when it cannot be read.</returns>
public delegate ShapeFile? ShapeResolver(string fromName, string path);

/// <summary>
/// The files that can use each other at one moment. A file is indexed and bound once in a scope, whoever asks and from whichever
/// thread; when a text changes, make a new scope.
/// </summary>
public sealed class UseScope
{
    private readonly UseResolver _resolve;
    private readonly ShapeResolver? _shapes;
    private readonly ConcurrentDictionary<(SyntaxTree, Book), FileScope> _files = new();

    /// <summary>Makes a scope.</summary>
    /// <param name="resolve">Answers for the texts that are used.</param>
    /// <param name="shapes">Answers for the files of shapes; null when there are none.</param>
    public UseScope(UseResolver resolve, ShapeResolver? shapes = null)
    {
        ArgumentNullException.ThrowIfNull(resolve);
        _resolve = resolve;
        _shapes = shapes;
    }

    /// <summary>A scope for a file that stands alone: each <c>use</c> in it is reported as missing.</summary>
    public static UseScope Alone() => new(static (_, _) => null);

    internal SyntaxTree? Resolve(string fromName, string usePath) => _resolve(fromName, usePath);

    internal ShapeFile? Shape(string fromName, string path) => _shapes?.Invoke(fromName, path);

    internal FileScope ScopeOf(SyntaxTree tree, Book book) =>
        _files.GetOrAdd((tree, book), static (key, uses) => new FileScope(key.Item1, key.Item2, uses), this);
}
