using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Semantics.Values;

/// <summary>The units that were probably meant by a word that is none.</summary>
internal static class UnitGuess
{
    /// <summary>
    /// Candidates, best first: the same letters in another case, then the plural taken off, then the nearest spelling; units of the
    /// dimension that is wanted before others.
    /// </summary>
    public static ImmutableArray<string> For(string spelling, Dimension? wanted)
    {
        // A thermometer's letters. The nearest spelling would be K, which is a difference and not what it reads.
        if ((wanted is null || wanted == UnitTable.Get("degC").Dimension) && spelling is ("F" or "f" or "C" or "c"))
        {
            return [$"deg{spelling.ToUpperInvariant()}"];
        }

        var fitting = UnitTable.Spellings.Where(s => wanted is null || UnitTable.Get(s).Dimension == wanted).Order(StringComparer.Ordinal).ToArray();
        var sameLetters = fitting.Where(s => string.Equals(s, spelling, StringComparison.OrdinalIgnoreCase)).ToArray();
        if (sameLetters.Length > 0)
        {
            return Symbols(sameLetters);
        }

        var singular = spelling.TrimEnd('s');
        if (singular.Length > 0 && fitting.Contains(singular, StringComparer.Ordinal))
        {
            return Symbols([singular]);
        }

        var near = Spelling.Nearest(spelling, fitting);
        if (near is not null)
        {
            return Symbols([near]);
        }

        // A near spelling of another dimension (`darcy`, d) would only be the next thing that is wrong; the same letters in another case tell what was meant.
        return wanted is null ? [] : Symbols(UnitTable.Spellings.Where(s => string.Equals(s, spelling, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal));
    }

    private static ImmutableArray<string> Symbols(IEnumerable<string> spellings) =>
        [.. spellings.Select(s => UnitTable.Get(s).Symbol).Distinct(StringComparer.Ordinal)];
}
