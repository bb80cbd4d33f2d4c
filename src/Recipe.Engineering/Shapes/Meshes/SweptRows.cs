using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>The places of a section along a path.</summary>
internal static class SweptRows
{
    internal static Point3[][] Of(ImmutableArray<Point2> section, ImmutableArray<Point3> path)
    {
        Point3 along = Step(path, 0);
        Point3 up = new(0, 0, 1);
        if (Math.Abs(along.Z) > 0.999)
        {
            up = new Point3(-1, 0, 0);
        }

        Point3 right = Point3.Cross(along, up).Unit();
        up = Point3.Cross(right, along);
        var rows = new Point3[path.Length][];
        for (int i = 0; i < path.Length; i++)
        {
            Point3 next = i == 0 || i == path.Length - 1 ? along : Step(path, i);
            Point3 mitre = along + next;
            double lean = Point3.Dot(along, mitre);
            if (lean < 1e-6)
            {
                throw new ArgumentException("The path turns back on itself.", nameof(path));
            }

            // Along the straight before, each point of the section goes on until it meets the plane half-way round the bend.
            (Point3 x, Point3 y, Point3 at) = (right, up, path[i]);
            rows[i] =
            [
                .. section.Select(point =>
                {
                    Point3 off = (x * point.X) + (y * point.Y);
                    return at + off - (along * (Point3.Dot(off, mitre) / lean));
                }),
            ];
            if (i > 0)
            {
                if (!IsForward(rows[i - 1], rows[i], along))
                {
                    throw new ArgumentException("The section is wider than a bend of the path.", nameof(section));
                }
            }

            (right, up) = (Turned(right, along, next), Turned(up, along, next));
            along = next;
        }

        return rows;
    }

    private static Point3 Step(ImmutableArray<Point3> path, int i)
    {
        Point3 step = path[i + 1] - path[i];
        return step.IsFinite && step.Norm > 0 ? step.Unit() : throw new ArgumentException("A point repeats the one before or is not a number.", nameof(path));
    }

    /// <summary>The turn that takes one direction into another and nothing across both along.</summary>
    private static Point3 Turned(Point3 step, Point3 from, Point3 to)
    {
        // Two mirrorings: across the plane half-way, and along the new direction.
        Point3 half = (from + to).Unit();
        Point3 mirrored = (half * (2 * Point3.Dot(step, half))) - step;
        return (to * (2 * Point3.Dot(mirrored, to))) - mirrored;
    }

    private static bool IsForward(Point3[] before, Point3[] here, Point3 along)
    {
        for (int j = 0; j < here.Length; j++)
        {
            if (!(Point3.Dot(here[j] - before[j], along) > 0))
            {
                return false;
            }
        }

        return true;
    }
}
