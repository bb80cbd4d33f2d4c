using System.Collections.Immutable;
using System.Globalization;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;
using Recipe.Syntax.Findings;

namespace Recipe.Syntax;

/// <summary>Cuts a text into tokens that tile it: every character belongs to exactly one token.</summary>
internal sealed class Lexer
{
    /// <summary>Deepest nesting of braces and parentheses that is read; deeper openers become bad tokens.</summary>
    internal const int DeepestNesting = 100;

    private readonly SourceText _source;
    private readonly string _text;
    private readonly ImmutableArray<Token>.Builder _tokens = ImmutableArray.CreateBuilder<Token>();
    private readonly List<Finding> _findings = [];
    private int _at;
    private int _depth;
    private int _refused;
    private TokenKind _before = TokenKind.EndOfFile;

    private Lexer(SourceText source)
    {
        _source = source;
        _text = source.Text;
    }

    public static (ImmutableArray<Token> Tokens, List<Finding> Findings) Run(SourceText source)
    {
        var lexer = new Lexer(source);
        lexer.Run();
        return (lexer._tokens.ToImmutable(), lexer._findings);
    }

    private void Run()
    {
        while (_at < _text.Length)
        {
            var start = _at;
            var (kind, unit) = Next();
            var span = TextSpan.FromBounds(start, _at);
            if (kind == TokenKind.Bad && _tokens.Count > 0 && _tokens[^1] is { Kind: TokenKind.Bad } last && last.Span.End == start)
            {
                _tokens[^1] = new Token(TokenKind.Bad, last.Span.Union(span));
            }
            else
            {
                _tokens.Add(new Token(kind, span, unit));
            }

            if (kind != TokenKind.Blank)
            {
                _before = kind;
            }
        }

        foreach (var token in _tokens)
        {
            if (token.Kind == TokenKind.Bad && _text[token.Span.Start] is not ('{' or '(' or '}' or ')'))
            {
                _findings.Add(BadCharacter.Create(new SourceSpan(_source, token.Span)));
            }
        }

        _tokens.Add(new Token(TokenKind.EndOfFile, new TextSpan(_text.Length, 0)));
    }

    private (TokenKind Kind, Unit? Unit) Next()
    {
        var c = _text[_at];
        if (_before is TokenKind.Number or TokenKind.CloseParenthesis && UnitTable.TryRead(_text.AsSpan(_at), out var length, out var unit))
        {
            _at += length;
            return (TokenKind.Unit, unit);
        }

        if (char.IsAsciiLetter(c) || c == '_' || (c > '\x7f' && char.IsLetter(c)))
        {
            return (Word(), null);
        }

        if (char.IsAsciiDigit(c))
        {
            return (NumberOrDate(), null);
        }

        return (Symbol(c), null);
    }

    private TokenKind Word()
    {
        _at++;
        while (_at < _text.Length && (IsWordCharacter(_text[_at]) || (_text[_at] == '-' && _at + 1 < _text.Length && IsWordCharacter(_text[_at + 1]))))
        {
            _at++;
        }

        return TokenKind.Word;
    }

    private static bool IsWordCharacter(char c) => char.IsLetterOrDigit(c) || c == '_';

    private TokenKind NumberOrDate()
    {
        if (IsDate(_text.AsSpan(_at)))
        {
            var span = new TextSpan(_at, 10);
            _at += 10;
            if (!DateOnly.TryParseExact(_text.AsSpan(span.Start, 10), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            {
                _findings.Add(UnknownDate.Create(new SourceSpan(_source, span)));
            }

            return TokenKind.Date;
        }

        var start = _at;
        Digits();
        if (Peek(0) == '.' && char.IsAsciiDigit(Peek(1)))
        {
            _at++;
            Digits();
        }
        else if (Peek(0) == ',' && char.IsAsciiDigit(Peek(1)))
        {
            _at++;
            Digits();
            _findings.Add(DecimalComma.Create(new SourceSpan(_source, TextSpan.FromBounds(start, _at))));
        }

        if (Peek(0) is 'e' or 'E' && (char.IsAsciiDigit(Peek(1)) || (Peek(1) is '+' or '-' && char.IsAsciiDigit(Peek(2)))))
        {
            _at += 2;
            Digits();
        }

        return TokenKind.Number;
    }

    private static bool IsDate(ReadOnlySpan<char> text)
    {
        if (text.Length < 10 || text[4] != '-' || text[7] != '-' || (text.Length > 10 && (char.IsLetterOrDigit(text[10]) || text[10] == '-')))
        {
            return false;
        }

        for (var i = 0; i < 10; i++)
        {
            if (i is not (4 or 7) && !char.IsAsciiDigit(text[i]))
            {
                return false;
            }
        }

        return true;
    }

    private void Digits()
    {
        while (char.IsAsciiDigit(Peek(0)))
        {
            _at++;
        }
    }

    private char Peek(int ahead) => _at + ahead < _text.Length ? _text[_at + ahead] : '\0';

    private TokenKind Symbol(char c)
    {
        _at++;
        switch (c)
        {
            case '\n':
                return TokenKind.LineEnd;
            case '\r':
                _at += Peek(0) == '\n' ? 1 : 0;
                return TokenKind.LineEnd;
            case ' ' or '\t':
                while (Peek(0) is ' ' or '\t')
                {
                    _at++;
                }

                return TokenKind.Blank;
            case '\ufeff' when _at == 1:
                return TokenKind.Blank;
            case '#':
                while (_at < _text.Length && _text[_at] is not ('\n' or '\r'))
                {
                    _at++;
                }

                return TokenKind.Comment;
            case '"':
                return String();
            case '+' when Peek(0) == '/' && Peek(1) == '-':
                _at += 2;
                return TokenKind.PlusMinus;
            case '\u00b1':
                return TokenKind.PlusMinus;
            case '\u00d7':
                return TokenKind.Word;
            case '{':
                return Open(TokenKind.OpenBrace);
            case '(':
                return Open(TokenKind.OpenParenthesis);
            case '}':
                return Close(TokenKind.CloseBrace);
            case ')':
                return Close(TokenKind.CloseParenthesis);
            default:
                return c switch
                {
                    ':' => TokenKind.Colon,
                    ';' => TokenKind.Semicolon,
                    '=' => TokenKind.EqualsSign,
                    '+' => TokenKind.Plus,
                    '-' => TokenKind.Minus,
                    '*' => TokenKind.Star,
                    '/' => TokenKind.Slash,
                    _ => TokenKind.Bad,
                };
        }
    }

    private TokenKind Open(TokenKind kind)
    {
        // The parser's recursion is as deep as the nesting; a stack that overflows cannot be caught, so depth is bounded here.
        if (_depth >= DeepestNesting)
        {
            if (_refused++ == 0)
            {
                _findings.Add(NestedTooDeep.Create(new SourceSpan(_source, new TextSpan(_at - 1, 1))));
            }

            return TokenKind.Bad;
        }

        _depth++;
        return kind;
    }

    private TokenKind Close(TokenKind kind)
    {
        if (_refused > 0)
        {
            _refused--;
            return TokenKind.Bad;
        }

        _depth = Math.Max(0, _depth - 1);
        return kind;
    }

    private TokenKind String()
    {
        var start = _at - 1;
        while (_at < _text.Length && _text[_at] is not ('\n' or '\r'))
        {
            if (_text[_at] == '\\' && Peek(1) is '"' or '\\')
            {
                _at += 2;
                continue;
            }

            if (_text[_at++] == '"')
            {
                return TokenKind.String;
            }
        }

        _findings.Add(UnclosedText.Create(new SourceSpan(_source, TextSpan.FromBounds(start, _at))));
        return TokenKind.String;
    }
}
