using System.Collections.Immutable;
using NetTopologySuite.Geometries;

namespace Recipe.Engineering;

/// <summary>Outlines as the polygons of the library that offsets and cuts them, and back.</summary>
internal static class OutlineShapes
{
    private static readonly GeometryFactory Factory = new();

    internal static Polygon Shape(Outline outline) =>
        Factory.CreatePolygon([.. outline.Points.Append(outline.Points[0]).Select(at => new Coordinate(at.X, at.Y))]);

    /// <summary>The rings of the polygons' outsides, the largest first.</summary>
    internal static ImmutableArray<Outline> Outsides(Geometry shapes)
    {
        List<Outline> found = [];
        for (int i = 0; i < shapes.NumGeometries; i++)
        {
            if (shapes.GetGeometryN(i) is Polygon polygon && polygon.Area > 0)
            {
                found.Add(new Outline([.. polygon.ExteriorRing.Coordinates.SkipLast(1).Select(at => new Point2(at.X, at.Y))]));
            }
        }

        return [.. found.OrderByDescending(outline => outline.SquareMetres).ThenBy(outline => outline.Least.X).ThenBy(outline => outline.Least.Y)];
    }

    /// <summary>The points as an outline; null when they cross themselves or have no area.</summary>
    internal static Outline? Ring(List<Point2> points)
    {
        double twice = 0;
        for (int i = 0; i < points.Count; i++)
        {
            twice += Point2.Cross(points[i], points[(i + 1) % points.Count]);
        }

        if (points.Count < 3 || twice == 0)
        {
            return null;
        }

        Outline outline = new([.. points]);
        return Shape(outline).IsValid ? outline : null;
    }

    internal static bool HoldsAll(Outline outer, ImmutableArray<Outline> holes)
    {
        Polygon shape = Shape(outer);
        return holes.All(hole => shape.Covers(Shape(hole)));
    }

    /// <summary>Without the points that lie on a straight line between those beside them, and those that stand twice.</summary>
    internal static List<Point2> WithoutStraights(List<Point2> points, double tolerance)
    {
        List<Point2> kept = new(points.Count);
        for (int i = 0; i < points.Count; i++)
        {
            Point2 before = kept.Count > 0 ? kept[^1] : points[^1];
            (Point2 at, Point2 after) = (points[i], points[(i + 1) % points.Count]);
            Point2 span = after - before;
            bool straight = (at - before).Norm <= tolerance
                || ((after - at).Norm > tolerance && Math.Abs(Point2.Cross(at - before, span)) <= tolerance * span.Norm && Point2.Dot(at - before, after - at) > 0);
            if (!straight)
            {
                kept.Add(at);
            }
        }

        return kept.Count >= 3 ? kept : points;
    }

    internal static Point2 NearestOnRim(Outline outline, Point2 at)
    {
        (double least, Point2 best) = (double.PositiveInfinity, outline.Points[0]);
        for (int i = 0; i < outline.Points.Length; i++)
        {
            Point2 from = outline.Points[i];
            Point2 way = outline.Points[(i + 1) % outline.Points.Length] - from;
            double square = Point2.Dot(way, way);
            Point2 near = from + (way * (square > 0 ? Math.Clamp(Point2.Dot(at - from, way) / square, 0, 1) : 0));
            if ((near - at).Norm < least)
            {
                (least, best) = ((near - at).Norm, near);
            }
        }

        return best;
    }

    /// <summary>The direction of the long side of the least rectangle round points, and its least corner measured along and across it.</summary>
    internal static (Point2 Along, Point2 Least) LeastRectangle(IReadOnlyList<Point2> points)
    {
        Coordinate[] hull = Factory.CreateMultiPointFromCoords([.. points.Select(at => new Coordinate(at.X, at.Y))]).ConvexHull().Coordinates;
        (double best, Point2 way, Point2 corner) = (double.PositiveInfinity, new Point2(1, 0), default);
        for (int i = 0; i + 1 < hull.Length; i++)
        {
            Point2 along = new(hull[i + 1].X - hull[i].X, hull[i + 1].Y - hull[i].Y);
            along *= 1 / along.Norm;
            (double left, double right, double near, double far) = (double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
            foreach (Coordinate at in hull)
            {
                Point2 point = new(at.X, at.Y);
                (double x, double y) = (Point2.Dot(point, along), Point2.Cross(along, point));
                (left, right, near, far) = (Math.Min(left, x), Math.Max(right, x), Math.Min(near, y), Math.Max(far, y));
            }

            if ((right - left) * (far - near) < best * (1 - 1e-9))
            {
                best = (right - left) * (far - near);
                (way, corner) = right - left >= far - near ? (along, new Point2(left, near)) : (new Point2(-along.Y, along.X), new Point2(near, -right));
            }
        }

        return (way, corner);
    }

    /// <summary>Whether a point lies inside, by the number of times that a line from it crosses the rim.</summary>
    internal static bool Contains(Outline outline, Point2 at)
    {
        bool inside = false;
        for (int i = 0; i < outline.Points.Length; i++)
        {
            (Point2 a, Point2 b) = (outline.Points[i], outline.Points[(i + 1) % outline.Points.Length]);
            if ((a.Y > at.Y) != (b.Y > at.Y) && at.X < a.X + ((b.X - a.X) * (at.Y - a.Y) / (b.Y - a.Y)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Distance from a point inside to the rim in a direction of length 1, m.</summary>
    internal static double ToRim(Outline outline, Point2 from, Point2 way)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < outline.Points.Length; i++)
        {
            Point2 a = outline.Points[i] - from;
            Point2 b = outline.Points[(i + 1) % outline.Points.Length] - from;
            (double left, double right) = (Point2.Cross(way, a), Point2.Cross(way, b));
            if (left != right && left * right <= 0)
            {
                double ahead = Point2.Dot(way, a) + (Point2.Dot(way, b - a) * left / (left - right));
                least = ahead >= 0 ? Math.Min(least, ahead) : least;
            }
        }

        return double.IsFinite(least) ? least : 0;
    }
}
