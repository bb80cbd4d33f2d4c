using System.Collections.Immutable;

namespace Recipe.Documents.Languages;

/// <summary>
/// The languages of the papers. There is English; a translation will be one file of <see cref="PoFile"/>'s format and a line here.
/// </summary>
internal static class Wordings
{
    private static readonly ImmutableSortedDictionary<string, Lazy<Wording>> ByTag = ImmutableSortedDictionary.CreateRange(
        StringComparer.Ordinal,
        new[]
        {
            KeyValuePair.Create("en", new Lazy<Wording>(() => Wording.English)),
        });

    /// <summary>BCP 47 tags of the languages there are.</summary>
    public static ImmutableArray<string> Tags { get; } = [.. ByTag.Keys];

    /// <summary>The words of a language; English where there is no such language.</summary>
    public static Wording Of(string tag) => ByTag.TryGetValue(tag, out var wording) ? wording.Value : Wording.English;
}
