using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>The shape of a surface to lay on. Lengths are as the author gave them.</summary>
public abstract record SurfaceShape;

/// <summary>Flat rectangle.</summary>
public sealed record FlatShape(Length Length, Length Width) : SurfaceShape;

/// <summary>Flat disc.</summary>
public sealed record DiscShape(Length Diameter) : SurfaceShape;

/// <summary>Cylinder, the curved face only.</summary>
public sealed record CylinderShape(Length Diameter, Length Length) : SurfaceShape;

/// <summary>Cone or frustum, the curved face only; length along the axis.</summary>
public sealed record ConeShape(Length BaseDiameter, Length TopDiameter, Length Length) : SurfaceShape;

/// <summary>Cap of a sphere: rim diameter and rise.</summary>
public sealed record SphericalCapShape(Length Diameter, Length Rise) : SurfaceShape;

/// <summary>Half an ellipsoid: footprint length by width, and depth.</summary>
public sealed record HalfEllipsoidShape(Length Length, Length Width, Length Depth) : SurfaceShape;

/// <summary>Paraboloid of revolution: rim diameter and rise.</summary>
public sealed record ParaboloidShape(Length Diameter, Length Rise) : SurfaceShape;

/// <summary>Open box: the floor and four walls.</summary>
public sealed record BoxShape(Length Length, Length Width, Length Height) : SurfaceShape;

/// <summary>Any surface whose area was measured; developed length, width and depth where the author knows them.</summary>
public sealed record GivenAreaShape(Area Area, Length? Length, Length? Width, Length? Depth) : SurfaceShape;

/// <summary>How worn a mould is.</summary>
public enum MouldState
{
    /// <summary>Never pulled from.</summary>
    New,

    /// <summary>Several good pulls behind it.</summary>
    Seasoned,

    /// <summary>Repaired on its face.</summary>
    Repaired,
}

/// <summary>The land for the sealant tape.</summary>
public enum TapeLand
{
    /// <summary>Clear of release.</summary>
    Bare,

    /// <summary>Released like the face.</summary>
    Released,
}

/// <summary>A mould, or a pattern that moulds are made on.</summary>
public sealed record Mould
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Where its name is declared.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Whether it is a pattern.</summary>
    public bool IsPattern { get; init; }

    /// <summary>A title for papers, or null.</summary>
    public string? Title { get; init; }

    /// <summary>What papers call it.</summary>
    public string Label => Title ?? Name;

    /// <summary>The surface laid on (of one half, when there are halves).</summary>
    public Figure<SurfaceShape>? Surface { get; init; }

    /// <summary>What is kept of the surface; empty for all of it.</summary>
    public ImmutableArray<ShapeRegion> Regions { get; init; } = [];

    /// <summary>Which way the part comes off, in the axes of the surface.</summary>
    public Figure<ShapeDirection>? Pull { get; init; }

    /// <summary>Names of the halves; empty when the mould is one piece.</summary>
    public ImmutableArray<string> Halves { get; init; } = [];

    /// <summary>Flange round the part.</summary>
    public Figure<Length>? Flange { get; init; }

    /// <summary>What it is made of.</summary>
    public MouldMaterial? MadeOf { get; init; }

    /// <summary>Where the material is named.</summary>
    public SourceSpan? MadeOfWhere { get; init; }

    /// <summary>Name of the part (a lay-up of its own) that is this mould, or null.</summary>
    public string? MadeBy { get; init; }

    /// <summary>The hottest it can stand, its own line or that of its material.</summary>
    public Figure<Temperature>? HeatLimit { get; init; }

    /// <summary>Smallest inside radius.</summary>
    public Figure<Length>? InsideRadius { get; init; }

    /// <summary>Draft against the pull.</summary>
    public Figure<Angle>? Draft { get; init; }

    /// <summary>Whether it bends enough to be peeled off the part.</summary>
    public bool IsFlexible { get; init; }

    /// <summary>The line that says so, or null.</summary>
    public SourceSpan? FlexibleWhere { get; init; }

    /// <summary>Whether the part is locked in against the pull.</summary>
    public Figure<bool>? Undercut { get; init; }

    /// <summary>What helps the part off, in words, or null.</summary>
    public string? PullAid { get; init; }

    /// <summary>Pulls since the release was last put on.</summary>
    public Figure<int>? PullsSinceRelease { get; init; }

    /// <summary>Whether it was post-cured.</summary>
    public Figure<bool>? PostCured { get; init; }

    /// <summary>What its face is painted or coated with, in words, or null.</summary>
    public string? Coating { get; init; }

    /// <summary>Where the coating is named.</summary>
    public SourceSpan? CoatingWhere { get; init; }

    /// <summary>Whether coating and release were tried together on a test patch.</summary>
    public Figure<bool>? StickTested { get; init; }

    /// <summary>Coats that seal a porous face.</summary>
    public Figure<int>? SealCoats { get; init; }

    /// <summary>The day the bare mould last held a vacuum, or null.</summary>
    public DateOnly? TestedOn { get; init; }

    /// <summary>Whether the land for the sealant tape is kept clear of release.</summary>
    public Figure<TapeLand>? TapeLand { get; init; }

    /// <summary>Pulls so far.</summary>
    public Figure<int>? Pulls { get; init; }

    /// <summary>New, seasoned, repaired.</summary>
    public Figure<MouldState>? State { get; init; }

    /// <summary>The day it was made.</summary>
    public DateOnly? MadeOn { get; init; }

    /// <summary>Whether the part is wrapped round it.</summary>
    public bool IsMandrel { get; init; }

    /// <summary>Whether it stays in the part, so that nothing has to come off it.</summary>
    public bool StaysInPart { get; init; }

    /// <summary>The release lines, in order; empty when there is no release block.</summary>
    public ImmutableArray<ReleaseCoat> Release { get; init; } = [];

    /// <summary>Where the release block stands, or null.</summary>
    public SourceSpan? ReleaseWhere { get; init; }
}

/// <summary>One line of a release block.</summary>
/// <param name="Agent">The agent.</param>
/// <param name="Where">The line.</param>
public sealed record ReleaseCoat(ReleaseAgent Agent, SourceSpan Where)
{
    /// <summary>Number of coats: the line's, or the agent's usual number.</summary>
    public Figure<int>? Coats { get; init; }

    /// <summary>Time between coats: the line's, or the agent's.</summary>
    public Figure<Duration>? Wait { get; init; }

    /// <summary>Name of the half it goes on, or null when on all faces.</summary>
    public string? On { get; init; }

    /// <summary>Time from the last coat to the lay-up: the line's, or the agent's.</summary>
    public Figure<Duration>? Dry { get; init; }
}
