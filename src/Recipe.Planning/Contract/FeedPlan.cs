using UnitsNet;

namespace Recipe.Planning;

/// <summary>The feed lines of an infusion, all halves together. Each is full of resin when it is clamped.</summary>
public sealed record FeedPlan
{
    /// <summary>How many there are; a half is a bag of its own and has so many as its share.</summary>
    public required Computed<int> Lines { get; init; }

    /// <summary>Length of one of them; null when it is not known.</summary>
    public Computed<Length>? Length { get; init; }

    /// <summary>Their inner diameter.</summary>
    public required Computed<Length> Bore { get; init; }
}
