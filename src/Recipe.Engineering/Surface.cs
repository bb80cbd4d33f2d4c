using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// The measures of one moulded surface that cloth, resin, bag and clock are worked out from.
/// Made by <see cref="Surfaces"/>; immutable.
/// </summary>
public sealed record Surface
{
    internal Surface(
        SurfaceKind kind,
        Curvature curvature,
        double areaSquareMetres,
        double rimMetres,
        double depthMetres,
        double lengthMetres,
        double widthMetres,
        double rimCornerFactor)
    {
        Kind = kind;
        Curvature = curvature;
        Area = Area.FromSquareMeters(areaSquareMetres);
        RimLength = Length.FromMeters(rimMetres);
        Depth = Length.FromMeters(depthMetres);
        DevelopedLength = Length.FromMeters(lengthMetres);
        DevelopedWidth = Length.FromMeters(widthMetres);
        RimCornerFactor = rimCornerFactor;
    }

    /// <summary>The shape.</summary>
    public SurfaceKind Kind { get; }

    /// <summary>How the surface bends.</summary>
    public Curvature Curvature { get; }

    /// <summary>Area of the surface itself, measured on it (not its projection).</summary>
    public Area Area { get; }

    /// <summary>Length of the whole free edge; for a tube the sum over its open ends.</summary>
    public Length RimLength { get; }

    /// <summary>
    /// Greatest distance of the surface from the plane of its rim; zero for a flat face and for a tube,
    /// which has no such plane.
    /// </summary>
    public Length Depth { get; }

    /// <summary>
    /// Size over the surface, as a string laid on it measures, in the first direction. For surfaces that roll out flat
    /// (flat, cylinder, cone) it is the length of the rectangle round the flat pattern.
    /// </summary>
    public Length DevelopedLength { get; }

    /// <summary>Size over the surface across the first direction; see <see cref="DevelopedLength"/>.</summary>
    public Length DevelopedWidth { get; }

    /// <summary>
    /// The number <c>k</c> in <c>area + rim * t + k * t^2</c>, the area with a border of width <c>t</c> outside the rim:
    /// pi round a smooth rim (Steiner's formula), 4 round a rectangle with mitred corners, 0 for a straight-ended tube.
    /// </summary>
    public double RimCornerFactor { get; }

    /// <summary>True for a plane face.</summary>
    public bool IsFlat => Curvature == Curvature.Flat;

    /// <summary>True when the surface bends both ways, so that a flat cloth cannot lie on it without shear or cuts.</summary>
    public bool IsDoublyCurved => Curvature == Curvature.Double;

    /// <summary>True when the surface closes on itself round an axis, so that a wrapped ply meets itself in a seam.</summary>
    public bool IsClosedTube => Kind is SurfaceKind.Cylinder or SurfaceKind.Frustum;

    /// <summary>True when the flat piece for the surface is rounded (disc or oval) and not a rectangle.</summary>
    public bool HasOvalPiece =>
        Kind is SurfaceKind.FlatDisc or SurfaceKind.SphericalCap or SurfaceKind.HalfEllipsoid or SurfaceKind.Paraboloid;

    /// <summary>
    /// How much wider the rectangle round the flat pattern may become, m, where a piece reaches past both ends by a length in m: a cone goes on
    /// widening, and twice the length covers the steepest taper; 0 for every other shape.
    /// </summary>
    internal double FlareBeyond(double metres) => Kind == SurfaceKind.Frustum ? Math.Max(0, 2 * metres) : 0;

    /// <summary>
    /// Area with a border of one width added outside the whole rim, lying flat on the flange (on a tube: running on along it).
    /// Exact for every shape but <see cref="SurfaceKind.ShapedArea"/>.
    /// </summary>
    /// <param name="border">Width of the border; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="border"/> is negative.</exception>
    /// <remarks>Source: Steiner's formula for parallel curves, exact geometry.</remarks>
    public Area AreaWithBorder(Length border)
    {
        double t = Guard.NotNegative(border.Meters, "m", nameof(border));
        return Area.FromSquareMeters(Area.SquareMeters + (RimLength.Meters * t) + (RimCornerFactor * t * t));
    }

    /// <summary>Length of a line drawn round the rim at a distance outside it, such as the line of sealant tape.</summary>
    /// <param name="distance">Distance outside the rim; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="distance"/> is negative.</exception>
    /// <remarks>Source: Steiner's formula for parallel curves, exact geometry.</remarks>
    public Length RimAtDistance(Length distance)
    {
        double t = Guard.NotNegative(distance.Meters, "m", nameof(distance));
        return Length.FromMeters(RimLength.Meters + (2 * RimCornerFactor * t));
    }
}
