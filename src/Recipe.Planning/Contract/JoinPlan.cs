using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>The join of two halves, or of finished parts, computed.</summary>
public sealed record JoinPlan
{
    /// <summary>Length of the seam; null when not known.</summary>
    public Computed<Length>? Seam { get; init; }

    /// <summary>Cloth taped over the seam, all layers; null without tape or when its size is unknown.</summary>
    public Computed<Area>? TapeArea { get; init; }

    /// <summary>Dry mass of that cloth.</summary>
    public Computed<Mass>? TapeCloth { get; init; }

    /// <summary>Resin that the tape holds.</summary>
    public Computed<Mass>? TapeResin { get; init; }

    /// <summary>Adhesive in the bond line; null where the halves are taped and no bond line is said.</summary>
    public Computed<Mass>? Adhesive { get; init; }

    /// <summary>Filler along the seam.</summary>
    public Computed<Mass>? Fillet { get; init; }

    /// <summary>Whether the tape's resin is mixed with that of the laminate (wet-in-wet); else it is a batch of its own, later.</summary>
    public required bool SameSession { get; init; }

    /// <summary>Time to fill, tape and wet out the seam with the hands there are, mixing left out; null when the seam is not known.</summary>
    public Computed<Duration>? Work { get; init; }

    /// <summary>What the join adds to the part.</summary>
    public required Computed<Mass> Mass { get; init; }

    /// <summary>The finished parts that an assembly is joined of, as often as they are named; empty for anything else, and where one of them has no known mass.</summary>
    public ImmutableArray<JoinedPart> Parts { get; init; } = [];

    /// <summary>
    /// What an assembly weighs: its parts and what the join adds. The band is from all parts light to all parts heavy, since the same hands laid
    /// them. Null for anything else, and where one of its parts has no known mass.
    /// </summary>
    public Computed<Banded<Mass>>? Whole { get; init; }
}

/// <summary>A finished part of an assembly.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Mass">What it weighs when it is trimmed; of an assembly, when it is joined.</param>
public sealed record JoinedPart(string Name, Computed<Banded<Mass>> Mass);
