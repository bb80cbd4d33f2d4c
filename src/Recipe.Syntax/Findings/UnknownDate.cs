using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A day that no calendar has.</summary>
internal static class UnknownDate
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1004",
        Name = "unknown-date",
        Severity = Severity.Error,
        Title = "A day that no calendar has",
        Reason = "A date that does not exist makes every age and expiry that rests on it wrong.",
        Remedy = "Write the date as year-month-day, for example 2026-05-14.",
        Source = "the language itself",
        BadExample = """
            accept RC6004 because "small bag" until 2026-02-30
            """,
        GoodExample = """
            accept RC6004 because "small bag" until 2026-02-28
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"there is no day {where.Text}");
}
