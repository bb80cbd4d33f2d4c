namespace Recipe.TestKit;

/// <summary>Finds the files of the repository that tests read.</summary>
public static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A file or folder by its path from the root, with forward slashes.</summary>
    public static string PathOf(string relativePath) => Path.GetFullPath(Path.Combine(Root, relativePath));

    /// <summary>The text of a file.</summary>
    public static string Read(string relativePath) => File.ReadAllText(PathOf(relativePath));

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
