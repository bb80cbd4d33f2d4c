using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>The shapes that a surface can have.</summary>
internal static class SurfaceBinder
{
    /// <summary>The shape, or null when a measure of it is missing (which has been reported).</summary>
    public static Figure<SurfaceShape>? Bind(Line? line)
    {
        if (line is { Entry.Block: { } block, Reading.Form: { } form and not ("revolved" or "swept") })
        {
            line.Context.Sink.Report(ExtraValue.Create(line.Context.At(block.Span), "a block of points", $"{line.Head} {form}", line.Word.FormOf(form)!.Example));
        }

        return line is not null && Shape(line) is { } shape
            ? new Figure<SurfaceShape>(shape, line.Basis, Written(line), line.Where, line.Source?.Text)
            : null;
    }

    private static SurfaceShape? Shape(Line line)
    {
        var sides = line.Reading.Find(Define.Value)?.Payload as Side[];
        var diameter = Length(line, "diameter");
        var length = Length(line, "length");
        var rise = Length(line, "rise");
        return line.Reading.Form switch
        {
            "flat" when sides is not null => new FlatShape(Si.Length(sides[0].Si), Si.Length(sides[1].Si)),
            "box" when sides is not null => new BoxShape(Si.Length(sides[0].Si), Si.Length(sides[1].Si), Si.Length(sides[2].Si)),
            "half-ellipsoid" when sides is not null => new HalfEllipsoidShape(Si.Length(sides[0].Si), Si.Length(sides[1].Si), Si.Length(sides[2].Si)),
            "disc" when diameter is { } d => new DiscShape(d),
            "cylinder" when diameter is { } d && length is { } l => new CylinderShape(d, l),
            "cone" when diameter is { } d && length is { } l && line.Reading.Find("diameter")!.High is { } top => Cone(line, d, Si.Length(top.Si), l),
            "spherical-cap" when diameter is { } d && rise is { } r => new SphericalCapShape(d, r),
            "paraboloid" when diameter is { } d && rise is { } r => new ParaboloidShape(d, r),
            "mesh" => ShapeBinder.Mesh(line),
            "revolved" => ShapeBinder.Revolved(line),
            "swept" => ShapeBinder.Swept(line),
            "area" when line.Reading.Find(Define.Value) is { } area => new GivenAreaShape(Si.Area(area.Si), length, Length(line, "width"), Length(line, "depth")),
            _ => null,
        };
    }

    // One end may be a point; of two points there is no surface.
    private static ConeShape? Cone(Line line, Length from, Length to, Length length)
    {
        if (from.Meters > 0 || to.Meters > 0)
        {
            return new ConeShape(from, to, length);
        }

        var diameter = line.Reading.Find("diameter")!;
        line.Context.Sink.Report(OutOfRange.Create(diameter.Where, diameter.Name, line.Context.Source.Slice(diameter.Where.Span), "more than 0 at one end at least"));
        return null;
    }

    private static Length? Length(Line line, string name) => line.Reading.Find(name) is { } argument ? Si.Length(argument.Si) : null;

    private static string Written(Line line) => line.Reading.Source is null
        ? line.Rest
        : line.Reading.Form + string.Concat(line.Reading.Arguments.Select(a => a.Name == Define.Value ? " " + a.Written : $" {a.Name} {a.Written}"));
}
