using System.Collections.Immutable;

namespace Recipe.Text;

/// <summary>The text of one file with its name and its lines. Line ends are LF, CRLF and CR, and nothing else.</summary>
public sealed class SourceText
{
    private readonly Lazy<ImmutableArray<int>> _lineStarts;

    /// <summary>Wraps a text. The name is only ever shown or compared, never opened.</summary>
    public SourceText(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(text);
        Name = name;
        Text = text;
        _lineStarts = new Lazy<ImmutableArray<int>>(() => FindLineStarts(text));
    }

    /// <summary>The name shown in messages: a path as the user gave it, or <c>book/fabrics.recipe</c>.</summary>
    public string Name { get; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Number of characters.</summary>
    public int Length => Text.Length;

    /// <summary>Number of lines; a text that ends with a line end has an empty last line.</summary>
    public int LineCount => _lineStarts.Value.Length;

    /// <summary>The characters of a span.</summary>
    public string Slice(TextSpan span) => Text.Substring(span.Start, span.Length);

    /// <summary>Line and column of an offset (0 to <see cref="Length"/>).</summary>
    public LinePosition PositionOf(int offset)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(offset);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(offset, Length);
        var starts = _lineStarts.Value;
        var index = starts.BinarySearch(offset);
        var line = index >= 0 ? index : ~index - 1;
        return new LinePosition(line, offset - starts[line]);
    }

    /// <summary>The span of a line without its line end.</summary>
    public TextSpan LineSpan(int line)
    {
        var starts = _lineStarts.Value;
        var start = starts[line];
        var end = line + 1 < starts.Length ? starts[line + 1] : Length;
        while (end > start && Text[end - 1] is '\n' or '\r')
        {
            end--;
        }

        return TextSpan.FromBounds(start, end);
    }

    /// <summary>Offset of a line and column; the column is clamped to the line.</summary>
    public int OffsetOf(LinePosition position)
    {
        var line = Math.Clamp(position.Line, 0, LineCount - 1);
        var span = LineSpan(line);
        return span.Start + Math.Clamp(position.Column, 0, span.Length);
    }

    private static ImmutableArray<int> FindLineStarts(string text)
    {
        var starts = ImmutableArray.CreateBuilder<int>();
        starts.Add(0);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c == '\n' || (c == '\r' && !(i + 1 < text.Length && text[i + 1] == '\n')))
            {
                starts.Add(i + 1);
            }
        }

        return starts.ToImmutable();
    }
}
