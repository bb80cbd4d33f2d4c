using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How far apart feed lines may lie.</summary>
/// <remarks>
/// Source: Darcy's law for parallel lines, as in <see cref="InfusionFill"/>. Two fronts that meet shut in what air is left between them: lay the
/// vacuum there, or open the next line only when the front has passed it.
/// </remarks>
public static class FeedLines
{
    /// <summary>Greatest distance that is wet in a time: the reach of one front, or of two that meet.</summary>
    /// <param name="medium">The stack.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="resin">The resin's viscosity since mixing.</param>
    /// <param name="within">Time from opening the feed; 0 to 1e12 s.</param>
    /// <param name="sides">Whether the strip is fed from one edge or from both.</param>
    /// <param name="opened">Time since mixing at which the feed is opened; default 0.</param>
    /// <returns>For one side the distance from feed line to vacuum line; for both the distance from feed line to feed line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Length GreatestSpacing(
        PorousMedium medium, Pressure drop, ViscosityCurve resin, Duration within, FeedSides sides, Duration opened = default)
    {
        ArgumentNullException.ThrowIfNull(resin);
        ViscosityCurve aged = resin.Aged(opened, nameof(opened));
        double reach = Darcy.LineFront(medium, drop, aged.FluidityAt(FlowGuard.Time(within, nameof(within))));
        return Length.FromMeters(sides switch
        {
            FeedSides.One => reach,
            FeedSides.Both => 2 * reach,
            _ => throw new ArgumentOutOfRangeException(nameof(sides), sides, "A strip is fed from one side or from both."),
        });
    }
}
