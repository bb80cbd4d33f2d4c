using Recipe.Text;

namespace Recipe.Syntax.Tests;

/// <summary>Short ways to read texts in tests.</summary>
internal static class Read
{
    public static SyntaxTree Tree(string text) => SyntaxTree.Parse(new SourceText("a.recipe", text));

    /// <summary>The tree of a text without findings.</summary>
    public static SyntaxTree Clean(string text)
    {
        var tree = Tree(text);
        Assert.Empty(tree.Findings.Select(finding => $"{finding.Where} {finding.Descriptor.Code} {finding.Message}"));
        return tree;
    }

    /// <summary>The values of the one entry of a text without findings.</summary>
    public static IReadOnlyList<ValueSyntax> Values(string line) => Assert.IsType<EntrySyntax>(Assert.Single(Clean(line).Root.Statements)).Values;

    /// <summary>The one value of <c>word VALUE</c>.</summary>
    public static T Value<T>(string value)
        where T : ValueSyntax => Assert.IsType<T>(Assert.Single(Values("a " + value)));

    /// <summary>The value of <c>let a = VALUE</c>.</summary>
    public static ValueSyntax Expression(string value) => Assert.IsType<LetSyntax>(Assert.Single(Clean("let a = " + value).Root.Statements)).Value;

    public static IReadOnlyList<string> Codes(string text) => [.. Tree(text).Findings.Select(finding => finding.Descriptor.Code)];

    public static string Format(string text) => Formatter.Format(Tree(text));

    /// <summary>Kind and text of the tokens, blanks left out.</summary>
    public static IReadOnlyList<string> Tokens(string text) =>
    [
        .. from token in Tree(text).Tokens
           where token.Kind is not (TokenKind.Blank or TokenKind.EndOfFile)
           select $"{token.Kind} {text.Substring(token.Span.Start, token.Span.Length)}",
    ];
}
