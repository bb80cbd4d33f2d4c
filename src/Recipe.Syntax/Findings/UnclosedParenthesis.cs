using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A parenthesis that is never closed.</summary>
internal static class UnclosedParenthesis
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1016",
        Name = "unclosed-parenthesis",
        Severity = Severity.Error,
        Title = "A parenthesis that is never closed",
        Reason = "Where the arithmetic ends is then a guess, and so is its result.",
        Remedy = "Close the parenthesis where the arithmetic ends.",
        Source = "the language itself",
        BadExample = """
            let lap = (20 mm + 5 mm
            """,
        GoodExample = """
            let lap = (20 mm + 5 mm)
            """,
    };

    /// <param name="open">The parenthesis.</param>
    /// <param name="end">The end of what could belong to it.</param>
    public static Finding Create(SourceSpan open, SourceSpan end) => Finding.Of(Descriptor, open, "this parenthesis is never closed") with
    {
        Labels = [new FindingLabel(end, "the line ends here")],
        Fixes = [new Fix("Close it at the end of the line", FixSafety.NeedsALook, new TextEdit(end, ")"))],
    };
}
