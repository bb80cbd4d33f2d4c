using UnitsNet;

namespace Recipe.Checks;

/// <summary>Vacuum levels as people write them.</summary>
internal static class VacuumWords
{
    /// <summary>A level below ambient, rounded down so that it is never more than asked for, in the unit of another level.</summary>
    public static string Below(Pressure pressure, string like)
    {
        var unit = Say.UnitLike(like, "mbar");
        var number = unit.FromSi(pressure.Pascals);
        var step = number >= 100 ? 10 : number >= 10 ? 1 : number >= 1 ? 0.1 : 0.01;
        return $"{Say.Number(Math.Floor((number / step) + 1e-9) * step)} {unit.Symbol} below ambient";
    }
}
