using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Two entries on one line.</summary>
internal static class EntryAfterBlock
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1021",
        Name = "entry-after-block",
        Severity = Severity.Warning,
        Title = "Two entries on one line",
        Reason = "One thing stands on a line, so that a change of it shows as one changed line.",
        Remedy = "Begin a new line after the closing brace.",
        Source = "the language itself",
        Exceptions = "Inside a block that stands on one line from brace to brace, such as a short example of a rule.",
        BadExample = """
            shop ours { altitude 250 m } let lap = 20 mm
            """,
        GoodExample = """
            shop ours { altitude 250 m }
            let lap = 20 mm
            """,
    };

    /// <param name="where">The first word of the second entry.</param>
    public static Finding Create(SourceSpan where)
    {
        var newLine = BlockText.LineEndOf(where.Source) + BlockText.IndentOf(where.Source, where.Span.Start);
        return Finding.Of(Descriptor, where, $"{Quoted.Text(where.Text)} begins a new entry and wants a line of its own") with
        {
            Fixes = [new Fix("Begin a new line", FixSafety.Safe, new TextEdit(new SourceSpan(where.Source, new TextSpan(where.Span.Start, 0)), newLine))],
        };
    }
}
