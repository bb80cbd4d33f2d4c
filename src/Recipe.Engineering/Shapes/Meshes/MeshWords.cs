using System.Globalization;
using System.Text;

namespace Recipe.Engineering;

/// <summary>The words of a file, one after the other, with the line on which they stand.</summary>
internal ref struct MeshWords(ReadOnlySpan<byte> bytes, int at = 0, int line = 1)
{
    private readonly ReadOnlySpan<byte> _bytes = bytes;
    private int _at = at;

    /// <summary>Line of the next byte, from 1.</summary>
    internal int Line { get; private set; } = line;

    internal readonly int Position => _at;

    internal readonly bool IsAtEnd => _at >= _bytes.Length;

    /// <summary>The next word wherever it stands; none at the end.</summary>
    internal ReadOnlySpan<byte> Next()
    {
        while (_at < _bytes.Length && IsBlank(_bytes[_at]))
        {
            if (_bytes[_at++] == '\n')
            {
                Line++;
            }
        }

        return Word();
    }

    /// <summary>The next word of this line; none at its end.</summary>
    internal ReadOnlySpan<byte> NextInLine()
    {
        while (_at < _bytes.Length && _bytes[_at] != '\n' && IsBlank(_bytes[_at]))
        {
            _at++;
        }

        return Word();
    }

    /// <summary>The rest of this line without the blanks round it; the next line follows.</summary>
    internal ReadOnlySpan<byte> RestOfLine()
    {
        int length = _bytes[_at..].IndexOf((byte)'\n');
        ReadOnlySpan<byte> rest = length < 0 ? _bytes[_at..] : _bytes.Slice(_at, length);
        _at += rest.Length;
        if (length >= 0)
        {
            _at++;
            Line++;
        }

        return rest.Trim(" \t\r\v\f"u8);
    }

    /// <summary>The number that a word is.</summary>
    internal static bool TryNumber(ReadOnlySpan<byte> word, out double number) =>
        double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out number);

    /// <summary>A word to show: not longer than a name can be, and never undecodable.</summary>
    internal static string Text(ReadOnlySpan<byte> word) => Encoding.UTF8.GetString(word[..Math.Min(word.Length, 200)]);

    private static bool IsBlank(byte value) => value is (byte)' ' or (>= 9 and <= 13);

    private ReadOnlySpan<byte> Word()
    {
        int start = _at;
        while (_at < _bytes.Length && !IsBlank(_bytes[_at]))
        {
            _at++;
        }

        return _bytes[start.._at];
    }
}
