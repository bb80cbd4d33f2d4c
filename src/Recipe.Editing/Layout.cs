using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Editing;

/// <summary>The one layout there is, as edits of the lines that differ, so that the cursor and the marks of an editor stay where they are.</summary>
public static class Layout
{
    private const string Indent = "  ";

    /// <summary>Lays the whole file out; nothing when it is laid out already.</summary>
    public static ImmutableArray<TextEdit> Whole(CompiledFile file) => Range(file, new TextSpan(0, file?.Source.Length ?? 0));

    /// <summary>Lays out the lines that a span touches.</summary>
    public static ImmutableArray<TextEdit> Range(CompiledFile file, TextSpan range)
    {
        ArgumentNullException.ThrowIfNull(file);
        var source = file.Source;
        var formatted = Formatter.Format(file.Tree);
        if (formatted == source.Text)
        {
            return [];
        }

        var before = LinesOf(source.Text);
        var after = LinesOf(formatted);
        var edits = ImmutableArray.CreateBuilder<TextEdit>();
        foreach (var (from, count, with) in LineChanges.Of(before.ConvertAll(l => l.Text), after.ConvertAll(l => l.Text)))
        {
            var start = from < before.Count ? before[from].Start : source.Length;
            var end = from + count < before.Count ? before[from + count].Start : source.Length;
            if (end < range.Start || start > range.End)
            {
                continue;
            }

            edits.Add(new TextEdit(
                new SourceSpan(source, TextSpan.FromBounds(start, end)),
                string.Concat(Enumerable.Range(with.From, with.Count).Select(i => after[i].Text))));
        }

        return edits.ToImmutable();
    }

    /// <summary>Indents the line of the cursor after a line end or a closing brace was typed.</summary>
    public static ImmutableArray<TextEdit> OnType(CompiledFile file, int offset, char typed)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (typed is not ('\n' or '\r' or '}'))
        {
            return [];
        }

        var source = file.Source;
        var line = source.LineSpan(source.PositionOf(offset).Line);
        var text = source.Text.AsSpan(line.Start, line.Length);
        var blanks = text.Length - text.TrimStart(" \t").Length;
        var depth = 0;
        foreach (var token in file.Tree.Tokens)
        {
            if (token.Span.Start >= line.Start + blanks)
            {
                break;
            }

            depth += token.Kind == TokenKind.OpenBrace ? 1 : token.Kind == TokenKind.CloseBrace ? -1 : 0;
        }

        if (text[blanks..].StartsWith("}"))
        {
            depth--;
        }

        var wanted = string.Concat(Enumerable.Repeat(Indent, Math.Max(depth, 0)));
        return text[..blanks].SequenceEqual(wanted)
            ? []
            : [new TextEdit(new SourceSpan(source, new TextSpan(line.Start, blanks)), wanted)];
    }

    private static List<(string Text, int Start)> LinesOf(string text)
    {
        var lines = new List<(string, int)>();
        var start = 0;
        while (start < text.Length)
        {
            var end = text.AsSpan(start).IndexOfAny('\n', '\r');
            if (end < 0)
            {
                end = text.Length;
            }
            else
            {
                end += start;
                end += text[end] == '\r' && end + 1 < text.Length && text[end + 1] == '\n' ? 2 : 1;
            }

            lines.Add((text[start..end], start));
            start = end;
        }

        return lines;
    }
}
