using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>An opening brace on a line of its own.</summary>
internal static class BraceOnOwnLine
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1013",
        Name = "brace-on-own-line",
        Severity = Severity.Warning,
        Title = "An opening brace on a line of its own",
        Reason = "An entry ends with its line, so a block belongs to the line that its brace stands on.",
        Remedy = "Put the brace at the end of the line above.",
        Source = "the language itself",
        BadExample = """
            shop ours
            {
              altitude 250 m
            }
            """,
        GoodExample = """
            shop ours {
              altitude 250 m
            }
            """,
    };

    /// <param name="brace">The brace.</param>
    /// <param name="header">The line that the block belongs to.</param>
    public static Finding Create(SourceSpan brace, SourceSpan header)
    {
        var source = brace.Source;
        var lineStart = source.OffsetOf(new LinePosition(brace.Start.Line, 0));
        var isAlone = source.Slice(TextSpan.FromBounds(lineStart, brace.Span.Start)).Trim().Length == 0
            && source.Slice(source.LineSpan(brace.Start.Line)).TrimEnd().Length == brace.Span.End - lineStart;

        // The whole line goes when nothing else stands on it.
        var end = isAlone && brace.Start.Line + 1 < source.LineCount ? source.OffsetOf(new LinePosition(brace.Start.Line + 1, 0)) : brace.Span.End;
        var old = new SourceSpan(source, TextSpan.FromBounds(isAlone ? lineStart : brace.Span.Start, end));
        return Finding.Of(Descriptor, brace, "this brace stands on a line of its own; it is read as the block of the line above") with
        {
            Labels = [new FindingLabel(header, "the block is read as part of this line")],
            Fixes =
            [
                new Fix(
                    "Move the brace to the end of the line above",
                    FixSafety.Safe,
                    new TextEdit(new SourceSpan(source, new TextSpan(header.Span.End, 0)), " {"),
                    new TextEdit(old, "")),
            ],
        };
    }
}
