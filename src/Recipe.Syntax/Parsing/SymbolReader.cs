using System.Collections.Immutable;
using Recipe.Syntax.Findings;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Parsing;

/// <summary>
/// Turns tokens into the symbols of the grammar: drops blanks and comments and the line ends inside parentheses, joins numbers with
/// their units, and bounds the nesting, because the grammar's recursion is as deep as the nesting and a stack that overflows
/// cannot be caught.
/// </summary>
internal sealed class SymbolReader
{
    /// <summary>Deepest nesting of braces and parentheses, and most operators in one expression, that are read.</summary>
    internal const int Limit = 100;

    private readonly SourceText _source;
    private readonly string _text;
    private readonly ImmutableArray<Token> _tokens;
    private readonly List<Finding> _findings;
    private readonly NumberReader _numbers;
    private readonly Neighbours _neighbours;
    private Dictionary<int, int>? _parentheses;

    // Index of the token that closes the outermost open parenthesis; line ends before it are blanks.
    private int _insideUntil = -1;
    private int _braces;
    private int _openParentheses;
    private int _operators;
    private bool _isLet;

    private SymbolReader(SourceText source, ImmutableArray<Token> tokens, List<Finding> findings)
    {
        _source = source;
        _text = source.Text;
        _tokens = tokens;
        _findings = findings;
        _numbers = new NumberReader(source, findings);
        _neighbours = new Neighbours(tokens.Length);
    }

    /// <summary>The symbols, <see cref="SymbolKind.End"/> last, with every brace in its pair.</summary>
    public static List<Symbol> Run(SourceText source, ImmutableArray<Token> tokens, List<Finding> findings)
    {
        var reader = new SymbolReader(source, tokens, findings);
        for (var i = 0; i < tokens.Length; i++)
        {
            i = reader.Read(i);
        }

        reader._neighbours.SettleRanges();
        return BraceMatcher.Match(source, reader._neighbours.Symbols);
    }

    /// <summary>Reads the token with this index; the answer is the index of the last token that was used up.</summary>
    private int Read(int i)
    {
        var token = _tokens[i];
        switch (token.Kind)
        {
            case TokenKind.Blank or TokenKind.Comment:
                return i;
            case TokenKind.LineEnd when i < _insideUntil:
                return i;
            case TokenKind.LineEnd or TokenKind.Semicolon:
                EndLine();
                _neighbours.AddSeparator(token.Span, isLineEnd: token.Kind == TokenKind.LineEnd);
                return i;
            case TokenKind.Word:
                Word(token);
                return i;
            case TokenKind.Number:
                return Number(i);
            case TokenKind.Unit:
                _neighbours.Add(new Symbol(SymbolKind.Unit, token.Span, token.Unit));
                return i;
            case TokenKind.String:
                _neighbours.Add(new Symbol(SymbolKind.Text, token.Span, Leaves.Text(_text, token.Span)));
                return i;
            case TokenKind.Date:
                _neighbours.Add(new Symbol(SymbolKind.Date, token.Span, Leaves.Date(_text, token.Span)));
                return i;
            case TokenKind.PlusMinus:
                _neighbours.AddPlusMinus(token.Span);
                return i;
            case TokenKind.Plus or TokenKind.Minus or TokenKind.Star or TokenKind.Slash:
                return Operator(i);
            case TokenKind.OpenParenthesis:
                return OpenParenthesis(i);
            case TokenKind.CloseParenthesis:
                _openParentheses = Math.Max(0, _openParentheses - 1);
                Add(SymbolKind.CloseParenthesis, token);
                return i;
            case TokenKind.OpenBrace:
                return OpenBrace(i);
            case TokenKind.CloseBrace:
                EndLine();
                _braces = Math.Max(0, _braces - 1);
                Add(SymbolKind.CloseBrace, token);
                return i;
            case TokenKind.Colon:
                Add(SymbolKind.Colon, token);
                return i;
            case TokenKind.EqualsSign:
                Add(SymbolKind.EqualsSign, token);
                return i;
            case TokenKind.EndOfFile:
                Add(SymbolKind.End, token);
                return i;
            default:
                Add(SymbolKind.Bad, token);
                return i;
        }
    }

    private void Add(SymbolKind kind, Token token) => _neighbours.Add(new Symbol(kind, token.Span));

    private void EndLine()
    {
        _insideUntil = -1;
        _openParentheses = 0;
        _operators = 0;
        _isLet = false;
    }

    private void Word(Token token)
    {
        var word = Leaves.Word(_text, token.Span);
        if (word.Text == "let" && _neighbours.AtLineStart)
        {
            _isLet = true;
            _neighbours.Add(new Symbol(SymbolKind.Let, token.Span, word));
        }
        else
        {
            _neighbours.AddWord(word);
        }
    }

    private int Number(int i)
    {
        var number = _tokens[i].Span;
        if (!(_isLet || _openParentheses > 0) && OtherDate.TryRead(_text, number.Start, out var length, out var days))
        {
            return DateInAnotherOrder(i, new TextSpan(number.Start, length), days);
        }

        var last = i;
        if (_tokens[i + 1].Kind == TokenKind.Unit)
        {
            last = i + 1;
        }
        else if (_tokens[i + 1].Kind == TokenKind.Blank && _tokens[i + 2].Kind == TokenKind.Unit)
        {
            last = i + 2;
        }

        var unit = last > i ? _tokens[last] : default(Token?);
        var span = TextSpan.FromBounds(number.Start, _tokens[last].Span.End);
        if (_numbers.TryRead(number, out var value))
        {
            _neighbours.AddNumber(new QuantitySyntax(value, number, unit?.Unit, unit?.Span, span), isInExpression: _isLet || _openParentheses > 0);
        }
        else
        {
            _neighbours.Add(new Symbol(SymbolKind.Bad, span));
        }

        return last;
    }

    /// <summary>A date that is one day only is read; of the others the finding says enough.</summary>
    private int DateInAnotherOrder(int i, TextSpan span, IReadOnlyList<DateOnly> days)
    {
        _findings.Add(DateOrder.Create(new SourceSpan(_source, span), days));
        _neighbours.Add(new Symbol(SymbolKind.Date, span, new DateSyntax(days.Count == 1 ? days[0] : DateOnly.MinValue, span)));
        var last = i;
        while (_tokens[last].Span.End < span.End)
        {
            last++;
        }

        return last;
    }

    private int Operator(int i)
    {
        var token = _tokens[i];
        if (token.Kind == TokenKind.Plus && _tokens[i + 1].Kind == TokenKind.Minus && token.Span.End == _tokens[i + 1].Span.Start && !_isLet && _openParentheses == 0)
        {
            var both = token.Span.Union(_tokens[i + 1].Span);
            _findings.Add(PlusMinusWithoutSlash.Create(new SourceSpan(_source, both)));
            _neighbours.AddPlusMinus(both);
            return i + 1;
        }

        if ((_isLet || _openParentheses > 0) && ++_operators > Limit)
        {
            return TooDeep(i, _insideUntil >= 0 ? _insideUntil : LastOfLine(i));
        }

        Add(
            token.Kind switch
            {
                TokenKind.Plus => SymbolKind.Plus,
                TokenKind.Minus => SymbolKind.Minus,
                TokenKind.Star => SymbolKind.Star,
                _ => SymbolKind.Slash,
            },
            token);
        return i;
    }

    private int OpenParenthesis(int i)
    {
        if (_openParentheses == 0)
        {
            _parentheses ??= ParenthesisPairs.Find(_tokens);
            _insideUntil = _parentheses.GetValueOrDefault(i, -1);
            _operators = _isLet ? _operators : 0;
        }

        if (_braces + _openParentheses >= Limit)
        {
            return TooDeep(i, _insideUntil >= 0 ? _insideUntil : LastOfLine(i));
        }

        _openParentheses++;
        Add(SymbolKind.OpenParenthesis, _tokens[i]);
        return i;
    }

    private int OpenBrace(int i)
    {
        EndLine();
        if (_braces >= Limit)
        {
            return TooDeep(i, CloserOf(i));
        }

        _braces++;
        _neighbours.AddOpenBrace(_tokens[i].Span);
        return i;
    }

    private int TooDeep(int first, int last)
    {
        var span = _tokens[first].Span.Union(_tokens[last].Span);
        _findings.Add(NestedTooDeep.Create(new SourceSpan(_source, _tokens[first].Span)));
        _neighbours.Add(new Symbol(SymbolKind.TooDeep, span));
        _openParentheses = 0;
        _insideUntil = -1;
        return last;
    }

    /// <summary>The last token before the line ends, a brace or the end of the text.</summary>
    private int LastOfLine(int i)
    {
        var last = i;
        while (_tokens[last + 1].Kind is not (TokenKind.LineEnd or TokenKind.Semicolon or TokenKind.OpenBrace or TokenKind.CloseBrace
            or TokenKind.Comment or TokenKind.EndOfFile))
        {
            last++;
        }

        return last;
    }

    /// <summary>The brace that closes this one, or the last token of the text.</summary>
    private int CloserOf(int i)
    {
        var depth = 0;
        for (var at = i; _tokens[at].Kind != TokenKind.EndOfFile; at++)
        {
            depth += _tokens[at].Kind switch { TokenKind.OpenBrace => 1, TokenKind.CloseBrace => -1, _ => 0 };
            if (depth == 0)
            {
                return at;
            }
        }

        return _tokens.Length - 2;
    }
}
