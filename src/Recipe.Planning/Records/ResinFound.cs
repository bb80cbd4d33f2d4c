using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>How much resin a finished part holds, from its mass.</summary>
public static class ResinFound
{
    /// <summary>
    /// Dry fibre inside the trim line: as planned, or where the kit was weighed so much more or less as the kit was, since rolls of one
    /// cloth differ by several per cent. Null when not known.
    /// </summary>
    public static Mass? Fibre(BuildRecord record, PlannedFigures? planned)
    {
        ArgumentNullException.ThrowIfNull(record);
        return planned?.Fibre is { } fibre ? fibre * KitFactor(record, planned) : null;
    }

    /// <summary>Resin in the plies: what the trimmed part weighs, less its fibre, coats, cores, inserts and join. Null when something is not known, or when nothing is left.</summary>
    public static Mass? Resin(BuildRecord record, PlannedFigures? planned)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Mass is { } mass && Fibre(record, planned) is { } fibre && planned!.Other is { } other && mass.Value - fibre - other is { Kilograms: > 0 } resin ? resin : null;
    }

    /// <summary>Its share of fibre and resin by weight; null with it.</summary>
    public static double? Share(BuildRecord record, PlannedFigures? planned) =>
        Resin(record, planned) is { } resin && Fibre(record, planned) is { Kilograms: > 0 } fibre ? resin / (resin + fibre) : null;

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

        var expected = KitFactor(record, planned!) * planned!.Cloths.Sum(cloth => cloth.Fibre.Kilograms * Ratio(cloth));
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

    private static double KitFactor(BuildRecord record, PlannedFigures planned) =>
        record.Kit is { Value.Kilograms: > 0 } kit && planned.Kit is { Kilograms: > 0 } wanted ? kit.Value / wanted : 1;

    private static double Ratio(PlannedCloth cloth) => cloth.Content is > 0 and < 1 ? cloth.Content / (1 - cloth.Content) : 0;
}
