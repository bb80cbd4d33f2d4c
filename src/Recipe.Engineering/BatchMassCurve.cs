namespace Recipe.Engineering;

/// <summary>
/// How pot life falls with the mass of the pot, as a factor of the life of a small pot: straight lines between known points
/// on a log-log scale, level up to 150 g, the last slope carried on beyond 1 kg. Never rising.
/// </summary>
/// <remarks>
/// Source: common practice, points from memory: 100 to 150 g 1; 300 g 0.75; 500 g 0.60 (0.55 to 0.65); 1 kg 0.42 (0.35 to 0.5),
/// all in a deep cup. Where the resin's kinetics are known, <see cref="SheetPot"/> follows the pot's own heat; the shorter of the two lives counts.
/// </remarks>
internal static class BatchMassCurve
{
    /// <summary>Mass of the last point, in kilograms.</summary>
    internal const double LastPoint = 1.0;

    /// <summary>Mass up to which the factor stays 1, in kilograms.</summary>
    internal const double FirstPoint = 0.15;

    private static readonly double[] Masses = [FirstPoint, 0.3, 0.5, LastPoint];

    private static readonly double[] Factors = [1, 0.75, 0.60, 0.42];

    /// <summary>Factor for a pot of the given mass in kilograms, greater than zero.</summary>
    internal static double Factor(double mass)
    {
        if (mass <= FirstPoint)
        {
            return 1;
        }

        int upper = 1;
        while (upper < Masses.Length - 1 && mass > Masses[upper])
        {
            upper++;
        }

        double slope = Math.Log(Factors[upper] / Factors[upper - 1]) / Math.Log(Masses[upper] / Masses[upper - 1]);
        return Factors[upper] * Math.Pow(mass / Masses[upper], slope);
    }
}
