using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Says why a line could not be read, from the token at which reading stopped and the one before it.</summary>
internal sealed class Diagnosis
{
    private readonly SourceText _source;
    private readonly ImmutableArray<Token> _tokens;
    private readonly ErrorSyntax _error;

    // Tokens of the line that count, up to the trouble.
    private readonly List<Token> _before = [];
    private readonly TokenKind _kind;

    private Diagnosis(SourceText source, ImmutableArray<Token> tokens, ErrorSyntax error)
    {
        _source = source;
        _tokens = tokens;
        _error = error;
        for (var i = TokenSearch.At(tokens, error.Span.Start); i < tokens.Length && tokens[i].Span.Start < error.Trouble.Start; i++)
        {
            if (tokens[i].Kind is not (TokenKind.Blank or TokenKind.Comment or TokenKind.LineEnd))
            {
                _before.Add(tokens[i]);
            }
        }

        _kind = error.Trouble.Length == 0 ? TokenKind.LineEnd : tokens[TokenSearch.At(tokens, error.Trouble.Start)].Kind;
    }

    private bool IsLet => _error.Entry is null && _before.Count > 0 && Text(_before[0]) == "let";

    /// <summary>The one finding of an unreadable line.</summary>
    public static Finding Of(SourceText source, ImmutableArray<Token> tokens, ErrorSyntax error)
    {
        var diagnosis = new Diagnosis(source, tokens, error);
        return diagnosis.AtStart() ?? diagnosis.OfLet() ?? diagnosis.OfValue() ?? UnreadableLine.Create(diagnosis.At(error.Trouble));
    }

    private Finding? AtStart()
    {
        if (_before.Count > 0)
        {
            return null;
        }

        return _kind switch
        {
            TokenKind.CloseBrace => StrayBrace.Create(At(_error.Trouble)),
            TokenKind.OpenBrace => HeadlessBlock.Create(At(_error.Trouble)),
            TokenKind.CloseParenthesis => StrayParenthesis.Create(At(_error.Trouble)),
            _ => LineWithoutWord.Create(At(_error.Trouble)),
        };
    }

    private Finding? OfLet()
    {
        if (!IsLet)
        {
            return _kind == TokenKind.EqualsSign
                ? EqualsWithoutLet.Create(At(_error.Trouble), At(_before[0].Span), canBeLet: _before.Count == 1 && _error.Block is null)
                : null;
        }

        return _before.Count switch
        {
            1 when _kind != TokenKind.Word => IncompleteLet.Create(At(_error.Trouble), isEqualsMissing: false),
            2 when _kind != TokenKind.EqualsSign => IncompleteLet.Create(At(_error.Trouble), isEqualsMissing: true),
            _ => null,
        };
    }

    private Finding? OfValue()
    {
        var last = _before[^1];
        if (last.Kind is TokenKind.OpenParenthesis or TokenKind.Plus or TokenKind.Minus or TokenKind.Star or TokenKind.Slash
            or TokenKind.PlusMinus or TokenKind.Colon or TokenKind.EqualsSign)
        {
            return UnfinishedValue.Create(At(_error.Trouble), At(last.Span));
        }

        var open = OpenParenthesis();
        if (open is { } parenthesis && !IsClosedLater())
        {
            return UnclosedParenthesis.Create(At(parenthesis.Span), At(new TextSpan(_error.SkippedSpan.End, 0)));
        }

        return _kind switch
        {
            TokenKind.Slash when BehindValue is PairSyntax { Unit: null } => UnreadableLine.OfThirdNumber(At(_error.Trouble)),
            TokenKind.CloseParenthesis when open is null => StrayParenthesis.Create(At(_error.Trouble)),
            TokenKind.Star or TokenKind.Slash or TokenKind.Plus or TokenKind.Minus when open is null && !IsLet =>
                BareArithmetic.Create(At(_error.Trouble), Arithmetic()),
            _ => null,
        };
    }

    /// <summary>The innermost parenthesis that is open at the trouble.</summary>
    private Token? OpenParenthesis()
    {
        var open = new Stack<Token>();
        foreach (var token in _before)
        {
            if (token.Kind == TokenKind.OpenParenthesis)
            {
                open.Push(token);
            }
            else if (token.Kind == TokenKind.CloseParenthesis)
            {
                open.TryPop(out _);
            }
        }

        return open.TryPeek(out var innermost) ? innermost : null;
    }

    private bool IsClosedLater()
    {
        for (var i = TokenSearch.At(_tokens, _error.Trouble.Start); _error.Trouble.Length > 0 && _tokens[i].Span.Start < _error.SkippedSpan.End; i++)
        {
            if (_tokens[i].Kind == TokenKind.CloseParenthesis)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The value directly behind which reading stopped; null when it stopped inside one.</summary>
    private ValueSyntax? BehindValue => _error.Entry is { Values: [.., var value] } && _error.SkippedSpan.Start == _error.Trouble.Start ? value : null;

    /// <summary>From the value before the trouble to the end of what was skipped.</summary>
    private SourceSpan? Arithmetic() => BehindValue is { } left ? At(left.Span.Union(_error.SkippedSpan)) : null;

    private string Text(Token token) => _source.Slice(token.Span);

    private SourceSpan At(TextSpan span) => new(_source, span);
}
