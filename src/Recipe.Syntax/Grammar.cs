using System.Collections.Immutable;
using Pidgin;
using Pidgin.Expression;
using Recipe.Text;
using static Pidgin.Parser;

namespace Recipe.Syntax;

/// <summary>A token as the grammar sees it: no blanks or comments, no line ends inside parentheses.</summary>
/// <param name="Kind">Its kind; a semicolon is a line end here.</param>
/// <param name="Token">The token.</param>
/// <param name="Text">Its text, for words, numbers, texts and dates; else empty.</param>
internal readonly record struct Symbol(TokenKind Kind, Token Token, string Text)
{
    public TextSpan Span => Token.Span;
}

/// <summary>
/// The grammar, with Pidgin over tokens, decided by one token of look-ahead everywhere. Trouble is kept in the tree: a value that
/// cannot be finished, or a token that is none, becomes a <see cref="JunkSyntax"/> and the rest of the line joins it.
/// </summary>
internal static class Grammar
{
    /// <summary>Tokens of a line that could not be read; it never leaves the parser.</summary>
    internal sealed record JunkSyntax(TextSpan Span) : ValueSyntax(Span);

    private static readonly Parser<Symbol, Symbol> Word = Kind(TokenKind.Word);
    private static readonly Parser<Symbol, Symbol> Number = Kind(TokenKind.Number);
    private static readonly Parser<Symbol, Maybe<Symbol>> UnitAfter = Kind(TokenKind.Unit).Optional();

    private static readonly Parser<Symbol, (bool Negative, Symbol Number)> SignedNumber =
        Map((sign, number) => (sign.HasValue && sign.Value.Kind == TokenKind.Minus, number),
            Parser<Symbol>.Token(s => s.Kind is TokenKind.Minus or TokenKind.Plus).Optional(), Number);

    private static readonly Parser<Symbol, ValueSyntax> Name = Word.Select<ValueSyntax>(w => new WordSyntax(w.Text, w.Span));

    private static readonly Parser<Symbol, ValueSyntax> QuantityOnly = Map(
        (number, unit) => (ValueSyntax)NodeBuilder.Quantity(number, unit), Number, UnitAfter);

    private static readonly Parser<Symbol, ValueSyntax> Parenthesis = Rec(() => Map(
        (open, inner, close, unit) => (ValueSyntax)new ParenthesisSyntax(
            inner, unit.HasValue ? unit.Value.Token.Unit : null, open.Span.Union(unit.HasValue ? unit.Value.Span : close.Span)),
        Kind(TokenKind.OpenParenthesis), Expression!, Kind(TokenKind.CloseParenthesis), UnitAfter));

    private static readonly Parser<Symbol, ValueSyntax> Expression = ExpressionParser.Build(
        OneOf(QuantityOnly, Name, Parenthesis),
        [
            Operator.Prefix(Kind(TokenKind.Minus).Select<Func<ValueSyntax, ValueSyntax>>(
                minus => operand => new NegateSyntax(operand, minus.Span.Union(operand.Span)))),
            Operator.InfixL(Binary(TokenKind.Star, '*')).And(Operator.InfixL(Binary(TokenKind.Slash, '/'))),
            Operator.InfixL(Binary(TokenKind.Plus, '+')).And(Operator.InfixL(Binary(TokenKind.Minus, '-'))),
        ]);

    /// <summary>A number and what may follow it directly: a colon, a slash, a unit.</summary>
    private static readonly Parser<Symbol, ValueSyntax> NumberLed = Number.Bind(first => OneOf(
        Kind(TokenKind.Colon).Then(Number).AtLeastOnce().Select<ValueSyntax>(rest => NodeBuilder.Ratio(first, rest)),
        Kind(TokenKind.Slash).Then(Map((right, unit) => (ValueSyntax)NodeBuilder.Pair(first, right.Negative, right.Number, unit), SignedNumber, UnitAfter)),
        UnitAfter.Select<ValueSyntax>(unit => NodeBuilder.Quantity(first, unit))));

    private static readonly Parser<Symbol, ValueSyntax> Signed = Map(
        (sign, value) => NodeBuilder.Sign(sign, value),
        Parser<Symbol>.Token(s => s.Kind is TokenKind.Minus or TokenKind.Plus), NumberLed);

    private static readonly Parser<Symbol, ValueSyntax> PlusMinus = Map(
        (sign, value) => (ValueSyntax)new PlusMinusSyntax((QuantitySyntax)value, sign.Span.Union(value.Span)),
        Kind(TokenKind.PlusMinus), QuantityOnly);

    private static readonly Parser<Symbol, Symbol> OnLine = Parser<Symbol>.Token(
        s => s.Kind is not (TokenKind.LineEnd or TokenKind.OpenBrace or TokenKind.CloseBrace or TokenKind.EndOfFile));

    private static readonly Parser<Symbol, ValueSyntax> RestOfLine = OnLine.AtLeastOnce()
        .Select<ValueSyntax>(rest => new JunkSyntax(NodeBuilder.Span(rest)));

    private static readonly Parser<Symbol, ValueSyntax> Item = OneOf(
            NumberLed,
            Name,
            Kind(TokenKind.String).Select<ValueSyntax>(NodeBuilder.Text),
            Kind(TokenKind.Date).Select<ValueSyntax>(NodeBuilder.Date),
            Signed,
            PlusMinus,
            Parenthesis,
            RestOfLine)
        .RecoverWith(error => OnLine.Many().Select<ValueSyntax>(rest =>
            new JunkSyntax(rest.Any() ? NodeBuilder.Span(rest) : new TextSpan(-1, 0))));

    private static readonly Parser<Symbol, IEnumerable<ValueSyntax>> Items =
        Lookahead(OnLine).Then(Item).Many();

    private static readonly Parser<Symbol, Unit> LineEnds = Kind(TokenKind.LineEnd).SkipMany();

    private static readonly Parser<Symbol, BlockSyntax> Block = Rec(() => Map(
        (open, statements, close) => NodeBuilder.Block(open, statements, close),
        Kind(TokenKind.OpenBrace), Body!, Kind(TokenKind.CloseBrace).Optional()));

    private static readonly Parser<Symbol, StatementSyntax> Entry = Map(
        (head, items, block) => NodeBuilder.Entry(new WordSyntax(head.Text, head.Span), items, block), Word, Items, Block.Optional());

    private static readonly Parser<Symbol, StatementSyntax> Headless = Map(
        (items, block) => NodeBuilder.Headless(items, block), RestOfLine.Optional(), Block.Optional());

    private static readonly Parser<Symbol, StatementSyntax> Let = Kind(TokenKindLet).Then(
        Map((name, value, rest) => (Name: name, Value: value, Tail: rest), Word, Kind(TokenKind.EqualsSign).Then(Expression), RestOfLine.Optional()),
        (let, parts) => NodeBuilder.Let(let, parts.Name, parts.Value, parts.Tail))
        .RecoverWith(error => Map((rest, block) => NodeBuilder.Headless(rest.HasValue ? Maybe.Just(rest.Value) : default, block), RestOfLine.Optional(), Block.Optional()));

    private static readonly Parser<Symbol, StatementSyntax> Statement = OneOf(Entry, Let, Headless);

    private static readonly Parser<Symbol, IEnumerable<StatementSyntax>> Body = LineEnds.Then(
        Lookahead(Parser<Symbol>.Token(s => s.Kind is not (TokenKind.CloseBrace or TokenKind.EndOfFile)))
            .Then(Statement).Before(LineEnds).Many());

    private static readonly Parser<Symbol, StatementSyntax> Stray = Kind(TokenKind.CloseBrace).Before(LineEnds)
        .Select<StatementSyntax>(brace => new ErrorSyntax(null, null, brace.Span, brace.Span));

    private static readonly Parser<Symbol, IEnumerable<StatementSyntax>> FileBody = Map(
        (first, rest) => first.Concat(rest.SelectMany(r => r)),
        Body,
        Map((stray, more) => more.Prepend(stray), Stray, Body).Many());

    /// <summary>The kind given to the word <c>let</c> at the start of a line.</summary>
    internal const TokenKind TokenKindLet = (TokenKind)(-1);

    /// <summary>The statements of a file.</summary>
    public static ImmutableArray<StatementSyntax> Parse(Symbol[] symbols) =>
        [.. FileBody.Before(Kind(TokenKind.EndOfFile)).Parse(symbols.AsSpan()).Value];

    private static Parser<Symbol, Symbol> Kind(TokenKind kind) => Parser<Symbol>.Token(s => s.Kind == kind);

    private static Parser<Symbol, Func<ValueSyntax, ValueSyntax, ValueSyntax>> Binary(TokenKind kind, char symbol) =>
        Kind(kind).Select<Func<ValueSyntax, ValueSyntax, ValueSyntax>>(
            _ => (left, right) => new BinarySyntax(symbol, left, right, left.Span.Union(right.Span)));
}
