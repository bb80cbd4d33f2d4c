using System.Runtime.InteropServices;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Syntax.Parsing;

/// <summary>
/// The symbols read so far. Each new one is told apart by those beside it: a second quantity that adds up, the slash of a fraction,
/// the sign of a tolerance, the <c>to</c> of a range. The grammar then decides everything by one symbol.
/// </summary>
/// <param name="tokens">How many tokens there are; about half of them are blanks.</param>
internal sealed class Neighbours(int tokens)
{
    private readonly List<int> _tos = [];

    /// <summary>All of them.</summary>
    public List<Symbol> Symbols { get; } = new((tokens * 5 / 8) + 8);

    /// <summary>Whether a new line, entry or block starts here.</summary>
    public bool AtLineStart => Symbols.Count == 0
        || Last.Kind is SymbolKind.Separator or SymbolKind.OpenBrace or SymbolKind.CloseBrace;

    private Symbol Last => Symbols[^1];

    public void Add(Symbol symbol) => Symbols.Add(symbol);

    public void AddWord(WordSyntax word)
    {
        if (word.Text == "to" && Symbols.Count > 0
            && Last.Kind is SymbolKind.Number or SymbolKind.Quantity or SymbolKind.MoreQuantity or SymbolKind.Unit or SymbolKind.CloseParenthesis)
        {
            _tos.Add(Symbols.Count);
        }

        Symbols.Add(new Symbol(SymbolKind.Word, word.Span, word));
    }

    /// <summary>A line end or semicolon; of several in a row one is enough.</summary>
    public void AddSeparator(TextSpan span, bool isLineEnd)
    {
        if (Symbols.Count == 0 || Last.Kind != SymbolKind.Separator)
        {
            Symbols.Add(new Symbol(SymbolKind.Separator, span, isLineEnd ? null : ";"));
        }
        else if (!isLineEnd && Last.Content is null)
        {
            Symbols[^1] = new Symbol(SymbolKind.Separator, span, ";");
        }
    }

    /// <summary>An opening brace. On a line of its own it still belongs to the entry above it, and that is said later.</summary>
    public void AddOpenBrace(TextSpan span)
    {
        if (Symbols.Count > 1 && Last is { Kind: SymbolKind.Separator, Content: null }
            && Symbols[^2].Kind is not (SymbolKind.OpenBrace or SymbolKind.CloseBrace))
        {
            Symbols.RemoveAt(Symbols.Count - 1);
        }

        Symbols.Add(new Symbol(SymbolKind.OpenBrace, span));
    }

    /// <summary>The sign is that of a tolerance after a quantity, and opens a value of its own elsewhere: <c>0/90 +/-45 +/-30</c>.</summary>
    public void AddPlusMinus(TextSpan span)
    {
        var isTolerance = Symbols.Count > 0 && Last.Kind switch
        {
            SymbolKind.Quantity => Kind(2) is not (SymbolKind.PlusMinus or SymbolKind.Tolerance),
            SymbolKind.MoreQuantity or SymbolKind.Unit or SymbolKind.CloseParenthesis => true,
            SymbolKind.Number => Kind(2) is not (SymbolKind.PlusMinus or SymbolKind.Tolerance) && !EndsPairOrRatio(Symbols.Count - 1),
            _ => false,
        };
        Symbols.Add(new Symbol(isTolerance ? SymbolKind.Tolerance : SymbolKind.PlusMinus, span));
    }

    public void AddNumber(QuantitySyntax number, bool isInExpression)
    {
        if (number.Unit is not { } unit)
        {
            Symbols.Add(new Symbol(SymbolKind.Number, number.Span, number));
            return;
        }

        // Arithmetic divides with blanks round the slash, and a fraction has none: (1/2 mm) is half a millimetre, (1 / 2 mm) is 0.5/mm.
        if (Kind(1) == SymbolKind.Slash && Kind(2) == SymbolKind.Number && Kind(3) is not (SymbolKind.Slash or SymbolKind.FractionSlash)
            && (!isInExpression || (Symbols[^2].Span.End == Last.Span.Start && Last.Span.End == number.Span.Start)))
        {
            Symbols[^1] = Last with { Kind = SymbolKind.FractionSlash };
        }

        var kind = AddsUp(unit, isInExpression) ? SymbolKind.MoreQuantity : SymbolKind.Quantity;
        Symbols.Add(new Symbol(kind, number.Span, number));
    }

    /// <summary>
    /// Decides for each <c>to</c> after a number. It joins two ends into a range when the left one has no unit, or when both have a
    /// unit in common; else it is a word: <c>ramp 0.5 degC/min to 50 degC</c>.
    /// </summary>
    public void SettleRanges()
    {
        foreach (var to in _tos)
        {
            if (RightEnd(to + 1) is { } right && (LeftUnits(to - 1) is not { Count: > 0 } left || left.Overlaps(right)))
            {
                Symbols[to] = Symbols[to] with { Kind = SymbolKind.RangeTo };
            }
        }
    }

    private SymbolKind Kind(int back) => Symbols.Count >= back ? Symbols[^back].Kind : SymbolKind.End;

    /// <summary>Whether a number ends a pair (<c>0/90</c>, <c>45/-45</c>) or a ratio (<c>100:30</c>).</summary>
    private bool EndsPairOrRatio(int index)
    {
        var before = index - 1;
        if (before >= 1 && Symbols[before].Kind is SymbolKind.Minus or SymbolKind.Plus)
        {
            before--;
        }

        return before >= 0 && Symbols[before].Kind is SymbolKind.Slash or SymbolKind.Colon;
    }

    /// <summary>
    /// Smaller and smaller units of one dimension add up. Degrees do not, nor do shares, nor does what follows a sign or a fraction.
    /// </summary>
    private bool AddsUp(Unit unit, bool isInExpression)
    {
        if (Symbols.Count == 0 || !Last.IsQuantity || Last.Quantity.Unit is not { } before)
        {
            return false;
        }

        var fits = unit.Dimension == before.Dimension && unit.Dimension != Dimension.None
            && unit.Scale == UnitScale.Proportional && before.Scale == UnitScale.Proportional && unit.Factor < before.Factor;
        return fits && (Last.Kind == SymbolKind.MoreQuantity || Kind(2) switch
        {
            SymbolKind.Plus or SymbolKind.Minus or SymbolKind.Slash => isInExpression,
            SymbolKind.FractionSlash or SymbolKind.PlusMinus or SymbolKind.Tolerance or SymbolKind.Colon => false,
            _ => true,
        });
    }

    private HashSet<string> LeftUnits(int index)
    {
        var units = new HashSet<string>(StringComparer.Ordinal);
        if (Symbols[index].Kind == SymbolKind.Unit)
        {
            units.Add(Symbols[index].Unit.Symbol);
        }

        for (; index >= 0 && Symbols[index].IsQuantity; index--)
        {
            units.Add(Symbols[index].Quantity.Unit!.Symbol);
            if (Symbols[index].Kind == SymbolKind.Quantity)
            {
                break;
            }
        }

        return units;
    }

    /// <summary>The units of the value that starts here, or null when no quantity starts here.</summary>
    private List<string>? RightEnd(int index)
    {
        var symbols = CollectionsMarshal.AsSpan(Symbols);
        if (index < symbols.Length && symbols[index].Kind is SymbolKind.Minus or SymbolKind.Plus)
        {
            index++;
        }

        if (index >= symbols.Length)
        {
            return null;
        }

        switch (symbols[index].Kind)
        {
            case SymbolKind.Quantity:
                var units = new List<string> { symbols[index].Quantity.Unit!.Symbol };
                for (var i = index + 1; i < symbols.Length && symbols[i].Kind == SymbolKind.MoreQuantity; i++)
                {
                    units.Add(symbols[i].Quantity.Unit!.Symbol);
                }

                return units;
            case SymbolKind.Number when index + 2 < symbols.Length && symbols[index + 1].Kind == SymbolKind.FractionSlash:
                return [symbols[index + 2].Quantity.Unit!.Symbol];
            case SymbolKind.Number:
                return [];
            case SymbolKind.OpenParenthesis:
                return UnitAfterParenthesis(index);
            default:
                return null;
        }
    }

    private List<string> UnitAfterParenthesis(int index)
    {
        var depth = 0;
        for (var i = index; i + 1 < Symbols.Count && Symbols[i].Kind is not (SymbolKind.Separator or SymbolKind.OpenBrace or SymbolKind.CloseBrace); i++)
        {
            depth += Symbols[i].Kind switch { SymbolKind.OpenParenthesis => 1, SymbolKind.CloseParenthesis => -1, _ => 0 };
            if (depth == 0)
            {
                return Symbols[i + 1].Kind == SymbolKind.Unit ? [Symbols[i + 1].Unit.Symbol] : [];
            }
        }

        return [];
    }
}
