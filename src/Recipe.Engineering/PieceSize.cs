using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Sizes of flat pieces for plies and bagging layers, and the room they take on a roll.</summary>
/// <remarks>
/// Source: exact plane geometry. For doubly curved surfaces the rectangle is that of the two string lengths over the top,
/// which a real cloth, free to shear, does not exceed.
/// </remarks>
public static class PieceSize
{
    // A roll that misses by less than this is wide enough: it is rounding, not cloth.
    private const double RelativeSlack = 1e-9;

    /// <summary>
    /// The flat piece for one ply: the developed sizes plus the trim allowance outside every free edge; on a closed tube
    /// the trim is added at the ends and the overlap once round the girth.
    /// </summary>
    /// <param name="surface">Surface the ply covers.</param>
    /// <param name="trim">Allowance outside the edge, cut off later; zero or more.</param>
    /// <param name="overlap">Overlap at the seam of a closed tube; zero or more; not used by other shapes.</param>
    /// <exception cref="ArgumentOutOfRangeException">An allowance is negative.</exception>
    public static FlatPiece ForPly(Surface surface, Length trim, Length overlap)
    {
        double t = Guard.NotNegative(trim.Meters, "m", nameof(trim));
        double o = Guard.NotNegative(overlap.Meters, "m", nameof(overlap));
        double along = surface.DevelopedLength.Meters + (2 * t);
        double area = surface.AreaWithBorder(trim).SquareMeters;
        if (surface.Kind == SurfaceKind.OpenBox)
        {
            // Each wall carries its own trim; between two of them, where a border would turn the corner, a square is cut out.
            area -= 4 * t * t;
        }

        if (!surface.IsClosedTube)
        {
            double across = surface.DevelopedWidth.Meters + (2 * t);
            return Piece(along, across, area, surface.HasOvalPiece);
        }

        double seam = SeamLength(surface) + (2 * t);
        return Piece(along, surface.DevelopedWidth.Meters + surface.FlareBeyond(t) + o, area + (o * seam), false);
    }

    /// <summary>
    /// Extent along and across the roll of a piece whose warp lies at an angle to its first direction. For a rectangle
    /// <c>L |cos| + W |sin|</c> along and <c>L |sin| + W |cos|</c> across; for an oval the extent of the turned ellipse.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="orientation">Angle from the piece's first direction to the warp; any angle, either sign.</param>
    public static RollFootprint OnRoll(FlatPiece piece, Angle orientation)
    {
        double cosine = Math.Abs(Math.Cos(orientation.Radians));
        double sine = Math.Abs(Math.Sin(orientation.Radians));
        double length = piece.Length.Meters;
        double width = piece.Width.Meters;
        return piece.IsOval
            ? Footprint(double.Hypot(length * cosine, width * sine), double.Hypot(length * sine, width * cosine))
            : Footprint((length * cosine) + (width * sine), (length * sine) + (width * cosine));
    }

    /// <summary>
    /// The least number of equal strips, laid side by side along the warp with an overlap at each joint, that makes up a
    /// piece from a roll of limited width.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="orientation">Angle from the piece's first direction to the warp.</param>
    /// <param name="rollWidth">Usable width of the roll; greater than the overlap.</param>
    /// <param name="overlap">Overlap at each joint; zero (a butt joint) or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The overlap is negative, or the roll is not wider than the overlap, so that no number of strips would do.
    /// </exception>
    public static StripPlan Strips(FlatPiece piece, Angle orientation, Length rollWidth, Length overlap)
    {
        double roll = Guard.Positive(rollWidth.Meters, "m", nameof(rollWidth));
        double lap = Guard.NotNegative(overlap.Meters, "m", nameof(overlap));
        if (roll <= lap)
        {
            throw Guard.Refuse(roll, "m", nameof(rollWidth), "must be greater than the overlap");
        }

        RollFootprint footprint = OnRoll(piece, orientation);
        double across = footprint.Across.Meters;
        double along = footprint.Along.Meters;
        double needed = (across - lap) / (roll - lap);
        int strips = Math.Max(1, checked((int)Math.Ceiling(needed * (1 - RelativeSlack))));
        double width = (across + ((strips - 1) * lap)) / strips;
        return new StripPlan(
            strips,
            Length.FromMeters(width),
            Length.FromMeters(strips * along),
            Area.FromSquareMeters((strips - 1) * lap * along));
    }

    // The seam of a cone runs down its slant, which is not a side of the rectangle round the flat pattern.
    private static double SeamLength(Surface tube) =>
        tube.Kind == SurfaceKind.Frustum
            ? 2 * tube.Area.SquareMeters / tube.RimLength.Meters
            : tube.DevelopedLength.Meters;

    private static FlatPiece Piece(double length, double width, double area, bool isOval) =>
        new(Length.FromMeters(length), Length.FromMeters(width), Area.FromSquareMeters(area), isOval);

    private static RollFootprint Footprint(double along, double across) =>
        new(Length.FromMeters(along), Length.FromMeters(across));
}
