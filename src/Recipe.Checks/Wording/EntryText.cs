using Recipe.Text;

namespace Recipe.Checks;

/// <summary>Finds a line of a block by its first word, for lines whose place the model does not keep.</summary>
internal static class EntryText
{
    /// <summary>The first line that begins with one of the words, in the block that opens on the line of a head; null when there is none.</summary>
    public static SourceSpan? Find(SourceSpan head, params ReadOnlySpan<string> words)
    {
        if (BlockText.BlockAfter(head.Source, head.Span.End) is not { } block)
        {
            return null;
        }

        var text = head.Source.Text;
        var at = block.Start + 1;
        while (at < block.End - 1)
        {
            var end = EndOf(text, at, block.End - 1);
            var entry = text[at..end];
            var trimmed = entry.Trim();
            foreach (var word in words)
            {
                if (trimmed.StartsWith(word, StringComparison.Ordinal) && (trimmed.Length == word.Length || trimmed[word.Length] is ' ' or '\t'))
                {
                    var start = at + entry.Length - entry.TrimStart().Length;
                    return new SourceSpan(head.Source, new TextSpan(start, trimmed.Length));
                }
            }

            at = end < block.End - 1 && text[end] == '#' ? EndOfLine(text, end) : end + 1;
        }

        return null;
    }

    private static int EndOf(string text, int from, int limit)
    {
        var depth = 0;
        for (var i = from; i < limit; i++)
        {
            switch (text[i])
            {
                case '"':
                    i = EndOfQuotes(text, i);
                    break;
                case '{':
                    depth++;
                    break;
                case '}':
                    depth--;
                    break;
                case '#' when depth > 0:
                    i = EndOfLine(text, i) - 1;
                    break;
                case ';' or '\n' or '\r' or '#' when depth == 0:
                    return i;
                default:
                    break;
            }
        }

        return limit;
    }

    private static int EndOfQuotes(string text, int quote)
    {
        var i = quote + 1;
        while (i < text.Length && text[i] is not ('"' or '\n' or '\r'))
        {
            i += text[i] == '\\' ? 2 : 1;
        }

        return i < text.Length && text[i] == '"' ? i : i - 1;
    }

    private static int EndOfLine(string text, int from)
    {
        var end = text.IndexOfAny(['\n', '\r'], from);
        return end < 0 ? text.Length : end;
    }
}
