using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A sign of a currency instead of its code.</summary>
internal static class MoneySign
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1026",
        Name = "money-sign",
        Severity = Severity.Error,
        Title = "A sign for money",
        Reason = "A dollar may be one of the United States, of Canada or of Australia, and prices in two of them must not be added.",
        Remedy = "Write the three letters of the currency behind the number: 8.20 USD/yd2.",
        Source = "ISO 4217, the codes of currencies",
        BadExample = """
            prices ours {
              my-twill $8.20/yd2
            }
            """,
        GoodExample = """
            prices ours {
              my-twill 8.20 USD/yd2
            }
            """,
    };

    /// <summary>The code that a sign most likely stands for, or null when the character is no sign of a currency.</summary>
    public static string? CodeOf(char sign) => sign switch
    {
        '$' => "USD",
        '\u20ac' => "EUR",
        '\u00a3' => "GBP",
        '\u00a5' => "JPY",
        _ => null,
    };

    /// <param name="where">The sign, with the number that follows it when one does.</param>
    public static Finding Create(SourceSpan where)
    {
        var sign = where.Text[0];
        var code = CodeOf(sign)!;
        var number = where.Text[1..].Trim();
        var written = number.Length > 0 ? $"{number} {code}" : code;
        var others = sign switch
        {
            '$' => "; another dollar has a code of its own, CAD or AUD",
            '\u00a5' => "; the yuan, which has the same sign, is CNY",
            _ => "",
        };
        var before = where.Span.Start > 0 && number.Length == 0 && char.IsAsciiLetterOrDigit(where.Source.Text[where.Span.Start - 1]) ? " " : "";
        return Finding.Of(Descriptor, where, $"{Quoted.Text(where.Text)} is written {written}{others}") with
        {
            Fixes = [new Fix($"Write {written}", FixSafety.NeedsALook, new TextEdit(where, before + written))],
        };
    }
}
