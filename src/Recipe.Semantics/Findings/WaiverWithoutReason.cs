using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>An `accept` without `because`.</summary>
public static class WaiverWithoutReason
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1212",
        Name = "waiver-without-reason",
        Severity = Severity.Warning,
        Title = "A waiver without a reason",
        Reason = "Waivers become habits; the reason is what the next reader judges.",
        Remedy = "Write `because` and the reason.",
        Source = "common practice",
        BadExample =
            """
            accept RC6004 until 2027-01-01

            """,
        GoodExample =
            """
            accept RC6004 because "small bag, gauge on the far side" until 2027-01-01

            """,
    };

    internal static Finding Create(SourceSpan where, string code) =>
        Finding.Of(Descriptor, where, $"{code} is accepted without a reason; write `because` and a text.");
}
