using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// Makes the triangles of a surface, and keeps them: a plan is made at every keystroke in an editor, a scan is read once. The same surface gives
/// the same triangles whether they were kept or made anew.
/// </summary>
internal static class ShapeShelf
{
    // Chord height of the triangles of a primitive or profile, as a share of its size: far below what a tape measure shows.
    private const double Fineness = 1.0 / 4000;

    private const int MostKept = 64;

    private static readonly ConditionalWeakTable<ShapeFile, ConcurrentDictionary<string, Made>> OfFiles = [];

    private static readonly ConcurrentDictionary<string, Made> OfFigures = new(StringComparer.Ordinal);

    /// <summary>The model of a surface, or what is wrong with it. Both are null for one that has no shape, as one given by its area.</summary>
    /// <param name="shape">The surface.</param>
    /// <param name="regions">What is kept of it.</param>
    /// <param name="pull">Which way the part comes off, or null.</param>
    public static Made Of(SurfaceShape shape, ImmutableArray<ShapeRegion> regions, ShapeDirection? pull)
    {
        var key = Key(shape, regions, pull);
        if (shape is MeshShape { File: { } file })
        {
            return In(regions, OfFiles.GetOrCreateValue(file).GetOrAdd(key, _ => Make(shape, regions, pull)));
        }

        if (OfFigures.Count > MostKept)
        {
            OfFigures.Clear();
        }

        return In(regions, OfFigures.GetOrAdd(key, _ => Make(shape, regions, pull)));
    }

    // What was kept may be of another text, or of this one before a line was added: the region line that it is about is the one here.
    private static Made In(ImmutableArray<ShapeRegion> regions, Made kept) => kept.Trouble is { Region: { } region } trouble
        ? kept with { Trouble = trouble with { Region = regions.First(here => RegionKey(here) == RegionKey(region)) } }
        : kept;

    /// <summary>A step of length 1 along a direction.</summary>
    public static Point3 Unit(ShapeDirection direction) => direction switch
    {
        ShapeDirection.X => new(1, 0, 0),
        ShapeDirection.Y => new(0, 1, 0),
        ShapeDirection.Z => new(0, 0, 1),
        ShapeDirection.MinusX => new(-1, 0, 0),
        ShapeDirection.MinusY => new(0, -1, 0),
        ShapeDirection.MinusZ => new(0, 0, -1),
        _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "No such direction."),
    };

    private static Made Make(SurfaceShape shape, ImmutableArray<ShapeRegion> regions, ShapeDirection? pull)
    {
        MeshReading? reading = null;
        TriangleMesh? mesh;
        try
        {
            mesh = shape is MeshShape drawn ? Read(drawn, out reading) : Primitive(shape);
        }
        catch (ArgumentException problem)
        {
            return new(null, new ShapeTrouble(ShapeTroubleKind.BadProfile, Reason: Said(problem)));
        }

        if (mesh is null)
        {
            var missing = shape is MeshShape { File: null } ? new ShapeTrouble(ShapeTroubleKind.NoFile) : null;
            return new(null, reading is null ? missing : new ShapeTrouble(ShapeTroubleKind.Refused, reading.Refusal));
        }

        foreach (var region in regions)
        {
            if (region is GroupOfShape group && !mesh.Groups.Any(known => known.Name == group.Name))
            {
                return new(null, new ShapeTrouble(ShapeTroubleKind.NoSuchGroup, Region: region, Groups: [.. mesh.Groups.Select(known => known.Name).Distinct()]));
            }

            var left = Kept(region).Aggregate(mesh, MeshRegions.Select);
            if (left.Triangles.IsEmpty)
            {
                var whole = MeshMeasures.Of(mesh);
                return new(null, new ShapeTrouble(ShapeTroubleKind.NothingLeft, Region: region, Least: whole.Least, Most: whole.Most));
            }

            mesh = left;
        }

        var model = new ShapeModel(mesh, reading, pull is { } direction ? Unit(direction) : null);
        return model.Measures.Boundaries.IsEmpty ? new(model, new ShapeTrouble(ShapeTroubleKind.Closed)) : new(model, null);
    }

    // As the rest of a sentence.
    private static string Said(ArgumentException problem)
    {
        var text = problem is ArgumentOutOfRangeException ? "a size is out of its range" : problem.Message.Split(" (Parameter", 2)[0].TrimEnd('.');
        return text.Length > 1 && !char.IsUpper(text[1]) ? char.ToLowerInvariant(text[0]) + text[1..] : text;
    }

    private static TriangleMesh? Read(MeshShape shape, out MeshReading? reading)
    {
        reading = shape.File is { } file ? MeshReading.Read(file.Bytes, file.Name, shape.Unit) : null;
        return reading?.Mesh is { } mesh && shape.LaidOnBack ? SurfaceMeshes.OtherSide(mesh) : reading?.Mesh;
    }

    private static TriangleMesh? Primitive(SurfaceShape shape) => shape switch
    {
        FlatShape s => SurfaceMeshes.FlatRectangle(s.Length, s.Width),
        DiscShape s => SurfaceMeshes.Disc(s.Diameter, Chord(s.Diameter)),
        CylinderShape s => SurfaceMeshes.Cylinder(s.Diameter, s.Length, Chord(s.Diameter)),
        ConeShape s => SurfaceMeshes.Frustum(s.BaseDiameter, s.TopDiameter, s.Length, Chord(UnitMath.Max(s.BaseDiameter, s.TopDiameter))),
        SphericalCapShape s => SurfaceMeshes.SphericalCap(s.Diameter, s.Rise, Chord(s.Diameter)),
        HalfEllipsoidShape s => SurfaceMeshes.HalfEllipsoid(s.Length, s.Width, s.Depth, Chord(UnitMath.Max(s.Length, s.Width))),
        ParaboloidShape s => SurfaceMeshes.Paraboloid(s.Diameter, s.Rise, Chord(s.Diameter)),
        BoxShape s => SurfaceMeshes.OpenBox(s.Length, s.Width, s.Height),
        RevolvedShape s => SurfaceMeshes.Revolved(Points(s.Profile), s.Arc, Chord(Size(s.Profile))),
        SweptShape s => SurfaceMeshes.Swept(Points(s.Section), [.. s.Path.Select(point => new Point3(point.Out.Meters, 0, point.Height.Meters))]),
        _ => null,
    };

    private static ImmutableArray<Point2> Points(ImmutableArray<ProfilePoint> points) => [.. points.Select(point => new Point2(point.Out.Meters, point.Height.Meters))];

    private static Length Size(ImmutableArray<ProfilePoint> points)
    {
        var (wide, high) = (points.Max(p => p.Out) - points.Min(p => p.Out), points.Max(p => p.Height) - points.Min(p => p.Height));
        return Length.FromMeters(Math.Max(1e-4, Math.Max(UnitMath.Max(wide, high).Meters, points.Max(p => Math.Abs(p.Out.Meters)))));
    }

    private static Length Chord(Length size) => size * Fineness;

    private static IEnumerable<MeshRegion> Kept(ShapeRegion region)
    {
        switch (region)
        {
            case BetweenPlanes planes:
                var axis = Unit(planes.Axis);
                if (planes.From is { } from)
                {
                    yield return new HalfSpaceRegion(axis * from.Meters, axis);
                }

                if (planes.To is { } to)
                {
                    yield return new HalfSpaceRegion(axis * to.Meters, axis * -1);
                }

                break;
            case GroupOfShape group:
                yield return new GroupRegion(group.Name);
                break;
            case PatchOfShape patch:
                yield return new PatchRegion(new Point3(patch.X.Meters, patch.Y.Meters, patch.Z.Meters), patch.Edge ?? Defaults.SharpEdge.Value);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(region), region, "No such region.");
        }
    }

    private static string Key(SurfaceShape shape, ImmutableArray<ShapeRegion> regions, ShapeDirection? pull)
    {
        var invariant = CultureInfo.InvariantCulture;
        var figure = shape switch
        {
            MeshShape s => string.Create(invariant, $"mesh {s.File?.Name} {s.Unit?.Meters:R} {s.LaidOnBack}"),
            FlatShape s => Sizes("flat", s.Length, s.Width),
            DiscShape s => Sizes("disc", s.Diameter),
            CylinderShape s => Sizes("cylinder", s.Diameter, s.Length),
            ConeShape s => Sizes("cone", s.BaseDiameter, s.TopDiameter, s.Length),
            SphericalCapShape s => Sizes("cap", s.Diameter, s.Rise),
            HalfEllipsoidShape s => Sizes("ellipsoid", s.Length, s.Width, s.Depth),
            ParaboloidShape s => Sizes("paraboloid", s.Diameter, s.Rise),
            BoxShape s => Sizes("box", s.Length, s.Width, s.Height),
            RevolvedShape s => Sizes("revolved", [Length.FromMeters(s.Arc.Radians), .. s.Profile.SelectMany(p => (Length[])[p.Out, p.Height])]),
            SweptShape s => Sizes("swept", [Length.FromMeters(s.Section.Length), .. s.Section.Concat(s.Path).SelectMany(p => (Length[])[p.Out, p.Height])]),
            _ => "none",
        };
        return string.Create(invariant, $"{figure} | {pull} | {string.Join("; ", regions.Select(RegionKey))}");
    }

    private static string RegionKey(ShapeRegion region) => region switch
    {
        BetweenPlanes s => string.Create(CultureInfo.InvariantCulture, $"{s.Axis} {s.From?.Meters:R} {s.To?.Meters:R}"),
        GroupOfShape s => $"group {s.Name}",
        PatchOfShape s => string.Create(CultureInfo.InvariantCulture, $"patch {s.X.Meters:R} {s.Y.Meters:R} {s.Z.Meters:R} {s.Edge?.Radians:R}"),
        _ => "",
    };

    private static string Sizes(string name, params ReadOnlySpan<Length> sizes)
    {
        var text = new System.Text.StringBuilder(name);
        foreach (var size in sizes)
        {
            text.Append(' ').Append(size.Meters.ToString("R", CultureInfo.InvariantCulture));
        }

        return text.ToString();
    }

    /// <summary>A model, or what is wrong.</summary>
    internal sealed record Made(ShapeModel? Model, ShapeTrouble? Trouble);
}
