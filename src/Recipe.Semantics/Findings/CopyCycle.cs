using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A `like` that leads back to its own declaration.</summary>
public static class CopyCycle
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1210",
        Name = "copy-cycle",
        Severity = Severity.Error,
        Title = "Declarations that copy each other in a circle",
        Reason = "There is nothing at the bottom of it to copy.",
        Remedy = "Let one of them say all its lines.",
        Source = "the language",
        BadExample =
            """
            fibre glass-a like glass-b {
              density 2.55 g/cm3
            }
            fibre glass-b like glass-a {
              density 2.6 g/cm3
            }

            """,
        GoodExample =
            """
            fibre glass-a {
              density 2.55 g/cm3
            }
            fibre glass-b like glass-a {
              density 2.6 g/cm3
            }

            """,
    };

    internal static Finding Create(SourceSpan where, IReadOnlyList<string> through) =>
        Finding.Of(Descriptor, where, $"`{through[0]}` is like {string.Join(", which is like ", through.Skip(1).Select(n => $"`{n}`"))}.");
}
