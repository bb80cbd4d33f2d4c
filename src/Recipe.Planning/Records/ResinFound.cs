using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>How much resin a finished part holds, from its mass.</summary>
public static class ResinFound
{
    /// <summary>Resin in the plies: what the trimmed part weighs, less its fibre, coats, cores, inserts and join. Null when something is not known, or when nothing is left.</summary>
    public static Mass? Resin(BuildRecord record, PlannedFigures? planned)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Mass is { } mass && planned is { Fibre: { } fibre, Other: { } other } && mass.Value - fibre - other is { Kilograms: > 0 } resin ? resin : null;
    }

    /// <summary>Its share of fibre and resin by weight; null with it.</summary>
    public static double? Share(BuildRecord record, PlannedFigures? planned) =>
        Resin(record, planned) is { } resin && planned!.Fibre is { Kilograms: > 0 } fibre ? resin / (resin + fibre) : null;

    /// <summary>
    /// What each cloth of the stack holds when the cloths share the resin found as the plan shares it: each held r to one of fibre by plan,
    /// and holds f r, f being resin found over resin planned. One weighing cannot tell more.
    /// </summary>
    public static IEnumerable<(string Material, double Share)> Cloths(BuildRecord record, PlannedFigures? planned)
    {
        if (Resin(record, planned) is not { } found)
        {
            yield break;
        }

        var expected = planned!.Cloths.Sum(cloth => cloth.Fibre.Kilograms * Ratio(cloth));
        if (expected <= 0)
        {
            yield break;
        }

        var factor = found.Kilograms / expected;
        foreach (var cloth in planned.Cloths)
        {
            var held = factor * Ratio(cloth);
            yield return (cloth.Material, held / (1 + held));
        }
    }

    private static double Ratio(PlannedCloth cloth) => cloth.Content is > 0 and < 1 ? cloth.Content / (1 - cloth.Content) : 0;
}
