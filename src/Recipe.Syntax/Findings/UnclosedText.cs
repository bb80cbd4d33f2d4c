using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A text without its closing quote.</summary>
internal static class UnclosedText
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1002",
        Name = "unclosed-text",
        Severity = Severity.Error,
        Title = "A text without its closing quote",
        Reason = "Where the text ends is then a guess, and what follows it on the line is lost.",
        Remedy = "Close the text on its own line.",
        Source = "the language itself",
        BadExample = """
            shop ours {
              note "white inside
            }
            """,
        GoodExample = """
            shop ours {
              note "white inside"
            }
            """,
    };

    public static Finding Create(SourceSpan where)
    {
        // A lone backslash at the end would make a quote of the text out of the one that closes it.
        var backslashes = where.Text.Length - where.Text.TrimEnd('\\').Length;
        var close = new TextEdit(new SourceSpan(where.Source, new TextSpan(where.Span.End, 0)), backslashes % 2 == 0 ? "\"" : "\\\"");
        return Finding.Of(Descriptor, where, "this text has no closing quote on its line") with
        {
            Fixes = [new Fix("Close the text at the end of the line", FixSafety.NeedsALook, close)],
        };
    }
}
