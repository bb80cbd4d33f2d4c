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
        Remedy = "Use a word that the block or the line takes.",
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

    // On a line of which only one word is wrong, a list is read less far.
    private const int FewOnLine = 6;

    /// <summary>A line of a block that begins with an unknown word.</summary>
    internal static Finding Line(SourceSpan where, string word, BlockSchema block)
    {
        var near = Spelling.Nearest(word, block.Words.Select(w => w.Word));
        if (near is not null)
        {
            return Finding.Of(Descriptor, where, $"`{word}` is not a word of {Name(block)}; did you mean `{near}`?") with { Fixes = [Write(where, near)] };
        }

        var homes = RecipeSchema.BlocksWith(word).Take(3).SelectMany(Names).ToArray();
        return Finding.Of(Descriptor, where, homes.Length > 0
            ? $"`{word}` is not a word of {Name(block)}; it belongs to {Numbers.Or(homes)}."
            : block.Words.Length <= FewWords
                ? $"`{word}` is not a word of {Name(block)}, which takes {Numbers.Or([.. block.Words.Select(known => known.Word)])}."
                : $"`{word}` is not a word of {Name(block)}{(block == RecipeSchema.File ? "" : $"; `recipe explain {block.Name.Split(',')[0]}` lists its words")}.");
    }

    /// <summary>A line of a block that begins with a word of the bench.</summary>
    /// <param name="where">The word, or the several that it is written as.</param>
    /// <param name="word">What the bench means by it.</param>
    /// <param name="block">The block.</param>
    internal static Finding Line(SourceSpan where, BenchWord word, BlockSchema block) => Meant(where, word, $"is not a word of {Name(block)}");

    /// <summary>A word in the middle of a line.</summary>
    /// <param name="where">The word.</param>
    /// <param name="word">The same as text.</param>
    /// <param name="head">How the line begins.</param>
    /// <param name="words">Words that the line may go on with.</param>
    /// <param name="example">How such a line is written.</param>
    internal static Finding OnLine(SourceSpan where, string word, string head, IReadOnlyList<string> words, string example)
    {
        var near = Spelling.Nearest(word, words);
        return near is not null
            ? Finding.Of(Descriptor, where, $"`{word}` means nothing on the line of `{head}`; did you mean `{near}`?") with { Fixes = [Write(where, near)] }
            : Finding.Of(Descriptor, where, words.Count is 0 or > FewOnLine
                ? $"`{word}` means nothing on the line of `{head}`; such a line is written `{example}`."
                : $"`{word}` means nothing on the line of `{head}`, which may go on with {Numbers.Or([.. words.Select(w => $"`{w}`")])}.");
    }

    /// <summary>A word of the bench in the middle of a line.</summary>
    /// <param name="where">The word.</param>
    /// <param name="word">What the bench means by it.</param>
    /// <param name="head">How the line begins.</param>
    internal static Finding OnLine(SourceSpan where, BenchWord word, string head) => Meant(where, word, $"means nothing on the line of `{head}`");

    private static Finding Meant(SourceSpan where, BenchWord word, string wrong) =>
        Finding.Of(Descriptor, where, $"`{where.Text}` {wrong}: {word.Answer}.") with
        {
            Fixes = word.Write switch
            {
                null => [],
                "" => [new Fix($"Take {where.Text} out", FixSafety.NeedsALook, new TextEdit(ExtraValue.WithBlanks(where), ""))],
                var other => [Write(where, other)],
            },
        };

    private static string Name(BlockSchema block) => block.Name == "file" ? "the top level" : Numbers.Or([.. Names(block)]);

    private static IEnumerable<string> Names(BlockSchema block) => block.Name == "file" ? ["the top level"] : block.Name.Split(", ").Select(n => $"`{n}`");

    private static Fix Write(SourceSpan where, string word) => new($"Write {word}", FixSafety.NeedsALook, new TextEdit(where, word));
}
