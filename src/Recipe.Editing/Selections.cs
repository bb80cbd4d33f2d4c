using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What a selection grows to, step by step.</summary>
public static class Selections
{
    /// <summary>The spans round an offset, each wider than the one before it: the token, the value, the line, the block, and so on to the file.</summary>
    public static ImmutableArray<TextSpan> Around(CompiledFile file, int offset)
    {
        ArgumentNullException.ThrowIfNull(file);
        var spans = new List<TextSpan> { new(0, file.Source.Length) };
        foreach (var place in Places.All(file.Tree).Where(place => place.Entry.Span.Touches(offset)))
        {
            var entry = place.Entry;
            spans.Add(entry.Span);
            if (entry.Block is { } block && block.Span.Touches(offset))
            {
                spans.Add(block.Span);
                if (block.CloseBrace is { } close && offset >= block.OpenBrace.End && offset <= close.Start)
                {
                    spans.Add(TextSpan.FromBounds(block.OpenBrace.End, close.Start));
                }
            }

            if (entry.LineSpan.Touches(offset))
            {
                spans.Add(entry.LineSpan);
                spans.AddRange(entry.Values.Where(value => value.Span.Touches(offset)).Select(value => value.Span));
            }
        }

        spans.AddRange(file.Tree.Tokens.Where(token => !token.Span.Equals(default) && token.Span.Length > 0 && token.Span.Touches(offset)
            && token.Kind is not (TokenKind.Blank or TokenKind.LineEnd)).Take(1).Select(token => token.Span));
        return Grow(spans.Distinct().OrderBy(span => span.Length).ThenByDescending(span => span.Start));
    }

    private static ImmutableArray<TextSpan> Grow(IEnumerable<TextSpan> spans)
    {
        var grown = ImmutableArray.CreateBuilder<TextSpan>();
        foreach (var span in spans)
        {
            if (grown.Count == 0 || (span.Start <= grown[^1].Start && span.End >= grown[^1].End && span != grown[^1]))
            {
                grown.Add(span);
            }
        }

        return grown.ToImmutable();
    }
}
