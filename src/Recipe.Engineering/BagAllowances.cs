using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Allowances for cutting bag film and tape. The defaults are common practice; pleats and stretch are what keeps film from
/// bridging an inside corner and bursting there.
/// </summary>
public sealed record BagAllowances
{
    /// <summary>Film beyond the developed size on each side, for tape and handling; zero or more. Default 75 mm.</summary>
    public Length FilmEdge { get; init; } = Length.FromMillimeters(75);

    /// <summary>Film over the developed size of a shaped part, in each direction; at least 1. Default 1.2 (1.15 to 1.25).</summary>
    public double ShapedFactor { get; init; } = 1.2;

    /// <summary>Distance of the tape line outside the rim of the part; zero or more. Default 50 mm.</summary>
    public Length TapeOffset { get; init; } = Length.FromMillimeters(50);

    /// <summary>Number of pleats in the film along the tape; zero or more. Default 4.</summary>
    public int Pleats { get; init; } = 4;

    /// <summary>Height of a pleat, or null for the depth of the part; zero or more. Default null.</summary>
    public Length? PleatHeight { get; init; }

    /// <summary>Tape over and above the line and its pleats; zero or more. Default 5 %.</summary>
    public Ratio TapeSpare { get; init; } = Ratio.FromPercent(5);
}
