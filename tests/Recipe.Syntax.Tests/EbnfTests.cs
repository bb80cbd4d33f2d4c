using CsCheck;

namespace Recipe.Syntax.Tests;

/// <summary><c>grammar/recipe.ebnf</c> is true to the parser.</summary>
public sealed class EbnfTests
{
    private const int Iterations = 2000;

    [Fact]
    public void Every_name_is_defined_and_used()
    {
        var used = Ebnf.Productions.Values.SelectMany(Names).Append("file").ToHashSet();

        Assert.Empty(used.Except(Ebnf.Productions.Keys));
        Assert.Empty(Ebnf.Productions.Keys.Except(used));
    }

    [Fact]
    public void Every_text_of_the_grammar_is_read_without_findings() => Sentences.All.Sample(text => Assert.NotNull(Read.Clean(text)), iter: Iterations);

    /// <summary>The same ten thousand every time, so that no change of the parser can be lucky.</summary>
    [Fact]
    public void Ten_thousand_fixed_texts_of_the_grammar_are_read_without_findings() =>
        Assert.True(Parallel.For(0, 10_000, seed => Read.Clean(Sentences.Of(seed))).IsCompleted);

    [Fact]
    public void The_texts_of_the_grammar_show_every_kind_of_node()
    {
        var labels = Enumerable.Range(0, 400)
            .SelectMany(seed => TreePrinter.Print(Read.Tree(Sentences.Of(seed))).Split('\n'))
            .Select(line => line.Trim().Split(' ')[0])
            .ToHashSet();

        Assert.Superset(
            new HashSet<string>
            {
                "File", "Entry", "Let", "Block", "Word", "Text", "Date", "Quantity", "Compound", "Signed", "Pair", "PlusMinus", "Ratio",
                "Range", "Tolerance", "Parenthesis", "Binary", "Negate",
            },
            labels);
    }

    [Fact]
    public void Every_text_of_the_grammar_is_laid_out_with_its_meaning_kept_and_once_for_all() => Sentences.All.Sample(
        text =>
        {
            var laidOut = Read.Format(text);

            Assert.Equal(Properties.Shape(Read.Tree(text)), Properties.Shape(Read.Clean(laidOut)));
            Assert.Equal(Properties.Tokens(text, comments: false), Properties.Tokens(laidOut, comments: false));
            Assert.Equal(Properties.Tokens(text, comments: true), Properties.Tokens(laidOut, comments: true));
            Assert.Equal(laidOut, Read.Format(laidOut));
        },
        iter: Iterations);

    private static IEnumerable<string> Names(EbnfPart part) => part switch
    {
        EbnfName name => [name.Name],
        EbnfSequence sequence => sequence.Parts.SelectMany(Names),
        EbnfChoice choice => choice.Parts.SelectMany(Names),
        EbnfRepeat repeat => Names(repeat.Part),
        _ => [],
    };
}
