using System.Globalization;
using Recipe.Model;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Checks;

/// <summary>
/// Puts the figures of a fix into the units of whoever wrote the recipe: those of the figure that is replaced, else those in which the file measures
/// such things, else those of the shop. A check writes its fix in the trade's metric units and need not think of it. A fix that keeps the number and
/// changes its unit is left as it is.
/// </summary>
internal static class AuthorUnits
{
    /// <summary>The fix in the author's units, its title with the same figures.</summary>
    public static Fix Apply(Fix fix, Shop? shop)
    {
        var changes = new Dictionary<string, string>(StringComparer.Ordinal);
        var edits = fix.Edits.Select(edit => edit with { NewText = Rewrite(edit, shop, changes) }).ToArray();
        return changes.Count == 0 ? fix : new Fix(WrittenQuantities.Replace(fix.Title, q => changes.GetValueOrDefault(fix.Title[q.Start..q.End])), fix.Safety, [.. edits]);
    }

    private static string Rewrite(TextEdit edit, Shop? shop, Dictionary<string, string> changes) => WrittenQuantities.Replace(edit.NewText, quantity =>
    {
        // Times are the same everywhere, and 2 h 35 min must stay together.
        if (quantity.Unit.Dimension == DimensionNames.Time)
        {
            return null;
        }

        var written = edit.NewText[quantity.Start..quantity.End];
        var old = WrittenQuantities.In(edit.Where.Text).FirstOrDefault(q => IsAlike(q.Unit, quantity.Unit));
        var unit = old.Unit ?? Wanted(edit, shop, quantity);
        if (unit is null || unit.Symbol == quantity.Unit.Symbol)
        {
            return null;
        }

        // The same number with another unit is a figure read in that unit: the unit is what the fix is about.
        if (old.Unit is not null && old.Numbers.SequenceEqual(quantity.Numbers))
        {
            return null;
        }

        // What stands in the file already in just these words is the author's, and is only moved.
        if (old.Unit is null && edit.Where.Source.Text.Contains(written, StringComparison.Ordinal))
        {
            return null;
        }

        return changes[written] = Said(quantity, unit, old.Unit is null ? null : old.Unit.ToSi(old.Numbers[^1]));
    });

    private static Unit? Wanted(TextEdit edit, Shop? shop, WrittenQuantity quantity)
    {
        if (WrittenQuantities.UsFor(quantity.Unit, quantity.Numbers.Max(quantity.Unit.ToSi)) is not { } us)
        {
            return null;
        }

        // Who reads a thermometer in degF ramps in them too. The shop decides where the file says nothing.
        var kind = us.Symbol.StartsWith("degF", StringComparison.Ordinal) ? DimensionNames.Temperature : us.Dimension;
        var units = UnitsInUse.Of(edit.Where.Source);
        return units.AreUs(kind) || (shop?.Units == UnitSystem.Us && !units.AreOther(kind)) ? us : null;
    }

    private static bool IsAlike(Unit left, Unit right) => left.Dimension == right.Dimension && left.Scale == right.Scale;

    /// <summary>
    /// The quantity in another unit, with as many figures as it has and two at least (three where it is no length). It is rounded away from the figure
    /// that it replaces, so that a least stays enough and a most is not passed.
    /// </summary>
    private static string Said(WrittenQuantity quantity, Unit unit, double? oldSi)
    {
        var digits = Math.Max(quantity.Digits, unit.Dimension == DimensionNames.Length ? 2 : 3);
        return string.Join(" to ", quantity.Numbers.Select(number =>
        {
            var si = quantity.Unit.ToSi(number);
            return Rounded(unit.FromSi(si), digits, unit.Scale == UnitScale.Offset, oldSi is not { } old ? 0 : si.CompareTo(old));
        })) + " " + unit.Symbol;
    }

    private static string Rounded(double value, int digits, bool isDegrees, int direction)
    {
        // Whole degrees of one scale have one decimal on the other.
        var decimals = isDegrees ? Math.Max(1, digits - 3) : value == 0 ? 0 : Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        var scale = Math.Pow(10, decimals);
        var scaled = value * scale;

        // What differs by rounding only is not rounded away.
        var whole = Math.Abs(scaled - Math.Round(scaled)) < 1e-6 ? Math.Round(scaled)
            : direction > 0 ? Math.Ceiling(scaled)
            : direction < 0 ? Math.Floor(scaled)
            : Math.Round(scaled, MidpointRounding.AwayFromZero);
        return (whole / scale).ToString("0.#########", CultureInfo.InvariantCulture);
    }
}
