using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A second `default yes` in one class.</summary>
public static class TwoDefaults
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1213",
        Name = "two-defaults",
        Severity = Severity.Warning,
        Title = "Two defaults of one class",
        Reason = "A recipe that names only the class gets the first one.",
        Remedy = "Let one of them say `default yes`.",
        Source = "the language",
        BadExample =
            """
            breather felt-150 {
              areal-weight 150 g/m2
              default yes
            }
            breather felt-300 {
              areal-weight 300 g/m2
              default yes
            }

            """,
        GoodExample =
            """
            breather felt-150 {
              areal-weight 150 g/m2
              default yes
            }
            breather felt-300 {
              areal-weight 300 g/m2
            }

            """,
        Exceptions = "A release film with holes and one without may both be defaults: `perforated` and `solid` tell them apart.",
    };

    internal static Finding Create(SourceSpan where, string keyword, string name, SourceSpan first) =>
        Finding.Of(Descriptor, where, $"`{name}` is a second default {keyword}; a recipe that names only the class gets the first one.") with
        {
            Labels = [new FindingLabel(first, "the first one")],
        };
}
