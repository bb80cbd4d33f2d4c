using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;

namespace Recipe.Cli.Files;

/// <summary>Other files, with another text for one of them.</summary>
internal sealed class Overlay(IFileStore below, string name, string text) : IFileStore
{
    private readonly string _name = PathNames.Normalize(name);

    public bool TryRead(string name, [NotNullWhen(true)] out string? found)
    {
        if (name != _name)
        {
            return below.TryRead(name, out found);
        }

        found = text;
        return true;
    }

    public ShapeBytes? ShapeOf(string name) => below.ShapeOf(name);

    public string? FolderAbove(string folder) => below.FolderAbove(folder);

    public IEnumerable<string> RecipesIn(string folder) => below.RecipesIn(folder);

    /// <summary>Compiles a text as if it stood in the file of that name.</summary>
    public static CompiledFile Compile(string name, string text, DateOnly today)
    {
        _ = new Workspace(new Overlay(new DiskFiles(), name, text), today).TryCompile(name, out var file);
        return file!;
    }
}
