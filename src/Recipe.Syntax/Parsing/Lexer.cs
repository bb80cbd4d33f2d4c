using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using Recipe.Syntax.Findings;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Syntax.Parsing;

/// <summary>Cuts a text into tokens that tile it: every character belongs to exactly one token, and the end of the file comes last.</summary>
internal sealed class Lexer
{
    private readonly SourceText _source;
    private readonly string _text;
    private readonly List<Finding> _findings;
    private readonly UnitReader _units = new();
    private Token[] _tokens;
    private int _count;
    private int _at;

    // A unit may stand here: the last token that is no blank was a number or a closing parenthesis.
    private bool _unitMayFollow;

    private Lexer(SourceText source, List<Finding> findings)
    {
        _source = source;
        _text = source.Text;
        _findings = findings;
        _tokens = ArrayPool<Token>.Shared.Rent((_text.Length / 2) + 8);
    }

    /// <summary>All tokens. What is wrong with a single token goes to <paramref name="findings"/>, that of numbers aside.</summary>
    public static ImmutableArray<Token> Run(SourceText source, List<Finding> findings)
    {
        var lexer = new Lexer(source, findings);
        while (lexer._at < lexer._text.Length)
        {
            lexer.Next();
        }

        lexer.Add(TokenKind.EndOfFile, lexer._at);
        if (NotUtf8.In(source) is { } lost)
        {
            findings.Add(lost);
        }

        var tokens = ImmutableArray.Create(lexer._tokens.AsSpan(0, lexer._count));
        ArrayPool<Token>.Shared.Return(lexer._tokens, clearArray: true);
        return tokens;
    }

    private void Next()
    {
        var start = _at;
        var c = _text[_at];
        if (_unitMayFollow && _units.TryRead(_text, _at, out var length, out var unit))
        {
            _at += length;
            Append(new Token(TokenKind.Unit, new TextSpan(start, length), unit));
            _unitMayFollow = false;
        }
        else if (Characters.StartsWord(c))
        {
            _at = Characters.EndOfWord(_text, _at);
            Add(TokenKind.Word, start);
        }
        else if (char.IsAsciiDigit(c) || (c == '.' && char.IsAsciiDigit(Peek(1))))
        {
            NumberOrDate(start);
        }
        else
        {
            Symbol(c, start);
        }
    }

    private void Add(TokenKind kind, int start)
    {
        Append(new Token(kind, TextSpan.FromBounds(start, _at)));
        if (kind != TokenKind.Blank)
        {
            _unitMayFollow = kind is TokenKind.Number or TokenKind.CloseParenthesis;
        }
    }

    private void Append(Token token)
    {
        if (_count == _tokens.Length)
        {
            var larger = ArrayPool<Token>.Shared.Rent(_count * 2);
            _tokens.AsSpan().CopyTo(larger);
            ArrayPool<Token>.Shared.Return(_tokens, clearArray: true);
            _tokens = larger;
        }

        _tokens[_count++] = token;
    }

    private char Peek(int ahead) => _at + ahead < _text.Length ? _text[_at + ahead] : '\0';

    private SourceSpan From(int start) => new(_source, TextSpan.FromBounds(start, _at));

    private void NumberOrDate(int start)
    {
        if (Characters.IsDate(_text, _at))
        {
            _at += Characters.DateLength;
            Add(TokenKind.Date, start);
            var date = _text.AsSpan(start, Characters.DateLength);
            if (!DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            {
                _findings.Add(UnknownDate.Create(From(start)));
            }

            return;
        }

        // Points and commas between digits stay in one token, so that a number written in another manner is answered as a whole.
        while (char.IsAsciiDigit(Peek(0)) || (Peek(0) is '.' or ',' && char.IsAsciiDigit(Peek(1))))
        {
            _at++;
        }

        if (Peek(0) is 'e' or 'E' && (char.IsAsciiDigit(Peek(1)) || (Peek(1) is '+' or '-' && char.IsAsciiDigit(Peek(2)))))
        {
            _at += 2;
            while (char.IsAsciiDigit(Peek(0)))
            {
                _at++;
            }
        }

        Add(TokenKind.Number, start);
        InchOrFoot();
    }

    /// <summary>The mark of inches or feet that stands behind a number at once: read as the unit it means, so that the rest of the line can be read.</summary>
    private void InchOrFoot()
    {
        if (InchMark.Read(_text, _at) is not { } mark)
        {
            return;
        }

        var start = _at;
        _at += mark.Length;
        Append(new Token(TokenKind.Unit, TextSpan.FromBounds(start, _at), UnitTable.Get(mark.Unit)));
        _unitMayFollow = false;
        _findings.Add(InchMark.Create(From(start), _source.Slice(_tokens[_count - 2].Span), mark.Unit));
    }

    private void Symbol(char c, int start)
    {
        _at++;
        switch (c)
        {
            case '\r' when Peek(0) == '\n':
                _at++;
                Add(TokenKind.LineEnd, start);
                break;
            case '\n' or '\r':
                Add(TokenKind.LineEnd, start);
                break;
            case '\ufeff' when start == 0:
                Add(TokenKind.Blank, start);
                break;
            case '#':
                var comment = _text.AsSpan(_at).IndexOfAny('\n', '\r');
                _at = comment < 0 ? _text.Length : _at + comment;
                Add(TokenKind.Comment, start);
                break;
            case '"':
                String(start);
                break;
            case '+' when Peek(0) == '/' && Peek(1) == '-':
                _at += 2;
                Add(TokenKind.PlusMinus, start);
                break;
            default:
                if (Characters.IsBlank(c))
                {
                    while (Characters.IsBlank(Peek(0)))
                    {
                        _at++;
                    }

                    Add(TokenKind.Blank, start);
                }
                else if (Characters.Symbol(c) is { } kind)
                {
                    Add(kind, start);
                }
                else
                {
                    BadRun(start);
                }

                break;
        }
    }

    private void BadRun(int start)
    {
        if (MoneySign.CodeOf(_text[start]) is not null && Money(start))
        {
            return;
        }

        while (_at < _text.Length && Characters.MeansNothing(_text, _at) && MoneySign.CodeOf(_text[_at]) is null)
        {
            _at++;
        }

        Add(TokenKind.Bad, start);
        if (!NotUtf8.IsAll(_text.AsSpan(start, _at - start)))
        {
            _findings.Add(BadCharacter.Create(From(start)));
        }
    }

    /// <summary>
    /// The sign of a currency, with the number behind it when there is one. Behind a number it stands where its code would, and is read as that.
    /// </summary>
    /// <returns>False for one that stands alone, which is a slip of the finger.</returns>
    private bool Money(int start)
    {
        if (_unitMayFollow && UnitTable.TryRead(MoneySign.CodeOf(_text[start]) + UnitAfter(_at), out var read, out var unit))
        {
            Append(new Token(TokenKind.Unit, new TextSpan(start, read - 2), unit));
            _unitMayFollow = false;
            _findings.Add(MoneySign.Create(From(start)));
            _at = start + read - 2;
            return true;
        }

        var number = _at;
        while (number < _text.Length && Characters.IsBlank(_text[number]))
        {
            number++;
        }

        if (number >= _text.Length || !(char.IsAsciiDigit(_text[number]) || _text[number] is '.'))
        {
            return false;
        }

        while (number < _text.Length && (char.IsAsciiDigit(_text[number]) || (_text[number] is '.' or ',' && number + 1 < _text.Length && char.IsAsciiDigit(_text[number + 1]))))
        {
            _at = ++number;
        }

        Add(TokenKind.Bad, start);
        _findings.Add(MoneySign.Create(From(start)));
        return true;
    }

    /// <summary>What follows a sign and may belong to its unit: <c>/yd2</c>. No unit is longer.</summary>
    private string UnitAfter(int at) => _text.Substring(at, Math.Min(24, _text.Length - at));

    private void String(int start)
    {
        while (_at < _text.Length && _text[_at] is not ('\n' or '\r'))
        {
            var c = _text[_at];
            if (c == '\\' && Peek(1) is '"' or '\\')
            {
                _at += 2;
                continue;
            }

            _at++;
            if (c == '"')
            {
                Add(TokenKind.String, start);
                return;
            }

            if (c == '\\')
            {
                _findings.Add(UnknownEscape.Create(new SourceSpan(_source, new TextSpan(_at - 1, 1))));
            }
        }

        Add(TokenKind.String, start);
        _findings.Add(UnclosedText.Create(From(start)));
    }
}
