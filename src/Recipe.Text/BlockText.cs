namespace Recipe.Text;

/// <summary>
/// Where lines and blocks lie in a text. Fixes need no more than this of the syntax, so that neither checks nor rules of the house know a tree: texts in
/// quotes and comments are stepped over, braces are counted.
/// </summary>
public static class BlockText
{
    /// <summary>The blanks at the start of the line of an offset.</summary>
    public static string IndentOf(SourceText source, int offset)
    {
        var line = source.LineSpan(source.PositionOf(offset).Line);
        var end = line.Start;
        while (end < line.End && source.Text[end] is ' ' or '\t')
        {
            end++;
        }

        return source.Text[line.Start..end];
    }

    /// <summary>Whether only blanks stand before an offset on its line.</summary>
    public static bool StartsItsLine(SourceText source, int offset)
    {
        var line = source.LineSpan(source.PositionOf(offset).Line);
        return line.Start + IndentOf(source, offset).Length >= offset;
    }

    /// <summary>The rest of the line when it holds only blanks and a comment; null when something else stands there.</summary>
    public static TextSpan? RestOfLine(SourceText source, int offset)
    {
        var line = source.LineSpan(source.PositionOf(offset).Line);
        var rest = source.Text.AsSpan(offset, line.End - offset).TrimStart(" \t");
        return rest.IsEmpty || rest[0] == '#' ? TextSpan.FromBounds(offset, line.End) : null;
    }

    /// <summary>The line end that a text uses: that of its first line, LF when it has one line only.</summary>
    public static string LineEndOf(SourceText source) => LineEnds.FirstOf(source.Text) ?? "\n";

    /// <summary>Number of characters of the line end at an offset: 0 at the end of the text.</summary>
    public static int LineEndLength(SourceText source, int offset) =>
        offset >= source.Length ? 0
        : source.Text[offset] == '\r' && offset + 1 < source.Length && source.Text[offset + 1] == '\n' ? 2
        : source.Text[offset] is '\n' or '\r' ? 1
        : 0;

    /// <summary>The block, braces included, that opens behind an offset on its line; null when none does or it never closes.</summary>
    public static TextSpan? BlockAfter(SourceText source, int offset)
    {
        var open = Find(source, offset, stopAtLineEnd: true, (c, _) => c == '{');
        if (open is null)
        {
            return null;
        }

        var depth = 0;
        var close = Find(source, open.Value, stopAtLineEnd: false, (c, _) =>
        {
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            return depth == 0;
        });
        return close is null ? null : TextSpan.FromBounds(open.Value, close.Value + 1);
    }

    /// <summary>The first word of the first line of a block itself that begins with a word and opens a block of its own; null when there is none.</summary>
    /// <param name="source">The text.</param>
    /// <param name="block">The block, braces included.</param>
    /// <param name="word">The word.</param>
    public static TextSpan? BlockIn(SourceText source, TextSpan block, string word)
    {
        for (var line = source.PositionOf(block.Start).Line + 1; line < source.LineCount && source.LineSpan(line).Start < block.End; line++)
        {
            var at = source.LineSpan(line).Start + IndentOf(source, source.LineSpan(line).Start).Length;
            var head = HeadWordAt(source, at);
            if (source.Slice(head) == word && DepthAt(source, block, at) == 1 && BlockAfter(source, head.End) is not null)
            {
                return head;
            }
        }

        return null;
    }

    /// <summary>Whether the block that opens on the line of a head holds anything but blanks and comments.</summary>
    public static bool HoldsWords(SourceSpan head) =>
        BlockAfter(head.Source, head.Span.End) is { } block
        && head.Source.Text[(block.Start + 1)..(block.End - 1)]
            .Split('\n', '\r')
            .Any(l => l.Trim() is { Length: > 0 } text && text[0] != '#');

    /// <summary>How deep an offset lies in a block: 1 for its own lines, 2 for those of a block inside it.</summary>
    public static int DepthAt(SourceText source, TextSpan block, int offset)
    {
        var depth = 0;
        Find(source, block.Start, stopAtLineEnd: false, (c, at) =>
        {
            depth += at >= offset ? 0 : c == '{' ? 1 : -1;
            return at >= offset;
        });
        return depth;
    }

    /// <summary>The first word of the entry that an offset lies in.</summary>
    public static TextSpan HeadWordAt(SourceText source, int offset)
    {
        // What is in quotes neither ends an entry nor opens a block.
        var start = source.LineSpan(source.PositionOf(offset).Line).Start;
        for (var i = start; i < offset; i++)
        {
            if (source.Text[i] == '"')
            {
                i = EndOfText(source.Text, i);
            }
            else if (source.Text[i] is ';' or '{' or '}')
            {
                start = i + 1;
            }
        }

        while (start < offset && source.Text[start] is ' ' or '\t')
        {
            start++;
        }

        var end = start;
        while (end < source.Length && source.Text[end] is not (' ' or '\t' or '\n' or '\r' or ';' or '{' or '}'))
        {
            end++;
        }

        return TextSpan.FromBounds(start, end);
    }

    private static int? Find(SourceText source, int from, bool stopAtLineEnd, Func<char, int, bool> isIt)
    {
        var text = source.Text;
        for (var i = from; i < text.Length; i++)
        {
            var c = text[i];
            if (c == '"')
            {
                i = EndOfText(text, i);
            }
            else if (c == '#')
            {
                i = source.LineSpan(source.PositionOf(i).Line).End - 1;
            }
            else if (c is '\n' or '\r' && stopAtLineEnd)
            {
                return null;
            }
            else if (c is '{' or '}' && isIt(c, i))
            {
                return i;
            }
        }

        return null;
    }

    /// <summary>Where the text in quotes ends that begins at a quote: its closing quote, or the last character of its line when it has none.</summary>
    internal static int EndOfText(string text, int quote)
    {
        var i = quote + 1;
        while (i < text.Length && text[i] is not ('"' or '\n' or '\r'))
        {
            // As in the grammar, only these two are taken together: a backslash at the end of a line does not lead into the next.
            i += text[i] == '\\' && i + 1 < text.Length && text[i + 1] is '"' or '\\' ? 2 : 1;
        }

        return i < text.Length && text[i] == '"' ? i : i - 1;
    }
}
