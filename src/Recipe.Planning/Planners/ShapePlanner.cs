using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>The surface as triangles, and the cloth on it.</summary>
internal static class ShapePlanner
{
    // Threads of a net along the side of a square of the same area.
    private const double Threads = 60;

    /// <summary>What is kept of the surface: what the mould keeps, and of that what the part covers.</summary>
    private static ImmutableArray<ShapeRegion> Regions(Part part) => part.Surface is null && part.Mould is { } mould ? [.. mould.Regions, .. part.Regions] : part.Regions;

    /// <summary>Whether figures of the surface are measured on triangles.</summary>
    private static bool IsMeasured(SurfaceShape shape, ImmutableArray<ShapeRegion> regions) =>
        shape is MeshShape or RevolvedShape or SweptShape || (!regions.IsEmpty && shape is not GivenAreaShape);

    /// <summary>The surface of a part; null when it has none or one that cloth lies on without shear.</summary>
    public static ShapePlan? Begin(Part part)
    {
        if ((part.Surface ?? part.Mould?.Surface) is not { } figure || figure.Value is GivenAreaShape)
        {
            return null;
        }

        var regions = Regions(part);
        var measured = IsMeasured(figure.Value, regions);
        if (!measured && figure.Value is FlatShape or DiscShape or CylinderShape)
        {
            return null;
        }

        var pull = part.Mould?.Pull?.Value;
        var made = new Lazy<ShapeShelf.Made>(() => ShapeShelf.Of(figure.Value, regions, pull));
        return new ShapePlan
        {
            Surface = figure,
            Regions = regions,
            IsMeasured = measured,
            Trouble = measured ? made.Value.Trouble : null,
            WhenAsked = new(() => made.Value is { Trouble: null, Model: { } model } ? model : null),
            StartWhenAsked = new(() => made.Value.Model is { } model ? StartOf(part, model) : default),
            AlongWhenAsked = new(() => ShapeShelf.Unit(part.Drape?.Along ?? Across(made.Value.Model))),
        };
    }

    /// <summary>The same with the cloths of the stack.</summary>
    /// <param name="context">The part.</param>
    /// <param name="shape">Its surface.</param>
    /// <param name="ground">The measures of it, or null.</param>
    /// <param name="stack">The lines that lie on it.</param>
    public static ShapePlan? Work(PlanContext context, ShapePlan? shape, Ground? ground, ImmutableArray<LineWork> stack)
    {
        if (shape is not { Trouble: null } || ground is null)
        {
            return shape;
        }

        var step = context.Part.Drape?.Step ?? StepFor(ground.Surface.Area);
        shape = shape with { Step = step, IsDeep = IsDeep(shape, ground.Surface) };
        if (!shape.IsDeep)
        {
            return shape;
        }

        var cloths = ImmutableArray.CreateBuilder<ClothShear>();
        for (var i = 0; i < stack.Length; i++)
        {
            if (stack[i].Item is PlyItem { IsPatch: false, Material: { Form: ReinforcementForm.Fabric } cloth, SizeLength: null } && stack[i].Pieces is [var piece, ..]
                && !cloths.Any(known => known.Cloth == cloth && known.Warp.Equals(piece.RollAngle)))
            {
                var warp = piece.RollAngle;
                cloths.Add(new ClothShear(i, cloth, warp, Locking(context, cloth), new Lazy<DrapeNet?>(() => shape.Drape(warp))));
            }
        }

        var start = context.Part.Drape is null ? context.Ledger.Assume(Defaults.DrapeStart) : Rests.None;
        return shape with { Cloths = cloths.ToImmutable(), Net = cloths.Count > 0 ? context.Ledger.Publish(step, start) : null };
    }

    /// <summary>Distance of two threads for a surface of this size.</summary>
    public static Length StepFor(Area area) => Length.FromMeters(Math.Sqrt(area.SquareMeters) / Threads);

    /// <summary>The point that cloth touches first.</summary>
    private static Point3 StartOf(Part part, ShapeModel model)
    {
        if (part.Drape is not { } drape || (drape.X is null && drape.Y is null && drape.Z is null))
        {
            return model.Middle;
        }

        var middle = model.Middle;
        var point = new Point3(drape.X?.Meters ?? middle.X, drape.Y?.Meters ?? middle.Y, drape.Z?.Meters ?? middle.Z);
        return drape.Z is null ? MeshPlaces.Under(model.Mesh, point, model.Pull ?? new Point3(0, 0, 1)) : point;
    }

    private static Computed<Angle> Locking(PlanContext context, Reinforcement cloth)
    {
        if (cloth.LockingAngle is { } known)
        {
            return context.Ledger.Publish(known.Value, context.Figures.Basis(known, Owner.Of(cloth), "locking-angle"));
        }

        return context.Ledger.Publish(Defaults.LockingAngle.Value, context.Ledger.Assume(Defaults.LockingAngle));
    }

    // Along x, except on a surface that faces that way: there x has no direction in it.
    private static ShapeDirection Across(ShapeModel? model) =>
        model?.Measures.Rim is { } rim && Math.Abs(rim.Normal.X) > 0.8 ? ShapeDirection.Y : ShapeDirection.X;

    // On triangles only the cloth itself tells.
    private static bool IsDeep(ShapePlan shape, Surface surface) => shape.IsMeasured ? surface.IsDoublyCurved : MostShear(shape.Surface.Value) > ShapePlan.Gentle;

    private static Angle MostShear(SurfaceShape shape) => shape switch
    {
        SphericalCapShape s => BowlShear.OfSphericalCap(s.Diameter, s.Rise),
        ParaboloidShape s => BowlShear.OfParaboloid(s.Diameter, s.Rise),
        HalfEllipsoidShape => BowlShear.OfUprightRim,
        _ => Angle.Zero,
    };
}
