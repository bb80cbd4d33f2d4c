using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>The surface laid on, as the other planners use it.</summary>
/// <param name="Shape">As the author gave it.</param>
/// <param name="Surface">Its measures.</param>
/// <param name="Sides">1, or 2 for a mould in halves.</param>
/// <param name="AreaOn">What its area rests on.</param>
/// <param name="ShapeOn">What its rim, depth and developed sizes rest on.</param>
internal sealed record Ground(SurfaceShape Shape, Surface Surface, int Sides, Rests AreaOn, Rests ShapeOn)
{
    /// <summary>Area of one side.</summary>
    public Num Area => new(Surface.Area.SquareMeters, AreaOn);

    /// <summary>Whether work is slower on it than on a gentle shape.</summary>
    public bool IsHardToReach => Surface.Curvature is Curvature.Double or Curvature.Faceted;

    /// <summary>Rim of one side.</summary>
    public Num Rim => new(Surface.RimLength.Meters, ShapeOn);

    /// <summary>
    /// Area of one side with a border added outside the rim, or with a strip taken off inside it (a negative border): Steiner's
    /// formula, exact for flat faces.
    /// </summary>
    public Num AreaWithBorder(Num border)
    {
        var area = Surface.Area.SquareMeters + (Surface.RimLength.Meters * border.Si) + (Surface.RimCornerFactor * border.Si * border.Si);
        return new Num(area, border.Si == 0 ? AreaOn | border.On : AreaOn | ShapeOn | border.On);
    }
}

/// <summary>
/// Surface of the part, its own or that of its mould. A closed cylinder or cone is a tube that plies are wrapped round and overlap
/// on themselves.
/// </summary>
internal static class GeometryPlanner
{
    private const string Subject = "areas and sizes";

    public static Ground? Work(PlanContext context, ShapePlan? shape)
    {
        var part = context.Part;
        var own = part.Surface is not null;
        var figure = part.Surface ?? part.Mould?.Surface;
        if (figure is null)
        {
            context.Miss(Subject, part.Mould is null ? "the part has no mould and no surface" : $"mould {part.Mould.Name} has no surface");
            return null;
        }

        var owner = own || part.Mould is null ? context.PartOwner : Owner.Of(part.Mould);
        var area = context.Figures.Basis(figure, owner, "surface");
        if (shape is { IsMeasured: true })
        {
            return OfTriangles(context, shape, area);
        }

        var surface = Measure(figure.Value, out var assumed);
        if (surface is null)
        {
            context.Miss(Subject, $"'{figure.Written}' is no surface: every size must be more than 0");
            return null;
        }

        var sizes = assumed ? area | context.Ledger.Assume(Defaults.GivenAreaShape) : area;
        return new Ground(figure.Value, surface, part.Mould is { Halves.Length: > 1 } ? 2 : 1, area, sizes);
    }

    public static GeometryPlan Publish(Ground ground) => new()
    {
        Shape = ground.Shape,
        Sides = ground.Sides,
        Area = ground.Surface.Area,
        Rim = ground.Surface.RimLength,
        Depth = ground.Surface.Depth,
        DevelopedLength = ground.Surface.DevelopedLength,
        DevelopedWidth = ground.Surface.DevelopedWidth,
        DoublyCurved = ground.Surface.IsDoublyCurved,
        Flat = ground.Surface.IsFlat,
    };

    // Every figure of it is measured on triangles: the developed sizes are those of the cloth laid down straight.
    private static Ground? OfTriangles(PlanContext context, ShapePlan shape, Rests area)
    {
        var part = context.Part;
        if (shape is not { Trouble: null, Model: { } model })
        {
            context.Miss(Subject, $"'{shape.Surface.Written}' gives no surface to lay on");
            return null;
        }

        if (shape.Regions.Any(region => region is PatchOfShape { Edge: null }))
        {
            area |= context.Ledger.Assume(Defaults.SharpEdge);
        }

        var measures = model.Measures;
        var flat = model.Drape(shape.Start, shape.Along, Angle.Zero, part.Drape?.Step ?? ShapePlanner.StepFor(measures.Area))?.Flat;
        var surface = Surfaces.ShapedArea(
            measures.Area,
            ShapeModel.RimOf(measures),
            ShapeModel.DepthOf(measures),
            flat is null ? null : Length.FromMeters(flat.Along),
            flat is null ? null : Length.FromMeters(flat.Across),
            measures.Bends.Kind);
        var sizes = flat is null ? area | context.Ledger.Assume(Defaults.GivenAreaShape) : area;
        return new Ground(shape.Surface.Value, surface, part.Mould is { Halves.Length: > 1 } ? 2 : 1, area, sizes);
    }

    private static Surface? Measure(SurfaceShape shape, out bool assumed)
    {
        assumed = false;
        switch (shape)
        {
            case FlatShape s when Sane(s.Length, s.Width):
                return Surfaces.FlatRectangle(s.Length, s.Width);
            case DiscShape s when Sane(s.Diameter):
                return Surfaces.FlatDisc(s.Diameter);
            case CylinderShape s when Sane(s.Diameter, s.Length):
                return Surfaces.Cylinder(s.Diameter, s.Length);
            case ConeShape s when Sane(s.Length) && Sane(s.BaseDiameter + s.TopDiameter) && s.BaseDiameter.Meters >= 0 && s.TopDiameter.Meters >= 0:
                return Surfaces.Frustum(s.BaseDiameter, s.TopDiameter, s.Length);
            case SphericalCapShape s when Sane(s.Diameter, s.Rise):
                return BowlSurfaces.SphericalCap(s.Diameter, s.Rise);
            case HalfEllipsoidShape s when Sane(s.Length, s.Width) && Sane(s.Depth):
                return BowlSurfaces.HalfEllipsoid(s.Length, s.Width, s.Depth);
            case ParaboloidShape s when Sane(s.Diameter, s.Rise):
                return BowlSurfaces.Paraboloid(s.Diameter, s.Rise);
            case BoxShape s when Sane(s.Length, s.Width) && Sane(s.Height):
                return Surfaces.OpenBox(s.Length, s.Width, s.Height);
            case GivenAreaShape s when s.Area.SquareMeters is > 1e-9 and < 1e8:
                return GivenArea(s, out assumed);
            default:
                return null;
        }
    }

    // With one size the other follows from the area; with both the rim is that of the rectangle.
    private static Surface? GivenArea(GivenAreaShape shape, out bool assumed)
    {
        assumed = shape.Length is null || shape.Width is null || shape.Depth is null;
        if ((shape.Length is { } l && !Sane(l)) || (shape.Width is { } w && !Sane(w)) || shape.Depth is { Meters: not (>= 0 and < 1e4) })
        {
            return null;
        }

        var area = shape.Area.SquareMeters;
        var length = shape.Length?.Meters ?? (shape.Width is { } width ? area / width.Meters : Math.Sqrt(area));
        var across = shape.Width?.Meters ?? area / length;
        var curvature = shape.Depth is { Meters: 0 } ? Curvature.Flat : Curvature.Double;
        return Surfaces.ShapedArea(
            shape.Area,
            Length.FromMeters(2 * (length + across)),
            shape.Depth ?? Length.Zero,
            Length.FromMeters(length),
            Length.FromMeters(across),
            curvature);
    }

    // From a tenth of a millimetre to ten kilometres: no part lies outside, and no sum of such sizes overflows.
    private static bool Sane(Length length) => length.Meters is > 1e-4 and < 1e4;

    private static bool Sane(Length one, Length other) => Sane(one) && Sane(other);
}
