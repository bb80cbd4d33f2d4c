using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>Arithmetic on quantities of different kinds.</summary>
public static class DimensionClash
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1108",
        Name = "dimension-clash",
        Severity = Severity.Error,
        Title = "Quantities that do not go together",
        Reason = "A sum of grams and millimetres is not a number of anything.",
        Remedy = "Bring both sides to the same kind of quantity.",
        Source = "NIST SP 811 (2008), section 7.11: only quantities of one kind are added",
        BadExample =
            """
            let slack = (3 g + 2 mm)

            """,
        GoodExample =
            """
            let slack = (3 mm + 2 mm)

            """,
    };

    internal static Finding Create(SourceSpan where, char op, string left, string leftKind, string right, string rightKind) =>
        Finding.Of(Descriptor, where, $"{left} {op} {right} has no meaning: the left side is {Numbers.A(leftKind)}, the right side {Numbers.A(rightKind)}.");

    /// <summary>A temperature where only a difference can stand.</summary>
    internal static Finding Temperature(SourceSpan where, string op) =>
        Finding.Of(Descriptor, where, $"A temperature cannot stand on this side of `{op}`; write a difference in K or degC-diff.");

    /// <summary>A unit behind something that has one already.</summary>
    internal static Finding UnitTwice(SourceSpan where, string value, string unit) =>
        Finding.Of(Descriptor, where, $"The expression is {value} already; {unit} behind it has no meaning.");
}
