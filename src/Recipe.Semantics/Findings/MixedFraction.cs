using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A whole number with a fraction behind it, as a tape measure reads: <c>3 1/2 in</c>.</summary>
public static class MixedFraction
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1115",
        Name = "mixed-fraction",
        Severity = Severity.Error,
        Title = "A whole number and a fraction side by side",
        Reason = "A blank parts two values here, so 3 1/2 in reads as a 3 and as half an inch.",
        Remedy = "Write it as one number with a decimal point.",
        Source = "the language",
        BadExample =
            """
            mould lid-mould {
              flange 3 1/2 in
            }

            """,
        GoodExample =
            """
            mould lid-mould {
              flange 3.5 in
            }

            """,
    };

    /// <param name="where">The whole number and the fraction, without the unit.</param>
    /// <param name="sum">What they are together.</param>
    /// <param name="unit">The unit as written.</param>
    internal static Finding Create(SourceSpan where, double sum, string unit)
    {
        var number = Numbers.Format(sum);
        return Finding.Of(Descriptor, where, $"{where.Text} {unit} is read as two values; as one it is {number} {unit}.") with
        {
            Fixes = [new Fix($"Write {number} {unit}", FixSafety.Safe, new TextEdit(where, number))],
        };
    }
}
