using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.Benchmarks;

/// <summary>The texts of the repository, by their path from its root.</summary>
internal sealed class RepositoryFiles : IFileStore
{
    /// <inheritdoc />
    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        var path = Repository.PathOf(name);
        text = File.Exists(path) ? File.ReadAllText(path) : null;
        return text is not null;
    }
}
