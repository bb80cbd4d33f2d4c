using Recipe.TestKit;

namespace Recipe.Documents.Tests;

/// <summary>
/// Compares what is written with what was kept, byte for byte. RECIPE_UPDATE_GOLDENS=1 writes what is missing or different;
/// the change is then read like any other change.
/// </summary>
internal static class Golden
{
    public static bool Updates => Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1";

    public static string Folder() => Repository.PathOf("tests/Recipe.Documents.Tests/goldens");

    public static void Check(string relativePath, string written)
    {
        var path = Path.Combine(Folder(), relativePath);
        if (Updates)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, written);
            return;
        }

        Assert.True(File.Exists(path), $"There is no {relativePath}; RECIPE_UPDATE_GOLDENS=1 writes it.");
        Assert.Equal(File.ReadAllText(path), written);
    }
}
