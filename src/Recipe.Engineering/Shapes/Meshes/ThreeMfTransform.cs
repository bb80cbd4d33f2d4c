using System.Globalization;

namespace Recipe.Engineering;

/// <summary>An affine map of 3MF: a row of coordinates times four rows of three figures.</summary>
/// <remarks>Source: 3MF Core Specification 1.x, section 3.3 "3D Matrices".</remarks>
/// <param name="X">What becomes of a step along X.</param>
/// <param name="Y">What becomes of a step along Y.</param>
/// <param name="Z">What becomes of a step along Z.</param>
/// <param name="Origin">What becomes of the origin.</param>
internal readonly record struct ThreeMfTransform(Point3 X, Point3 Y, Point3 Z, Point3 Origin)
{
    /// <summary>Whether it turns left to right, so that the corners of a triangle change their order.</summary>
    internal bool Mirrors => Point3.Dot(Point3.Cross(X, Y), Z) < 0;

    internal static bool TryRead(string? text, out ThreeMfTransform transform)
    {
        transform = new ThreeMfTransform(new Point3(1, 0, 0), new Point3(0, 1, 0), new Point3(0, 0, 1), default);
        if (text is null)
        {
            return true;
        }

        string[] words = text.Length > 1000 ? [] : text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        Span<double> m = stackalloc double[12];
        if (words.Length != m.Length)
        {
            return false;
        }

        for (int i = 0; i < m.Length; i++)
        {
            if (!double.TryParse(words[i], NumberStyles.Float, CultureInfo.InvariantCulture, out m[i]) || !double.IsFinite(m[i]))
            {
                return false;
            }
        }

        transform = new ThreeMfTransform(new(m[0], m[1], m[2]), new(m[3], m[4], m[5]), new(m[6], m[7], m[8]), new(m[9], m[10], m[11]));
        return true;
    }

    internal Point3 Apply(Point3 point) => Step(point) + Origin;

    /// <summary>This map, and another one after it.</summary>
    internal ThreeMfTransform Then(ThreeMfTransform next) => new(next.Step(X), next.Step(Y), next.Step(Z), next.Apply(Origin));

    private Point3 Step(Point3 step) => (X * step.X) + (Y * step.Y) + (Z * step.Z);
}
