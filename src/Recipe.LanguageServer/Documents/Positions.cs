using System.Text;
using Recipe.LanguageServer.Protocol;
using Recipe.Text;
using Range = Recipe.LanguageServer.Protocol.Range;

namespace Recipe.LanguageServer.Documents;

/// <summary>
/// Turns places of the protocol into offsets and back. A column past the end of its line means the end of the line; one in the middle
/// of a character means its beginning; a line past the last means the end of the text.
/// </summary>
internal sealed class Positions(PositionEncoding encoding)
{
    public PositionEncoding Encoding => encoding;

    public int Offset(SourceText text, Position position)
    {
        if (position.Line >= text.LineCount)
        {
            return text.Length;
        }

        if (position.Line < 0)
        {
            return 0;
        }

        var line = text.LineSpan(position.Line);
        var characters = text.Text.AsSpan(line.Start, line.Length);
        return line.Start + Units(characters, Math.Max(0, position.Character));
    }

    public TextSpan Span(SourceText text, Range range)
    {
        var start = Offset(text, range.Start);
        var end = Offset(text, range.End);
        return TextSpan.FromBounds(Math.Min(start, end), Math.Max(start, end));
    }

    public Position Position(SourceText text, int offset)
    {
        var place = text.PositionOf(Math.Clamp(offset, 0, text.Length));
        return new Position(place.Line, encoding == PositionEncoding.Utf16 ? place.Column : Column(text, offset, place));
    }

    public Range Range(SourceText text, TextSpan span) => new(Position(text, span.Start), Position(text, span.End));

    public Range Range(SourceSpan where) => Range(where.Source, where.Span);

    /// <summary>The length of a span in the agreed unit.</summary>
    public int Length(SourceText text, TextSpan span) => Measure(text.Text.AsSpan(span.Start, span.Length));

    private int Column(SourceText text, int offset, LinePosition place) => Measure(text.Text.AsSpan(offset - place.Column, place.Column));

    private int Measure(ReadOnlySpan<char> characters)
    {
        if (encoding == PositionEncoding.Utf16 || Ascii.IsValid(characters))
        {
            return characters.Length;
        }

        if (encoding == PositionEncoding.Utf8)
        {
            return System.Text.Encoding.UTF8.GetByteCount(characters);
        }

        var count = 0;
        foreach (var _ in characters.EnumerateRunes())
        {
            count++;
        }

        return count;
    }

    /// <summary>How many UTF-16 code units of the line stand before the given column.</summary>
    private int Units(ReadOnlySpan<char> line, int column)
    {
        if (encoding == PositionEncoding.Utf16)
        {
            var units = Math.Min(column, line.Length);
            return units > 0 && units < line.Length && char.IsLowSurrogate(line[units]) && char.IsHighSurrogate(line[units - 1]) ? units - 1 : units;
        }

        var at = 0;
        var left = column;
        while (at < line.Length)
        {
            Rune.DecodeFromUtf16(line[at..], out var rune, out var length);
            left -= encoding == PositionEncoding.Utf8 ? rune.Utf8SequenceLength : 1;
            if (left < 0)
            {
                break;
            }

            at += length;
        }

        return at;
    }
}
