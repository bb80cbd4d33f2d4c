namespace Recipe.Engineering;

/// <summary>The point of a triangle that is nearest to another point.</summary>
/// <remarks>Source: the regions of corners, sides and inside, C. Ericson, Real-Time Collision Detection (2005), section 5.1.5; from memory.</remarks>
internal static class NearestPoint
{
    /// <summary>The point, and where it lies: 0 in the face, 3 + k on the edge from corner k, 6 + k at corner k.</summary>
    internal static (Point3 Foot, int Feature) OnTriangle(Point3 at, Point3 a, Point3 b, Point3 c)
    {
        (Point3 ab, Point3 ac) = (b - a, c - a);
        (double d1, double d2) = (Point3.Dot(ab, at - a), Point3.Dot(ac, at - a));
        if (d1 <= 0 && d2 <= 0)
        {
            return (a, 6);
        }

        (double d3, double d4) = (Point3.Dot(ab, at - b), Point3.Dot(ac, at - b));
        if (d3 >= 0 && d4 <= d3)
        {
            return (b, 7);
        }

        double onAb = (d1 * d4) - (d3 * d2);
        if (onAb <= 0 && d1 >= 0 && d3 <= 0)
        {
            return (a + (ab * (d1 / (d1 - d3))), 3);
        }

        (double d5, double d6) = (Point3.Dot(ab, at - c), Point3.Dot(ac, at - c));
        if (d6 >= 0 && d5 <= d6)
        {
            return (c, 8);
        }

        double onAc = (d5 * d2) - (d1 * d6);
        if (onAc <= 0 && d2 >= 0 && d6 <= 0)
        {
            return (a + (ac * (d2 / (d2 - d6))), 5);
        }

        double onBc = (d3 * d6) - (d5 * d4);
        if (onBc <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0)
        {
            return (b + ((c - b) * ((d4 - d3) / (d4 - d3 + (d5 - d6)))), 4);
        }

        double all = onAb + onAc + onBc;
        return all > 0 ? (a + (ab * (onAc / all)) + (ac * (onAb / all)), 0) : (a, 6);
    }
}
