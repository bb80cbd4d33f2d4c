using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Vacuum levels, and rises of pressure, as people write them.</summary>
internal static class VacuumWords
{
    /// <summary>A level below ambient, rounded down so that it is never more than asked for, in the unit of another level.</summary>
    public static string Below(Pressure pressure, string like)
    {
        var (number, step, unit) = Steps(pressure, like);
        return $"{Say.Number(Math.Floor((number / step) + 1e-9) * step)} {unit.Symbol} below ambient";
    }

    /// <summary>A level below ambient, rounded up by little so that it is not less than is wanted, nor more than there is; in the unit of another level.</summary>
    public static string NoLess(Pressure pressure, string like)
    {
        var (number, coarse, unit) = Steps(pressure, like);
        var step = coarse / 10;
        return $"{Say.Number(Math.Ceiling((number / step) - 1e-9) * step)} {unit.Symbol} below ambient";
    }

    /// <summary>A rise that is accepted, in whole units or to two figures, rounded down so that it is never more than the most; in the unit of another.</summary>
    public static string UpTo(Pressure most, string like)
    {
        var unit = Say.UnitLike(like, "mbar");
        var number = unit.FromSi(most.Pascals);
        var step = number is >= 10 or <= 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(number)) - 1);
        return $"{Say.Number(Math.Floor((number / step) + 1e-4) * step)} {unit.Symbol}";
    }

    /// <summary>The flow of a pump to two figures, rounded up so that it is never too small; in the unit of another.</summary>
    public static string NoSmaller(VolumeFlow least, string? like)
    {
        var unit = Say.UnitLike(like, "m3/h");
        var number = unit.FromSi(least.CubicMetersPerSecond);
        var step = number > 0 ? Math.Pow(10, Math.Floor(Math.Log10(number)) - 1) : 1;
        return $"{Say.Number(Math.Ceiling((number / step) - 1e-4) * step)} {unit.Symbol}";
    }

    /// <summary>"46 %": what the hose takes, in whole percent; null where that is less than one.</summary>
    public static string? HoseShare(double share) => share >= 0.01 ? Say.Percent(Math.Round(share, 2)) : null;

    private static (double Number, double Step, Unit Unit) Steps(Pressure pressure, string like)
    {
        var unit = Say.UnitLike(like, "mbar");
        var number = unit.FromSi(pressure.Pascals);
        return (number, number >= 100 ? 10 : number >= 10 ? 1 : number >= 1 ? 0.1 : 0.01, unit);
    }
}
