using System.Collections.Immutable;
using System.Globalization;
using Recipe.Text.Units;

namespace Recipe.Semantics.Values;

/// <summary>Numbers, units and lists as messages show them.</summary>
internal static class Numbers
{
    /// <summary>At most six significant digits, no exponent for everyday sizes.</summary>
    public static string Format(double number)
    {
        var size = Math.Abs(number);
        if (number == 0 || (size >= 1e-4 && size < 1e15))
        {
            var digits = number == 0 ? 0 : Math.Clamp(5 - (int)Math.Floor(Math.Log10(size)), 0, 15);
            return Math.Round(number, digits).ToString("0.###############", CultureInfo.InvariantCulture);
        }

        return number.ToString("G6", CultureInfo.InvariantCulture);
    }

    /// <summary>A value in its unit, or in the first of some others.</summary>
    public static string Format(Value value, ImmutableArray<string> units)
    {
        var unit = value.Unit is { } own && own.Dimension == value.Dimension && (value.IsAbsoluteTemperature == (own.Scale == UnitScale.Offset))
            ? own
            : !units.IsDefaultOrEmpty && UnitTable.TryParse(units[0], out var usual) && usual.Dimension == value.Dimension ? usual : null;
        return unit is null ? Format(value.Si) : $"{Format(unit.FromSi(value.Si))} {unit.Symbol}";
    }

    /// <summary><c>a, b or c</c>.</summary>
    public static string Or(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1],
    };

    /// <summary>The word with its article; no word of the language that begins with u sounds like a vowel (<c>ud</c>, <c>unit</c>).</summary>
    public static string A(string noun) => (noun.Length > 0 && noun[0] is 'a' or 'e' or 'i' or 'o' ? "an " : "a ") + noun;
}
