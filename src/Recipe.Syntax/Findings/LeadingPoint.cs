using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A number that begins with its decimal point.</summary>
internal static class LeadingPoint
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1011",
        Name = "leading-point",
        Severity = Severity.Warning,
        Title = "A number that begins with its decimal point",
        Reason = "On a smudged sheet at the bench .5 reads as 5.",
        Remedy = "Write a zero before the point.",
        Source = "NIST SP 811 (2008), section 10.5.2: a zero stands before the decimal marker of a number below one",
        BadExample = """
            let film = .5 mm
            """,
        GoodExample = """
            let film = 0.5 mm
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"{where.Text} begins with its decimal point") with
        {
            Fixes = [new Fix($"Write 0{where.Text}", FixSafety.Safe, new TextEdit(where, "0" + where.Text))],
        };
}
