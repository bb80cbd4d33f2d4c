using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Parts of resin to parts of hardener by volume. It has to be turned into a <see cref="WeightRatio"/>, with both densities,
/// before anything is weighed.
/// </summary>
public sealed record VolumeRatio
{
    /// <summary>Makes a ratio by volume, such as 2 : 1.</summary>
    /// <param name="resinParts">Parts of resin by volume; greater than zero.</param>
    /// <param name="hardenerParts">Parts of hardener by volume; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number of parts is not greater than zero.</exception>
    public VolumeRatio(double resinParts, double hardenerParts)
    {
        ResinParts = Guard.Positive(resinParts, "parts", nameof(resinParts));
        HardenerParts = Guard.Positive(hardenerParts, "parts", nameof(hardenerParts));
    }

    /// <summary>Parts of resin as written.</summary>
    public double ResinParts { get; }

    /// <summary>Parts of hardener as written.</summary>
    public double HardenerParts { get; }

    /// <summary>The same mix by weight: hardener parts grow by hardener density over resin density.</summary>
    /// <param name="resin">Density of the liquid resin; greater than zero.</param>
    /// <param name="hardener">Density of the liquid hardener; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A density is not greater than zero.</exception>
    /// <remarks>Source: definition of density.</remarks>
    public WeightRatio ToWeight(Density resin, Density hardener)
    {
        double a = Guard.Positive(resin.KilogramsPerCubicMeter, "kg/m3", nameof(resin));
        double b = Guard.Positive(hardener.KilogramsPerCubicMeter, "kg/m3", nameof(hardener));
        return new WeightRatio(ResinParts, HardenerParts * b / a);
    }
}
