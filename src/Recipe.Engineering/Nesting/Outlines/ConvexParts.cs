using NetTopologySuite.Geometries;
using NetTopologySuite.Simplify;
using NetTopologySuite.Triangulate.Polygon;

namespace Recipe.Engineering;

/// <summary>An outline as convex parts that cover it.</summary>
internal static class ConvexParts
{
    // Of a rounded outline with more points than this a cover with fewer is taken, outside it by no more than the tolerance at the
    // end: less than scissors follow a line.
    private const int ManyPoints = 28;
    private const double FirstTolerance = 0.0001;
    private const double LastTolerance = 0.0004;

    private const double Straight = 1e-12;

    /// <summary>The parts, each counter-clockwise.</summary>
    /// <exception cref="ArgumentException">The outline crosses itself.</exception>
    internal static Point2[][] Of(Outline outline, string parameter)
    {
        Polygon polygon = Read(outline);
        if (!polygon.IsValid)
        {
            throw new ArgumentException("An outline crosses or touches itself.", parameter);
        }

        if (polygon.NumPoints > ManyPoints)
        {
            polygon = Cover(polygon);
        }

        List<Point2> corners = Corners(polygon);
        if (IsConvex(corners))
        {
            return [[.. corners]];
        }

        corners.Add(corners[0]);
        var factory = polygon.Factory;
        Geometry triangles = ConstrainedDelaunayTriangulator.Triangulate(
            factory.CreatePolygon([.. corners.Select(at => new Coordinate(at.X, at.Y))]));
        var parts = new List<List<Point2>>();
        for (int i = 0; i < triangles.NumGeometries; i++)
        {
            List<Point2> part = [.. Counter(triangles.GetGeometryN(i).Coordinates)];
            if (Twice(part) > Straight)
            {
                parts.Add(part);
            }
        }

        Merge(parts);
        return [.. parts.Select(part => part.ToArray())];
    }

    private static Polygon Read(Outline outline) =>
        new GeometryFactory().CreatePolygon([.. outline.Points.Append(outline.Points[0]).Select(at => new Coordinate(at.X, at.Y))]);

    // A line that is set off by the tolerance and then straightened by no more than it still lies outside.
    private static Polygon Cover(Polygon polygon)
    {
        Polygon best = polygon;
        for (double tolerance = FirstTolerance; best.NumPoints > ManyPoints && tolerance <= LastTolerance; tolerance *= 2)
        {
            Geometry off = polygon.Buffer(tolerance, new NetTopologySuite.Operation.Buffer.BufferParameters(
                4, NetTopologySuite.Operation.Buffer.EndCapStyle.Flat, NetTopologySuite.Operation.Buffer.JoinStyle.Mitre, 3));
            if (off is Polygon { NumInteriorRings: 0 } && TopologyPreservingSimplifier.Simplify(off, tolerance) is Polygon simple
                && simple.IsValid && simple.NumPoints < best.NumPoints && simple.Covers(polygon))
            {
                best = simple;
            }
        }

        return best;
    }

    private static IEnumerable<Point2> Counter(Coordinate[] ring)
    {
        Point2[] points = [.. ring.Take(ring.Length - 1).Select(at => new Point2(at.X, at.Y))];
        return Twice(points) > 0 ? points : points.Reverse();
    }

    private static double Twice(IReadOnlyList<Point2> points)
    {
        double twice = 0;
        for (int i = 0; i < points.Count; i++)
        {
            twice += Point2.Cross(points[i] - points[0], points[(i + 1) % points.Count] - points[0]);
        }

        return twice;
    }

    // Points on a straight line between their neighbours are left out.
    private static List<Point2> Corners(Polygon polygon)
    {
        List<Point2> points = [.. Counter(polygon.ExteriorRing.Coordinates)];
        for (int i = points.Count - 1; i >= 0 && points.Count > 3; i--)
        {
            Point2 before = points[(i + points.Count - 1) % points.Count], behind = points[(i + 1) % points.Count];
            if (Math.Abs(Point2.Cross(points[i] - before, behind - points[i])) < Straight * (behind - before).Norm)
            {
                points.RemoveAt(i);
            }
        }

        return points;
    }

    private static bool IsConvex(List<Point2> points)
    {
        for (int i = 0; i < points.Count; i++)
        {
            Point2 at = points[i], next = points[(i + 1) % points.Count], after = points[(i + 2) % points.Count];
            if (Point2.Cross(next - at, after - next) < -Straight)
            {
                return false;
            }
        }

        return true;
    }

    // Hertel, Mehlhorn, "Fast triangulation of simple polygons", FCT 1983: diagonals that are not needed go; at most four times as many
    // parts are left as there must be.
    private static void Merge(List<List<Point2>> parts)
    {
        for (int i = 0; i < parts.Count; i++)
        {
            for (int j = i + 1; j < parts.Count; j++)
            {
                if (Joined(parts[i], parts[j]) is { } joined)
                {
                    parts[i] = joined;
                    parts.RemoveAt(j);
                    j = i;
                }
            }
        }
    }

    private static List<Point2>? Joined(List<Point2> a, List<Point2> b)
    {
        for (int i = 0; i < a.Count; i++)
        {
            Point2 from = a[i], to = a[(i + 1) % a.Count];
            int k = b.IndexOf(to);
            if (k < 0 || b[(k + 1) % b.Count] != from)
            {
                continue;
            }

            // Round a from the end of the common edge to its start, then round b.
            var joined = new List<Point2>();
            for (int s = 1; s <= a.Count; s++)
            {
                joined.Add(a[(i + s) % a.Count]);
            }

            for (int s = 2; s < b.Count; s++)
            {
                joined.Add(b[(k + s) % b.Count]);
            }

            return IsConvex(joined) ? joined : null;
        }

        return null;
    }
}
