namespace Recipe.Engineering;

/// <summary>
/// Turns triangles so that neighbours face one side. An open part faces the side that most of it faced; a closed one faces outwards,
/// but a hollow inside the largest body stays turned inwards as it was.
/// </summary>
internal static class MeshTurning
{
    /// <summary>Turns, and returns how many were turned.</summary>
    internal static int Turn(MeshSoup soup, MeshEdges edges, out int opposed)
    {
        MeshParts parts = MeshParts.Of(soup.Triangles.AsSpan(0, soup.Count), edges);
        (bool[] flip, opposed) = (parts.Flip, parts.OpposedEdges);
        int[] flipped = new int[parts.Count];
        int[] size = new int[parts.Count];
        double[] volume = new double[parts.Count];
        Point3 origin = soup.Points[soup.Triangles[0].A];
        for (int i = 0; i < flip.Length; i++)
        {
            int part = parts.PartOf[i];
            size[part]++;
            flipped[part] += flip[i] ? 1 : 0;
            if (parts.IsClosed[part])
            {
                (Point3 a, Point3 b, Point3 c) = Corners(soup, i, origin);
                volume[part] += Point3.Dot(a, Point3.Cross(b, c)) * (flip[i] ? -1 : 1);
            }
        }

        int body = Body(parts, volume);
        (Point3 Least, Point3 Most)[] boxes = body >= 0 && parts.Count > 1 ? Boxes(soup, parts) : [];
        bool[] turnAll = new bool[parts.Count];
        for (int part = 0; part < parts.Count; part++)
        {
            turnAll[part] = 2 * flipped[part] > size[part];
            if (parts.IsClosed[part])
            {
                bool isHollow = part != body && boxes.Length > 0 && Inside(boxes[part], boxes[body]) && (volume[part] < 0) == (2 * flipped[part] <= size[part]);
                turnAll[part] = isHollow ? turnAll[part] : volume[part] < 0;
            }
        }

        int turned = 0;
        for (int i = 0; i < flip.Length; i++)
        {
            if (flip[i] != turnAll[parts.PartOf[i]])
            {
                MeshTriangle triangle = soup.Triangles[i];
                soup.Triangles[i] = new MeshTriangle(triangle.A, triangle.C, triangle.B);
                turned++;
            }
        }

        return turned;
    }

    private static (Point3 A, Point3 B, Point3 C) Corners(MeshSoup soup, int triangle, Point3 origin)
    {
        (int a, int b, int c) = soup.Triangles[triangle];
        return (soup.Points[a] - origin, soup.Points[b] - origin, soup.Points[c] - origin);
    }

    /// <summary>The closed part of the greatest volume.</summary>
    private static int Body(MeshParts parts, double[] volume)
    {
        int body = -1;
        for (int part = 0; part < parts.Count; part++)
        {
            if (parts.IsClosed[part] && (body < 0 || Math.Abs(volume[part]) > Math.Abs(volume[body])))
            {
                body = part;
            }
        }

        return body;
    }

    private static (Point3 Least, Point3 Most)[] Boxes(MeshSoup soup, MeshParts parts)
    {
        var boxes = new (Point3 Least, Point3 Most)[parts.Count];
        bool[] begun = new bool[parts.Count];
        Span<Point3> points = stackalloc Point3[5];
        for (int i = 0; i < soup.Count; i++)
        {
            int part = parts.PartOf[i];
            (points[0], points[1], points[2]) = Corners(soup, i, default);
            (points[3], points[4]) = begun[part] ? boxes[part] : (points[0], points[0]);
            boxes[part] = MeshBox.Of(points);
            begun[part] = true;
        }

        return boxes;
    }

    private static bool Inside((Point3 Least, Point3 Most) small, (Point3 Least, Point3 Most) large) =>
        small.Least.X > large.Least.X && small.Least.Y > large.Least.Y && small.Least.Z > large.Least.Z
        && small.Most.X < large.Most.X && small.Most.Y < large.Most.Y && small.Most.Z < large.Most.Z;
}
