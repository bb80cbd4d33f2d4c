using System.Globalization;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>Two dates of one thing in the wrong order.</summary>
public static class DatesBackwards
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1110",
        Name = "dates-backwards",
        Severity = Severity.Error,
        Title = "Dates that run backwards",
        Reason = "A tin that expires before it came is a typing error or a broken record.",
        Remedy = "Correct one of the two dates.",
        Source = "common practice",
        BadExample =
            """
            resin my-epoxy {
              mix 100:30 by weight
            }
            stock {
              my-epoxy 2 kg received 2026-02-01 expires 2025-02-01
            }

            """,
        GoodExample =
            """
            resin my-epoxy {
              mix 100:30 by weight
            }
            stock {
              my-epoxy 2 kg received 2026-02-01 expires 2027-02-01
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string later, DateOnly laterDay, SourceSpan other, string earlier, DateOnly earlierDay) =>
        Finding.Of(Descriptor, where, $"`{later}` {Show(laterDay)} is before `{earlier}` {Show(earlierDay)}.") with
        {
            Labels = [new FindingLabel(other, $"{earlier} here")],
        };

    private static string Show(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
