using System.Text.RegularExpressions;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A number with more than one mark in it.</summary>
internal static partial class UnclearNumber
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
        Finding.Of(Descriptor, where, $"\u2018{where.Text}\u2019 is no number: a number has one decimal point at most, and no mark between thousands") with
        {
            Fixes = Meant(where.Text) is { } meant ? [new Fix($"Write {meant}", FixSafety.NeedsALook, new TextEdit(where, meant))] : [],
        };

    /// <summary>The number whose thousands are parted by one mark throughout, in threes, and whose decimals, if any, stand behind the other; else null.</summary>
    private static string? Meant(string text) =>
        PartedByCommas().IsMatch(text) ? text.Replace(",", "", StringComparison.Ordinal)
        : PartedByPoints().IsMatch(text) ? text.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')
        : null;

    [GeneratedRegex(@"^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$", RegexOptions.CultureInvariant)]
    private static partial Regex PartedByCommas();

    [GeneratedRegex(@"^[1-9]\d{0,2}(\.\d{3})+(,\d+)?$", RegexOptions.CultureInvariant)]
    private static partial Regex PartedByPoints();
}
