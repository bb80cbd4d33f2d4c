using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// Minutes as papers print them: a limit is rounded down, a need up, and what is left over is the difference of the two, so that whoever does the sum at
/// the bench finds what stands there.
/// </summary>
public static class WholeMinutes
{
    // What the arithmetic leaves over rounds no limit away.
    private const double Noise = 1e-9;

    /// <summary>A limit in whole minutes.</summary>
    public static Duration OfLimit(Duration limit) => Duration.FromMinutes(Math.Floor(limit.Minutes + Slack(limit)));

    /// <summary>A need in whole minutes.</summary>
    public static Duration OfNeed(Duration need) => Duration.FromMinutes(Math.Ceiling(need.Minutes - Slack(need)));

    /// <summary>What is left over; negative when the limit is passed.</summary>
    public static Duration Left(Duration limit, Duration need) => OfLimit(limit) - OfNeed(need);

    private static double Slack(Duration time) => Math.Max(Math.Abs(time.Minutes), 1) * Noise;
}
