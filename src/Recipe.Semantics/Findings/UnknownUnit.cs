using System.Collections.Immutable;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A word behind a number that is no unit.</summary>
public static class UnknownUnit
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1103",
        Name = "unknown-unit",
        Severity = Severity.Error,
        Title = "There is no such unit",
        Reason = "Each unit has one spelling, and letter case decides: mPa and MPa differ by a thousand million.",
        Remedy = "Use a unit of the table in the language page.",
        Source = "common practice",
        BadExample =
            """
            release-agent my-wax {
              kind wax
              wait 30 mins
            }

            """,
        GoodExample =
            """
            release-agent my-wax {
              kind wax
              wait 30 min
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string number, string spelling, ImmutableArray<string> candidates, QuantityKind wanted) =>
        Finding.Of(
            Descriptor,
            where,
            candidates.IsEmpty
                ? $"`{spelling}` is not a unit; {wanted.Noun} is written in {Numbers.Or([.. wanted.Units])}."
                : $"`{spelling}` is not a unit; did you mean {Numbers.Or([.. candidates.Select(c => $"{number} {c}")])}?") with
        {
            Fixes = [.. candidates.Select(c => new Fix($"Write {c}", FixSafety.NeedsALook, new TextEdit(where, c)))],
        };
}
