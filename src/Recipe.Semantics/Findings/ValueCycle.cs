using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A `let` that depends on itself.</summary>
public static class ValueCycle
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1114",
        Name = "value-cycle",
        Severity = Severity.Error,
        Title = "A named value that needs itself",
        Reason = "A value that is worked out from itself has none.",
        Remedy = "Give one of the values a figure.",
        Source = "mathematics",
        BadExample =
            """
            let lap = (trim + 5 mm)
            let trim = (lap - 5 mm)

            """,
        GoodExample =
            """
            let lap = (trim + 5 mm)
            let trim = 15 mm

            """,
    };

    internal static Finding Create(SourceSpan where, string name, IReadOnlyList<string> through) =>
        Finding.Of(Descriptor, where, through.Count == 0
            ? $"`{name}` is worked out from itself."
            : $"`{name}` is worked out from {string.Join(", then ", through.Select(t => $"`{t}`"))}, which needs `{name}` again.");
}
