using System.Collections.Immutable;
using System.Globalization;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>An <c>explore</c> with more candidates than are tried.</summary>
public static class TooManyCandidates
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1215",
        Name = "too-many-candidates",
        Severity = Severity.Error,
        Title = "More candidates than are tried",
        Reason = "Every way to make all choices is one candidate, so the options multiply; nobody waits for so many.",
        Remedy = "Give some choices fewer options or a range fewer steps, or explore in two passes: first coarsely, then near what was best.",
        Source = "the language",
        BadExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
            }
            part lid {
              plies {
                outer my-twill 0/90
                inner my-twill 0/90
              }
            }
            explore light-lid of lid {
              choose resin-content 35 to 55 % by weight steps 10000
              choose room 15 to 25 degC steps 2000
              want least mass
            }

            """,
        GoodExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
            }
            part lid {
              plies {
                outer my-twill 0/90
                inner my-twill 0/90
              }
            }
            explore light-lid of lid {
              choose resin-content 35 to 55 % by weight steps 21
              choose room 15 to 25 degC steps 6
              want least mass
            }

            """,
    };

    internal static Finding Create(SourceSpan where, ImmutableArray<(string Label, int Options)> choices, long most)
    {
        var product = choices.Aggregate(System.Numerics.BigInteger.One, (all, choice) => all * choice.Options);
        var (label, options) = choices.MaxBy(choice => choice.Options);
        return Finding.Of(
            Descriptor,
            where,
            string.Create(CultureInfo.InvariantCulture, $"There are {string.Join(" x ", choices.Select(choice => choice.Options))} = {product} candidates, and at most {most} are tried; `{label}` alone has {options} options."));
    }
}
