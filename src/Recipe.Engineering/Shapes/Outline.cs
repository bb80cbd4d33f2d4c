using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>A closed line round a flat piece, counter-clockwise, without crossing itself; the last point is joined to the first.</summary>
public sealed class Outline
{
    /// <summary>Takes the points; a clockwise line is turned round.</summary>
    /// <param name="points">At least three points, m; the first is not repeated at the end.</param>
    /// <exception cref="ArgumentException">There are fewer than three points, a coordinate is not a number, or no area lies inside.</exception>
    public Outline(ImmutableArray<Point2> points)
    {
        if (points.IsDefault || points.Length < 3)
        {
            throw new ArgumentException("An outline has at least three points.", nameof(points));
        }

        double twice = 0;
        (double left, double right, double near, double far) = (double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0; i < points.Length; i++)
        {
            Point2 at = points[i];
            if (!at.IsFinite)
            {
                throw new ArgumentException("A coordinate is not a number.", nameof(points));
            }

            twice += Point2.Cross(at, points[(i + 1) % points.Length]);
            (left, right, near, far) = (Math.Min(left, at.X), Math.Max(right, at.X), Math.Min(near, at.Y), Math.Max(far, at.Y));
        }

        if (twice == 0)
        {
            throw new ArgumentException("An outline has an area inside.", nameof(points));
        }

        Points = twice > 0 ? points : [.. points.Reverse()];
        SquareMetres = Math.Abs(twice) / 2;
        Least = new Point2(left, near);
        Most = new Point2(right, far);
    }

    /// <summary>The points, m.</summary>
    public ImmutableArray<Point2> Points { get; }

    /// <summary>Area inside, m2.</summary>
    /// <remarks>Source: the shoelace formula, exact.</remarks>
    public double SquareMetres { get; }

    /// <summary>Smallest coordinates of its points, m.</summary>
    public Point2 Least { get; }

    /// <summary>Greatest coordinates of its points, m.</summary>
    public Point2 Most { get; }

    /// <summary>Length along X, m.</summary>
    public double Along => Most.X - Least.X;

    /// <summary>Width along Y, m.</summary>
    public double Across => Most.Y - Least.Y;

    /// <summary>The outline moved.</summary>
    /// <param name="by">How far, m.</param>
    public Outline Moved(Point2 by) => new([.. Points.Select(at => at + by)]);

    /// <summary>The outline turned counter-clockwise round the origin; whole quarter turns are exact.</summary>
    /// <param name="degrees">Angle, degrees.</param>
    public Outline Turned(double degrees)
    {
        (double sine, double cosine) = (degrees % 360) switch
        {
            0 => (0.0, 1.0),
            90 or -270 => (1.0, 0.0),
            180 or -180 => (0.0, -1.0),
            270 or -90 => (-1.0, 0.0),
            double angle => Math.SinCos(angle * Math.PI / 180),
        };
        return new([.. Points.Select(at => new Point2((at.X * cosine) - (at.Y * sine), (at.X * sine) + (at.Y * cosine)))]);
    }

    /// <summary>Its mirror image, left for right across the X axis.</summary>
    public Outline Mirrored() => new([.. Points.Select(at => new Point2(at.X, -at.Y))]);
}
