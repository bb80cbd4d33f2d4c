using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;

namespace Recipe.Benchmarks;

/// <summary>The texts of the repository, by their path from its root.</summary>
internal sealed class RepositoryFiles : IFileStore
{
    private static readonly string Root = FindRoot();

    /// <inheritdoc />
    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        var path = Path.Combine(Root, name);
        text = File.Exists(path) ? File.ReadAllText(path) : null;
        return text is not null;
    }

    // Benchmarks run in folders of their own below this project's.
    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Recipe.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"No folder above {AppContext.BaseDirectory} holds Recipe.sln.");
    }
}
