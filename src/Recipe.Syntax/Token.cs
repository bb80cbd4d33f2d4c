using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Syntax;

/// <summary>The kinds of token. Blanks, comments and line ends are tokens too, so that the tokens tile the text.</summary>
public enum TokenKind
{
    /// <summary>A word or name: <c>peel-ply</c>.</summary>
    Word,

    /// <summary>A number without sign: <c>0.5</c>.</summary>
    Number,

    /// <summary>A unit directly after a number or a closing parenthesis.</summary>
    Unit,

    /// <summary>An ISO 8601 date: <c>2026-05-14</c>.</summary>
    Date,

    /// <summary>A text in double quotes, on one line.</summary>
    String,

    /// <summary><c>{</c></summary>
    OpenBrace,

    /// <summary><c>}</c></summary>
    CloseBrace,

    /// <summary><c>(</c></summary>
    OpenParenthesis,

    /// <summary><c>)</c></summary>
    CloseParenthesis,

    /// <summary><c>:</c></summary>
    Colon,

    /// <summary><c>;</c></summary>
    Semicolon,

    /// <summary><c>=</c></summary>
    EqualsSign,

    /// <summary><c>+</c></summary>
    Plus,

    /// <summary><c>-</c></summary>
    Minus,

    /// <summary><c>*</c></summary>
    Star,

    /// <summary><c>/</c></summary>
    Slash,

    /// <summary><c>+/-</c> or the plus-minus sign.</summary>
    PlusMinus,

    /// <summary>A line end: LF, CRLF or CR.</summary>
    LineEnd,

    /// <summary><c>#</c> to the end of the line.</summary>
    Comment,

    /// <summary>Spaces and tabs, or a byte order mark at the start.</summary>
    Blank,

    /// <summary>Characters that mean nothing here.</summary>
    Bad,

    /// <summary>The end of the text; empty.</summary>
    EndOfFile,
}

/// <summary>One token: its kind, its place, and the unit it spells when it is one.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">Where it is.</param>
/// <param name="Unit">The unit, for <see cref="TokenKind.Unit"/>.</param>
public readonly record struct Token(TokenKind Kind, TextSpan Span, Unit? Unit = null)
{
    /// <summary>Whether the grammar steps over it.</summary>
    public bool IsTrivia => Kind is TokenKind.Blank or TokenKind.Comment;
}
