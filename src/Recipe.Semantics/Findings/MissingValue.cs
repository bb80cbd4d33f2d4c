using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A line that lacks a value, or a block that lacks a line.</summary>
public static class MissingValue
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1112",
        Name = "missing-value",
        Severity = Severity.Error,
        Title = "Something is missing on the line",
        Reason = "A line without its value says nothing, and the plan goes on without it.",
        Remedy = "Add what is missing, or take the line out.",
        Source = "common practice",
        BadExample =
            """
            resin my-epoxy {
              mix 100:30 by weight
              pot-life 60 min
            }

            """,
        GoodExample =
            """
            resin my-epoxy {
              mix 100:30 by weight
              pot-life 60 min at 23 degC in 100 g
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string head, string what, string example) =>
        Finding.Of(Descriptor, where, $"`{head}` lacks {what}, as in `{example}`.");

    /// <summary>A value before which the word is missing that says what it is.</summary>
    internal static Finding Before(SourceSpan where, string head, string phrase, string example) =>
        Finding.Of(Descriptor, where, $"`{head}` lacks the word `{phrase}` before {where.Text}, as in `{example}`.") with
        {
            Fixes = [new Fix($"Write {phrase} {where.Text}", FixSafety.NeedsALook, new TextEdit(where with { Span = new TextSpan(where.Span.Start, 0) }, phrase + " "))],
        };

    /// <summary>A line that the block needs.</summary>
    internal static Finding Line(SourceSpan where, string block, string word, string example) =>
        Finding.Of(Descriptor, where, $"`{block}` lacks the line `{word}`, as in `{example}`.");

    /// <summary>A resin with several hardeners, and none chosen.</summary>
    internal static Finding Hardener(SourceSpan where, string resin, IReadOnlyList<string> hardeners) =>
        Finding.Of(Descriptor, where, $"`{resin}` has the hardeners {string.Join(", ", hardeners)}; say which, as in `resin {resin} with {hardeners[0]}`.") with
        {
            Fixes =
            [
                .. hardeners.Select(h => new Fix($"Write with {h}", FixSafety.NeedsALook, new TextEdit(where with { Span = new TextSpan(where.Span.End, 0) }, " with " + h))),
            ],
        };
}
