using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Syntax;

/// <summary>A node of the tree. It knows its place in the text and its parts, and nothing about meaning.</summary>
/// <param name="Span">From its first to its last token, blanks and comments round it not included.</param>
public abstract record SyntaxNode(TextSpan Span);

/// <summary>A line of a file or block: an entry, a <c>let</c>, or something that could not be read.</summary>
public abstract record StatementSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary>A whole file.</summary>
/// <param name="Statements">Its lines, in order.</param>
/// <param name="Span">The whole text.</param>
public sealed record FileSyntax(ImmutableArray<StatementSyntax> Statements, TextSpan Span) : SyntaxNode(Span);

/// <summary>One entry: a word, its values, and perhaps a block.</summary>
/// <param name="Head">The first word.</param>
/// <param name="Values">What follows it on the line, in order; a <c>source</c> clause is among them.</param>
/// <param name="Block">The entries in braces, or null.</param>
/// <param name="Span">From the head to the last value or the closing brace.</param>
public sealed record EntrySyntax(WordSyntax Head, ImmutableArray<ValueSyntax> Values, BlockSyntax? Block, TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>The line without its block: head and values.</summary>
    public TextSpan LineSpan => Values.Length == 0 ? Head.Span : Head.Span.Union(Values[^1].Span);
}

/// <summary>A named value: <c>let lap = 20 mm</c>.</summary>
/// <param name="Name">The name.</param>
/// <param name="Value">The expression.</param>
/// <param name="Span">The whole line.</param>
public sealed record LetSyntax(WordSyntax Name, ValueSyntax Value, TextSpan Span) : StatementSyntax(Span);

/// <summary>A line, or the rest of one, that could not be read. Its block, when it had one, is kept and understood.</summary>
/// <param name="Entry">What could be read before the trouble, or null when not even the head was a word.</param>
/// <param name="Block">The block that followed the unreadable line, or null.</param>
/// <param name="SkippedSpan">The unreadable tokens.</param>
/// <param name="Span">The whole line with its block.</param>
public sealed record ErrorSyntax(EntrySyntax? Entry, BlockSyntax? Block, TextSpan SkippedSpan, TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>The token at which reading stopped, inside the skipped ones; empty where the line ended too early.</summary>
    public TextSpan Trouble { get; init; } = SkippedSpan;
}

/// <summary>Entries in braces.</summary>
/// <param name="Statements">The lines, in order.</param>
/// <param name="OpenBrace">Place of <c>{</c>.</param>
/// <param name="CloseBrace">Place of <c>}</c>, or null when it is missing.</param>
/// <param name="Span">Braces included.</param>
public sealed record BlockSyntax(ImmutableArray<StatementSyntax> Statements, TextSpan OpenBrace, TextSpan? CloseBrace, TextSpan Span) : SyntaxNode(Span)
{
    /// <summary>The entries that could be read, those of half-read lines included.</summary>
    public IEnumerable<EntrySyntax> Entries => Statements
        .Select(s => s switch { EntrySyntax e => e, ErrorSyntax { Entry: { } half } => half, _ => null })
        .OfType<EntrySyntax>();
}

/// <summary>A value on a line, or an expression.</summary>
public abstract record ValueSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary>A word: a keyword, a name, a named value; <c>x2</c> is one too.</summary>
/// <param name="Text">The word as written.</param>
/// <param name="Span">Its place.</param>
public sealed record WordSyntax(string Text, TextSpan Span) : ValueSyntax(Span);

/// <summary>A text in quotes.</summary>
/// <param name="Text">The text with its escapes resolved.</param>
/// <param name="Span">Quotes included.</param>
public sealed record TextSyntax(string Text, TextSpan Span) : ValueSyntax(Span);

/// <summary>A date.</summary>
/// <param name="Date">The date; a day that no calendar has is a syntax finding and becomes 0001-01-01.</param>
/// <param name="Span">Its place.</param>
public sealed record DateSyntax(DateOnly Date, TextSpan Span) : ValueSyntax(Span);

/// <summary>A number with or without a unit.</summary>
/// <param name="Number">The number as written.</param>
/// <param name="NumberSpan">Place of the number.</param>
/// <param name="Unit">The unit, or null.</param>
/// <param name="UnitSpan">Place of the unit, or null.</param>
/// <param name="Span">Both.</param>
public sealed record QuantitySyntax(double Number, TextSpan NumberSpan, Unit? Unit, TextSpan? UnitSpan, TextSpan Span) : ValueSyntax(Span);

/// <summary>Several quantities that add up: <c>1 h 30 min</c>.</summary>
public sealed record CompoundSyntax(ImmutableArray<QuantitySyntax> Parts, TextSpan Span) : ValueSyntax(Span);

/// <summary>A quantity with a sign: <c>-30</c>, <c>+45</c>.</summary>
public sealed record SignedSyntax(bool Negative, QuantitySyntax Quantity, TextSpan Span) : ValueSyntax(Span);

/// <summary>Two numbers with a slash: an orientation <c>0/90</c>, <c>45/-45</c>, or with a unit a fraction <c>3/4 oz/yd2</c>.</summary>
/// <param name="Left">The first number, signed.</param>
/// <param name="Right">The second number, signed.</param>
/// <param name="Unit">The unit after it, or null.</param>
/// <param name="Span">The whole.</param>
public sealed record PairSyntax(double Left, double Right, Unit? Unit, TextSpan Span) : ValueSyntax(Span);

/// <summary>Both signs at once: <c>+/-45</c>.</summary>
public sealed record PlusMinusSyntax(QuantitySyntax Quantity, TextSpan Span) : ValueSyntax(Span);

/// <summary>Numbers with colons: a mix ratio <c>100:30</c>, a time of day <c>14:05</c>.</summary>
/// <param name="Parts">The numbers, two or more.</param>
/// <param name="Span">The whole.</param>
public sealed record RatioSyntax(ImmutableArray<QuantitySyntax> Parts, TextSpan Span) : ValueSyntax(Span);

/// <summary>A range: <c>18 to 25 degC</c>.</summary>
/// <param name="Low">The lower end; without a unit it has that of the upper.</param>
/// <param name="High">The upper end.</param>
/// <param name="Span">The whole.</param>
public sealed record RangeSyntax(ValueSyntax Low, ValueSyntax High, TextSpan Span) : ValueSyntax(Span);

/// <summary>A value with its tolerance: <c>140 g +/- 10 g</c>.</summary>
public sealed record ToleranceSyntax(ValueSyntax Value, ValueSyntax Tolerance, TextSpan Span) : ValueSyntax(Span);

/// <summary>An expression in parentheses, perhaps with a unit after it.</summary>
public sealed record ParenthesisSyntax(ValueSyntax Inner, Unit? Unit, TextSpan Span) : ValueSyntax(Span);

/// <summary>Arithmetic of two values.</summary>
/// <param name="Operator">One of <c>+ - * /</c>.</param>
/// <param name="Left">Left operand.</param>
/// <param name="Right">Right operand.</param>
/// <param name="Span">The whole.</param>
public sealed record BinarySyntax(char Operator, ValueSyntax Left, ValueSyntax Right, TextSpan Span) : ValueSyntax(Span);

/// <summary>Arithmetic minus: <c>-(a + b)</c>.</summary>
public sealed record NegateSyntax(ValueSyntax Operand, TextSpan Span) : ValueSyntax(Span);
