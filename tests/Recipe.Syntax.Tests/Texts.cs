using CsCheck;
using Recipe.Syntax.Findings;
using Recipe.TestKit;

namespace Recipe.Syntax.Tests;

/// <summary>Texts of every kind for properties: random characters, shuffled tokens, recipes, and recipes with something done to them.</summary>
internal static class Texts
{
    private static readonly string[] Tokens =
    [
        "a", "let", "to", "x", "x2", "source", "assumed", "peel-ply", "5", "0.5", "1e9", "1,5", ".5", "1e999", "2026-05-14", "2026-02-30",
        "mm", "m", "g/m2", "h", "min", "%", "degC", "\"text\"", "\"open", "\"", "\\", "{", "}", "{", "}", "(", ")", ":", ";", "=", "+", "-", "*", "/",
        "+/-", "\u00b1", "\u00d7", "#", "# note", "!", "\ufeff", " ", " ", "   ", "\t", "\u00a0", "\n", "\n", "\n\n", "\r\n", "\r", "",
    ];

    private static readonly string[] Recipes =
    [
        .. new[] { "hatch-lid", "resin", "values", "errors" }.Select(name => Repository.Read($"tests/Recipe.Syntax.Tests/cases/{name}/input.recipe")),
        .. SyntaxFindings.All.Select(descriptor => descriptor.BadExample),
    ];

    /// <summary>Any characters at all, halves of surrogate pairs included.</summary>
    public static Gen<string> Unicode { get; } = Gen.String[Gen.Char, 0, 60];

    /// <summary>Characters that mean something, in any order.</summary>
    public static Gen<string> Characters { get; } = Gen.String[Gen.Char["ab1250.,-+/*():;={}#\" \n\r\t_%mg\u00b1\u00d7\u00b0"], 0, 60];

    /// <summary>Tokens in any order, with and without blanks between them.</summary>
    public static Gen<string> Soup { get; } = Gen.Int[0, Tokens.Length - 1].Select(i => Tokens[i]).Array[0, 40]
        .SelectMany(tokens => Gen.Bool.Select(isSpaced => string.Join(isSpaced ? " " : "", tokens)));

    /// <summary>A recipe up to some character.</summary>
    public static Gen<string> Prefixes { get; } =
        Recipe().SelectMany(recipe => Gen.Int[0, recipe.Length].Select(length => recipe[..length]));

    /// <summary>A recipe with a few stretches deleted, doubled, or replaced by a token.</summary>
    public static Gen<string> Edits { get; } = Gen.Select(Recipe(), Edit().Array[1, 6], (recipe, edits) => edits.Aggregate(recipe, Apply));

    /// <summary>All of them.</summary>
    public static Gen<string> Any { get; } = Gen.OneOf(Unicode, Characters, Soup, Prefixes, Edits);

    private static Gen<string> Recipe() => Gen.Int[0, Recipes.Length - 1].Select(i => Recipes[i]);

    private static Gen<(double Where, int Length, int Manner, string Token)> Edit() =>
        Gen.Select(Gen.Double[0, 1], Gen.Int[0, 12], Gen.Int[0, 2], Gen.Int[0, Tokens.Length - 1].Select(i => Tokens[i]));

    private static string Apply(string text, (double Where, int Length, int Manner, string Token) edit)
    {
        var start = Math.Min((int)(edit.Where * text.Length), text.Length);
        var end = Math.Min(start + edit.Length, text.Length);
        var stretch = edit.Manner switch { 0 => "", 1 => text[start..end] + text[start..end], _ => edit.Token };
        return text[..start] + stretch + text[end..];
    }
}
