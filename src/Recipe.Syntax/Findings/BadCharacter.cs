using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A character that means nothing here.</summary>
internal static class BadCharacter
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1003",
        Name = "bad-character",
        Severity = Severity.Error,
        Title = "A character that means nothing here",
        Reason = "A stray character may hide what the line was meant to say.",
        Remedy = "Take it out, or put the words in quotes.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm !
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"{Shown(where.Text)} means nothing here") with
        {
            Fixes = [new Fix("Take it out", FixSafety.NeedsALook, new TextEdit(where, ""))],
        };

    private static string Shown(string text) => text.Any(char.IsControl) ? "a control character" : "\u2018" + text + "\u2019";
}
