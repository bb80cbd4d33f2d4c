using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Pidgin;
using Pidgin.Expression;
using static Pidgin.Parser;

namespace Recipe.Syntax.Parsing;

/// <summary>
/// The grammar of <c>grammar/recipe.ebnf</c>, with Pidgin over symbols, decided by one symbol of look-ahead everywhere. It keeps no
/// state: a line that cannot be read becomes an <see cref="ErrorSyntax"/> in the tree, and its findings are collected afterwards.
/// </summary>
internal static class Grammar
{
    private static readonly Parser<Symbol, Symbol> Sign = OneOfKinds(SymbolKind.Plus, SymbolKind.Minus);
    private static readonly Parser<Symbol, Symbol> AnyNumber = OneOfKinds(SymbolKind.Number, SymbolKind.Quantity);

    private static readonly Parser<Symbol, ValueSyntax> Leaf = Parser<Symbol>.Any.Select(symbol => symbol.Node);

    /// <summary><c>1 h 30 min</c>, or the one quantity.</summary>
    private static readonly Parser<Symbol, ValueSyntax> Sum = Map(
        NodeBuilder.Sum, Kind(SymbolKind.Quantity), Kind(SymbolKind.MoreQuantity).AtLeastOnce().If(SymbolKind.MoreQuantity));

    private static readonly Parser<Symbol, SignedNumber> SecondOfPair = OneOfKinds(SymbolKind.Slash, SymbolKind.FractionSlash).Then(
        Map((sign, number) => new SignedNumber(sign, number), Sign.If(SymbolKind.Plus, SymbolKind.Minus), AnyNumber));

    private static readonly Parser<Symbol, IEnumerable<Symbol>> RestOfRatio = Kind(SymbolKind.Colon).Then(Kind(SymbolKind.Number)).AtLeastOnce();

    private static readonly Parser<Symbol, ValueSyntax> NumberLed = Map(
        NodeBuilder.NumberLed,
        Kind(SymbolKind.Number),
        SecondOfPair.If(SymbolKind.Slash, SymbolKind.FractionSlash),
        RestOfRatio.If(SymbolKind.Colon));

    private static readonly Parser<Symbol, ValueSyntax> SignLed = Map(
        NodeBuilder.SignLed,
        Sign,
        new ByKind<(Symbol Number, Maybe<SignedNumber> Second)>()
            .When(Map((number, second) => (number, second), Kind(SymbolKind.Number), SecondOfPair.If(SymbolKind.Slash, SymbolKind.FractionSlash)), SymbolKind.Number)
            .When(Kind(SymbolKind.Quantity).Select(number => (number, default(Maybe<SignedNumber>))), SymbolKind.Quantity));

    private static readonly Parser<Symbol, ValueSyntax> NumberOrFraction = Map(
        (first, second) => NodeBuilder.NumberLed(first, second, default), Kind(SymbolKind.Number), SecondOfPair.If(SymbolKind.FractionSlash));

    private static readonly Parser<Symbol, ValueSyntax> Parenthesis = Map(
        NodeBuilder.Parenthesis,
        Kind(SymbolKind.OpenParenthesis),
        Rec(() => Expression!),
        Kind(SymbolKind.CloseParenthesis),
        Kind(SymbolKind.Unit).If(SymbolKind.Unit));

    private static readonly ByKind<ValueSyntax> Term = new ByKind<ValueSyntax>()
        .When(Sum, SymbolKind.Quantity)
        .When(NumberOrFraction, SymbolKind.Number)
        .When(Leaf, SymbolKind.Word)
        .When(Parenthesis, SymbolKind.OpenParenthesis);

    private static readonly Parser<Symbol, ValueSyntax> Expression = ExpressionParser.Build(
        Term,
        [
            Operator.Prefix(Kind(SymbolKind.Minus).Select<Func<ValueSyntax, ValueSyntax>>(minus => operand => NodeBuilder.Negate(minus, operand))),
            Operator.InfixL(Infix(SymbolKind.Star, '*')).And(Operator.InfixL(Infix(SymbolKind.Slash, '/'))),
            Operator.InfixL(Infix(SymbolKind.Plus, '+')).And(Operator.InfixL(Infix(SymbolKind.Minus, '-'))),
        ]);

    /// <summary>Anything that is one amount, and so may have a tolerance or be an end of a range.</summary>
    private static readonly ByKind<ValueSyntax> Amount = new ByKind<ValueSyntax>()
        .When(Sum, SymbolKind.Quantity)
        .When(NumberLed, SymbolKind.Number)
        .When(SignLed, SymbolKind.Plus, SymbolKind.Minus)
        .When(Parenthesis, SymbolKind.OpenParenthesis);

    private static readonly Parser<Symbol, ValueSyntax> AmountWithTail = Map(
        NodeBuilder.ToleranceAndRange,
        Amount,
        Kind(SymbolKind.Tolerance).Then(Amount).If(SymbolKind.Tolerance),
        Kind(SymbolKind.RangeTo).Then(Amount).If(SymbolKind.RangeTo));

    private static readonly Parser<Symbol, ValueSyntax> PlusMinus = Map(
        (sign, number) => (ValueSyntax)new PlusMinusSyntax(number.Quantity, sign.Span.Union(number.Span)), Kind(SymbolKind.PlusMinus), AnyNumber);

    private static readonly ByKind<ValueSyntax> Value = new ByKind<ValueSyntax>()
        .When(Leaf, SymbolKind.Word, SymbolKind.Text, SymbolKind.Date)
        .When(AmountWithTail, SymbolKind.Quantity, SymbolKind.Number, SymbolKind.Plus, SymbolKind.Minus, SymbolKind.OpenParenthesis)
        .When(PlusMinus, SymbolKind.PlusMinus);

    private static readonly Parser<Symbol, Line> Values = new LineOf(Value, Value.CanStart);

    private static readonly Parser<Symbol, Line> Junk = new LineOf(Value, _ => false);

    private static readonly Parser<Symbol, Maybe<BlockSyntax>> Block = Map(
            NodeBuilder.Block,
            Kind(SymbolKind.OpenBrace),
            Rec(() => Body!),
            OneOfKinds(SymbolKind.CloseBrace, SymbolKind.MissingBrace))
        .If(SymbolKind.OpenBrace);

    private static readonly Parser<Symbol, StatementSyntax> Entry = Map(NodeBuilder.Entry, Kind(SymbolKind.Word), Values, Block);

    private static readonly Parser<Symbol, StatementSyntax> Let = Map(
        NodeBuilder.Let,
        Kind(SymbolKind.Let),
        new LineOf(
            Map(NodeBuilder.Named, Kind(SymbolKind.Word), Kind(SymbolKind.EqualsSign).Then(Expression)),
            kind => kind == SymbolKind.Word,
            atMost: 1),
        Block);

    private static readonly Parser<Symbol, StatementSyntax> Headless = Map(NodeBuilder.Headless, Junk, Block);

    private static readonly Parser<Symbol, StatementSyntax> Stray = Kind(SymbolKind.StrayBrace).Select(NodeBuilder.Stray);

    private static readonly Parser<Symbol, StatementSyntax> Statement = AnyStatement();

    private static readonly Parser<Symbol, ImmutableArray<StatementSyntax>> Body = new Statements(Statement);

    private static readonly Parser<Symbol, ImmutableArray<StatementSyntax>> File = Body.Before(Kind(SymbolKind.End));

    /// <summary>The statements of a file. Every brace among the symbols has its partner, and the end comes last.</summary>
    public static ImmutableArray<StatementSyntax> Parse(List<Symbol> symbols) => File.ParseOrThrow(CollectionsMarshal.AsSpan(symbols));

    private static ByKind<StatementSyntax> AnyStatement()
    {
        var statement = new ByKind<StatementSyntax>();
        foreach (var kind in System.Enum.GetValues<SymbolKind>())
        {
            statement.When(Headless, kind);
        }

        return statement.When(Entry, SymbolKind.Word).When(Let, SymbolKind.Let).When(Stray, SymbolKind.StrayBrace);
    }

    private static Parser<Symbol, Symbol> Kind(SymbolKind kind) => Parser<Symbol>.Token(symbol => symbol.Kind == kind);

    private static Parser<Symbol, Symbol> OneOfKinds(SymbolKind one, SymbolKind other) =>
        Parser<Symbol>.Token(symbol => symbol.Kind == one || symbol.Kind == other);

    private static Parser<Symbol, Maybe<T>> If<T>(this Parser<Symbol, T> parser, SymbolKind kind) => new Optionally<T>(parser, kind);

    private static Parser<Symbol, Maybe<T>> If<T>(this Parser<Symbol, T> parser, SymbolKind kind, SymbolKind other) =>
        new Optionally<T>(parser, kind, other);

    private static Parser<Symbol, Func<ValueSyntax, ValueSyntax, ValueSyntax>> Infix(SymbolKind kind, char symbol) =>
        Kind(kind).Select<Func<ValueSyntax, ValueSyntax, ValueSyntax>>(
            _ => (left, right) => new BinarySyntax(symbol, left, right, left.Span.Union(right.Span)));
}
