using System.Text.RegularExpressions;
using Recipe.Documents.Languages;

namespace Recipe.Documents.Tests;

/// <summary>Translations: well formed, with the same values in each sentence.</summary>
public sealed partial class LanguageTests
{
    public static TheoryData<string> Translations => [.. Wordings.Tags.Where(tag => tag != "en")];

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_translation_puts_every_value_of_a_sentence_into_it(string tag)
    {
        var sentences = PoFile.Read(Wordings.Text(tag));
        Assert.NotEmpty(sentences);
        Assert.All(sentences, pair => Assert.Equal(Holes(pair.Key), Holes(pair.Value)));
        Assert.All(sentences, pair => Assert.Equal(pair.Key.EndsWith('.'), pair.Value.EndsWith('.')));
    }

    [Fact]
    public void A_sentence_is_its_own_key_with_holes_for_values()
    {
        var german = new Wording("de", PoFile.Read("msgid \"Pour {0} into {1}.\"\nmsgstr \"Gib in {1} \"\n\"{0}.\"\n"));
        var (grams, cup) = ("118.0\u00A0g", "{0}");
        Assert.Equal("Gib in {0} 118.0\u00A0g.", german.Say($"Pour {grams} into {cup}."));
        Assert.Equal("Pour 118.0\u00A0g out of {0}.", german.Say($"Pour {grams} out of {cup}."));
    }

    [Theory]
    [InlineData("msgid \"a\"\nmsgstr \"b\"\n\nmsgid \"a\"\nmsgstr \"c\"\n", "Line 6")]
    [InlineData("msgid a\n", "Line 1")]
    [InlineData("hello\n", "Line 1")]
    public void What_is_no_translation_is_said_with_its_line(string text, string where) =>
        Assert.StartsWith(where, Assert.Throws<FormatException>(() => PoFile.Read(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void Empty_and_fuzzy_entries_translate_nothing() =>
        Assert.Equal(["c"], PoFile.Read("msgid \"a\"\nmsgstr \"\"\n\n#, fuzzy\nmsgid \"b\"\nmsgstr \"x\"\n\nmsgid \"c\"\nmsgstr \"y\"\n").Keys);

    private static IEnumerable<string> Holes(string sentence) => Hole().Matches(sentence).Select(hole => hole.Value).Distinct().Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Hole();
}
