using System.Collections.Immutable;

namespace Recipe.Syntax.Parsing;

/// <summary>Which parentheses belong together, so that one that is never closed does not swallow the lines that follow it.</summary>
internal static class ParenthesisPairs
{
    /// <summary>The index of the closing token for each opening one that has its partner before anything that no expression holds.</summary>
    public static Dictionary<int, int> Find(ImmutableArray<Token> tokens)
    {
        var pairs = new Dictionary<int, int>();
        var open = new Stack<int>();
        for (var i = 0; i < tokens.Length; i++)
        {
            switch (tokens[i].Kind)
            {
                case TokenKind.OpenParenthesis:
                    open.Push(i);
                    break;
                case TokenKind.CloseParenthesis when open.TryPop(out var partner):
                    pairs[partner] = i;
                    break;
                case TokenKind.OpenBrace or TokenKind.CloseBrace or TokenKind.Semicolon or TokenKind.EqualsSign
                    or TokenKind.String or TokenKind.Date or TokenKind.Colon:
                    open.Clear();
                    break;
            }
        }

        return pairs;
    }
}
