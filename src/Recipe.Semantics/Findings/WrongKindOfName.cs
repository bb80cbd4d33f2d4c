using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A name that stands for something else.</summary>
public static class WrongKindOfName
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1205",
        Name = "wrong-kind-of-name",
        Severity = Severity.Error,
        Title = "The name of another kind of thing",
        Reason = "A resin cannot be cut and a fabric cannot be mixed.",
        Remedy = "Name a thing of the kind that the line takes.",
        Source = "the language",
        BadExample =
            """
            fibre my-glass {
              density 2.55 g/cm3
            }
            part lid {
              resin my-glass
            }

            """,
        GoodExample =
            """
            resin my-epoxy {
              mix 100:30 by weight
            }
            part lid {
              resin my-epoxy
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string name, string wanted, string found, SourceSpan declaration) =>
        Finding.Of(Descriptor, where, $"{wanted[..1].ToUpperInvariant()}{wanted[1..]} is wanted here, but `{name}` is {found}.") with
        {
            Labels = [new FindingLabel(declaration, $"`{name}` is declared here")],
        };
}
