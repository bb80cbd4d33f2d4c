using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A number with more than one mark in it.</summary>
internal static class UnclearNumber
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1009",
        Name = "unclear-number",
        Severity = Severity.Error,
        Title = "A number with more than one mark in it",
        Reason = "What parts thousands in one country is the decimal mark of another, so such a number has two readings that differ a thousandfold.",
        Remedy = "Write a decimal point, and no mark between thousands; write a date as year-month-day.",
        Source = "the language itself",
        BadExample = """
            let roll = 1,250.5 mm
            """,
        GoodExample = """
            let roll = 1250.5 mm
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"\u2018{where.Text}\u2019 is no number: a number has one decimal point at most, and no mark between thousands");
}
