using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A value outside what is possible.</summary>
public static class OutOfRange
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1109",
        Name = "out-of-range",
        Severity = Severity.Error,
        Title = "A value that cannot be",
        Reason = "A value that nothing can have (nobody, less than nothing, more than all of it) is a slip of the pen, and every figure behind it would be wrong.",
        Remedy = "Correct the figure.",
        Source = "common practice",
        BadExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
              width 0 cm
            }

            """,
        GoodExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
              width 100 cm
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string head, string written, string limit) =>
        Finding.Of(Descriptor, where, $"`{head}` is {written}; it must be {limit}.");

    /// <summary>More of something than is read; what is too many is left out.</summary>
    /// <param name="where">The first that is left out.</param>
    /// <param name="what">What they are, in the plural.</param>
    /// <param name="count">How many there are.</param>
    /// <param name="most">How many there may be.</param>
    /// <param name="owner">What has them: <c>part</c>.</param>
    internal static Finding TooMany(SourceSpan where, string what, long count, int most, string owner) =>
        Finding.Of(Descriptor, where, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"These are {count} {what}; {most} is the most that one {owner} may have. Those from here on are left out."));

    internal static Finding DividedByZero(SourceSpan where) =>
        Finding.Of(Descriptor, where, "A division by 0 has no value.");

    internal static Finding TooLarge(SourceSpan where) =>
        Finding.Of(Descriptor, where, "The value is too large for a number of the program.");
}
