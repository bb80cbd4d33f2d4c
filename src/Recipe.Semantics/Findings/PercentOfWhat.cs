using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A percentage whose whole is not named.</summary>
public static class PercentOfWhat
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1106",
        Name = "percent-of-what",
        Severity = Severity.Error,
        Title = "A percentage that does not say of what",
        Reason = "45 % by weight and 45 % by volume are two laminates; 20 % of the mix is 25 parts to 100 of resin.",
        Remedy = "Say what it is a percentage of.",
        Source = "common practice",
        BadExample =
            """
            part lid {
              wet-out {
                resin-content 45 %
              }
            }

            """,
        GoodExample =
            """
            part lid {
              wet-out {
                resin-content 45 % by weight
              }
            }

            """,
    };

    internal static Finding Content(SourceSpan where, string written, bool ofFibre)
    {
        var what = ofFibre ? "fibre" : "resin";
        return Finding.Of(Descriptor, where, $"{written} does not say of what: {what} as a share of the laminate's weight, or of its volume?") with
        {
            Fixes = [Behind(where, written, ofFibre ? "by volume" : "by weight"), Behind(where, written, ofFibre ? "by weight" : "by volume")],
        };
    }

    internal static Finding Hardener(SourceSpan where, string written, double share)
    {
        var ofMix = share < 1 ? $", of the mix {Numbers.Format(Math.Round(100 * share / (1 - share), 2))}" : "";
        return Finding.Of(Descriptor, where, $"{written} does not say of what: of the resin it is {Numbers.Format(100 * share)} parts to 100 of resin{ofMix}.") with
        {
            Fixes = [Behind(where, written, "of resin"), Behind(where, written, "of mix")],
        };
    }

    private static Fix Behind(SourceSpan where, string written, string words) =>
        new($"Write {written} {words}", FixSafety.NeedsALook, new TextEdit(where with { Span = new TextSpan(where.Span.End, 0) }, " " + words));
}
