namespace Recipe.Architecture.Tests;

/// <summary>The lines of <c>src/BannedSymbols.txt</c>: documentation ids such as <c>T:System.IO.File</c>, each with its reason.</summary>
internal static class BannedSymbols
{
    public static IReadOnlyDictionary<string, string> All { get; } = Parse(Repository.Read("src/BannedSymbols.txt"));

    public static IReadOnlyDictionary<string, string> Parse(string text) =>
        text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(';', 2))
            .ToDictionary(parts => parts[0], parts => parts.Length == 2 ? parts[1] : "");
}
