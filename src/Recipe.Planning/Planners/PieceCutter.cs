using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>What is cut for one line.</summary>
/// <param name="Piece">The piece, with its count.</param>
/// <param name="JoinArea">Cloth that lies double at the joins of one piece, m2.</param>
/// <param name="Askew">Whether it is cut at an angle to the roll.</param>
internal readonly record struct CutPiece(PiecePlan Piece, Num JoinArea, bool Askew);

/// <summary>Turns pieces on their roll and joins them where the roll is too narrow.</summary>
/// <remarks>
/// The warp of a woven cloth lies along the roll, and so do the strands of a unidirectional one: +/-45 from 0/90 cloth is cut at
/// 45 degrees to the roll. A stitched cloth whose strands already lie at +/-45 is cut straight. Mat, veil and a random ply have
/// no direction and are turned whichever way fits.
/// </remarks>
internal static class PieceCutter
{
    // More strips than this are a slip of the pen, not a piece.
    private const int MostStrips = 1000;

    public static CutPiece Cut(PlanContext context, PlyItem ply, FlatPiece piece, int count, bool mirrored, Known<Orientation> orientation, Num overlap)
    {
        var roll = context.Figures.Length(ply.Material.Width, Owner.Of(ply.Material), "width");
        var angle = IsFree(ply, orientation.Value) ? FreeAngle(piece, roll) : RollAngle(ply.Material, orientation.Value);
        var footprint = PieceSize.OnRoll(piece, Angle.FromDegrees(angle));
        var joins = 0;
        var joinArea = Num.Zero;
        Length? strip = null;
        if (roll is { } width && footprint.Across.Meters > width.Si * (1 + 1e-9))
        {
            (joins, joinArea, strip) = Join(context, ply, piece, angle, footprint, width, overlap);
        }

        var plan = new PiecePlan(
            piece.Length, piece.Width, count, angle, footprint.Across, footprint.Along, roll is { } r ? Length.FromMeters(r.Si) : null, joins, mirrored)
        {
            StripWidth = strip,
        };
        return new CutPiece(plan, joinArea, IsAskew(angle));
    }

    /// <summary>A core cut from sheets; the sheet's smaller side stands for the roll, and joins are the seams between sheets.</summary>
    public static PiecePlan Cut(PlanContext context, CoreItem core, FlatPiece piece, int count, bool mirrored)
    {
        var owner = Owner.Of(core.Material);
        var length = context.Figures.Length(core.Material.SheetLength, owner, "sheet");
        var width = context.Figures.Length(core.Material.SheetWidth, owner, "sheet");
        var seams = 0;
        if (length is { } l && width is { } w)
        {
            seams = Math.Min(Seams(piece.Length.Meters, l.Si, piece.Width.Meters, w.Si), Seams(piece.Length.Meters, w.Si, piece.Width.Meters, l.Si));
        }

        return new PiecePlan(
            piece.Length, piece.Width, count, 0, piece.Width, piece.Length, width is { } across ? Length.FromMeters(across.Si) : null, seams, mirrored);
    }

    /// <summary>Angle of the ply's first direction to the roll, in degrees, more than -90 and at most 90.</summary>
    internal static double RollAngle(Reinforcement cloth, Orientation orientation)
    {
        var strands = cloth.FibreAngles?.Value is { Kind: not OrientationKind.Random } angles ? angles.First : 0;

        // One direction for a cloth with two says where its roll lies, not where its first strand lies.
        var stitchedTwoWays = cloth.FibreAngles?.Value.Kind == OrientationKind.Pair;
        var turned = orientation.Kind == OrientationKind.Single && stitchedTwoWays ? orientation.First : orientation.First - strands;
        if (!double.IsFinite(turned))
        {
            return 0;
        }

        var angle = turned % 180;
        return angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle;
    }

    /// <summary>Whether a ply has no direction on its roll.</summary>
    internal static bool IsFree(PlyItem ply, Orientation orientation) =>
        orientation.Kind == OrientationKind.Random || ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil;

    /// <summary>
    /// Whether the strips of a ply lie edge to edge: those of a unidirectional cloth along the fibre (common practice), unless their own line says how
    /// far they overlap.
    /// </summary>
    internal static bool IsButted(PlyItem ply, Part part) =>
        ply.Material.Form == ReinforcementForm.Unidirectional && (ply.Overlap is null || ply.Overlap == part.Overlap);

    private static bool IsAskew(double angle) => Math.Abs(angle) > 1 && Math.Abs(angle) < 89;

    private static double FreeAngle(FlatPiece piece, Num? roll)
    {
        if (roll is not { } width)
        {
            return 0;
        }

        var fitsAcross = piece.Length.Meters <= width.Si;
        var fitsAlong = piece.Width.Meters <= width.Si;
        var shorterAcross = piece.Width < piece.Length;
        return fitsAcross && (!fitsAlong || shorterAcross) ? 90 : 0;
    }

    private static (int Joins, Num Area, Length? Strip) Join(
        PlanContext context, PlyItem ply, FlatPiece piece, double angle, RollFootprint footprint, Num roll, Num overlap)
    {
        var gain = roll.Si - overlap.Si;
        if (gain <= 0 || footprint.Across.Meters / gain > MostStrips)
        {
            context.Miss($"joins of {ply.Name}", "the roll is too narrow for the overlap");
            return (0, Num.Zero, null);
        }

        var strips = PieceSize.Strips(piece, Angle.FromDegrees(angle), Length.FromMeters(roll.Si), Length.FromMeters(overlap.Si));
        return (strips.Strips - 1, new Num(strips.OverlapArea.SquareMeters, overlap.On | roll.On), strips.StripWidth);
    }

    private static int Seams(double length, double sheetLength, double width, double sheetWidth)
    {
        var along = Math.Ceiling(length / sheetLength * (1 - 1e-9));
        var across = Math.Ceiling(width / sheetWidth * (1 - 1e-9));
        return (int)Math.Min(Math.Max(0, along - 1) + Math.Max(0, across - 1), MostStrips);
    }
}
