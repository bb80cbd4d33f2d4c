namespace Recipe.Architecture.Tests;

/// <summary>The checked-out repository, as the tests read it: everything that <c>.gitignore</c> does not hide.</summary>
internal static class Repository
{
    private static readonly string[] SourceFolders = ["src", "tests", "grammar", "editors", "samples"];

    /// <summary>The folder that holds <c>Recipe.sln</c>.</summary>
    public static string Root { get; } = FindRoot();

    private static HashSet<string> IgnoredFolders { get; } = ReadIgnoredFolders();

    /// <summary>Names at the top level that a visitor sees: neither dot files nor ignored output.</summary>
    public static IReadOnlyList<string> VisibleTopLevel() =>
        [.. new DirectoryInfo(Root).EnumerateFileSystemInfos()
            .Select(entry => entry.Name)
            .Where(name => !name.StartsWith('.') && !IgnoredFolders.Contains(name))
            .Order(StringComparer.Ordinal)];

    /// <summary>Every file of the source folders and of the top level, as a path from the root with forward slashes.</summary>
    public static IReadOnlyList<string> Files() =>
        [.. Directory.EnumerateFiles(Root).Select(Relative)
            .Concat(SourceFolders.Select(Absolute).Where(Directory.Exists).SelectMany(FilesBelow))
            .Order(StringComparer.Ordinal)];

    public static string Absolute(string relativePath) => Path.Combine(Root, relativePath);

    public static string Read(string relativePath) => File.ReadAllText(Absolute(relativePath));

    private static IEnumerable<string> FilesBelow(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder))
        {
            yield return Relative(file);
        }

        foreach (var child in Directory.EnumerateDirectories(folder).Where(child => !IgnoredFolders.Contains(Path.GetFileName(child))))
        {
            foreach (var file in FilesBelow(child))
            {
                yield return file;
            }
        }
    }

    private static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

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

    private static HashSet<string> ReadIgnoredFolders() =>
        [.. File.ReadAllLines(Path.Combine(Root, ".gitignore")).Where(line => line.EndsWith('/')).Select(line => line.TrimEnd('/'))];
}
