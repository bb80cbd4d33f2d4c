using System.Collections.Immutable;

namespace Recipe.Documents.Languages;

/// <summary>
/// The languages of the papers. A translation is one file, <c>Languages/TAG.po</c>; its name here makes it one of them.
/// </summary>
internal static class Wordings
{
    private static readonly ImmutableSortedDictionary<string, Lazy<Wording>> ByTag = ImmutableSortedDictionary.CreateRange(
        StringComparer.Ordinal,
        new[]
        {
            KeyValuePair.Create("en", new Lazy<Wording>(() => Wording.English)),
            KeyValuePair.Create("de", new Lazy<Wording>(() => new Wording("de", PoFile.Read(Text("de"))))),
        });

    /// <summary>BCP 47 tags of the languages there are.</summary>
    public static ImmutableArray<string> Tags { get; } = [.. ByTag.Keys];

    /// <summary>The words of a language; English where there is no such language.</summary>
    public static Wording Of(string tag) => ByTag.TryGetValue(tag, out var wording) ? wording.Value : Wording.English;

    /// <summary>The file of a translation.</summary>
    internal static string Text(string tag)
    {
        using var stream = typeof(Wordings).Assembly.GetManifestResourceStream($"Recipe.Documents.Languages.{tag}.po")
            ?? throw new InvalidOperationException($"There is no translation {tag}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
