using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Arithmetic outside parentheses.</summary>
internal static class BareArithmetic
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1017",
        Name = "bare-arithmetic",
        Severity = Severity.Error,
        Title = "Arithmetic outside parentheses",
        Reason = "Outside parentheses a line is a list of values, and a sign belongs to the value behind it.",
        Remedy = "Put the arithmetic in parentheses.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm
            shop ours {
              altitude 250 m * 2
            }
            """,
        GoodExample = """
            let lap = 20 mm
            shop ours {
              altitude (250 m * 2)
            }
            """,
    };

    /// <param name="sign">The sign of the arithmetic.</param>
    /// <param name="arithmetic">From the value before the sign to the end of the line, or null when no value stands before it.</param>
    public static Finding Create(SourceSpan sign, SourceSpan? arithmetic) =>
        Finding.Of(Descriptor, sign, $"arithmetic with {Quoted.Text(sign.Text)} stands in parentheses") with
        {
            Fixes = arithmetic is { } all
                ?
                [
                    new Fix(
                        "Put it in parentheses",
                        FixSafety.NeedsALook,
                        new TextEdit(new SourceSpan(all.Source, new TextSpan(all.Span.Start, 0)), "("),
                        new TextEdit(new SourceSpan(all.Source, new TextSpan(all.Span.End, 0)), ")")),
                ]
                : [],
        };
}
