namespace Recipe.Engineering;

/// <summary>Finds the point of a surface at one step from two crossings: on the circle that has that distance from both.</summary>
internal sealed class NodeSolver(TriangleTree tree, double step)
{
    private const double Widest = 150 * Math.PI / 180;
    private const double Look = 10 * Math.PI / 180;

    /// <summary>The point on the far side of the crossing that both neighbours come from.</summary>
    /// <param name="a">One neighbour, m.</param>
    /// <param name="b">The other neighbour, m.</param>
    /// <param name="from">The crossing that both come from, m.</param>
    /// <param name="hint">A triangle that is close.</param>
    /// <param name="place">The point, m.</param>
    /// <param name="at">Where it lies on the surface.</param>
    /// <returns>Why there is none; null when there is one.</returns>
    internal DrapeGapReason? Find(Point3 a, Point3 b, Point3 from, int hint, out Point3 place, out SurfacePlace at)
    {
        (place, at) = (default, default);
        Point3 middle = (a + b) * 0.5;
        Point3 apart = b - a;
        double square = (step * step) - (Point3.Dot(apart, apart) / 4);
        Point3 ahead = middle - from;
        Point3 axis = apart.Unit();
        ahead = (ahead - (axis * Point3.Dot(ahead, axis))).Unit();
        if (square <= 1e-12 * step * step || apart.Norm <= 1e-6 * step || ahead == default)
        {
            return DrapeGapReason.ThreadsClosed;
        }

        Circle circle = new(middle, ahead, Point3.Cross(axis, ahead), Math.Sqrt(square));
        if (Newton(circle, hint, out place, out at) || Scan(circle, hint, out place, out at))
        {
            return null;
        }

        return DrapeGapReason.NoPoint;
    }

    // Meets the circle with the plane of the nearest triangle, again and again: exact once the triangle is the right one.
    private bool Newton(in Circle circle, int hint, out Point3 place, out SurfacePlace at)
    {
        double turn = 0;
        place = circle.At(0);
        at = tree.Nearest(place, hint);
        for (int round = 0; round < 12; round++)
        {
            if (Math.Abs(at.Height) <= 1e-10 * step)
            {
                return true;
            }

            double along = circle.Radius * Point3.Dot(at.Normal, circle.Ahead);
            double up = circle.Radius * Point3.Dot(at.Normal, circle.Up);
            double level = Point3.Dot(at.Normal, at.Foot - circle.Middle);
            double reach = Math.Sqrt((along * along) + (up * up));
            if (Math.Abs(level) > reach)
            {
                return false;
            }

            double centre = Math.Atan2(up, along);
            double half = Math.Acos(level / reach);
            (double one, double two) = (Math.IEEERemainder(centre + half, 2 * Math.PI), Math.IEEERemainder(centre - half, 2 * Math.PI));
            turn = Math.Abs(one - turn) <= Math.Abs(two - turn) ? one : two;
            if (Math.Abs(turn) > Widest)
            {
                return false;
            }

            place = circle.At(turn);
            at = tree.Nearest(place, at.Triangle);
        }

        return false;
    }

    // Looks both ways from straight on for the nearest change of side, and halves it.
    private bool Scan(in Circle circle, int hint, out Point3 place, out SurfacePlace at)
    {
        place = circle.At(0);
        at = tree.Nearest(place, hint);
        double start = at.Height;
        (double left, double right) = (start, start);
        for (int k = 1; k * Look <= Widest; k++)
        {
            double next = tree.Nearest(circle.At(k * Look), hint).Height;
            if (left * next <= 0 && Halve(circle, (k - 1) * Look, k * Look, hint, out place, out at))
            {
                return true;
            }

            left = next;
            next = tree.Nearest(circle.At(-k * Look), hint).Height;
            if (right * next <= 0 && Halve(circle, -(k - 1) * Look, -k * Look, hint, out place, out at))
            {
                return true;
            }

            right = next;
        }

        return false;
    }

    private bool Halve(in Circle circle, double from, double to, int hint, out Point3 place, out SurfacePlace at)
    {
        double side = tree.Nearest(circle.At(from), hint).Height;
        place = circle.At(to);
        at = tree.Nearest(place, hint);
        for (int round = 0; round < 50; round++)
        {
            double middle = (from + to) / 2;
            place = circle.At(middle);
            at = tree.Nearest(place, at.Triangle);
            if (Math.Abs(at.Height) <= 1e-10 * step)
            {
                return true;
            }

            (from, to) = (at.Height > 0) == (side > 0) ? (middle, to) : (from, middle);
        }

        // Where the side changes in a leap no surface lies between.
        return Math.Abs(at.Height) <= 1e-6 * step;
    }

    private readonly record struct Circle(Point3 Middle, Point3 Ahead, Point3 Up, double Radius)
    {
        internal Point3 At(double turn)
        {
            (double sine, double cosine) = Math.SinCos(turn);
            return Middle + (Ahead * (Radius * cosine)) + (Up * (Radius * sine));
        }
    }
}
