using System.Collections.Immutable;
using System.Globalization;
using Pidgin;
using Recipe.Text;

namespace Recipe.Syntax;

/// <summary>Puts nodes together from what the grammar read.</summary>
internal static class NodeBuilder
{
    public static TextSpan Span(IEnumerable<Symbol> symbols)
    {
        var first = symbols.First().Span;
        return first.Union(symbols.Last().Span);
    }

    public static QuantitySyntax Quantity(Symbol number, Maybe<Symbol> unit) => unit.HasValue
        ? new(Value(number), number.Span, unit.Value.Token.Unit, unit.Value.Span, number.Span.Union(unit.Value.Span))
        : new(Value(number), number.Span, null, null, number.Span);

    public static RatioSyntax Ratio(Symbol first, IEnumerable<Symbol> rest)
    {
        var parts = rest.Prepend(first).Select(number => Quantity(number, default)).ToImmutableArray();
        return new RatioSyntax(parts, parts[0].Span.Union(parts[^1].Span));
    }

    public static PairSyntax Pair(Symbol left, bool negative, Symbol right, Maybe<Symbol> unit) => new(
        Value(left),
        negative ? -Value(right) : Value(right),
        unit.HasValue ? unit.Value.Token.Unit : null,
        left.Span.Union(unit.HasValue ? unit.Value.Span : right.Span));

    public static ValueSyntax Sign(Symbol sign, ValueSyntax value)
    {
        var negative = sign.Kind == TokenKind.Minus;
        var span = sign.Span.Union(value.Span);
        return value switch
        {
            QuantitySyntax quantity => new SignedSyntax(negative, quantity, span),
            PairSyntax pair => pair with { Left = negative ? -pair.Left : pair.Left, Span = span },
            _ => new Grammar.JunkSyntax(span),
        };
    }

    public static TextSyntax Text(Symbol text)
    {
        var inner = text.Text.AsSpan(1);
        var value = new System.Text.StringBuilder(inner.Length);
        for (var i = 0; i < inner.Length; i++)
        {
            if (inner[i] == '"')
            {
                break;
            }

            if (inner[i] == '\\' && i + 1 < inner.Length && inner[i + 1] is '"' or '\\')
            {
                i++;
            }

            value.Append(inner[i]);
        }

        return new TextSyntax(value.ToString(), text.Span);
    }

    public static DateSyntax Date(Symbol date) => new(
        DateOnly.TryParseExact(date.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : DateOnly.MinValue,
        date.Span);

    public static BlockSyntax Block(Symbol open, IEnumerable<StatementSyntax> statements, Maybe<Symbol> close)
    {
        var all = statements.ToImmutableArray();
        var end = close.HasValue ? close.Value.Span : all.Length > 0 ? all[^1].Span : open.Span;
        return new BlockSyntax(all, open.Span, close.HasValue ? close.Value.Span : null, open.Span.Union(end));
    }

    public static StatementSyntax Entry(WordSyntax head, IEnumerable<ValueSyntax> items, Maybe<BlockSyntax> block)
    {
        var body = block.HasValue ? block.Value : null;
        var all = items.ToImmutableArray();
        var sound = all.TakeWhile(item => item is not Grammar.JunkSyntax).ToImmutableArray();
        var values = Juxtaposition.Fold(sound);
        var lineEnd = all.LastOrDefault(item => item.Span.Start >= 0)?.Span ?? head.Span;
        var span = head.Span.Union(body?.Span ?? lineEnd);
        if (sound.Length == all.Length)
        {
            return new EntrySyntax(head, values, body, span);
        }

        var readable = new EntrySyntax(head, values, body, span);
        var skipped = all.Skip(sound.Length).Where(item => item.Span.Start >= 0).Select(item => item.Span).ToList();
        var where = skipped.Count > 0 ? skipped[0].Union(skipped[^1]) : new TextSpan(lineEnd.End, 0);
        return new ErrorSyntax(readable, body, where, span);
    }

    public static StatementSyntax Headless(Maybe<ValueSyntax> junk, Maybe<BlockSyntax> block)
    {
        var body = block.HasValue ? block.Value : null;
        var skipped = junk.HasValue ? junk.Value.Span : body?.OpenBrace ?? default;
        return new ErrorSyntax(null, body, skipped, body is null ? skipped : skipped.Union(body.Span));
    }

    public static StatementSyntax Let(Symbol let, Symbol name, ValueSyntax value, Maybe<ValueSyntax> rest)
    {
        var span = let.Span.Union(value.Span);
        return rest.HasValue
            ? new ErrorSyntax(null, null, rest.Value.Span, span.Union(rest.Value.Span))
            : new LetSyntax(new WordSyntax(name.Text, name.Span), value, span);
    }

    /// <summary>The number as written; a decimal comma has its own finding and is read as a point here.</summary>
    private static double Value(Symbol number) => double.Parse(
        number.Text.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture);
}
