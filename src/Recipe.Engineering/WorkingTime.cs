using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How long wetting out and bagging take, to be held against pot life and film life.</summary>
/// <remarks>
/// Source: common practice; work is taken to share out evenly over the hands. The preset pace brings a 0.3 to 0.5 m2 part of
/// three plies from first mix to level in 30 to 40 minutes, as is commonly reckoned of experienced hands.
/// </remarks>
public static class WorkingTime
{
    /// <summary>Wetting out at one pace: <c>area * plies * pace / people</c>.</summary>
    /// <param name="area">Area of one ply; zero or more.</param>
    /// <param name="plies">Number of plies; zero or more.</param>
    /// <param name="perSquareMetrePly">Time for a square metre of one ply by one person; zero or more.</param>
    /// <param name="people">Laminators; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Duration WetOut(Area area, int plies, Duration perSquareMetrePly, int people = 1)
    {
        double s = Guard.NotNegative(area.SquareMeters, "m2", nameof(area));
        double pace = Guard.NotNegative(perSquareMetrePly.Seconds, "s", nameof(perSquareMetrePly));
        return Duration.FromSeconds(
            s * Guard.AtLeast(plies, 0, nameof(plies)) * pace / Guard.AtLeast(people, 1, nameof(people)));
    }

    /// <summary>Placing the bagging layers and closing the bag on tape that is already down.</summary>
    /// <param name="area">Area of the layers; zero or more.</param>
    /// <param name="tapeLine">Length of the line of sealant tape; zero or more.</param>
    /// <param name="layers">Layers between the peel ply and the bag film (films, bleeders, breathers); zero or more.</param>
    /// <param name="peelPly">True when there is a peel ply to place and smooth.</param>
    /// <param name="pace">Pace of one person.</param>
    /// <param name="people">Pairs of hands; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Duration Bagging(
        Area area, Length tapeLine, int layers, bool peelPly, WorkPace pace, int people = 1)
    {
        ArgumentNullException.ThrowIfNull(pace);
        double s = Guard.NotNegative(area.SquareMeters, "m2", nameof(area));
        double line = Guard.NotNegative(tapeLine.Meters, "m", nameof(tapeLine));
        double peel = peelPly ? Guard.NotNegative(pace.PeelPlyPerSquareMetre.Seconds, "s", nameof(pace)) : 0;
        double rest = Guard.AtLeast(layers, 0, nameof(layers))
            * Guard.NotNegative(pace.LayerPerSquareMetre.Seconds, "s", nameof(pace));
        double closing = line * Guard.NotNegative(pace.ClosingPerMetre.Seconds, "s", nameof(pace));
        return Duration.FromSeconds(
            ((s * (peel + rest)) + closing) / Guard.AtLeast(people, 1, nameof(people)));
    }
}
