using Recipe.Text;

namespace Recipe.Syntax.Parsing;

/// <summary>
/// Gives every brace its partner, so that the grammar only ever sees whole blocks. Where braces are forgotten or too many, the
/// indentation tells which, provided that it accounts for every one of them; else blocks end with the text and strays are at the top level.
/// </summary>
internal sealed class BraceMatcher
{
    private readonly SourceText _source;
    private readonly List<Symbol> _symbols;

    private BraceMatcher(SourceText source, List<Symbol> symbols)
    {
        _source = source;
        _symbols = symbols;
    }

    /// <summary>The symbols with <see cref="SymbolKind.MissingBrace"/> added and <see cref="SymbolKind.StrayBrace"/> marked.</summary>
    public static List<Symbol> Match(SourceText source, List<Symbol> symbols)
    {
        var open = 0;
        var strays = 0;
        foreach (var symbol in symbols)
        {
            if (symbol.Kind == SymbolKind.OpenBrace)
            {
                open++;
            }
            else if (symbol.Kind == SymbolKind.CloseBrace)
            {
                strays += open == 0 ? 1 : 0;
                open = Math.Max(0, open - 1);
            }
        }

        if (open == 0 && strays == 0)
        {
            return symbols;
        }

        var matcher = new BraceMatcher(source, symbols);
        return (open == 0 || strays == 0 ? matcher.ByIndentation(open, strays) : null) ?? matcher.ByCounting();
    }

    /// <summary>Unmatched closers are strays, unmatched openers end with the text.</summary>
    private List<Symbol> ByCounting()
    {
        var result = new List<Symbol>(_symbols.Count + 8);
        var open = 0;
        foreach (var symbol in _symbols)
        {
            switch (symbol.Kind)
            {
                case SymbolKind.OpenBrace:
                    open++;
                    result.Add(symbol);
                    break;
                case SymbolKind.CloseBrace when open == 0:
                    result.Add(symbol with { Kind = SymbolKind.StrayBrace });
                    break;
                case SymbolKind.CloseBrace:
                    open--;
                    result.Add(symbol);
                    break;
                case SymbolKind.End:
                    result.AddRange(Enumerable.Repeat(Missing(symbol), open));
                    result.Add(symbol);
                    break;
                default:
                    result.Add(symbol);
                    break;
            }
        }

        return result;
    }

    /// <summary>
    /// A block of which braces are forgotten ends before a line that stands no deeper than the line that opened it; a closer
    /// that stands deeper than that line is the one too many. Null when this does not account for all of them.
    /// </summary>
    private List<Symbol>? ByIndentation(int missing, int strays)
    {
        var result = new List<Symbol>(_symbols.Count + missing);
        var openers = new Stack<int>();
        var lineColumn = 0;
        for (var i = 0; i < _symbols.Count; i++)
        {
            var symbol = _symbols[i];
            var startsLine = StartsLine(symbol);
            lineColumn = startsLine ? Column(symbol) : lineColumn;
            if (startsLine && symbol.Kind is not (SymbolKind.Separator or SymbolKind.End))
            {
                while (missing > 0 && openers.TryPeek(out var column)
                    && (symbol.Kind == SymbolKind.CloseBrace ? lineColumn < column : symbol.Kind != SymbolKind.OpenBrace && lineColumn <= column))
                {
                    openers.Pop();
                    missing--;
                    result.Add(Missing(symbol));
                }
            }

            switch (symbol.Kind)
            {
                case SymbolKind.OpenBrace:
                    openers.Push(lineColumn);
                    break;
                case SymbolKind.CloseBrace when openers.Count == 0
                    || (strays > 0 && startsLine && lineColumn != openers.Peek()):
                    symbol = symbol with { Kind = SymbolKind.StrayBrace };
                    strays--;
                    break;
                case SymbolKind.CloseBrace:
                    openers.Pop();
                    break;
                case SymbolKind.End:
                    missing -= openers.Count;
                    result.AddRange(Enumerable.Repeat(Missing(symbol), openers.Count));
                    break;
            }

            result.Add(symbol);
        }

        return missing == 0 && strays == 0 ? result : null;
    }

    private static Symbol Missing(Symbol before) => new(SymbolKind.MissingBrace, new TextSpan(before.Span.Start, 0));

    private bool StartsLine(Symbol symbol)
    {
        var at = symbol.Span.Start;
        while (at > 0 && Characters.IsBlank(_source.Text[at - 1]))
        {
            at--;
        }

        return at == 0 || _source.Text[at - 1] is '\n' or '\r' or '\ufeff';
    }

    /// <summary>The column as it is seen: a byte order mark takes none.</summary>
    private int Column(Symbol symbol)
    {
        var place = _source.PositionOf(symbol.Span.Start);
        return place.Line == 0 && _source.Text[0] == '\ufeff' ? place.Column - 1 : place.Column;
    }
}
