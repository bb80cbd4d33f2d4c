using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.Fuzzing.Targets;

/// <summary>A folder that is only in memory: one text that changes, and some that recipes may use.</summary>
internal sealed class MemoryFiles : IFileStore
{
    private static readonly ShapeBytes Pan = new("shapes/pan.stl", File.ReadAllBytes(Repository.PathOf("tests/corpus/fuzz/mesh/seed-pan.stl")));

    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);

    /// <summary>A text by its name; setting one makes it.</summary>
    public string this[string name]
    {
        get => _texts[name];
        set => _texts[name] = value;
    }

    /// <summary>The bytes that every shape has, whatever its name.</summary>
    public ShapeBytes Shape { get; init; } = Pan;

    /// <inheritdoc/>
    public bool TryRead(string name, [NotNullWhen(true)] out string? text) => _texts.TryGetValue(name, out text);

    /// <inheritdoc/>
    public ShapeBytes? ShapeOf(string name) => Shape;

    /// <inheritdoc/>
    public IEnumerable<string> RecipesIn(string folder) => _texts.Keys.Where(name => PathNames.FolderOf(name) == folder).Order(StringComparer.Ordinal);
}
