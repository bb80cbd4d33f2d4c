using System.Collections.Concurrent;
using Recipe.Compiler;

namespace Recipe.Cli.Files;

/// <summary>One side of a comparison: files on disk, or a revision.</summary>
internal sealed class RecipeVersion : IDisposable
{
    private readonly GitFiles? _git;
    private readonly Workspace _workspace;
    private readonly string _shown;
    private readonly ConcurrentDictionary<string, Lazy<CompiledFile?>> _compiled = new(StringComparer.Ordinal);

    private RecipeVersion(GitFiles? git, string shown, Terminal terminal)
    {
        (_git, _shown) = (git, shown);
        _workspace = new Workspace(git is null ? new DiskFiles(terminal.Rules) : git, terminal.Today);
    }

    /// <summary>The files on disk.</summary>
    public static RecipeVersion OnDisk(Terminal terminal) => new(null, "", terminal);

    /// <summary>A revision of the repository of the current folder.</summary>
    public static RecipeVersion At(string revision, Terminal terminal) => new(new GitFiles(revision, terminal.Rules), revision, terminal);

    /// <summary>The recipes in a folder and below it, by name; none when it has none.</summary>
    public List<string> Recipes(string folder)
    {
        try
        {
            return _git is null ? RecipeFinder.Find([folder.Length == 0 ? "." : folder], recurse: true) : _git.Recipes(folder);
        }
        catch (CannotRunException) when (_git is null && Directory.Exists(folder.Length == 0 ? "." : folder))
        {
            return [];
        }
    }

    /// <summary>A file of it, compiled once; null when it has none of that name. Several threads may ask.</summary>
    public CompiledFile? Compile(string name) => _compiled.GetOrAdd(name, key => new Lazy<CompiledFile?>(() => _workspace.TryCompile(key, out var file) ? file : null)).Value;

    /// <summary>What a file is called in this version.</summary>
    public string Shown(string name) => _shown.Length == 0 ? name : $"{name} ({_shown})";

    public void Dispose() => _git?.Dispose();
}
