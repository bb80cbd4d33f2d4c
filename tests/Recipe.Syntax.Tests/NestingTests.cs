namespace Recipe.Syntax.Tests;

/// <summary>Nesting that would overflow the stack of a thread is refused before the grammar sees it.</summary>
public sealed class NestingTests
{
    private const int Deep = 100_000;
    private const int SmallStack = 1_500_000;

    private static readonly Dictionary<string, (string Start, string Part, string End)> DeepTexts = new()
    {
        ["blocks never closed"] = ("", "a {\n", ""),
        ["blocks"] = ("", "a {", new string('}', Deep)),
        ["closing braces"] = ("", "}", ""),
        ["opening braces"] = ("", "{", ""),
        ["parentheses never closed"] = ("let a = ", "(", ""),
        ["parentheses"] = ("let a = ", "(", "1" + new string(')', Deep)),
        ["parentheses of an entry"] = ("a ", "(", "1" + new string(')', Deep)),
        ["minus signs"] = ("let a = ", "-", "1"),
        ["a sum"] = ("let a = ", "1 + ", "1"),
        ["sums never closed"] = ("let a = ", "(1 + ", ""),
        ["a ratio"] = ("a ", "1:", "1"),
        ["ranges"] = ("a ", "1 to ", ""),
        ["tolerances"] = ("a ", "1 +/- ", ""),
        ["quotes"] = ("a ", "\"", ""),
        ["keywords"] = ("", "let ", ""),
        ["blocks and parentheses"] = ("", "a { b ( ", ""),
        ["characters that mean nothing"] = ("", "\u2603 ", ""),
        ["lines that cannot be read"] = ("", "a = 1\n", ""),
    };

    public static TheoryData<string> Names => [.. DeepTexts.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_hundred_thousand_are_read_on_a_small_stack(string name)
    {
        var (start, part, end) = DeepTexts[name];
        var text = start + string.Concat(Enumerable.Repeat(part, Deep)) + end;
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
}
