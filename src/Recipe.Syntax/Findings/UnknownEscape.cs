using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A backslash that stands for nothing.</summary>
internal static class UnknownEscape
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1012",
        Name = "unknown-escape",
        Severity = Severity.Warning,
        Title = "A backslash that stands for nothing",
        Reason = "In a text a backslash stands before a quote or another backslash; before anything else it may not mean what was intended.",
        Remedy = "Write two backslashes where one is meant.",
        Source = "the language itself",
        BadExample = """
            shop ours {
              note "drawing 12\b"
            }
            """,
        GoodExample = """
            shop ours {
              note "drawing 12\\b"
            }
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, "this backslash stands before neither a quote nor a backslash, and is read as it is") with
        {
            Fixes = [new Fix("Write two backslashes", FixSafety.Safe, new TextEdit(where, @"\\"))],
        };
}
