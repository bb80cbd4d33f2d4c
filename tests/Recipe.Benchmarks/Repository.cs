namespace Recipe.Benchmarks;

/// <summary>Finds inputs in the repository; a benchmark runs from a folder of its own below it.</summary>
internal static class Repository
{
    public static string Read(string relativePath)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Recipe.sln")))
            {
                return File.ReadAllText(Path.Combine(folder.FullName, relativePath));
            }
        }

        throw new InvalidOperationException($"No folder above {AppContext.BaseDirectory} holds Recipe.sln.");
    }
}
