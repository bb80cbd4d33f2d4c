using CsCheck;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.TestKit;

namespace Recipe.Semantics.Tests;

/// <summary>Recipes with something done to them.</summary>
internal static class Damaged
{
    /// <summary>Words and signs that are likely to hit a rule in the wrong place.</summary>
    private static readonly string[] Odd =
    [
        "{", "}", "(", ")", ";", "\"", "#", ":", "=", "x0", "x2", "x999999", "to", "by", "by weight", "of", "of mix", "like", "source", "source assumed", "at", "after",
        "0", "-1", "1e308", "1e308 m", "-0.5 bar", "25 inHg", "45 %", "120 %", "3/4", "0/90", "+/-45", "100:30", "14:65", "2026-02-30", "2026-01-01", "1.5 oz",
        "20 mm", "20 mm to 30 mm", "300 K", "20 degC", "12 mins", "(1 / 0)", "(20 degC + 20 degC)", "(lap * lap)", "lap", "\"text\"", "no-such-name",
        "\n", "\n}\n", "\npart p {\n", "\nlet lap = lap\n", "\nvariant v of v {\n}\n", "\nuse \"shop.recipe\"\n", "\nfabric f like f {\n}\n", "\u00d7", "\ufeff", "\u20ac",
    ];

    private static readonly string[] Vocabulary =
    [
        .. RecipeSchema.Blocks.SelectMany(b => b.Words).SelectMany(w => w.Regional.Add(w.Word)).Distinct(StringComparer.Ordinal),
    ];

    /// <summary>Every shipped recipe, sound or not, and the examples of the findings, by the name they are read under.</summary>
    private static readonly (string Path, string Text)[] Recipes =
    [
        .. Shipped.SoundFolders.Append("samples/mistakes").SelectMany(Shipped.Files).Select(p => (p, Repository.Read(p))),
        .. SemanticFindings.All.Select(d => ("this.recipe", d.BadExample)),
    ];

    private static readonly Gen<(string Path, string Text)> Recipe = OneOf(Recipes);

    /// <summary>A recipe up to some character.</summary>
    public static Gen<(string Path, string Text)> Prefixes { get; } =
        Gen.Select(Recipe, Gen.Double[0, 1], (r, share) => (r.Path, r.Text[..(int)(share * r.Text.Length)]));

    /// <summary>A recipe whose lines are partly in another order.</summary>
    public static Gen<(string Path, string Text)> Shuffles { get; } = Recipe.SelectMany(r =>
    {
        var lines = r.Text.Split('\n');
        return Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, lines.Length - 1])
            .Array[1, 40]
            .Select(swaps => (r.Path, string.Join('\n', swaps.Aggregate((string[])lines.Clone(), Swap))));
    });

    /// <summary>A recipe with words left out, doubled, exchanged or put in.</summary>
    public static Gen<(string Path, string Text)> Edits { get; } = Gen.Select(
        Recipe,
        Gen.Select(Gen.Double[0, 1], Gen.Int[0, 4], Gen.OneOf(OneOf(Odd), OneOf(Vocabulary))).Array[1, 6],
        (recipe, edits) => (recipe.Path, edits.Aggregate(recipe.Text, Apply)));

    /// <summary>All of them.</summary>
    public static Gen<(string Path, string Text)> Any { get; } = Gen.OneOf(Prefixes, Shuffles, Edits, Edits);

    private static Gen<T> OneOf<T>(T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static string[] Swap(string[] lines, (int A, int B) places)
    {
        (lines[places.A], lines[places.B]) = (lines[places.B], lines[places.A]);
        return lines;
    }

    /// <summary>Does something to the word at a place.</summary>
    private static string Apply(string text, (double Where, int Manner, string Word) edit)
    {
        var start = (int)(edit.Where * text.Length);
        while (start > 0 && start < text.Length && !char.IsWhiteSpace(text[start - 1]))
        {
            start--;
        }

        var end = start;
        while (end < text.Length && !char.IsWhiteSpace(text[end]))
        {
            end++;
        }

        var word = text[start..end];
        var instead = edit.Manner switch
        {
            0 => "",
            1 => $"{word} {word}",
            2 => edit.Word,
            3 => $"{edit.Word} {word}",
            _ => word.Length > 1 ? word.Remove(word.Length / 2, 1) : word,
        };
        return text[..start] + instead + text[end..];
    }
}
