using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Turns a formula of the viscosity into points that lie closer where its logarithm bends.</summary>
internal static class ViscositySampling
{
    private const int Panels = 64;
    private const int Deepest = 24;

    // How far the logarithm may stray from the straight line between two points. The middle, once
    // computed, becomes a point too, so integrals of 1/mu err by a fraction of this.
    private const double Tolerance = 1e-7;

    internal static List<(Duration Time, DynamicViscosity Viscosity)> Sample(Func<Duration, DynamicViscosity> viscosity, double end)
    {
        Point At(double t) => new(t, FlowGuard.Viscosity(viscosity(Duration.FromSeconds(t)), nameof(viscosity)));
        List<Point> points = [At(0)];
        for (int panel = 1; panel <= Panels; panel++)
        {
            Point next = At(end * panel / Panels);
            Split(points, At, points[^1], next, 0);
            points.Add(next);
        }

        return [.. points.Select(p => (Duration.FromSeconds(p.Time), DynamicViscosity.FromPascalSeconds(p.Viscosity)))];
    }

    private static void Split(List<Point> points, Func<double, Point> at, Point from, Point to, int depth)
    {
        Point middle = at(from.Time + ((to.Time - from.Time) / 2));
        if (middle.Time <= from.Time || middle.Time >= to.Time)
        {
            return;
        }

        if (depth == Deepest || Math.Abs(middle.Log - ((from.Log + to.Log) / 2)) <= Tolerance)
        {
            points.Add(middle);
            return;
        }

        Split(points, at, from, middle, depth + 1);
        points.Add(middle);
        Split(points, at, middle, to, depth + 1);
    }

    private readonly record struct Point(double Time, double Viscosity)
    {
        public double Log { get; } = Math.Log(Viscosity);
    }
}
