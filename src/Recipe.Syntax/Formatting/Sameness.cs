using System.Collections.Immutable;

namespace Recipe.Syntax.Formatting;

/// <summary>Whether two texts say the same apart from their layout.</summary>
internal static class Sameness
{
    /// <summary>
    /// Whether both have the same comments, the same other tokens but for blanks, line ends and semicolons, and the same lines and
    /// blocks. A brace that moves to the line above passes the comment behind that line.
    /// </summary>
    public static bool IsSame(SyntaxTree left, SyntaxTree right) =>
        Tokens(left, isComment: false).SequenceEqual(Tokens(right, isComment: false))
        && Tokens(left, isComment: true).SequenceEqual(Tokens(right, isComment: true))
        && AreSame(left.Root.Statements, right.Root.Statements);

    private static IEnumerable<(TokenKind Kind, string Text)> Tokens(SyntaxTree tree, bool isComment) =>
        from token in tree.Tokens
        where token.Kind == TokenKind.Comment == isComment && token.Kind is not (TokenKind.Blank or TokenKind.LineEnd or TokenKind.Semicolon)
        select (token.Kind, Spelling(tree.Source.Slice(token.Span), token.Kind));

    /// <summary>The sign that is plus and minus, and the one that means times, have two spellings each.</summary>
    private static string Spelling(string text, TokenKind kind) => kind switch
    {
        TokenKind.PlusMinus => "+/-",
        TokenKind.Word when text == "\u00d7" => "x",
        TokenKind.Comment => text.TrimEnd(' ', '\t'),
        _ => text,
    };

    private static bool AreSame(ImmutableArray<StatementSyntax> left, ImmutableArray<StatementSyntax> right)
    {
        if (left.Length != right.Length)
        {
            return false;
        }

        for (var i = 0; i < left.Length; i++)
        {
            var isSame = (left[i], right[i]) switch
            {
                (EntrySyntax one, EntrySyntax other) => AreSame(one, other),
                (LetSyntax one, LetSyntax other) => one.Value.GetType() == other.Value.GetType(),
                (ErrorSyntax one, ErrorSyntax other) => one.SkippedSpan.Length == other.SkippedSpan.Length && AreSame(one.Block, other.Block)
                    && (one.Entry is null ? other.Entry is null : other.Entry is not null && AreSame(one.Entry, other.Entry)),
                _ => false,
            };
            if (!isSame)
            {
                return false;
            }
        }

        return true;
    }

    private static bool AreSame(EntrySyntax left, EntrySyntax right) =>
        left.Values.Select(value => value.GetType()).SequenceEqual(right.Values.Select(value => value.GetType())) && AreSame(left.Block, right.Block);

    private static bool AreSame(BlockSyntax? left, BlockSyntax? right) =>
        left is null || right is null
            ? left is null && right is null
            : left.CloseBrace is null == right.CloseBrace is null && AreSame(left.Statements, right.Statements);
}
