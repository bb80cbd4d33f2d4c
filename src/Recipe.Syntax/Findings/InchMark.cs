using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Feet and inches by the marks of a drawing.</summary>
internal static class InchMark
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1024",
        Name = "inch-mark",
        Severity = Severity.Error,
        Title = "A mark for feet or inches",
        Reason = "The mark of the inch opens a text here, and a length that is read as a text is no length.",
        Remedy = "Write in or ft behind the number.",
        Source = "the language itself",
        BadExample = """
            mould lid-mould {
              flange 3"
            }
            """,
        GoodExample = """
            mould lid-mould {
              flange 3 in
            }
            """,
    };

    /// <summary>How long the mark at this place is, and the unit it stands for; null where there is none.</summary>
    public static (int Length, string Unit)? Read(string text, int at)
    {
        if (at >= text.Length)
        {
            return null;
        }

        return text[at] switch
        {
            '"' or '\u2033' or '\u201d' => (1, "in"),
            '\'' or '\u2032' or '\u2019' when at + 1 < text.Length && text[at + 1] == text[at] => (2, "in"),
            '\'' or '\u2032' or '\u2019' => (1, "ft"),
            _ => null,
        };
    }

    /// <param name="where">The mark.</param>
    /// <param name="number">The number before it, as written.</param>
    /// <param name="unit">What it stands for.</param>
    public static Finding Create(SourceSpan where, string number, string unit) =>
        Finding.Of(Descriptor, where, $"{Quoted.Text(number + where.Text)} is written {number} {unit}") with
        {
            Fixes = [new Fix($"Write {number} {unit}", FixSafety.Safe, new TextEdit(where, Separated(where, unit)))],
        };

    /// <summary>Behind <c>5'</c> the <c>6"</c> may follow at once; its number must not run into the unit.</summary>
    private static string Separated(SourceSpan where, string unit)
    {
        var end = where.Span.End;
        var text = where.Source.Text;
        return " " + unit + (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '_' or '-' or '.') ? " " : "");
    }
}
