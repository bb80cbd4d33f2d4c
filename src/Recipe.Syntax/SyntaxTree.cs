using System.Collections.Immutable;
using Recipe.Syntax.Findings;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax;

/// <summary>A parsed text: its tokens, which tile it, its tree, and what could not be read. Parsing never fails.</summary>
public sealed class SyntaxTree
{
    private SyntaxTree(SourceText source, ImmutableArray<Token> tokens, FileSyntax root, ImmutableArray<Finding> findings)
    {
        Source = source;
        Tokens = tokens;
        Root = root;
        Findings = findings;
    }

    /// <summary>The text.</summary>
    public SourceText Source { get; }

    /// <summary>Every character of the text, in order; the end of the file comes last and is empty.</summary>
    public ImmutableArray<Token> Tokens { get; }

    /// <summary>The tree.</summary>
    public FileSyntax Root { get; }

    /// <summary>What could not be read, in the order of the text.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Parses a text, whatever it is.</summary>
    public static SyntaxTree Parse(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var (tokens, findings) = Lexer.Run(source);
        var statements = Grammar.Parse(Significant(source, tokens));
        var root = new FileSyntax(statements, new TextSpan(0, source.Length));
        TroubleCollector.Collect(source, statements, findings);
        findings.Sort(Finding.Compare);
        return new SyntaxTree(source, tokens, root, [.. findings]);
    }

    /// <summary>The text again, put together from the tokens.</summary>
    public string ToText() => string.Concat(Tokens.Select(token => Source.Slice(token.Span)));

    private static Symbol[] Significant(SourceText source, ImmutableArray<Token> tokens)
    {
        var symbols = new List<Symbol>(tokens.Length);
        var parentheses = 0;
        foreach (var token in tokens)
        {
            switch (token.Kind)
            {
                case TokenKind.Blank or TokenKind.Comment:
                    continue;
                case TokenKind.LineEnd or TokenKind.Semicolon when parentheses > 0 && ClosesLater(tokens, token):
                    continue;
                case TokenKind.Semicolon:
                    symbols.Add(new Symbol(TokenKind.LineEnd, token, ""));
                    continue;
                case TokenKind.OpenParenthesis:
                    parentheses++;
                    break;
                case TokenKind.CloseParenthesis:
                    parentheses = Math.Max(0, parentheses - 1);
                    break;
                case TokenKind.OpenBrace or TokenKind.CloseBrace or TokenKind.LineEnd:
                    // An unclosed parenthesis must not swallow the lines that follow it.
                    parentheses = 0;
                    break;
            }

            var text = token.Kind is TokenKind.Word or TokenKind.Number or TokenKind.String or TokenKind.Date ? source.Slice(token.Span) : "";
            if (text == "\u00d7")
            {
                text = "x";
            }

            var starts = symbols.Count == 0 || symbols[^1].Kind is TokenKind.LineEnd or TokenKind.OpenBrace or TokenKind.CloseBrace;
            symbols.Add(new Symbol(token.Kind == TokenKind.Word && starts && text == "let" ? Grammar.TokenKindLet : token.Kind, token, text));
        }

        return [.. symbols];
    }

    /// <summary>Whether the parenthesis that is open at a line end is closed before any brace.</summary>
    private static bool ClosesLater(ImmutableArray<Token> tokens, Token lineEnd)
    {
        var open = 1;
        for (var i = tokens.BinarySearch(lineEnd, ByStart.Instance) + 1; i < tokens.Length; i++)
        {
            switch (tokens[i].Kind)
            {
                case TokenKind.OpenParenthesis:
                    open++;
                    break;
                case TokenKind.CloseParenthesis when --open == 0:
                    return true;
                case TokenKind.OpenBrace or TokenKind.CloseBrace or TokenKind.EndOfFile:
                    return false;
            }
        }

        return false;
    }

    private sealed class ByStart : IComparer<Token>
    {
        public static readonly ByStart Instance = new();

        public int Compare(Token x, Token y) => x.Span.Start.CompareTo(y.Span.Start);
    }
}
