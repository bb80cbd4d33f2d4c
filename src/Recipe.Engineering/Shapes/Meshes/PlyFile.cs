namespace Recipe.Engineering;

/// <summary>Reads polygon files: the points of "vertex" and the polygons of "face", whatever other properties and elements there are.</summary>
internal static class PlyFile
{
    internal static MeshRefusal? Read(ReadOnlySpan<byte> bytes, MeshSoup soup)
    {
        if (PlyHeader.Read(bytes, out PlyHeader header) is { } refusal)
        {
            return refusal;
        }

        PlyFigures figures = new(bytes, header);
        foreach (PlyHeader.Element element in header.Elements)
        {
            if (element.Name == "tristrips" && element.Count > 0)
            {
                return figures.Refuse(MeshRefusalReason.NotSupported, "tristrips");
            }

            if (element.Fields.Count > 0 && Element(ref figures, element, soup) is { } wrong)
            {
                return wrong;
            }
        }

        return Corners(soup);
    }

    private static MeshRefusal? Element(ref PlyFigures figures, PlyHeader.Element element, MeshSoup soup)
    {
        if (element.Count > figures.Left)
        {
            return figures.Refuse(MeshRefusalReason.Truncated, element.Name, figures.Left, element.Count);
        }

        (bool isVertex, bool isFace) = (element.Name == "vertex", element.Name == "face");
        Span<double> place = stackalloc double[3];
        if (isVertex && !(Has(element, "x") && Has(element, "y") && Has(element, "z")))
        {
            return figures.Refuse(MeshRefusalReason.Malformed, "vertex");
        }

        for (long i = 0; i < element.Count; i++)
        {
            foreach (PlyHeader.Field field in element.Fields)
            {
                MeshRefusal? wrong;
                if (field.LengthType != PlyType.None)
                {
                    wrong = List(ref figures, field, isFace && field.Name is "vertex_indices" or "vertex_index" ? soup : null);
                }
                else
                {
                    wrong = figures.Next(field.Type, out double figure);
                    int axis = isVertex && field.Name.Length == 1 ? field.Name[0] - 'x' : -1;
                    if (wrong is null && axis is >= 0 and < 3)
                    {
                        place[axis] = figure;
                        wrong = double.IsFinite(figure) ? null : figures.Refuse(MeshRefusalReason.NotANumber, field.Name);
                    }
                }

                if (wrong is not null)
                {
                    return wrong;
                }
            }

            if (isVertex)
            {
                soup.AddPoint(place[0], place[1], place[2]);
            }
        }

        return null;
    }

    private static bool Has(PlyHeader.Element element, string name) =>
        element.Fields.Exists(field => field.Name == name && field.LengthType == PlyType.None);

    private static MeshRefusal? List(ref PlyFigures figures, PlyHeader.Field field, MeshSoup? faces)
    {
        if (figures.Next(field.LengthType, out double length) is { } wrong)
        {
            return wrong;
        }

        if (!(length >= 0 && length <= figures.Left) || Math.Floor(length) != length)
        {
            return figures.Refuse(length >= 0 ? MeshRefusalReason.Truncated : MeshRefusalReason.Malformed, field.Name, length, figures.Left);
        }

        (int first, int last) = (0, 0);
        for (int k = 0; k < length; k++)
        {
            if (figures.Next(field.Type, out double figure) is { } bad)
            {
                return bad;
            }

            if (faces is null)
            {
                continue;
            }

            if (!(figure >= 0 && figure < int.MaxValue) || Math.Floor(figure) != figure)
            {
                return figures.Refuse(MeshRefusalReason.NoSuchCorner, field.Name, double.IsFinite(figure) ? figure : null);
            }

            int corner = (int)figure;
            first = k == 0 ? corner : first;
            if (k >= 2)
            {
                if (faces.IsFull)
                {
                    return figures.Refuse(MeshRefusalReason.TooManyTriangles, limit: MeshReading.MaximumTriangles);
                }

                faces.AddTriangle(first, last, corner);
            }

            last = corner;
        }

        return null;
    }

    /// <summary>Faces may stand before the points, so corners are looked for at the end.</summary>
    private static MeshRefusal? Corners(MeshSoup soup)
    {
        foreach (MeshTriangle triangle in soup.Triangles.AsSpan(0, soup.Count))
        {
            int most = Math.Max(triangle.A, Math.Max(triangle.B, triangle.C));
            if (most >= soup.PointCount)
            {
                return new MeshRefusal(MeshRefusalReason.NoSuchCorner, "face", most, soup.PointCount);
            }
        }

        return null;
    }
}
