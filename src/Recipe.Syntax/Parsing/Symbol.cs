using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Syntax.Parsing;

/// <summary>The kinds of symbol that the grammar tells apart.</summary>
internal enum SymbolKind
{
    /// <summary>A word.</summary>
    Word,

    /// <summary>The word <c>let</c> at the start of a line.</summary>
    Let,

    /// <summary>The word <c>to</c> between the two ends of a range.</summary>
    RangeTo,

    /// <summary>A number without a unit.</summary>
    Number,

    /// <summary>A number with its unit.</summary>
    Quantity,

    /// <summary>A number with a smaller unit that adds to the quantity before it: the minutes of <c>1 h 30 min</c>.</summary>
    MoreQuantity,

    /// <summary>A text.</summary>
    Text,

    /// <summary>A date.</summary>
    Date,

    /// <summary>The unit after a closing parenthesis.</summary>
    Unit,

    /// <summary><c>+/-</c> between a value and its tolerance.</summary>
    Tolerance,

    /// <summary><c>+/-</c> that opens a value.</summary>
    PlusMinus,

    /// <summary><c>+</c></summary>
    Plus,

    /// <summary><c>-</c></summary>
    Minus,

    /// <summary><c>*</c></summary>
    Star,

    /// <summary><c>/</c></summary>
    Slash,

    /// <summary><c>/</c> of a fraction with a unit: <c>3/4 oz</c>.</summary>
    FractionSlash,

    /// <summary><c>:</c></summary>
    Colon,

    /// <summary><c>=</c></summary>
    EqualsSign,

    /// <summary><c>(</c></summary>
    OpenParenthesis,

    /// <summary><c>)</c></summary>
    CloseParenthesis,

    /// <summary><c>{</c></summary>
    OpenBrace,

    /// <summary><c>}</c></summary>
    CloseBrace,

    /// <summary>A closing brace that was forgotten: it has no characters.</summary>
    MissingBrace,

    /// <summary>A closing brace too many.</summary>
    StrayBrace,

    /// <summary>A line end, or a semicolon.</summary>
    Separator,

    /// <summary>Characters that mean nothing, or a number that is none.</summary>
    Bad,

    /// <summary>Everything from an opener that nests too deep to its end.</summary>
    TooDeep,

    /// <summary>The end of the text.</summary>
    End,
}

/// <summary>
/// What the grammar reads: a token, or a number with its unit, told apart by what stands beside it, so that the grammar needs to look
/// at one symbol only. Words, numbers, texts and dates carry their finished node.
/// </summary>
internal readonly record struct Symbol(SymbolKind Kind, TextSpan Span, object? Content = null)
{
    /// <summary>The node of a word, number, text or date.</summary>
    public ValueSyntax Node => (ValueSyntax)Content!;

    /// <summary>The word.</summary>
    public WordSyntax Word => (WordSyntax)Content!;

    /// <summary>The number with its unit, if it has one.</summary>
    public QuantitySyntax Quantity => (QuantitySyntax)Content!;

    /// <summary>The unit of a symbol of kind <see cref="SymbolKind.Unit"/>.</summary>
    public Unit Unit => (Unit)Content!;

    public bool IsQuantity => Kind is SymbolKind.Quantity or SymbolKind.MoreQuantity;
}
