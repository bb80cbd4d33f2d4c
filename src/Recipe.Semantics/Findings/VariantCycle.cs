using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A variant that is in the end a variant of itself.</summary>
public static class VariantCycle
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1209",
        Name = "variant-cycle",
        Severity = Severity.Error,
        Title = "Variants that come from each other in a circle",
        Reason = "There is no part at the bottom of it.",
        Remedy = "Let one of them be a part.",
        Source = "the language",
        BadExample =
            """
            variant lid-a of lid-b {
              trim 15 mm
            }
            variant lid-b of lid-a {
              trim 20 mm
            }

            """,
        GoodExample =
            """
            part lid-a {
              trim 15 mm
            }
            variant lid-b of lid-a {
              trim 20 mm
            }

            """,
    };

    internal static Finding Create(SourceSpan where, IReadOnlyList<string> through) =>
        Finding.Of(Descriptor, where, $"`{through[0]}` comes from {string.Join(", which comes from ", through.Skip(1).Select(n => $"`{n}`"))}.");
}
