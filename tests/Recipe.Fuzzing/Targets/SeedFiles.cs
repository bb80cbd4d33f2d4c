using System.Text;
using Recipe.TestKit;

namespace Recipe.Fuzzing.Targets;

/// <summary>Files of the repository as inputs to begin with.</summary>
internal static class SeedFiles
{
    /// <summary>Files of a folder, those that are not too long.</summary>
    public static IEnumerable<(string Name, byte[] Bytes)> In(string folder, string pattern, long largest = 16_384) =>
        Directory.EnumerateFiles(Repository.PathOf(folder), pattern)
            .Order(StringComparer.Ordinal)
            .Where(path => new FileInfo(path).Length <= largest)
            .Select(path => (Path.GetFileName(path), File.ReadAllBytes(path)));

    /// <summary>A text as an input.</summary>
    public static (string Name, byte[] Bytes) Of(string name, string text) => (name, Encoding.UTF8.GetBytes(text));

    /// <summary>The words of the language, as the page of words lists them.</summary>
    public static IEnumerable<string> WordsOfTheLanguage() => Repository.Read("grammar/words.md")
        .Split('\n')
        .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
        .Select(line => line.Split('`')[1])
        .Distinct(StringComparer.Ordinal);
}
