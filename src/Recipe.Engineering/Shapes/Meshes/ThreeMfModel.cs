using System.Globalization;
using System.Xml;

namespace Recipe.Engineering;

/// <summary>The XML of a 3MF model: objects are kept as they come, and put where the build wants them at the end.</summary>
internal sealed class ThreeMfModel(MeshSoup soup)
{
    /// <summary>Components may nest; deeper than this is no mould.</summary>
    private const int MaximumDepth = 32;

    private const int MaximumPlacings = 100_000;

    private readonly Dictionary<int, Solid> _objects = [];
    private readonly List<Placing> _build = [];
    private Solid? _current;
    private int _placings;

    internal MeshRefusal? Read(XmlReader xml, out double? metres)
    {
        metres = null;
        bool inBuild = false;
        while (xml.Read())
        {
            if (xml.NodeType != XmlNodeType.Element)
            {
                if (xml is { NodeType: XmlNodeType.EndElement, LocalName: "object" })
                {
                    _current = null;
                }

                continue;
            }

            MeshRefusal? refusal = null;
            switch (xml.LocalName)
            {
                case "model":
                    metres = Unit(xml.GetAttribute("unit") ?? "millimeter");
                    refusal = metres is null ? Refuse(xml, MeshRefusalReason.Malformed, "unit") : null;
                    break;
                case "object":
                    refusal = Object(xml);
                    break;
                case "vertex" when _current is not null:
                    refusal = Vertex(xml, _current.Shape);
                    break;
                case "triangle" when _current is not null:
                    refusal = Triangle(xml, _current.Shape);
                    break;
                case "component" when _current is not null:
                    refusal = Place(xml, _current.Parts);
                    break;
                case "build":
                    inBuild = true;
                    break;
                case "item" when inBuild:
                    refusal = Place(xml, _build);
                    break;
            }

            if (refusal is not null)
            {
                return refusal;
            }
        }

        if (metres is null)
        {
            return new MeshRefusal(MeshRefusalReason.NotAMesh, "model");
        }

        foreach (Placing placing in _build)
        {
            soup.StartGroup(placing.What.Name);
            if (Add(placing.What, placing.Where, 0) is { } refusal)
            {
                return refusal;
            }
        }

        return null;
    }

    private static double? Unit(string name) => name switch
    {
        "micron" => 1e-6,
        "millimeter" => 1e-3,
        "centimeter" => 1e-2,
        "inch" => 0.0254,
        "foot" => 0.3048,
        "meter" => 1,
        _ => null,
    };

    private static MeshRefusal Refuse(XmlReader xml, MeshRefusalReason reason, string word, double? found = null, double? limit = null) =>
        new(reason, word, found, limit, (xml as IXmlLineInfo)?.LineNumber);

    private static bool Whole(XmlReader xml, string name, out int value) =>
        int.TryParse(xml.GetAttribute(name), NumberStyles.None, CultureInfo.InvariantCulture, out value);

    private static MeshRefusal? Number(XmlReader xml, string name, out double value)
    {
        if (!double.TryParse(xml.GetAttribute(name), NumberStyles.Float, CultureInfo.InvariantCulture, out value))
        {
            return Refuse(xml, MeshRefusalReason.Malformed, name);
        }

        return double.IsFinite(value) ? null : Refuse(xml, MeshRefusalReason.NotANumber, name);
    }

    private static MeshRefusal? Vertex(XmlReader xml, MeshSoup shape)
    {
        (double y, double z) = (0, 0);
        MeshRefusal? refusal = Number(xml, "x", out double x) ?? Number(xml, "y", out y) ?? Number(xml, "z", out z);
        shape.AddPoint(x, y, z);
        return refusal;
    }

    private static MeshRefusal? Triangle(XmlReader xml, MeshSoup shape)
    {
        if (!Whole(xml, "v1", out int a) || !Whole(xml, "v2", out int b) || !Whole(xml, "v3", out int c))
        {
            return Refuse(xml, MeshRefusalReason.Malformed, "triangle");
        }

        int most = Math.Max(a, Math.Max(b, c));
        if (most >= shape.PointCount)
        {
            return Refuse(xml, MeshRefusalReason.NoSuchCorner, "triangle", most, shape.PointCount);
        }

        if (shape.IsFull)
        {
            return Refuse(xml, MeshRefusalReason.TooManyTriangles, "triangle", limit: MeshReading.MaximumTriangles);
        }

        shape.AddTriangle(a, b, c);
        return null;
    }

    private MeshRefusal? Object(XmlReader xml)
    {
        if (!Whole(xml, "id", out int id) || _objects.ContainsKey(id))
        {
            return Refuse(xml, MeshRefusalReason.Malformed, "object");
        }

        string name = xml.GetAttribute("name") is { Length: > 0 } said ? said : string.Create(CultureInfo.InvariantCulture, $"object {id}");
        Solid solid = new(name.Length > 200 ? name[..200] : name);
        _objects.Add(id, solid);
        _current = xml.IsEmptyElement ? null : solid;
        return null;
    }

    private MeshRefusal? Place(XmlReader xml, List<Placing> where)
    {
        for (bool more = xml.MoveToFirstAttribute(); more; more = xml.MoveToNextAttribute())
        {
            // The production extension puts objects into other parts of the package.
            if (xml is { LocalName: "path", NamespaceURI.Length: > 0 })
            {
                return Refuse(xml, MeshRefusalReason.NotSupported, "path");
            }
        }

        xml.MoveToElement();
        if (!Whole(xml, "objectid", out int id) || !_objects.TryGetValue(id, out Solid? solid) || solid == _current)
        {
            return Refuse(xml, MeshRefusalReason.Malformed, "objectid");
        }

        if (!ThreeMfTransform.TryRead(xml.GetAttribute("transform"), out ThreeMfTransform transform))
        {
            return Refuse(xml, MeshRefusalReason.Malformed, "transform");
        }

        where.Add(new Placing(solid, transform));
        return null;
    }

    /// <summary>An object may be made of others that are made of others: what comes out is counted as it comes.</summary>
    private MeshRefusal? Add(Solid solid, ThreeMfTransform transform, int depth)
    {
        if (depth > MaximumDepth || ++_placings > MaximumPlacings)
        {
            return new MeshRefusal(MeshRefusalReason.TooMuchInside, "component", Limit: depth > MaximumDepth ? MaximumDepth : MaximumPlacings);
        }

        if (solid.Shape.Count > MeshReading.MaximumTriangles - soup.Count)
        {
            return new MeshRefusal(MeshRefusalReason.TooManyTriangles, solid.Name, (double)soup.Count + solid.Shape.Count, MeshReading.MaximumTriangles);
        }

        if (solid.Shape.Count > 0)
        {
            if (solid.Shape.PointCount > (3 * MeshReading.MaximumTriangles) - soup.PointCount)
            {
                return new MeshRefusal(MeshRefusalReason.TooMuchInside, solid.Name, Limit: 3 * MeshReading.MaximumTriangles);
            }

            int from = soup.PointCount;
            foreach (Point3 point in solid.Shape.Points.AsSpan(0, solid.Shape.PointCount))
            {
                Point3 placed = transform.Apply(point);
                if (!placed.IsFinite)
                {
                    return new MeshRefusal(MeshRefusalReason.NotANumber, "transform");
                }

                soup.AddPoint(placed.X, placed.Y, placed.Z);
            }

            foreach (MeshTriangle triangle in solid.Shape.Triangles.AsSpan(0, solid.Shape.Count))
            {
                (int second, int third) = transform.Mirrors ? (triangle.C, triangle.B) : (triangle.B, triangle.C);
                soup.AddTriangle(from + triangle.A, from + second, from + third);
            }
        }

        foreach (Placing part in solid.Parts)
        {
            if (Add(part.What, part.Where.Then(transform), depth + 1) is { } refusal)
            {
                return refusal;
            }
        }

        return null;
    }

    private sealed record Placing(Solid What, ThreeMfTransform Where);

    private sealed class Solid(string name)
    {
        internal string Name { get; } = name;

        internal MeshSoup Shape { get; } = new();

        internal List<Placing> Parts { get; } = [];
    }
}
