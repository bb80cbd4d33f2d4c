using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Parts of resin to parts of hardener by weight. A type of its own, so that a ratio by volume cannot be weighed out by mistake.
/// </summary>
public sealed record WeightRatio
{
    /// <summary>Makes a ratio by weight, such as 100 : 32.</summary>
    /// <param name="resinParts">Parts of resin by weight; greater than zero.</param>
    /// <param name="hardenerParts">Parts of hardener by weight; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number of parts is not greater than zero.</exception>
    public WeightRatio(double resinParts, double hardenerParts)
    {
        ResinParts = Guard.Positive(resinParts, "parts", nameof(resinParts));
        HardenerParts = Guard.Positive(hardenerParts, "parts", nameof(hardenerParts));
    }

    /// <summary>Parts of resin as written.</summary>
    public double ResinParts { get; }

    /// <summary>Parts of hardener as written.</summary>
    public double HardenerParts { get; }

    /// <summary>Hardener for a hundred parts of resin, by weight.</summary>
    public double HardenerPerHundred => 100 * HardenerParts / ResinParts;

    /// <summary>Share of the hardener in the mix, by weight.</summary>
    public Ratio HardenerShare => Ratio.FromDecimalFractions(HardenerParts / (ResinParts + HardenerParts));

    /// <summary>The same mix by volume: hardener parts grow by resin density over hardener density.</summary>
    /// <param name="resin">Density of the liquid resin; greater than zero.</param>
    /// <param name="hardener">Density of the liquid hardener; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A density is not greater than zero.</exception>
    /// <remarks>Source: definition of density.</remarks>
    public VolumeRatio ToVolume(Density resin, Density hardener)
    {
        double a = Guard.Positive(resin.KilogramsPerCubicMeter, "kg/m3", nameof(resin));
        double b = Guard.Positive(hardener.KilogramsPerCubicMeter, "kg/m3", nameof(hardener));
        return new VolumeRatio(ResinParts, HardenerParts * a / b);
    }
}
