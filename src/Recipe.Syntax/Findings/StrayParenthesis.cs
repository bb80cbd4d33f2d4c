using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A closing parenthesis too many.</summary>
internal static class StrayParenthesis
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1022",
        Name = "stray-parenthesis",
        Severity = Severity.Error,
        Title = "A closing parenthesis too many",
        Reason = "One parenthesis too many usually means that the arithmetic was closed too early.",
        Remedy = "Take it out, or look for the parenthesis that should open before it.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm)
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    public static Finding Create(SourceSpan where) => Finding.Of(Descriptor, where, "no parenthesis is open here") with
    {
        Fixes = [new Fix("Take the parenthesis out", FixSafety.NeedsALook, new TextEdit(where, ""))],
    };
}
