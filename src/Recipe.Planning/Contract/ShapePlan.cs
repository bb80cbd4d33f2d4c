using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>The surface as cloth meets it: what is wrong with its file, its triangles, and how woven plies lie on it. Null for what is flat or rolls out flat.</summary>
public sealed record ShapePlan
{
    /// <summary>The surface.</summary>
    public required Figure<SurfaceShape> Surface { get; init; }

    /// <summary>What is kept of it.</summary>
    public ImmutableArray<ShapeRegion> Regions { get; init; } = [];

    /// <summary>What is wrong with it; null when nothing is.</summary>
    public ShapeTrouble? Trouble { get; init; }

    /// <summary>Whether it comes from a file or a profile, or only part of it is used, so that its figures are measured on triangles.</summary>
    public bool IsMeasured { get; init; }

    /// <summary>
    /// Whether cloth is sheared so much on it that somebody should look: by more than <see cref="Gentle"/> somewhere, or nobody can say without
    /// looking.
    /// </summary>
    public bool IsDeep { get; init; }

    /// <summary>The triangles; null when there is trouble. Worked out when asked.</summary>
    public ShapeModel? Model => WhenAsked?.Value;

    /// <summary>The point that cloth touches first, m; asked only when there is a <see cref="Model"/>.</summary>
    public Point3 Start => StartWhenAsked?.Value ?? default;

    /// <summary>Which way 0 degrees runs there.</summary>
    public Point3 Along => AlongWhenAsked?.Value ?? new(1, 0, 0);

    /// <summary>Distance of two threads in the net.</summary>
    public Length Step { get; init; }

    /// <summary>How woven plies are sheared, one entry for each cloth and direction, in the order of the stack; empty when <see cref="IsDeep"/> is false.</summary>
    public ImmutableArray<ClothShear> Cloths { get; init; } = [];

    /// <summary>That distance as a figure that rests on what was assumed of how the cloth is laid down; null without <see cref="Cloths"/>.</summary>
    public Computed<Length>? Net { get; init; }

    /// <summary>No woven cloth minds less shear than this.</summary>
    public static Angle Gentle { get; } = Angle.FromDegrees(15);

    internal Lazy<ShapeModel?>? WhenAsked { get; init; }

    internal Lazy<Point3>? StartWhenAsked { get; init; }

    internal Lazy<Point3>? AlongWhenAsked { get; init; }

    /// <summary>The cloth laid down with its warp at an angle to 0 degrees; null where it cannot be laid or there is no model.</summary>
    /// <param name="warp">Degrees, counter-clockwise looking at the tool face.</param>
    public DrapeNet? Drape(double warp) => Model?.Drape(Start, Along, Angle.FromDegrees(warp), Step);
}

/// <summary>A woven cloth on a shaped surface.</summary>
/// <param name="StackLine">Index of the first line of the stack that it is in.</param>
/// <param name="Cloth">The cloth.</param>
/// <param name="Warp">Angle of its warp to 0 degrees.</param>
/// <param name="Locking">Shear at which it begins to wrinkle.</param>
/// <param name="Net">The net; null where the cloth cannot be laid. Worked out when asked.</param>
public sealed record ClothShear(int StackLine, Reinforcement Cloth, double Warp, Computed<Angle> Locking, Lazy<DrapeNet?> Net);
