using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;

namespace Recipe.Planning;

/// <summary>Where the outline of a piece comes from.</summary>
public enum OutlineOrigin
{
    /// <summary>Exact geometry: a rectangle, a circle.</summary>
    Exact,

    /// <summary>The cloth laid down on the surface as a net of threads.</summary>
    Draped,

    /// <summary>The surface laid flat with the least distortion.</summary>
    Flattened,

    /// <summary>The rectangle round it: the surface cannot be laid flat.</summary>
    Surrounded,
}

/// <summary>A piece as it is cut, or one of the strips of it: X lies along the roll, seen with the right side of the cloth up.</summary>
public sealed record PieceToCut
{
    /// <summary>What is written on it: the letter of the cut list, and the number of the strip when there are several.</summary>
    public required string Mark { get; init; }

    /// <summary>Index of its line in the stack.</summary>
    public required int StackLine { get; init; }

    /// <summary>Name of that line.</summary>
    public required string Ply { get; init; }

    /// <summary>What it is cut from.</summary>
    public required Reinforcement Cloth { get; init; }

    /// <summary>The line to cut along, m, with trim, notches and laps.</summary>
    public required Outline Outline { get; init; }

    /// <summary>Where the outline comes from.</summary>
    public required OutlineOrigin Origin { get; init; }

    /// <summary>How many are cut.</summary>
    public required int Count { get; init; }

    /// <summary>How many of them are mirror images, for the other half of the mould.</summary>
    public int MirrorImages { get; init; }

    /// <summary>How it may be turned on the roll.</summary>
    public required NestTurn Turn { get; init; }

    /// <summary>Where its axes meet the rim, as far as notches are cut there.</summary>
    public ImmutableArray<PieceNotch> Notches { get; init; } = [];

    /// <summary>Tail and head of the arrow along the warp; null for what has none.</summary>
    public (Point2 Tail, Point2 Head)? Warp { get; init; }

    /// <summary>Where its mark has room, m.</summary>
    public required Point2 Label { get; init; }

    /// <summary>Whether it is drawn with the face up that goes to the mould, because the right side of the cloth does.</summary>
    public bool MouldSideUp { get; init; }

    /// <summary>Share of the surface that the outline leaves out because the cloth does not reach it; 0 when it covers all.</summary>
    public double Uncovered { get; init; }
}
