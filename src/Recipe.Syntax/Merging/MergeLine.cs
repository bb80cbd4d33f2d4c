using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.Syntax.Merging;

/// <summary>One line of a text.</summary>
/// <param name="Text">What stands on it.</param>
/// <param name="End">Its line end; empty for a last line that has none.</param>
internal readonly record struct MergeLine(string Text, string End)
{
    private const char ByteOrderMark = '\ufeff';

    /// <summary>The lines of a text; none when it is empty.</summary>
    public static ImmutableArray<MergeLine> Of(SourceText source)
    {
        var lines = ImmutableArray.CreateBuilder<MergeLine>(source.LineCount);
        for (var i = 0; i < source.LineCount; i++)
        {
            var span = source.LineSpan(i);
            var next = i + 1 < source.LineCount ? source.OffsetOf(new LinePosition(i + 1, 0)) : source.Length;
            if (next > span.Start)
            {
                lines.Add(new(source.Slice(span), source.Text[span.End..next]));
            }
        }

        return lines.ToImmutable();
    }

    /// <summary>A text without its byte order mark.</summary>
    public static string WithoutMark(string text) => HasMark(text) ? text[1..] : text;

    /// <summary>Whether a text begins with a byte order mark.</summary>
    public static bool HasMark(string text) => text.StartsWith(ByteOrderMark);
}
