using System.Diagnostics.CodeAnalysis;
using Recipe.Text.Units;

namespace Recipe.Syntax.Parsing;

/// <summary>
/// Reads units and remembers them for the length of one text: a recipe writes the same few again and again, and a unit that is put
/// together (<c>g/m2</c>) is then made once.
/// </summary>
internal sealed class UnitReader
{
    private const int LongestRemembered = 24;

    private readonly Dictionary<string, (int Length, Unit? Unit)> _known;
    private readonly Dictionary<string, (int Length, Unit? Unit)>.AlternateLookup<ReadOnlySpan<char>> _lookup;

    public UnitReader()
    {
        _known = new Dictionary<string, (int Length, Unit? Unit)>(StringComparer.Ordinal);
        _lookup = _known.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>The unit at a place of the text, as <see cref="UnitTable.TryRead"/> reads it.</summary>
    public bool TryRead(string text, int at, out int length, [NotNullWhen(true)] out Unit? unit)
    {
        var end = at;
        while (end < text.Length && MayStandInUnit(text[end]))
        {
            end++;
        }

        var run = text.AsSpan(at, end - at);
        if (run.Length is 0 or > LongestRemembered)
        {
            length = 0;
            unit = null;
            return run.Length > 0 && UnitTable.TryRead(text.AsSpan(at), out length, out unit);
        }

        if (!_lookup.TryGetValue(run, out var found))
        {
            // Whether a unit ends at a word's end is decided inside the run, because every character that continues a word is in it.
            UnitTable.TryRead(run, out var read, out var result);
            found = (read, result);
            _known.Add(run.ToString(), found);
        }

        (length, unit) = found;
        return unit is not null;
    }

    private static bool MayStandInUnit(char c) =>
        char.IsAsciiLetterOrDigit(c) || c is '/' or '.' or '-' or '%' or '_'
        || (c > '\x7f' && (char.IsLetterOrDigit(c) || c is '°' or '˚' or '℃' or '℉' or '²' or '³' or '·'));
}
