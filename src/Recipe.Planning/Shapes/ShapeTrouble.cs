using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;

namespace Recipe.Planning;

/// <summary>Why there is no surface to lay on.</summary>
public enum ShapeTroubleKind
{
    /// <summary>The file is not there or cannot be read.</summary>
    NoFile,

    /// <summary>The file gives no mesh; <see cref="ShapeTrouble.Refusal"/> says why.</summary>
    Refused,

    /// <summary>The file has no group of that name.</summary>
    NoSuchGroup,

    /// <summary>A region line leaves nothing.</summary>
    NothingLeft,

    /// <summary>The surface closes on itself: it has no rim that cloth could end at.</summary>
    Closed,

    /// <summary>The points of a profile make no surface.</summary>
    BadProfile,
}

/// <summary>What is wrong with a drawn or scanned surface.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Refusal">Why the file gives no mesh.</param>
/// <param name="Region">The region line that it is about.</param>
/// <param name="Groups">The groups that the file has.</param>
/// <param name="Reason">Why a profile makes no surface.</param>
/// <param name="Least">Smallest coordinates of what the region line is about, m.</param>
/// <param name="Most">Greatest coordinates of it, m.</param>
public sealed record ShapeTrouble(
    ShapeTroubleKind Kind, MeshRefusal? Refusal = null, ShapeRegion? Region = null, ImmutableArray<string> Groups = default, string? Reason = null,
    Point3? Least = null, Point3? Most = null);
