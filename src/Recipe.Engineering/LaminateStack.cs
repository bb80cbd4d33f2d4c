using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Dry and wet areal weight, thickness, mass and contents of a stack of plies that all cover the same area.</summary>
/// <remarks>Source: sums over the plies of the identities in <see cref="FibreContent"/>; no voids.</remarks>
public static class LaminateStack
{
    /// <summary>Dry cloth per area, all plies together.</summary>
    /// <param name="plies">The plies; none gives zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">An areal weight is not greater than zero.</exception>
    public static AreaDensity DryArealWeight(IReadOnlyList<StackPly> plies) =>
        AreaDensity.FromKilogramsPerSquareMeter(Sum(plies, Dry));

    /// <summary>Cloth and resin per area, all plies together: <c>sum FAW / (1 - w)</c>.</summary>
    /// <param name="plies">The plies; none gives zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of a ply is out of range.</exception>
    public static AreaDensity WetArealWeight(IReadOnlyList<StackPly> plies) =>
        AreaDensity.FromKilogramsPerSquareMeter(Sum(plies, ply => Dry(ply) + Resin(ply)));

    /// <summary>Mass of the laminate inside the trim line.</summary>
    /// <param name="plies">The plies.</param>
    /// <param name="trimmedArea">Area inside the trim line; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Mass TrimmedMass(IReadOnlyList<StackPly> plies, Area trimmedArea) =>
        Mass.FromKilograms(
            WetArealWeight(plies).KilogramsPerSquareMeter
                * Guard.NotNegative(trimmedArea.SquareMeters, "m2", nameof(trimmedArea)));

    /// <summary>Thickness: <c>sum (FAW/rf + FAW w/(1-w)/rm)</c>.</summary>
    /// <param name="plies">The plies; none gives zero.</param>
    /// <param name="resin">Density of the cured resin; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Length Thickness(IReadOnlyList<StackPly> plies, Density resin)
    {
        double rho = Guard.Positive(resin.KilogramsPerCubicMeter, "kg/m3", nameof(resin));
        return Length.FromMeters(Sum(plies, ply => FibreVolume(ply) + (Resin(ply) / rho)));
    }

    /// <summary>Share of resin in the mass of the whole stack.</summary>
    /// <param name="plies">The plies; at least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of a ply is out of range.</exception>
    /// <exception cref="ArgumentException">There is no ply.</exception>
    public static Ratio ResinMassFraction(IReadOnlyList<StackPly> plies)
    {
        RequireAny(plies);
        double resin = Sum(plies, Resin);
        return Ratio.FromDecimalFractions(resin / (resin + Sum(plies, Dry)));
    }

    /// <summary>Share of fibre in the volume of the whole stack.</summary>
    /// <param name="plies">The plies; at least one.</param>
    /// <param name="resin">Density of the cured resin; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    /// <exception cref="ArgumentException">There is no ply.</exception>
    public static Ratio FibreVolumeFraction(IReadOnlyList<StackPly> plies, Density resin)
    {
        RequireAny(plies);
        return Ratio.FromDecimalFractions(Sum(plies, FibreVolume) / Thickness(plies, resin).Meters);
    }

    private static void RequireAny(IReadOnlyList<StackPly> plies)
    {
        ArgumentNullException.ThrowIfNull(plies);
        if (plies.Count == 0)
        {
            throw new ArgumentException("A stack without plies has no contents.", nameof(plies));
        }
    }

    private static double Sum(IReadOnlyList<StackPly> plies, Func<StackPly, double> of)
    {
        ArgumentNullException.ThrowIfNull(plies);
        double sum = 0;
        for (int i = 0; i < plies.Count; i++)
        {
            sum += of(plies[i]);
        }

        return sum;
    }

    private static double Dry(StackPly ply) =>
        Guard.Positive(ply.Cloth.KilogramsPerSquareMeter, "kg/m2", nameof(ply.Cloth));

    private static double Resin(StackPly ply)
    {
        double w = Guard.OpenFraction(ply.ResinMassFraction, nameof(ply.ResinMassFraction));
        return Dry(ply) * w / (1 - w);
    }

    private static double FibreVolume(StackPly ply) =>
        Dry(ply) / Guard.Positive(ply.Fibre.KilogramsPerCubicMeter, "kg/m3", nameof(ply.Fibre));
}
