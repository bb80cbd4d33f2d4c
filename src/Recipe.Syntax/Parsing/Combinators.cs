using System.Buffers;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Pidgin;
using Recipe.Text;

namespace Recipe.Syntax.Parsing;

// Symbols end with one of kind End, which no parser but that of the file consumes: there always is a current symbol.

/// <summary>Chooses the parser by the kind of the next symbol: what <c>OneOf</c> does for this grammar, without trying each.</summary>
internal sealed class ByKind<T> : Parser<Symbol, T>
{
    private readonly Parser<Symbol, T>?[] _parsers = new Parser<Symbol, T>?[(int)SymbolKind.End + 1];

    /// <summary>Adds a parser for the kinds that it can start with.</summary>
    public ByKind<T> When(Parser<Symbol, T> parser, params ReadOnlySpan<SymbolKind> kinds)
    {
        foreach (var kind in kinds)
        {
            _parsers[(int)kind] = parser;
        }

        return this;
    }

    /// <summary>Whether a parser was given for this kind.</summary>
    public bool CanStart(SymbolKind kind) => _parsers[(int)kind] is not null;

    public override bool TryParse(ref ParseState<Symbol> state, ref PooledList<Expected<Symbol>> expecteds, [MaybeNullWhen(false)] out T result)
    {
        if (_parsers[(int)state.Current.Kind] is { } parser)
        {
            return parser.TryParse(ref state, ref expecteds, out result);
        }

        state.SetError(Maybe.Just(state.Current), false, state.Location, null);
        result = default;
        return false;
    }
}

/// <summary>The parser's result when the next symbol is of one of these kinds, else nothing, and nothing is consumed.</summary>
internal sealed class Optionally<T>(Parser<Symbol, T> parser, SymbolKind kind, SymbolKind otherKind) : Parser<Symbol, Maybe<T>>
{
    public Optionally(Parser<Symbol, T> parser, SymbolKind kind)
        : this(parser, kind, kind)
    {
    }

    public override bool TryParse(ref ParseState<Symbol> state, ref PooledList<Expected<Symbol>> expecteds, out Maybe<T> result)
    {
        result = default;
        if (state.Current.Kind != kind && state.Current.Kind != otherKind)
        {
            return true;
        }

        var isRead = parser.TryParse(ref state, ref expecteds, out var value);
        result = isRead ? Maybe.Just(value!) : default;
        return isRead;
    }
}

/// <summary>The statements up to the end of their block or of the text. A statement always consumes something and never fails.</summary>
internal sealed class Statements(Parser<Symbol, StatementSyntax> statement) : Parser<Symbol, ImmutableArray<StatementSyntax>>
{
    public override bool TryParse(
        ref ParseState<Symbol> state, ref PooledList<Expected<Symbol>> expecteds, [MaybeNullWhen(false)] out ImmutableArray<StatementSyntax> result)
    {
        var statements = new PooledList<StatementSyntax>(ArrayPool<StatementSyntax>.Shared);
        while (state.Current.Kind is not (SymbolKind.CloseBrace or SymbolKind.MissingBrace or SymbolKind.End))
        {
            if (state.Current.Kind == SymbolKind.Separator)
            {
                state.Advance();
                continue;
            }

            if (!statement.TryParse(ref state, ref expecteds, out var one))
            {
                statements.Dispose();
                result = default;
                return false;
            }

            statements.Add(one);
        }

        result = [.. statements.AsSpan()];
        statements.Dispose();
        return true;
    }
}

/// <summary>What stands on a line: the values that could be read, and where reading stopped.</summary>
/// <param name="Values">The values before any trouble.</param>
/// <param name="Skipped">The tokens from the start of the value that failed to the end of the line, or null.</param>
/// <param name="Trouble">The token that could not be read, empty at the end of the line.</param>
internal readonly record struct Line(ImmutableArray<ValueSyntax> Values, TextSpan? Skipped, TextSpan Trouble);

/// <summary>Values to the end of the line, or as far as they can be read; what follows then is skipped up to the line's end or its block.</summary>
/// <param name="value">One value.</param>
/// <param name="canStart">Whether a value can start with this kind of symbol.</param>
/// <param name="atMost">How many values there can be.</param>
internal sealed class LineOf(Parser<Symbol, ValueSyntax> value, Func<SymbolKind, bool> canStart, int atMost = int.MaxValue) : Parser<Symbol, Line>
{
    public override bool TryParse(ref ParseState<Symbol> state, ref PooledList<Expected<Symbol>> expecteds, out Line result)
    {
        var values = new PooledList<ValueSyntax>(ArrayPool<ValueSyntax>.Shared);
        var skip = default(Line?);
        while (skip is null && !EndsLine(state.Current.Kind))
        {
            var bookmark = state.Bookmark();
            if (values.Count < atMost && canStart(state.Current.Kind) && value.TryParse(ref state, ref expecteds, out var one))
            {
                state.DiscardBookmark(bookmark);
                values.Add(one);
            }
            else
            {
                var trouble = state.Location;
                state.Rewind(bookmark);
                skip = Skip(ref state, trouble);
            }
        }

        ImmutableArray<ValueSyntax> all = values.Count == 0 ? [] : [.. values.AsSpan()];
        values.Dispose();
        result = skip is { } broken ? broken with { Values = all } : new Line(all, null, default);
        return true;
    }

    /// <summary>Whether this symbol ends what stands on a line.</summary>
    public static bool EndsLine(SymbolKind kind) => kind is SymbolKind.Separator or SymbolKind.OpenBrace or SymbolKind.CloseBrace
        or SymbolKind.MissingBrace or SymbolKind.StrayBrace or SymbolKind.End;

    private static Line Skip(ref ParseState<Symbol> state, long troubleLocation)
    {
        var skipped = state.Current.Span;
        var trouble = default(TextSpan?);
        while (!EndsLine(state.Current.Kind))
        {
            trouble ??= state.Location == troubleLocation ? state.Current.Span : null;
            skipped = skipped.Union(state.Current.Span);
            state.Advance();
        }

        return new Line([], skipped, trouble ?? new TextSpan(skipped.End, 0));
    }
}
