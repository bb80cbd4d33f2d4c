using System.Text;
using Recipe.LanguageServer.Documents;

namespace Recipe.LanguageServer.Tests.Documents;

/// <summary>A text and its places, worked out the plain way: cut into lines, each character counted.</summary>
internal static class TextModel
{
    /// <summary>Line, and column in the given unit, of an offset that is no middle of a character or of a CRLF.</summary>
    public static (int Line, int Column) Place(string text, int offset, PositionEncoding unit)
    {
        var line = 0;
        var start = 0;
        for (var i = 0; i < offset; i++)
        {
            var ends = text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'));
            if (ends)
            {
                line++;
                start = i + 1;
            }
        }

        var before = text[start..offset];
        return (line, unit switch
        {
            PositionEncoding.Utf8 => Encoding.UTF8.GetByteCount(before),
            PositionEncoding.Utf32 => Encoding.UTF32.GetByteCount(before) / 4,
            _ => before.Length,
        });
    }

    /// <summary>Offsets at which an editor's cursor can stand.</summary>
    public static List<int> Cursors(string text) =>
    [
        .. Enumerable.Range(0, text.Length + 1).Where(i => i == 0 || i == text.Length
            || !((char.IsLowSurrogate(text[i]) && char.IsHighSurrogate(text[i - 1])) || (text[i] == '\n' && text[i - 1] == '\r'))),
    ];
}
