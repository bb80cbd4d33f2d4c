using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// How fast a pair of hands works. The preset is common practice, most of it from memory; a shop's own build records
/// are better. Every duration is zero or more; the factor is at least 1.
/// </summary>
public sealed record WorkPace
{
    /// <summary>Wetting out, for a square metre of one light ply on a gentle shape.</summary>
    public required Duration WetOutPerSquareMetrePly { get; init; }

    /// <summary>Picking up, placing and lining up one ply, whatever its size.</summary>
    public required Duration HandlingPerPly { get; init; }

    /// <summary>Placing and smoothing peel ply, for a square metre.</summary>
    public required Duration PeelPlyPerSquareMetre { get; init; }

    /// <summary>Placing any other bagging layer (film, bleeder, breather), for a square metre.</summary>
    public required Duration LayerPerSquareMetre { get; init; }

    /// <summary>Closing the bag film on tape that is already down, for a metre of tape line.</summary>
    public required Duration ClosingPerMetre { get; init; }

    /// <summary>Finding and closing leaks once the pump runs.</summary>
    public required Duration LeakHunt { get; init; }

    /// <summary>Weighing out and mixing one pot.</summary>
    public required Duration MixingPerPot { get; init; }

    /// <summary>How many times slower a doubly curved or deep shape is to wet out.</summary>
    public required double DoubleCurvatureFactor { get; init; }

    /// <summary>
    /// Someone who has done it often: 4 min/m2 and ply (3 to 5), double curvature 1.75 (1.5 to 2), peel ply 2.5, other layers
    /// 2 min/m2, closing 1.75 min/m, leak hunt 8 min (5 to 10), mixing 3 min, handling 2 min a ply.
    /// </summary>
    public static WorkPace Experienced { get; } = new()
    {
        WetOutPerSquareMetrePly = Duration.FromMinutes(4),
        HandlingPerPly = Duration.FromMinutes(2),
        PeelPlyPerSquareMetre = Duration.FromMinutes(2.5),
        LayerPerSquareMetre = Duration.FromMinutes(2),
        ClosingPerMetre = Duration.FromMinutes(1.75),
        LeakHunt = Duration.FromMinutes(8),
        MixingPerPot = Duration.FromMinutes(3),
        DoubleCurvatureFactor = 1.75,
    };
}
