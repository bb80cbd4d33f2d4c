using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Weighing out of two-part resins and of peroxide, and what the scale's division does to the ratio.</summary>
/// <remarks>
/// The maker's ratio and tolerance rule. Hardeners and peroxides are hazardous: gloves, eye protection and the maker's
/// safety sheet; peroxide and accelerator never meet undiluted.
/// </remarks>
public static class MixRatio
{
    /// <summary>Masses of resin and hardener that make a given total at a ratio by weight.</summary>
    /// <param name="ratio">Ratio by weight.</param>
    /// <param name="total">Mass of the mix; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The total is negative.</exception>
    public static MixComponents Components(WeightRatio ratio, Mass total)
    {
        double m = Guard.NotNegative(total.Kilograms, "kg", nameof(total));
        double hardener = m * ratio.HardenerShare.DecimalFractions;
        return new MixComponents(Mass.FromKilograms(m - hardener), Mass.FromKilograms(hardener));
    }

    /// <summary>Mass of peroxide for a mass of resin at a percentage of the resin (not of the mix).</summary>
    /// <param name="resin">Mass of resin; zero or more.</param>
    /// <param name="percentOfResin">Peroxide as a share of the resin; from 0 to 10 %. Makers commonly allow 1 to 4 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: definition used by suppliers of polyester resin; common practice 1 to 2 %.</remarks>
    public static Mass Peroxide(Mass resin, Ratio percentOfResin)
    {
        double m = Guard.NotNegative(resin.Kilograms, "kg", nameof(resin));
        double percent = Guard.Between(percentOfResin.Percent, 0, 10, "%", nameof(percentOfResin));
        return Mass.FromKilograms(m * percent / 100);
    }

    /// <summary>Percentage of peroxide that was added: mass of peroxide over mass of resin.</summary>
    /// <param name="peroxide">Mass of peroxide; zero or more.</param>
    /// <param name="resin">Mass of resin; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Ratio PeroxidePercent(Mass peroxide, Mass resin)
    {
        double p = Guard.NotNegative(peroxide.Kilograms, "kg", nameof(peroxide));
        return Ratio.FromDecimalFractions(p / Guard.Positive(resin.Kilograms, "kg", nameof(resin)));
    }

    /// <summary>
    /// Largest relative error of the hardener-to-resin ratio that the scale's division alone can cause, when each component
    /// is weighed on its own and read to half a division: <c>(b + e)/(a - e) / (b/a) - 1</c> with <c>e</c> half a division.
    /// </summary>
    /// <param name="ratio">Ratio by weight.</param>
    /// <param name="total">Mass of the mix; greater than zero.</param>
    /// <param name="scaleDivision">Smallest step of the scale's reading; greater than zero.</param>
    /// <returns>The relative error, or null when a component is no heavier than half a division and cannot be weighed at all.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: worst case of two independent rounding errors.</remarks>
    public static Ratio? RatioErrorFromScale(WeightRatio ratio, Mass total, Mass scaleDivision)
    {
        double m = Guard.Positive(total.Kilograms, "kg", nameof(total));
        double e = Guard.Positive(scaleDivision.Kilograms, "kg", nameof(scaleDivision)) / 2;
        double b = m * ratio.HardenerShare.DecimalFractions;
        double a = m - b;
        return a <= e || b <= e ? null : Ratio.FromDecimalFractions(((1 + (e / b)) / (1 - (e / a))) - 1);
    }

    /// <summary>Smallest mix whose ratio the scale can hold within a tolerance; the inverse of <see cref="RatioErrorFromScale"/>.</summary>
    /// <param name="ratio">Ratio by weight.</param>
    /// <param name="scaleDivision">Smallest step of the scale's reading; greater than zero.</param>
    /// <param name="tolerance">Relative tolerance of the hardener-to-resin ratio; more than 0 and less than 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Mass SmallestMix(WeightRatio ratio, Mass scaleDivision, Ratio tolerance)
    {
        double e = Guard.Positive(scaleDivision.Kilograms, "kg", nameof(scaleDivision)) / 2;
        double tau = Guard.OpenFraction(tolerance, nameof(tolerance));
        double hardener = ratio.HardenerShare.DecimalFractions;
        double resin = 1 - hardener;
        return Mass.FromKilograms(e * (resin + ((1 + tau) * hardener)) / (tau * resin * hardener));
    }
}
