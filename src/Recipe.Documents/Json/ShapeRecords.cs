using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Engineering;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>The surface as triangles, and the cloths on it; null where cloth lies without much shear on a plain shape.</summary>
internal sealed record ShapeRecord(
    string? File, double? UnitM, int Triangles, ImmutableArray<MendedRecord> Mended, ImmutableArray<string> Regions, ImmutableArray<double?> BoxM,
    int Rims, double? InsideRadiusM, double? DraftDeg, double? UndercutM2, ImmutableArray<SheetOnShapeRecord> Cloths, ImmutableArray<string> RestsOn)
{
    public static ShapeRecord? Of(Plan plan)
    {
        if (plan.Shape is not { Trouble: null } shape || !(shape.IsDeep || shape.IsMeasured) || shape.Model is not { } model)
        {
            return null;
        }

        var measures = model.Measures;
        var box = measures.Most - measures.Least;
        return new ShapeRecord(
            (shape.Surface.Value as Model.MeshShape)?.Written,
            Si.Of(model.Reading?.Unit),
            model.Mesh.Triangles.Length,
            [.. (model.Reading?.Repairs ?? []).Select(repair => new MendedRecord(Keys.Of(repair.Kind), repair.Count))],
            [.. shape.Regions.Select(region => region.Written)],
            [Si.Number(box.X), Si.Number(box.Y), Si.Number(box.Z)],
            measures.Boundaries.Length,
            Si.Of(EdgesOfMould.InsideRadius(plan)?.Radius),
            Si.Number(EdgesOfMould.Draft(plan)?.Draft.Degrees),
            Si.Of(measures.Draft?.Undercut),
            [.. shape.Cloths.Select(cloth => SheetOnShapeRecord.Of(plan, cloth))],
            shape.Net?.RestsOn ?? []);
    }
}

internal sealed record MendedRecord(string Kind, int Count);

/// <summary>A woven cloth on the surface; the outline is closed, X along the warp.</summary>
internal sealed record SheetOnShapeRecord(
    string Line, string Cloth, double? WarpDeg, double? WrinklesFromDeg, double? GreatestShearDeg, double? BeyondFraction, double? CoveredM2,
    ImmutableArray<ImmutableArray<double?>> OutlineM, ImmutableArray<DartRecord> Darts, ImmutableArray<string> RestsOn)
{
    public static SheetOnShapeRecord Of(Plan plan, ClothShear cloth)
    {
        var net = cloth.Net.Value;
        var locking = cloth.Locking.Value;
        return new SheetOnShapeRecord(
            plan.Stack[cloth.StackLine].Item.Name,
            cloth.Cloth.Name,
            Si.Number(cloth.Warp),
            Si.Number(locking.Degrees),
            Si.Number(net?.GreatestShear.Degrees),
            Si.Number(net?.ShearBeyond(locking).Share.DecimalFractions),
            Si.Of(net?.CoveredArea),
            [.. (net?.Flat?.Points ?? []).Select(point => ImmutableArray.Create(Si.Number(point.X), Si.Number(point.Y)))],
            [.. (net?.Darts(locking).Darts ?? []).Select(DartRecord.Of)],
            cloth.Locking.RestsOn);
    }
}

/// <summary>A cut from the rim, in the cloth's plane.</summary>
internal sealed record DartRecord(ImmutableArray<double?> MouthM, ImmutableArray<double?> TipM, double? DepthM)
{
    public static DartRecord Of(Dart dart) => new([Si.Number(dart.Mouth.X), Si.Number(dart.Mouth.Y)], [Si.Number(dart.Tip.X), Si.Number(dart.Tip.Y)], Si.Of(dart.Depth));
}
