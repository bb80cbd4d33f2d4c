using CsCheck;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Tests;

/// <summary>What is true of every text.</summary>
public sealed class Properties
{
    private const int Iterations = 3000;

    /// <summary>Findings about lines that are read all the same: numbers, texts and dates in another manner, and braces.</summary>
    private static readonly string[] OfReadableText = ["RC1001", "RC1002", "RC1004", "RC1006", "RC1011", "RC1012", "RC1013", "RC1021", "RC1023", "RC1024", "RC1025", "RC1026", "RC1027"];

    [Fact]
    public void Any_text_prints_back_from_its_tokens() => Texts.Any.Sample(
        text =>
        {
            var tree = Read.Tree(text);

            Assert.Equal(text, tree.ToText());
            var at = 0;
            foreach (var token in tree.Tokens)
            {
                Assert.Equal(at, token.Span.Start);
                Assert.Equal(token.Kind == TokenKind.EndOfFile, token.Span.Length == 0);
                at = token.Span.End;
            }
        },
        iter: Iterations);

    [Fact]
    public void Every_node_lies_inside_its_parent_and_behind_its_elder() => Texts.Any.Sample(
        text =>
        {
            var tree = Read.Tree(text);
            Inside(tree.Root.Statements, tree.Root.Span);
        },
        iter: Iterations);

    [Fact]
    public void Every_token_that_means_nothing_and_every_error_is_answered() => Texts.Any.Sample(
        text =>
        {
            var tree = Read.Tree(text);

            var isBroken = tree.Tokens.Any(token => token.Kind == TokenKind.Bad) || HasError(tree.Root.Statements);
            Assert.True(!isBroken || tree.Findings.Length > 0);
            Assert.True(isBroken || tree.Findings.All(finding => OfReadableText.Contains(finding.Descriptor.Code)));
            Assert.All(tree.Findings, finding => Assert.InRange(finding.Where.Span.End, finding.Where.Span.Start, text.Length));
            Assert.Equal(tree.Findings.Order(Comparer<Finding>.Create(Finding.Compare)), tree.Findings);
        },
        iter: Iterations);

    [Fact]
    public void Laying_out_twice_changes_nothing() => Texts.Any.Sample(
        text =>
        {
            var once = Read.Format(text);
            Assert.Equal(once, Read.Format(once));
        },
        iter: Iterations);

    [Fact]
    public void Laying_out_keeps_every_token_and_every_comment() => Texts.Any.Sample(
        text =>
        {
            var laidOut = Read.Format(text);

            Assert.Equal(Tokens(text, comments: false), Tokens(laidOut, comments: false));
            Assert.Equal(Tokens(text, comments: true), Tokens(laidOut, comments: true));
        },
        iter: Iterations);

    [Fact]
    public void Laying_out_keeps_the_meaning() => Texts.Any.Sample(
        text => Assert.Equal(Shape(Read.Tree(text)), Shape(Read.Tree(Read.Format(text)))),
        iter: Iterations);

    [Fact]
    public void Every_fix_can_be_applied() => Texts.Any.Sample(
        text => Assert.All(
            Read.Tree(text).Findings.SelectMany(finding => finding.Fixes),
            fix => Read.Tree(TextEdit.Apply(fix.Edits[0].Where.Source, fix.Edits))),
        iter: Iterations);

    private static void Inside(IEnumerable<SyntaxNode> nodes, TextSpan parent)
    {
        var at = parent.Start;
        foreach (var node in nodes)
        {
            Assert.InRange(node.Span.Start, at, parent.End);
            Assert.InRange(node.Span.End, node.Span.Start, parent.End);
            at = node.Span.End;
            Inside(Children(node), node.Span);
        }
    }

    private static IEnumerable<SyntaxNode> Children(SyntaxNode node) => node switch
    {
        EntrySyntax entry => [entry.Head, .. entry.Values, .. Block(entry.Block)],
        LetSyntax let => [let.Name, let.Value],
        ErrorSyntax error => error.Entry is { } entry ? [entry] : Block(error.Block),
        BlockSyntax block => block.Statements,
        CompoundSyntax compound => compound.Parts,
        SignedSyntax signed => [signed.Quantity],
        PlusMinusSyntax plusMinus => [plusMinus.Quantity],
        RatioSyntax ratio => ratio.Parts,
        RangeSyntax range => [range.Low, range.High],
        ToleranceSyntax tolerance => [tolerance.Value, tolerance.Tolerance],
        ParenthesisSyntax parenthesis => [parenthesis.Inner],
        BinarySyntax binary => [binary.Left, binary.Right],
        NegateSyntax negate => [negate.Operand],
        _ => [],
    };

    private static IEnumerable<SyntaxNode> Block(BlockSyntax? block) => block is null ? [] : [block];

    private static bool HasError(IEnumerable<StatementSyntax> statements) => statements.Any(statement => statement switch
    {
        ErrorSyntax => true,
        EntrySyntax { Block: { } block } => HasError(block.Statements),
        _ => false,
    });

    internal static IEnumerable<(TokenKind Kind, string Text)> Tokens(string text, bool comments) =>
        from token in Read.Tree(text).Tokens
        where token.Kind == TokenKind.Comment == comments && token.Kind is not (TokenKind.Blank or TokenKind.LineEnd or TokenKind.Semicolon)
        select (token.Kind, text.Substring(token.Span.Start, token.Span.Length).TrimEnd(' ', '\t').Replace('\u00d7', 'x').Replace("\u00b1", "+/-"));

    /// <summary>The printed tree without its places.</summary>
    internal static string Shape(SyntaxTree tree) =>
        string.Join('\n', TreePrinter.Print(tree).Split('\n').Select(line => line.TrimStart().StartsWith("Error ", StringComparison.Ordinal)
            ? line[..(line.IndexOf("Error ", StringComparison.Ordinal) + 5)]
            : line[..Math.Max(0, line.LastIndexOf("  ", StringComparison.Ordinal))]));
}
