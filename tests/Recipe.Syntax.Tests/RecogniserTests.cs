using CsCheck;
using Recipe.Syntax.Findings;
using Recipe.TestKit;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Tests;

/// <summary>The parser is true to <c>grammar/recipe.ebnf</c>: what it reads without a finding has the shape of that page.</summary>
public sealed class RecogniserTests
{
    // What the page says in words only. The line that cannot be read is one of two lengths that do not add up.
    private static readonly FindingDescriptor[] InWords =
        [NumberOutOfRange.Descriptor, UnknownDate.Descriptor, NestedTooDeep.Descriptor, UnreadableLine.Descriptor, NotUtf8.Descriptor];

    public static TheoryData<string> Recipes =>
    [
        .. new[] { "samples", "samples/mistakes", "src/Recipe.Compiler/Book", "src/Recipe.Compiler/Templates", "tests/corpus/sound" }
            .SelectMany(folder => Directory.GetFiles(Repository.PathOf(folder), "*.recipe"))
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    public static TheoryData<string> BadExamples => [.. SyntaxFindings.All.Except(InWords).Select(descriptor => descriptor.Name)];

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Every_recipe_has_the_shape(string path)
    {
        var text = Repository.Read(path);

        Assert.True(Recogniser.Accepts(text));
        Assert.True(Recogniser.Accepts(text.ReplaceLineEndings("\r\n")));
    }

    [Fact]
    public void There_are_recipes() => Assert.True(Recipes.Count >= 35);

    [Fact]
    public void Every_text_of_the_grammar_has_the_shape() =>
        Sentences.All.Sample(text => Assert.True(Recogniser.Accepts(text), text), iter: 2000);

    [Fact]
    public void Every_text_that_is_read_without_findings_has_the_shape() =>
        Texts.Any.Sample(
            text => Assert.True(Read.Tree(text).Findings.Length > 0 || Recogniser.Accepts(text), text),
            iter: 10000);

    [Theory]
    [MemberData(nameof(BadExamples))]
    public void A_text_with_a_finding_has_not(string finding) =>
        Assert.False(Recogniser.Accepts(SyntaxFindings.All.Single(descriptor => descriptor.Name == finding).BadExample));

    [Theory]
    [InlineData("5 a")]
    [InlineData("a {")]
    [InlineData("a }")]
    [InlineData("a\n{ b }")]
    [InlineData("a { b } c")]
    [InlineData("a (5\nb 3")]
    [InlineData("let a 5")]
    [InlineData("let")]
    [InlineData("let a = 20 mm \"b\"")]
    [InlineData("a 1,5")]
    [InlineData("a \"b")]
    [InlineData("a * 3")]
    [InlineData("a 1:")]
    [InlineData("a +/- b")]
    public void Other_texts_have_not(string text) => Assert.False(Recogniser.Accepts(text));
}
