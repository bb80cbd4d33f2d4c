using System.Globalization;

namespace Recipe.Syntax.Parsing;

/// <summary>What single characters mean to the lexer.</summary>
internal static class Characters
{
    /// <summary>Characters of a date: year, month and day with two hyphens.</summary>
    public const int DateLength = 10;

    /// <summary>A letter of any script, or an underscore.</summary>
    public static bool StartsWord(char c) => char.IsAsciiLetter(c) || c == '_' || (c > '\x7f' && char.IsLetter(c));

    /// <summary>A letter, digit or underscore, or an accent that stands as a character of its own.</summary>
    public static bool ContinuesWord(char c) =>
        char.IsAsciiLetterOrDigit(c) || c == '_' || (c > '\x7f' && (char.IsLetterOrDigit(c) || IsAccent(c)));

    /// <summary>Where the word that starts here ends. A hyphen belongs to it when a letter, digit or underscore follows.</summary>
    public static int EndOfWord(string text, int start)
    {
        var at = start + 1;
        while (at < text.Length)
        {
            if (ContinuesWord(text[at]))
            {
                at++;
            }
            else if (text[at] == '-' && at + 1 < text.Length && ContinuesWord(text[at + 1]) && !IsAccent(text[at + 1]))
            {
                at += 2;
            }
            else
            {
                break;
            }
        }

        return at;
    }

    /// <summary>A space of any width, or a tab. Copied data sheets are full of spaces that do not break.</summary>
    public static bool IsBlank(char c) =>
        c is ' ' or '\t' || (c > '\x7f' && char.GetUnicodeCategory(c) == UnicodeCategory.SpaceSeparator);

    /// <summary>The token of a character that is one by itself, or null.</summary>
    public static TokenKind? Symbol(char c) => c switch
    {
        '{' => TokenKind.OpenBrace,
        '}' => TokenKind.CloseBrace,
        '(' => TokenKind.OpenParenthesis,
        ')' => TokenKind.CloseParenthesis,
        ':' => TokenKind.Colon,
        ';' => TokenKind.Semicolon,
        '=' => TokenKind.EqualsSign,
        '+' => TokenKind.Plus,
        '-' => TokenKind.Minus,
        '*' => TokenKind.Star,
        '/' => TokenKind.Slash,
        '\u00b1' => TokenKind.PlusMinus,
        '\u00d7' => TokenKind.Word,
        _ => null,
    };

    /// <summary>Whether no token starts with the character at this place.</summary>
    public static bool MeansNothing(string text, int at)
    {
        var c = text[at];
        return !StartsWord(c) && !char.IsAsciiDigit(c) && !IsBlank(c) && c is not ('\n' or '\r' or '#' or '"') && Symbol(c) is null
            && !(c == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]));
    }

    /// <summary>Whether four digits, two and two, with hyphens between and no word character after them, stand here.</summary>
    public static bool IsDate(string text, int at)
    {
        if (at + DateLength > text.Length || text[at + 4] != '-' || text[at + 7] != '-')
        {
            return false;
        }

        for (var i = 0; i < DateLength; i++)
        {
            if (i is not (4 or 7) && !char.IsAsciiDigit(text[at + i]))
            {
                return false;
            }
        }

        var end = at + DateLength;
        return end == text.Length
            || !(ContinuesWord(text[end]) || (text[end] == '-' && end + 1 < text.Length && ContinuesWord(text[end + 1])));
    }

    private static bool IsAccent(char c) =>
        c > '\x7f' && char.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;
}
