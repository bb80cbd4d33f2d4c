using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A block without its closing brace.</summary>
internal static class UnclosedBlock
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1006",
        Name = "unclosed-block",
        Severity = Severity.Error,
        Title = "A block without its closing brace",
        Reason = "Everything below it is read as part of the block.",
        Remedy = "Put the closing brace where the block ends.",
        Source = "the language itself",
        BadExample = """
            shop ours {
              altitude 250 m
            """,
        GoodExample = """
            shop ours {
              altitude 250 m
            }
            """,
    };

    /// <param name="open">The opening brace.</param>
    /// <param name="end">Where the closing brace was missed.</param>
    public static Finding Create(SourceSpan open, SourceSpan end)
    {
        var source = open.Source;
        var close = $"{BlockText.LineEndOf(source)}{BlockText.IndentOf(source, open.Span.Start)}}}";
        return Finding.Of(Descriptor, open, "this block is never closed") with
        {
            Labels = [new FindingLabel(end, "the closing brace was missed here")],
            Fixes = [new Fix("Close the block there", FixSafety.NeedsALook, new TextEdit(end, close))],
        };
    }
}
