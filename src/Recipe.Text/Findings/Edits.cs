namespace Recipe.Text.Findings;

/// <summary>
/// Edits of a recipe's text that keep its shape: a line goes in with the indent of its neighbours, and a block written on one line
/// stays on one line. The formatter has the last word.
/// </summary>
public static class Edits
{
    private const string Indent = "  ";

    /// <summary>Puts entries before the one at <paramref name="entry"/>.</summary>
    public static TextEdit Before(SourceSpan entry, params string[] lines)
    {
        var between = BlockText.StartsItsLine(entry.Source, entry.Span.Start) ? NewLine(entry) : "; ";
        return Insert(entry.Source, entry.Span.Start, string.Concat(lines.Select(l => l + between)));
    }

    /// <summary>Puts an entry after the one at <paramref name="entry"/>, and after the comment on its line.</summary>
    public static TextEdit After(SourceSpan entry, string line) =>
        BlockText.RestOfLine(entry.Source, entry.Span.End) is { } rest
            ? Insert(entry.Source, rest.End, NewLine(entry) + line)
            : Insert(entry.Source, entry.Span.End, "; " + line);

    /// <summary>Puts lines last into the block that opens on the line of <paramref name="head"/>; null when no block opens there.</summary>
    public static TextEdit? Last(SourceSpan head, params string[] lines)
    {
        var source = head.Source;
        if (BlockText.BlockAfter(source, head.Span.End) is not { } block)
        {
            return null;
        }

        var close = block.End - 1;
        var newLine = BlockText.LineEndOf(source) + BlockText.IndentOf(source, head.Span.Start);
        if (BlockText.StartsItsLine(source, close))
        {
            var endOfLineBefore = source.LineSpan(source.PositionOf(close).Line - 1).End;
            return Insert(source, endOfLineBefore, string.Concat(lines.Select(l => newLine + Indent + l)));
        }

        var last = close;
        while (source.Text[last - 1] is ' ' or '\t')
        {
            last--;
        }

        var rest = new SourceSpan(source, TextSpan.FromBounds(last, close));
        var isEmpty = last == block.Start + 1;
        return lines.Length == 1
            ? new TextEdit(rest, $"{(isEmpty ? "" : ";")} {lines[0]} ")
            : new TextEdit(rest, string.Concat(lines.Select(l => newLine + Indent + l)) + newLine);
    }

    /// <summary>Adds words to the end of an entry's line.</summary>
    public static TextEdit Append(SourceSpan entryLine, string words) => Insert(entryLine.Source, entryLine.Span.End, " " + words);

    /// <summary>Takes an entry away, with its line when nothing else stands there.</summary>
    public static TextEdit Remove(SourceSpan entry)
    {
        var source = entry.Source;
        var start = entry.Span.Start;
        var end = entry.Span.End;
        if (BlockText.StartsItsLine(source, start) && BlockText.RestOfLine(source, end) is { } rest)
        {
            start -= BlockText.IndentOf(source, start).Length;
            end = rest.End + BlockText.LineEndLength(source, rest.End);
        }
        else
        {
            while (end < source.Length && source.Text[end] is ';' or ' ')
            {
                end++;
            }
        }

        return new TextEdit(new SourceSpan(source, TextSpan.FromBounds(start, end)), "");
    }

    /// <summary>An entry with the comment behind it, when it is the last on its line: what moves when the line moves.</summary>
    public static SourceSpan WholeLine(SourceSpan entry) =>
        BlockText.RestOfLine(entry.Source, entry.Span.End) is { } rest
            ? new SourceSpan(entry.Source, TextSpan.FromBounds(entry.Span.Start, rest.End))
            : entry;

    /// <summary>Replaces what stands at a place.</summary>
    public static TextEdit Replace(SourceSpan where, string text) => new(where, text);

    /// <summary>A fix of one edit, or null when the edit could not be made.</summary>
    public static Fix? Fix(string title, FixSafety safety, TextEdit? edit) => edit is null ? null : new Fix(title, safety, edit);

    private static TextEdit Insert(SourceText source, int at, string text) => new(new SourceSpan(source, new TextSpan(at, 0)), text);

    private static string NewLine(SourceSpan entry) =>
        BlockText.LineEndOf(entry.Source) + BlockText.IndentOf(entry.Source, entry.Span.Start);
}
