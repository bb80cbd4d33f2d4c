using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.Checks.Tests;

/// <summary>The recipes of the repository, through the whole program with the book that ships.</summary>
internal static class Shipped
{
    private static readonly Workspace Workspace = new(new Files(), Bench.Today);

    /// <summary>The recipes of a folder, as paths from the root.</summary>
    public static string[] In(string folder) =>
        [.. Directory.EnumerateFiles(Repository.PathOf(folder), "*.recipe").Select(f => $"{folder}/{Path.GetFileName(f)}").Order(StringComparer.Ordinal)];

    public static CompiledFile Compile(string path) => Workspace.TryCompile(path, out var file) ? file : throw new FileNotFoundException(path);

    /// <summary>A recipe of the repository with another text.</summary>
    public static CompiledFile Compile(string path, string text) =>
        new Workspace(new Files(path, text), Bench.Today).TryCompile(path, out var file) ? file : throw new FileNotFoundException(path);

    /// <summary>The files of the repository, with another text for one of them.</summary>
    private sealed class Files(string? other = null, string? itsText = null) : IFileStore
    {
        public bool TryRead(string name, [NotNullWhen(true)] out string? text)
        {
            var path = Repository.PathOf(name);
            text = name == other ? itsText : File.Exists(path) ? File.ReadAllText(path) : null;
            return text is not null;
        }
    }
}
