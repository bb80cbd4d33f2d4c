using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Where a line of the stack lies: its area inside the trim line, its area as cut, and the flat piece.</summary>
/// <param name="CoversAll">Whether it covers the whole surface.</param>
/// <param name="Net">Area of one piece inside the trim line, m2; on a tube with its lap, which stays in the part.</param>
/// <param name="Cut">Area of one piece as cut, joins left out, m2.</param>
/// <param name="Piece">The flat piece.</param>
/// <param name="Rectangular">Whether it is a plain rectangle, cut straight.</param>
internal readonly record struct Extent(bool CoversAll, Num Net, Num Cut, FlatPiece Piece, bool Rectangular);

/// <summary>Works out extents. Null, with a gap, where there is nothing to lay on or nothing left of the line.</summary>
internal static class Extents
{
    /// <summary>
    /// A ply. One with a size of its own is that rectangle, without trim allowance unless its line gives one. One that covers a
    /// share or an area has the shape of the whole surface made smaller, and runs past its edge by the trim. One that steps in
    /// lies inside the trim line and has no trim. On a tube the piece goes once round and overlaps itself.
    /// </summary>
    /// <param name="context">The part.</param>
    /// <param name="ground">The surface, or null.</param>
    /// <param name="ply">The ply.</param>
    /// <param name="inset">How far inside the trim line it ends, m.</param>
    /// <param name="overlap">Overlap on a tube, m.</param>
    public static Extent? OfPly(PlanContext context, Ground? ground, PlyItem ply, Num inset, Num overlap)
    {
        var subject = $"area of {ply.Name}";
        if (Size(context, ply) is { } size)
        {
            // The model hands the part's trim down to every ply; a patch obeys its own only.
            var own = ply.Trim is not null && ply.Trim != context.Part.Trim;
            return Rectangle(size, own ? context.Figures.Length(ply.Trim, context.PartOwner, "trim", zero: true) ?? Num.Zero : Num.Zero);
        }

        if (ground is null || Share(context, ground, ply) is not { } share)
        {
            context.Miss(subject, "the surface is not known");
            return null;
        }

        if (inset.Si > 0)
        {
            return Inset(context, ground, ply, share, inset);
        }

        var trim = context.Figures.Length(ply.Trim, context.PartOwner, "trim", zero: true) ?? context.Take(Defaults.Trim);
        var lap = ground.Surface.IsClosedTube ? overlap : Num.Zero;
        if (trim.Si > 100 || lap.Si > 100)
        {
            context.Miss(subject, "an allowance of more than 100 m");
            return null;
        }

        var piece = PieceSize.ForPly(ground.Surface, Length.FromMeters(trim.Si), Length.FromMeters(lap.Si));
        var on = ground.AreaOn | ground.ShapeOn | trim.On | lap.On;
        if (share.IsWhole)
        {
            // The lap of a tube stays in the part.
            var net = ground.Area;
            if (lap.Si > 0)
            {
                net = new Num(PieceSize.ForPly(ground.Surface, Length.Zero, Length.FromMeters(lap.Si)).Area.SquareMeters, ground.AreaOn | ground.ShapeOn | lap.On);
            }

            return new Extent(true, net, new Num(piece.Area.SquareMeters, on), piece, IsRectangle(ground.Surface));
        }

        return Scaled(context, ground, share.Value, trim);
    }

    /// <summary>A core: its size, its share, or the whole surface; cut to size, without trim.</summary>
    public static Extent? OfCore(PlanContext context, Ground? ground, CoreItem core)
    {
        if (Size(context, core) is { } size)
        {
            return Rectangle(size, Num.Zero);
        }

        if (ground is null || Share(context, ground, core) is not { } share)
        {
            context.Miss($"area of {core.Name}", "the surface is not known");
            return null;
        }

        if (!share.IsWhole)
        {
            return Scaled(context, ground, share.Value, Num.Zero);
        }

        var piece = PieceSize.ForPly(ground.Surface, Length.Zero, Length.Zero);
        return new Extent(true, ground.Area, ground.Area.And(ground.ShapeOn), piece, IsRectangle(ground.Surface));
    }

    private static Extent Rectangle((Num Length, Num Width) size, Num trim)
    {
        var length = size.Length + (trim * 2);
        var width = size.Width + (trim * 2);
        var piece = new FlatPiece(Length.FromMeters(length.Si), Length.FromMeters(width.Si), Area.FromSquareMeters(length.Si * width.Si), false);
        return new Extent(false, size.Length * size.Width, length * width, piece, true);
    }

    private static Extent? Inset(PlanContext context, Ground ground, PlyItem ply, ShareOf share, Num inset)
    {
        var scale = Math.Sqrt(share.Value.Si);
        var length = (ground.Surface.DevelopedLength.Meters * scale) - (2 * inset.Si);
        var width = (ground.Surface.DevelopedWidth.Meters * scale) - (ground.Surface.IsClosedTube ? 0 : 2 * inset.Si);
        var area = (share.Value.Si * ground.Surface.Area.SquareMeters) - (scale * ground.Surface.RimLength.Meters * inset.Si)
            + (ground.Surface.RimCornerFactor * inset.Si * inset.Si);
        if (length <= 0 || width <= 0 || area <= 0)
        {
            context.Miss($"area of {ply.Name}", "its steps leave nothing of it");
            return null;
        }

        var net = new Num(area, ground.AreaOn | ground.ShapeOn | share.Value.On | inset.On);
        var piece = new FlatPiece(Length.FromMeters(length), Length.FromMeters(width), Area.FromSquareMeters(area), ground.Surface.HasOvalPiece);
        return new Extent(false, net, net, piece, IsRectangle(ground.Surface));
    }

    private static Extent Scaled(PlanContext context, Ground ground, Num share, Num trim)
    {
        var surface = ground.Surface;
        var scale = Math.Sqrt(share.Si);
        var on = ground.AreaOn | ground.ShapeOn | share.On | trim.On | context.Ledger.Assume(Defaults.CoversShape);
        var net = ground.Area * share;
        var cut = new Num(net.Si + (scale * surface.RimLength.Meters * trim.Si) + (surface.RimCornerFactor * trim.Si * trim.Si), on);
        var piece = new FlatPiece(
            Length.FromMeters((surface.DevelopedLength.Meters * scale) + (2 * trim.Si)),
            Length.FromMeters((surface.DevelopedWidth.Meters * scale) + (2 * trim.Si)),
            Area.FromSquareMeters(cut.Si),
            surface.HasOvalPiece);
        return new Extent(false, net, cut, piece, IsRectangle(surface));
    }

    private static bool IsRectangle(Surface surface) =>
        surface.Kind is SurfaceKind.FlatRectangle or SurfaceKind.Cylinder;

    private static (Num Length, Num Width)? Size(PlanContext context, StackItem item)
    {
        var length = context.Figures.Length(item.SizeLength, context.PartOwner, "size");
        var width = context.Figures.Length(item.SizeWidth, context.PartOwner, "size");
        return length is { } l && width is { } w ? (l, w) : null;
    }

    private static ShareOf? Share(PlanContext context, Ground ground, StackItem item)
    {
        if (item.CoversArea is not null)
        {
            return context.Figures.Area(item.CoversArea, context.PartOwner, "covers") is { } area ? new ShareOf(area / ground.Area, false) : null;
        }

        if (item.CoversShare is not null)
        {
            return context.Figures.Number(item.CoversShare, context.PartOwner, "covers", zero: false) is { } share ? new ShareOf(share, false) : null;
        }

        return new ShareOf(new Num(1, Rests.None), true);
    }

    private readonly record struct ShareOf(Num Value, bool IsWhole);
}
