namespace Recipe.Engineering;

/// <summary>
/// Triangles whose three corners lie on one line. Dropping such a one would leave a slit, so the edge opposite its middle corner is
/// swung over to the triangle beyond; only at an open edge is it dropped.
/// </summary>
internal static class MeshSlivers
{
    /// <summary>Height over longest side below which a triangle has no area: well above the rounding of doubles, well below that of files.</summary>
    private const double Flatness = 1e-12;

    private const int MaximumPasses = 8;

    /// <summary>Whether anything changed.</summary>
    internal static bool Remove(MeshSoup soup, MeshGroups groups, MeshEdges edges, out int dropped)
    {
        dropped = 0;
        bool changed = false;
        for (int pass = 0; pass <= MaximumPasses; pass++)
        {
            (bool[] drop, bool any, int swung) = Pass(soup, edges, pass < MaximumPasses);
            if (!any && swung == 0)
            {
                return changed;
            }

            changed = true;
            dropped += swung + (any ? groups.Keep(i => !drop[i]) : 0);
            edges = MeshEdges.Of(soup.Triangles.AsSpan(0, soup.Count), soup.PointCount);
        }

        return changed;
    }

    private static (bool[] Drop, bool Any, int Swung) Pass(MeshSoup soup, MeshEdges edges, bool maySwing)
    {
        bool[] drop = [];
        bool[] touched = [];
        (bool any, int swung) = (false, 0);
        for (int i = 0; i < soup.Count; i++)
        {
            int side = LongestOfFlat(soup, soup.Triangles[i]);
            if (side < 0)
            {
                continue;
            }

            if (drop.Length == 0)
            {
                (drop, touched) = (new bool[soup.Count], new bool[soup.Count]);
            }

            int across = edges.Across[(3 * i) + side];
            if (across < 0 || !maySwing)
            {
                any = drop[i] = true;
                continue;
            }

            int other = across / 3;
            if (touched[i] || touched[other] || drop[other])
            {
                continue;
            }

            // a-b is the long side with m on it; beyond lies d. The two triangles become b-m-d and m-a-d, turned as the one beyond was.
            (int a, int b, int m) = Turned(soup.Triangles[i], side);
            (int p, int q, int d) = Turned(soup.Triangles[other], across % 3);
            (a, b) = (p, q);
            if (d == m)
            {
                any = drop[i] = true;
                continue;
            }

            soup.Triangles[i] = new MeshTriangle(a, m, d);
            soup.Triangles[other] = new MeshTriangle(m, b, d);
            (touched[i], touched[other]) = (true, true);
            swung++;
        }

        return (drop, any, swung);
    }

    /// <summary>The corners from the start of a side on.</summary>
    private static (int First, int Second, int Third) Turned(MeshTriangle triangle, int side) => side switch
    {
        0 => (triangle.A, triangle.B, triangle.C),
        1 => (triangle.B, triangle.C, triangle.A),
        _ => (triangle.C, triangle.A, triangle.B),
    };

    /// <summary>The longest side of a triangle without area; -1 when it has one.</summary>
    private static int LongestOfFlat(MeshSoup soup, MeshTriangle triangle)
    {
        (Point3 a, Point3 b, Point3 c) = (soup.Points[triangle.A], soup.Points[triangle.B], soup.Points[triangle.C]);
        (Point3 ab, Point3 bc, Point3 ca) = (b - a, c - b, a - c);
        (double first, double second, double third) = (Point3.Dot(ab, ab), Point3.Dot(bc, bc), Point3.Dot(ca, ca));
        double longest = Math.Max(first, Math.Max(second, third));
        Point3 normal = Point3.Cross(ab, ca);
        return Point3.Dot(normal, normal) > Flatness * Flatness * longest * longest ? -1 : longest == first ? 0 : longest == second ? 1 : 2;
    }
}
