using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The band that a trimmed part's mass should fall in.</summary>
/// <remarks>
/// Source: common practice, most of it from memory: bagged wet lay-up holds 7 % either way in experienced hands and 15 % in a
/// beginner's or on a first part; a practice panel of six plies is commonly allowed 9 %. Other processes are scaled by how far
/// their usual resin shares spread.
/// </remarks>
public static class MassBand
{
    private const double ExperiencedBagged = 0.07;
    private const double NoviceBagged = 0.15;

    /// <summary>Band of a brushed gel coat, 20 % (500 g/m2 give or take 100; common practice).</summary>
    public static Ratio GelCoatTolerance { get; } = Ratio.FromPercent(20);

    /// <summary>
    /// Resin share by mass that a process leaves in light woven glass (from memory): hand 50 % (42 to 58), bagged 42 % (36 to 48),
    /// infused 33 % (28 to 38), prepreg 35 % (32 to 38).
    /// </summary>
    /// <param name="process">The process.</param>
    /// <exception cref="ArgumentOutOfRangeException">The process is not one of the enumeration.</exception>
    public static ResinRange UsualResin(LayUpProcess process) => process switch
    {
        LayUpProcess.Hand => Range(42, 50, 58),
        LayUpProcess.Bagged => Range(36, 42, 48),
        LayUpProcess.Infused => Range(28, 33, 38),
        LayUpProcess.Prepreg => Range(32, 35, 38),
        _ => throw new ArgumentOutOfRangeException(nameof(process), process, "Unknown process."),
    };

    /// <summary>
    /// Half the width of the band, relative to the mass: 7 % or 15 % for bagged work, scaled for another process by the spread of
    /// laminate mass over its range of resin shares (hand about 1.6 times, infused 0.7, prepreg 0.4).
    /// </summary>
    /// <param name="process">The process.</param>
    /// <param name="experience">How well the hands know the job.</param>
    /// <exception cref="ArgumentOutOfRangeException">The process or the experience is not one of its enumeration.</exception>
    public static Ratio HalfWidth(LayUpProcess process, Experience experience)
    {
        double bagged = experience switch
        {
            Experience.Experienced => ExperiencedBagged,
            Experience.Novice => NoviceBagged,
            _ => throw new ArgumentOutOfRangeException(nameof(experience), experience, "Unknown experience."),
        };
        return Ratio.FromDecimalFractions(bagged * Spread(process) / Spread(LayUpProcess.Bagged));
    }

    /// <summary>
    /// The band of a sum whose parts are off independently of each other: expected masses add, half widths add as squares.
    /// The lower end is never below zero.
    /// </summary>
    /// <param name="shares">The parts.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass or a half width is negative.</exception>
    /// <remarks>Source: JCGM 100 (GUM), combination of uncorrelated uncertainties.</remarks>
    public static MassRange Combine(IReadOnlyList<MassShare> shares)
    {
        ArgumentNullException.ThrowIfNull(shares);
        double sum = 0;
        double width = 0;
        foreach (MassShare share in shares)
        {
            double m = Guard.NotNegative(share.Expected.Kilograms, "kg", nameof(shares));
            double half = m * Guard.NotNegative(share.HalfWidth.DecimalFractions, string.Empty, nameof(shares));
            sum += m;

            // Root of the sum of squares, without squaring what may be large.
            width = double.Hypot(width, half);
        }

        return new MassRange(
            Mass.FromKilograms(sum), Mass.FromKilograms(Math.Max(0, sum - width)), Mass.FromKilograms(sum + width));
    }

    // Laminate mass goes as 1 / (1 - w) at a given cloth; half the range of that, relative to the usual share.
    private static double Spread(LayUpProcess process)
    {
        ResinRange range = UsualResin(process);
        double cloth = 1 - range.Usual.DecimalFractions;
        return ((cloth / (1 - range.High.DecimalFractions)) - (cloth / (1 - range.Low.DecimalFractions))) / 2;
    }

    private static ResinRange Range(double low, double usual, double high) =>
        new(Ratio.FromPercent(low), Ratio.FromPercent(usual), Ratio.FromPercent(high));
}
