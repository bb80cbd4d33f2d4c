namespace Recipe.Syntax.Tests;

/// <summary>Nesting that would overflow the stack of a thread is refused before the grammar sees it.</summary>
public sealed class NestingTests
{
    private const int Deep = 100_000;
    private const int SmallStack = 1_500_000;

    public static TheoryData<string> DeepTexts => new()
    {
        Repeat("a {\n"),
        Repeat("a {") + Repeat("}"),
        Repeat("}"),
        Repeat("{"),
        "let a = " + Repeat("("),
        "let a = " + Repeat("(") + "1" + Repeat(")"),
        "let a = " + Repeat("-") + "1",
        "let a = " + Repeat("1 + ") + "1",
        "let a = " + Repeat("(1 + "),
        "a " + Repeat("(") + "1" + Repeat(")"),
        "a " + Repeat("1:") + "1",
        "a " + Repeat("1 to "),
        "a " + Repeat("1 +/- "),
        "a " + Repeat("\""),
        Repeat("let "),
        Repeat("a { b ( "),
        Repeat("\u2603 "),
    };

    [Theory]
    [MemberData(nameof(DeepTexts), DisableDiscoveryEnumeration = true)]
    public void A_hundred_thousand_deep_is_read_on_a_small_stack(string text)
    {
        string? printed = null;
        string? laidOut = null;
        var thread = new Thread(
            () =>
            {
                var tree = Read.Tree(text);
                printed = tree.ToText();
                laidOut = Formatter.Format(tree);
                Assert.NotEmpty(TreePrinter.Print(tree));
            },
            SmallStack);
        thread.Start();
        thread.Join();

        Assert.Equal(text, printed);
        Assert.NotNull(laidOut);
    }

    [Fact]
    public void A_hundred_deep_is_read_and_one_more_is_not()
    {
        Read.Clean(string.Concat(Enumerable.Repeat("a {", 100)) + new string('}', 100));
        Assert.Equal(["RC1005"], Read.Codes(string.Concat(Enumerable.Repeat("a {", 101)) + new string('}', 101)));
        Read.Clean("let a = " + new string('(', 100) + "1" + new string(')', 100));
        Assert.Equal(["RC1005"], Read.Codes("let a = " + new string('(', 101) + "1" + new string(')', 101)));
    }

    [Fact]
    public void What_follows_the_refused_part_is_read()
    {
        var tree = Read.Tree("let a = " + new string('(', 101) + "1" + new string(')', 101) + "\nb 2\n");

        Assert.IsType<EntrySyntax>(tree.Root.Statements[^1]);
    }

    private static string Repeat(string part) => string.Concat(Enumerable.Repeat(part, Deep));
}
