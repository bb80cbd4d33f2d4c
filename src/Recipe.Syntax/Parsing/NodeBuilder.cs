using System.Collections.Immutable;
using Pidgin;
using Recipe.Text;

namespace Recipe.Syntax.Parsing;

/// <summary>A number of a pair, perhaps with a sign.</summary>
internal readonly record struct SignedNumber(Maybe<Symbol> Sign, Symbol Number)
{
    public double Value => Sign is { HasValue: true, Value.Kind: SymbolKind.Minus } ? -Number.Quantity.Number : Number.Quantity.Number;
}

/// <summary>Puts nodes together from what the grammar read.</summary>
internal static class NodeBuilder
{
    /// <summary>A name and its value on the way to a <see cref="LetSyntax"/>; it never leaves the parser.</summary>
    private sealed record NamedValueSyntax(WordSyntax Name, ValueSyntax Value, TextSpan Span) : ValueSyntax(Span);

    public static ValueSyntax Sum(Symbol first, Maybe<IEnumerable<Symbol>> more)
    {
        if (!more.HasValue)
        {
            return first.Quantity;
        }

        var parts = more.Value.Select(symbol => symbol.Quantity).Prepend(first.Quantity).ToImmutableArray();
        return new CompoundSyntax(parts, first.Span.Union(parts[^1].Span));
    }

    public static ValueSyntax NumberLed(Symbol first, Maybe<SignedNumber> second, Maybe<IEnumerable<Symbol>> ratio)
    {
        if (second.HasValue)
        {
            return Pair(first.Span, first.Quantity.Number, second.Value);
        }

        if (!ratio.HasValue)
        {
            return first.Quantity;
        }

        var parts = ratio.Value.Select(symbol => symbol.Quantity).Prepend(first.Quantity).ToImmutableArray();
        return new RatioSyntax(parts, first.Span.Union(parts[^1].Span));
    }

    public static ValueSyntax SignLed(Symbol sign, (Symbol Number, Maybe<SignedNumber> Second) parts) => parts.Second.HasValue
        ? Pair(sign.Span, new SignedNumber(Maybe.Just(sign), parts.Number).Value, parts.Second.Value)
        : new SignedSyntax(sign.Kind == SymbolKind.Minus, parts.Number.Quantity, sign.Span.Union(parts.Number.Span));

    public static ValueSyntax Parenthesis(Symbol open, ValueSyntax inner, Symbol close, Maybe<Symbol> unit) => new ParenthesisSyntax(
        inner, unit.HasValue ? unit.Value.Unit : null, open.Span.Union(unit.HasValue ? unit.Value.Span : close.Span));

    /// <summary>A minus before a number makes a negative number: <c>-5 degC</c> is a temperature, not arithmetic with one.</summary>
    public static ValueSyntax Negate(Symbol minus, ValueSyntax operand)
    {
        var span = minus.Span.Union(operand.Span);
        return operand is QuantitySyntax quantity ? new SignedSyntax(true, quantity, span) : new NegateSyntax(operand, span);
    }

    public static ValueSyntax ToleranceAndRange(ValueSyntax amount, Maybe<ValueSyntax> tolerance, Maybe<ValueSyntax> high)
    {
        var value = tolerance.HasValue
            ? new ToleranceSyntax(amount, tolerance.Value, amount.Span.Union(tolerance.Value.Span))
            : amount;
        return high.HasValue ? new RangeSyntax(value, high.Value, value.Span.Union(high.Value.Span)) : value;
    }

    public static ValueSyntax Named(Symbol name, ValueSyntax value) => new NamedValueSyntax(name.Word, value, name.Span.Union(value.Span));

    public static BlockSyntax Block(Symbol open, ImmutableArray<StatementSyntax> statements, Symbol close)
    {
        var isMissing = close.Kind == SymbolKind.MissingBrace;
        var end = !isMissing ? close.Span : statements.Length > 0 ? statements[^1].Span : open.Span;
        return new BlockSyntax(statements, open.Span, isMissing ? null : close.Span, open.Span.Union(end));
    }

    public static StatementSyntax Entry(Symbol head, Line line, Maybe<BlockSyntax> block)
    {
        var body = block.GetValueOrDefault();
        var last = line.Skipped ?? (line.Values.Length > 0 ? line.Values[^1].Span : head.Span);
        var span = head.Span.Union(body?.Span ?? last);
        var entry = new EntrySyntax(head.Word, line.Values, body, span);
        return line.Skipped is { } skipped ? new ErrorSyntax(entry, body, skipped, span) { Trouble = line.Trouble } : entry;
    }

    public static StatementSyntax Let(Symbol let, Line line, Maybe<BlockSyntax> block)
    {
        var body = block.GetValueOrDefault();
        if (line is { Skipped: null, Values: [NamedValueSyntax named] } && body is null)
        {
            return new LetSyntax(named.Name, named.Value, let.Span.Union(named.Span));
        }

        var skipped = line.Skipped ?? body?.OpenBrace ?? new TextSpan(let.Span.End, 0);
        var span = let.Span.Union(body?.Span ?? skipped);
        return new ErrorSyntax(null, body, skipped, span) { Trouble = line.Skipped is null ? skipped : line.Trouble };
    }

    public static StatementSyntax Headless(Line line, Maybe<BlockSyntax> block)
    {
        var body = block.GetValueOrDefault();
        var skipped = line.Skipped ?? body!.OpenBrace;
        return new ErrorSyntax(null, body, skipped, body is null ? skipped : skipped.Union(body.Span)) { Trouble = line.Skipped is null ? skipped : line.Trouble };
    }

    public static StatementSyntax Stray(Symbol brace) => new ErrorSyntax(null, null, brace.Span, brace.Span);

    private static PairSyntax Pair(TextSpan start, double left, SignedNumber right) =>
        new(left, right.Value, right.Number.Quantity.Unit, start.Union(right.Number.Span));
}
