using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Edits of a line of the bag that leave the rest of the line as it stands: how many layers, how they are cut, where a fitting sits.</summary>
internal static class LayerLines
{
    /// <summary>Names another material in a line, which begins with the name of its material, with the word of its kind, or with both.</summary>
    /// <param name="line">The line.</param>
    /// <param name="now">The material that it names.</param>
    /// <param name="other">The material that is to stand there, or the word of its kind for the usual one.</param>
    public static TextEdit Take(SourceSpan line, string now, string other)
    {
        var text = line.Text;
        var end = EndOfWord(text, 0);
        if (text[..end] != now)
        {
            var second = end;
            while (second < text.Length && text[second] is ' ' or '\t')
            {
                second++;
            }

            var behind = EndOfWord(text, second);
            end = text[second..behind] == now ? behind : end;
        }

        return Edits.Replace(new SourceSpan(line.Source, new TextSpan(line.Span.Start, end)), other);
    }

    /// <summary>Says where a layer ends, in place of what its line says of that now.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="words"><c>beyond 75 mm</c>, <c>smaller 25 mm</c>.</param>
    public static TextEdit End(BagLayer layer, string words)
    {
        var (word, figure) = layer.Smaller is { } smaller ? ("smaller", smaller) : ("beyond", layer.Beyond);
        var line = layer.Where;
        if (figure?.Where is { } where && ReferenceEquals(where.Source, line.Source) && where.Span.Start > line.Span.Start && where.Span.End <= line.Span.End)
        {
            var at = line.Text.LastIndexOf(word, where.Span.Start - line.Span.Start, StringComparison.Ordinal);
            if (at >= 0)
            {
                return Edits.Replace(new SourceSpan(line.Source, TextSpan.FromBounds(line.Span.Start + at, where.Span.End)), words);
            }
        }

        return Edits.Append(line, words);
    }

    /// <summary>A word of a line that stands there by itself, not as a piece of a name; null when it does not.</summary>
    public static SourceSpan? Word(SourceSpan line, string word)
    {
        var text = line.Text;
        for (var at = text.LastIndexOf(word, StringComparison.Ordinal); at >= 0; at = at == 0 ? -1 : text.LastIndexOf(word, at - 1, StringComparison.Ordinal))
        {
            var end = at + word.Length;
            if ((at == 0 || text[at - 1] is ' ' or '\t') && (end == text.Length || text[end] is ' ' or '\t'))
            {
                return new SourceSpan(line.Source, new TextSpan(line.Span.Start + at, word.Length));
            }
        }

        return null;
    }

    private static int EndOfWord(string text, int at)
    {
        while (at < text.Length && text[at] is not (' ' or '\t'))
        {
            at++;
        }

        return at;
    }
}
