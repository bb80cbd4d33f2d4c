using System.Globalization;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A date that is not written year-month-day.</summary>
internal static class DateOrder
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1025",
        Name = "date-order",
        Severity = Severity.Error,
        Title = "A date in another order",
        Reason = "The date 10/01 is the tenth of January to one reader and the first of October to the next, and a tin that went off then looks fresh.",
        Remedy = "Write the date as year-month-day, for example 2026-05-14.",
        Source = "ISO 8601, calendar date in its extended format",
        BadExample = """
            accept RC6004 because "small bag" until 10/01/2026
            """,
        GoodExample = """
            accept RC6004 because "small bag" until 2026-10-01
            """,
    };

    /// <param name="where">The date as written.</param>
    /// <param name="days">The days it may be, none when no calendar has it.</param>
    public static Finding Create(SourceSpan where, IReadOnlyList<DateOnly> days) =>
        Finding.Of(Descriptor, where, Message(Quoted.Text(where.Text), days)) with
        {
            Fixes =
            [
                .. days.Select(day => new Fix(
                    $"Write {Iso(day)}, which is {Spoken(day)}",
                    days.Count == 1 && HasWholeYear(where.Text) ? FixSafety.Safe : FixSafety.NeedsALook,
                    new TextEdit(where, Iso(day)))),
            ],
        };

    private static string Message(string written, IReadOnlyList<DateOnly> days) => days.Count switch
    {
        0 => $"{written} is no day in any order; a date is written year-month-day",
        1 => $"{written} is {Spoken(days[0])}, and a date is written year-month-day: {Iso(days[0])}",
        _ => $"{written} can be {string.Join(" or ", days.Select(Spoken))}; a date is written year-month-day",
    };

    // Of 13/10/26 either end may be the year, or it may be no date at all.
    private static bool HasWholeYear(string written) => written.Split('/', '.', '-').Any(part => part.Length == 4);

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Spoken(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
