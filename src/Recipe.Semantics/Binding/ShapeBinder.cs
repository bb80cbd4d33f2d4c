using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>Surfaces that were drawn or scanned: from files and from profiles; what is kept of them, and the cloth on them.</summary>
internal static class ShapeBinder
{
    // A profile of more points was not written by hand.
    private const int MostPoints = 2000;

    public static MeshShape? Mesh(Line line)
    {
        if (line.Text(Define.Value) is not { } written)
        {
            return null;
        }

        var unit = line.Text("unit");
        return new MeshShape(written, line.Context.Scope.FindShape(line.Context.Source.Name, written), UnitOf(unit), unit, line.Text("laid-on") == "back");
    }

    public static RevolvedShape? Revolved(Line line)
    {
        var points = Points(line, "point", "radius");
        var arc = line.Reading.Find("arc") is { } argument ? Si.Angle(argument.Si) : Angle.FromDegrees(360);
        return points is { } profile ? new RevolvedShape(profile, arc) : null;
    }

    public static SweptShape? Swept(Line line) =>
        Points(line, "section", "across") is { } section && Points(line, "path", "along") is { } path ? new SweptShape(section, path) : null;

    public static ImmutableArray<ShapeRegion> Regions(IEnumerable<Line> lines) => [.. lines.Select(Region).OfType<ShapeRegion>()];

    public static DrapeStart? Drape(Line? line) => line is null
        ? null
        : new DrapeStart(Place(line, "at-x"), Place(line, "at-y"), Place(line, "at-z"), line.Text("along") is { } along ? Direction(along) : null, Place(line, "step"), line.Where);

    public static ShapeDirection Direction(string word) => word switch
    {
        "x" => ShapeDirection.X,
        "y" => ShapeDirection.Y,
        "z" => ShapeDirection.Z,
        "minus-x" => ShapeDirection.MinusX,
        "minus-y" => ShapeDirection.MinusY,
        _ => ShapeDirection.MinusZ,
    };

    private static ShapeRegion? Region(Line line)
    {
        var axis = line.Text("axis") is { } word ? Direction(word) : (ShapeDirection?)null;
        var at = Place(line, Define.Value);
        return (line.Reading.Form, axis, at) switch
        {
            ("above", { } a, { } from) => new BetweenPlanes(a, from, null, line.Rest, line.Where),
            ("below", { } a, { } to) => new BetweenPlanes(a, null, to, line.Rest, line.Where),
            ("between", { } a, { } from) => new BetweenPlanes(a, from, Si.Length(line.Reading.Find(Define.Value)!.High!.Value.Si), line.Rest, line.Where),
            ("group", _, _) when line.Text(Define.Value) is { } name => new GroupOfShape(name, line.Rest, line.Where),
            ("patch", _, _) when Place(line, "at-x") is { } x && Place(line, "at-y") is { } y && Place(line, "at-z") is { } z =>
                new PatchOfShape(x, y, z, line.Reading.Find("edge") is { } edge ? Si.Angle(edge.Si) : null, line.Rest, line.Where),
            _ => null,
        };
    }

    private static ImmutableArray<ProfilePoint>? Points(Line line, string word, string outwards)
    {
        if (line.Entry.Block is null)
        {
            Missing(line, word);
            return null;
        }

        var lines = BlockReader.Read(line).Many(word).ToList();
        ProfilePoint[] points =
        [
            .. lines.Take(MostPoints).Where(point => point.Reading.Find(outwards) is not null && point.Reading.Find("height") is not null)
                .Select(point => new ProfilePoint(Si.Length(point.Reading.Find(outwards)!.Si), Si.Length(point.Reading.Find("height")!.Si))),
        ];
        if (lines.Count > MostPoints)
        {
            line.Context.Sink.Report(OutOfRange.TooMany(lines[MostPoints].HeadWhere, "points", lines.Count, MostPoints, "profile"));
        }

        if (points.Length < 2)
        {
            if (lines.Count < 2)
            {
                Missing(line, word);
            }

            return null;
        }

        return [.. points];
    }

    private static void Missing(Line line, string word)
    {
        if (!line.Reading.IsHalfRead)
        {
            line.Context.Sink.Report(MissingValue.Line(line.HeadWhere, $"{line.Head} {line.Reading.Form}", word, ShapeWords.Profile.Find(word)!.Example));
        }
    }

    private static Length? Place(Line line, string name) => line.Reading.Find(name) is { } argument ? Si.Length(argument.Si) : null;

    private static Length? UnitOf(string? word) => word switch
    {
        "mm" => Length.FromMillimeters(1),
        "cm" => Length.FromCentimeters(1),
        "m" => Length.FromMeters(1),
        "in" => Length.FromInches(1),
        "ft" => Length.FromFeet(1),
        _ => null,
    };
}
