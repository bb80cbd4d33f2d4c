using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How long wetting out and bagging take, to be held against pot life and film life.</summary>
/// <remarks>
/// Source: common practice; work is taken to share out evenly over the hands. The preset paces bring a 0.3 to 0.5 m2 part of
/// three plies from first mix to level in 30 to 40 minutes (experienced) or 75 to 120 (novice), as is commonly reckoned.
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

    /// <summary>
    /// Wetting out a surface: handling of each ply plus wetting out at the pace, slowed on doubly curved and faceted shapes.
    /// </summary>
    /// <param name="surface">The surface, every ply taken to cover it.</param>
    /// <param name="plies">Number of plies; zero or more.</param>
    /// <param name="pace">Pace of one person.</param>
    /// <param name="people">Laminators; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Duration WetOut(Surface surface, int plies, WorkPace pace, int people = 1)
    {
        ArgumentNullException.ThrowIfNull(surface);
        return WetOut(surface.Area, surface.Curvature, plies, pace, people);
    }

    /// <summary>Wetting out an area of a given curvature: as for a surface, for plies that cover only a part of one.</summary>
    /// <param name="area">Area of one ply; zero or more.</param>
    /// <param name="curvature">How the surface bends.</param>
    /// <param name="plies">Number of plies; zero or more.</param>
    /// <param name="pace">Pace of one person.</param>
    /// <param name="people">Laminators; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Duration WetOut(Area area, Curvature curvature, int plies, WorkPace pace, int people = 1)
    {
        ArgumentNullException.ThrowIfNull(pace);
        double factor = curvature is Curvature.Double or Curvature.Faceted
            ? Guard.Between(pace.DoubleCurvatureFactor, 1, 100, string.Empty, nameof(pace))
            : 1;
        double handling = plies * Guard.NotNegative(pace.HandlingPerPly.Seconds, "s", nameof(pace));
        double wetting = factor * WetOut(area, plies, pace.WetOutPerSquareMetrePly, people).Seconds;
        return Duration.FromSeconds(wetting + (handling / people));
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

    /// <summary>The clock from the start of the first mix to full vacuum, every pot mixed by the same hands.</summary>
    /// <param name="pots">Number of pots; at least 1.</param>
    /// <param name="wetOut">Wetting out of all plies; zero or more.</param>
    /// <param name="bagging">Placing layers and closing the bag; zero or more.</param>
    /// <param name="pumpDown">Drawing the bag down; zero or more.</param>
    /// <param name="pace">Pace, for mixing and leak hunt.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>
    /// US Army TM 1-1500-204-23-11 wants the pressure on within the maker's pot life. The sum errs on the long side.
    /// </remarks>
    public static MixToVacuumClock FirstMixToFullVacuum(
        int pots, Duration wetOut, Duration bagging, Duration pumpDown, WorkPace pace)
    {
        ArgumentNullException.ThrowIfNull(pace);
        Guard.NotNegative(wetOut.Seconds, "s", nameof(wetOut));
        Guard.NotNegative(bagging.Seconds, "s", nameof(bagging));
        Guard.NotNegative(pumpDown.Seconds, "s", nameof(pumpDown));
        Guard.NotNegative(pace.LeakHunt.Seconds, "s", nameof(pace));
        double mixing = Guard.AtLeast(pots, 1, nameof(pots))
            * Guard.NotNegative(pace.MixingPerPot.Seconds, "s", nameof(pace));
        return new MixToVacuumClock(Duration.FromSeconds(mixing), wetOut, bagging, pace.LeakHunt, pumpDown);
    }

    /// <summary>The clock of one pot.</summary>
    /// <param name="mixing">Time from the first contact of the components; zero or more.</param>
    /// <param name="laying">Time in which the pot is laid; zero or more.</param>
    /// <param name="life">Its pot life; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static PotClock OfPot(Duration mixing, Duration laying, Duration life)
    {
        Guard.NotNegative(mixing.Seconds, "s", nameof(mixing));
        Guard.NotNegative(laying.Seconds, "s", nameof(laying));
        Guard.Positive(life.Seconds, "s", nameof(life));
        return new PotClock(mixing, laying, life);
    }
}
