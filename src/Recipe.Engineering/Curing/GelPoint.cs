using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The degree of cure at which the liquid becomes one network and stops flowing.</summary>
/// <remarks>
/// Source: Flory, and Stockmayer, for stepwise growth with groups of equal reactivity: <c>1 / sqrt(r (f - 1)(g - 1))</c>, e.g. Odian,
/// Principles of Polymerization. Real epoxies with amines gel at 0.55 to 0.65 (from memory).
/// </remarks>
public static class GelPoint
{
    /// <summary>Gel degree of a balanced diepoxide with a diamine of four hydrogens, <c>1/sqrt(3)</c>, 0.577.</summary>
    public static Ratio Usual { get; } = Of(Ratio.FromDecimalFractions(1));

    /// <summary>Upper end of the gel degrees that real epoxies with amines show, 0.65 (from memory).</summary>
    public static Ratio Latest { get; } = Ratio.FromDecimalFractions(0.65);

    /// <summary>Conversion, at gel, of the groups that are in the minority.</summary>
    /// <param name="balance">Groups in the minority over their partners, r; more than 0, at most 1. A balanced mix has 1.</param>
    /// <param name="resinFunctionality">Groups in one molecule of resin, f; 2 for a diepoxide; 2 to 20.</param>
    /// <param name="hardenerFunctionality">Groups in one molecule of hardener, g; 4 for a diamine with four hydrogens; 2 to 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An input is out of range, or so much of one side is missing that the mix never gels: <c>r (f - 1)(g - 1)</c> below 1, which for a
    /// diepoxide and four hydrogens is r below 1/3.
    /// </exception>
    public static Ratio Of(Ratio balance, double resinFunctionality = 2, double hardenerFunctionality = 4)
    {
        double r = Guard.Positive(Guard.Between(balance.DecimalFractions, 0, 1, string.Empty, nameof(balance)), string.Empty, nameof(balance));
        double f = Guard.Between(resinFunctionality, 2, 20, string.Empty, nameof(resinFunctionality));
        double g = Guard.Between(hardenerFunctionality, 2, 20, string.Empty, nameof(hardenerFunctionality));
        double branching = r * (f - 1) * (g - 1);
        return branching >= 1 - 1e-12
            ? Ratio.FromDecimalFractions(Math.Min(1, 1 / Math.Sqrt(branching)))
            : throw Guard.Refuse(
                r,
                string.Empty,
                nameof(balance),
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture, $"must be at least {1 / ((f - 1) * (g - 1)):G4}, or the mix never gels"));
    }
}
