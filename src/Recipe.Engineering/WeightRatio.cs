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

    /// <summary>Share of the hardener in the mix, by weight.</summary>
    public Ratio HardenerShare => Ratio.FromDecimalFractions(HardenerParts / (ResinParts + HardenerParts));
}
