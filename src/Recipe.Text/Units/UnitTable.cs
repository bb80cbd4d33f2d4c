using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace Recipe.Text.Units;

/// <summary>
/// Reads unit spellings. It stands at the foot of the stair because both the grammar (which words are units) and the meaning
/// (what they are worth) need it, and it needs nothing itself.
/// </summary>
public static class UnitTable
{
    private const string Difference = "-diff";

    private static readonly FrozenDictionary<string, Unit> BySpelling = Build();
    private static readonly FrozenDictionary<string, Unit>.AlternateLookup<ReadOnlySpan<char>> BySpan =
        BySpelling.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>All simple units, canonical spellings only, in the order of the table.</summary>
    public static IEnumerable<Unit> All => UnitData.Rows.Select(row => BySpelling[row.Symbol]);

    /// <summary>All spellings of simple units, synonyms included.</summary>
    public static IEnumerable<string> Spellings => BySpelling.Keys;

    /// <summary>
    /// Reads the longest unit at the start of a text, if it ends at a word boundary: a simple unit, then any number of
    /// <c>.unit</c> and <c>/unit</c>. A scale with its own zero stands for a difference inside such a composition.
    /// A percent sign needs no boundary after it; a hyphen before a digit is a minus.
    /// </summary>
    /// <param name="text">Text that starts where the unit would start.</param>
    /// <param name="length">Characters read; 0 when there is no unit.</param>
    /// <param name="unit">The unit, its symbol in canonical spelling.</param>
    public static bool TryRead(ReadOnlySpan<char> text, out int length, [NotNullWhen(true)] out Unit? unit)
    {
        unit = null;
        length = 0;
        var end = SimpleLength(text);
        if (end == 0 || !BySpan.TryGetValue(text[..end], out var sofar))
        {
            return false;
        }

        while (true)
        {
            if (EndsWord(text, end))
            {
                unit = sofar;
                length = end;
            }

            if (end >= text.Length || text[end] is not ('/' or '.' or '·'))
            {
                break;
            }

            var next = SimpleLength(text[(end + 1)..]);
            if (next == 0 || !BySpan.TryGetValue(text.Slice(end + 1, next), out var factor))
            {
                break;
            }

            sofar = Compose(sofar, factor, divide: text[end] == '/');
            end += 1 + next;
        }

        return unit is not null;
    }

    /// <summary>The unit with this spelling, whole.</summary>
    public static bool TryParse(ReadOnlySpan<char> spelling, [NotNullWhen(true)] out Unit? unit) =>
        TryRead(spelling, out var length, out unit) && length == spelling.Length;

    /// <summary>The unit with this spelling.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static Unit Get(string spelling) =>
        TryParse(spelling, out var unit) ? unit : throw new ArgumentException($"There is no unit '{spelling}'.", nameof(spelling));

    /// <summary>The unit that was probably meant: the same letters in another case first, then the nearest spelling.</summary>
    public static string? Nearest(string spelling)
    {
        ArgumentNullException.ThrowIfNull(spelling);
        var sameLetters = Spellings.Order(StringComparer.Ordinal)
            .FirstOrDefault(s => string.Equals(s, spelling, StringComparison.OrdinalIgnoreCase));
        var near = sameLetters ?? Spelling.Nearest(spelling, Spellings);
        return near is null ? null : BySpelling[near].Symbol;
    }

    private static Unit Compose(Unit left, Unit right, bool divide) => new(
        left.Symbol + (divide ? "/" : ".") + right.Symbol,
        divide ? left.Dimension / right.Dimension : left.Dimension * right.Dimension,
        divide ? left.Factor / right.Factor : left.Factor * right.Factor,
        Currency: left.Currency ?? right.Currency);

    private static int SimpleLength(ReadOnlySpan<char> text)
    {
        if (text.Length > 0 && text[0] == '%')
        {
            return 1;
        }

        var i = 0;
        while (i < text.Length && IsUnitLetter(text[i]))
        {
            i++;
        }

        while (i > 0 && i < text.Length && char.IsAsciiDigit(text[i]))
        {
            i++;
        }

        // A difference unit is the one spelling with a hyphen.
        return text[i..].StartsWith(Difference) ? i + Difference.Length : i;
    }

    private static bool IsUnitLetter(char c) =>
        char.IsAsciiLetter(c) || c is 'µ' or 'μ' or '°' or 'º' or '˚' or '℃' or '℉' or '²' or '³';

    private static bool EndsWord(ReadOnlySpan<char> text, int end) => end >= text.Length || text[end - 1] == '%' || !ContinuesWord(text[end..]);

    private static bool ContinuesWord(ReadOnlySpan<char> rest) =>
        char.IsLetterOrDigit(rest[0]) || rest[0] == '_'
        || (rest[0] == '-' && rest.Length > 1 && (char.IsLetter(rest[1]) || rest[1] == '_'));

    private static FrozenDictionary<string, Unit> Build()
    {
        var units = new Dictionary<string, Unit>(StringComparer.Ordinal);
        foreach (var row in UnitData.Rows)
        {
            var unit = new Unit(row.Symbol, row.Dimension, row.Factor, row.Offset, row.Scale);
            units.Add(row.Symbol, unit);
            foreach (var synonym in row.Synonyms)
            {
                units.Add(synonym, unit);
            }
        }

        foreach (var code in UnitData.Currencies)
        {
            units.Add(code, new Unit(code, DimensionNames.Money, 1, Currency: code));
        }

        return units.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
