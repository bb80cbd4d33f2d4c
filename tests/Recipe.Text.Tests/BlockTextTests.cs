namespace Recipe.Text.Tests;

/// <summary>Where lines and blocks lie, told without a tree.</summary>
public sealed class BlockTextTests
{
    [Theory]
    [InlineData("mould m { flange 5 mm }", "flange")]
    [InlineData("gauge at \"rim; far side\" x 5 mm", "gauge")]
    [InlineData("gauge at \"rim {\" x 5 mm", "gauge")]
    [InlineData("gauge at \"a \\\" { b\" x 5 mm", "gauge")]
    [InlineData("note 1; trim 5 mm", "trim")]
    [InlineData("note\r  trim 5 mm", "trim")]
    public void The_word_that_a_place_belongs_to_begins_its_entry(string text, string word)
    {
        var source = new SourceText("test.recipe", text);
        Assert.Equal(word, source.Slice(BlockText.HeadWordAt(source, text.IndexOf("5 mm", StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData("part p { a }", "{ a }")]
    [InlineData("part p { note \"}\" } b", "{ note \"}\" }")]
    [InlineData("part p { # }\n}", "{ # }\n}")]
    [InlineData("part p {\n  note \"open\\\n}\n# \"", "{\n  note \"open\\\n}")]
    [InlineData("part p\n{ a }", null)]
    [InlineData("part p {", null)]
    public void A_block_ends_with_its_own_brace(string text, string? block)
    {
        var source = new SourceText("test.recipe", text);
        Assert.Equal(block, BlockText.BlockAfter(source, 5) is { } span ? source.Slice(span) : null);
    }

    [Theory]
    [InlineData("a\nb\r\n", "\n")]
    [InlineData("a\r\nb\n", "\r\n")]
    [InlineData("a\rb\n", "\r")]
    [InlineData("a", "\n")]
    [InlineData("", "\n")]
    public void The_first_line_end_counts(string text, string end) => Assert.Equal(end, BlockText.LineEndOf(new SourceText("test.recipe", text)));
}
