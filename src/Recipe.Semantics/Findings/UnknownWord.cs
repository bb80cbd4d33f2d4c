using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A word that is not in the schema of its block.</summary>
public static class UnknownWord
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1201",
        Name = "unknown-word",
        Severity = Severity.Error,
        Title = "A word that nobody knows here",
        Reason = "A line that is not understood is left out of the plan.",
        Remedy = "Use one of the words of the block.",
        Source = "the language",
        BadExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
              widht 100 cm
            }

            """,
        GoodExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
              width 100 cm
            }

            """,
    };

    // As many as somebody reads in one line.
    private const int FewWords = 16;

    /// <summary>A line of a block that begins with an unknown word.</summary>
    internal static Finding Line(SourceSpan where, string word, BlockSchema block)
    {
        var near = Spelling.Nearest(word, block.Words.Select(w => w.Word));
        if (near is not null)
        {
            return Finding.Of(Descriptor, where, $"`{word}` is not a word of {Name(block)}; did you mean `{near}`?") with { Fixes = [Write(where, near)] };
        }

        var homes = RecipeSchema.BlocksWith(word).Select(Name).Take(3).ToArray();
        return Finding.Of(Descriptor, where, homes.Length > 0
            ? $"`{word}` is not a word of {Name(block)}; it belongs to {Numbers.Or(homes)}."
            : block.Words.Length <= FewWords
                ? $"`{word}` is not a word of {Name(block)}, which takes {Numbers.Or([.. block.Words.Select(known => known.Word)])}."
                : $"`{word}` is not a word of {Name(block)}.");
    }

    /// <summary>A word in the middle of a line.</summary>
    internal static Finding OnLine(SourceSpan where, string word, string head, IReadOnlyList<string> words)
    {
        var near = Spelling.Nearest(word, words);
        return near is not null
            ? Finding.Of(Descriptor, where, $"`{word}` means nothing on the line of `{head}`; did you mean `{near}`?") with { Fixes = [Write(where, near)] }
            : Finding.Of(Descriptor, where, words.Count == 0
                ? $"`{word}` means nothing on the line of `{head}`."
                : $"`{word}` means nothing on the line of `{head}`, which may go on with {Numbers.Or(words)}.");
    }

    private static string Name(BlockSchema block) => block.Name == "file"
        ? "the top level"
        : Numbers.Or([.. block.Name.Split(", ").Select(n => $"`{n}`")]);

    private static Fix Write(SourceSpan where, string word) => new($"Write {word}", FixSafety.NeedsALook, new TextEdit(where, word));
}
