using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A number beyond what can be counted with.</summary>
internal static class NumberOutOfRange
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1010",
        Name = "number-out-of-range",
        Severity = Severity.Error,
        Title = "A number beyond what can be counted with",
        Reason = "Every result that rests on it would be infinite or nothing.",
        Remedy = "Write the number that was meant, in a unit that suits its size.",
        Source = "the language itself",
        BadExample = """
            let lap = 1e999 mm
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    public static Finding Create(SourceSpan where, bool tooLarge) => Finding.Of(
        Descriptor, where, $"{where.Text} is too {(tooLarge ? "large" : "small")} for any reckoning; numbers reach from 1e-308 to 1e308");
}
