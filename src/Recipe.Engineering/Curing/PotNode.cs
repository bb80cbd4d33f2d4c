namespace Recipe.Engineering;

/// <summary>State of a pot at the end of a step: seconds, degree of cure, kelvin and how fast both change.</summary>
internal readonly record struct PotNode(double Time, double Degree, double Kelvin, double DegreeRate, double KelvinRate)
{
    /// <summary>Degree between this node and the next, by Hermite's cubic.</summary>
    internal double DegreeAt(in PotNode next, double time) =>
        Math.Clamp(Cubic(next.Time - Time, time - Time, Degree, next.Degree, DegreeRate, next.DegreeRate), Degree, next.Degree);

    /// <summary>Kelvin between this node and the next.</summary>
    internal double KelvinAt(in PotNode next, double time) =>
        Cubic(next.Time - Time, time - Time, Kelvin, next.Kelvin, KelvinRate, next.KelvinRate);

    private static double Cubic(double length, double into, double from, double to, double slopeFrom, double slopeTo)
    {
        double x = into / length;
        double y = 1 - x;
        return (y * y * (((1 + (2 * x)) * from) + (into * slopeFrom)))
            + (x * x * (((1 + (2 * y)) * to) - ((length - into) * slopeTo)));
    }
}
