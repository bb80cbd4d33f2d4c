using System.Collections.Concurrent;
using Recipe.Compiler;

namespace Recipe.Cli.Files;

/// <summary>The version that change notes compare with: one file for all, or a revision with a file for each.</summary>
internal sealed class EarlierFiles : IDisposable
{
    private readonly RecipeVersion _version;
    private readonly string? _file;
    private readonly ConcurrentDictionary<string, Lazy<CompiledFile?>> _compiled = new(StringComparer.Ordinal);

    private EarlierFiles(RecipeVersion version, string? file) => (_version, _file) = (version, file);

    /// <summary>Opens a version by its name.</summary>
    /// <exception cref="CannotRunException">It is neither a file nor a revision.</exception>
    public static EarlierFiles Open(string name, DateOnly today) =>
        File.Exists(name) ? new(RecipeVersion.OnDisk(today), name) : new(RecipeVersion.At(name, today), null);

    /// <summary>A file as it was; null when there was none.</summary>
    public CompiledFile? Compile(string name) => _compiled.GetOrAdd(_file ?? name, key => new Lazy<CompiledFile?>(() => _version.Compile(key))).Value;

    public void Dispose() => _version.Dispose();
}
