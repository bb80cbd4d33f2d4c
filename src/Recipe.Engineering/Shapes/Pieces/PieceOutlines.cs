using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Simplify;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What is done to the outline of a piece before it is cut. Outlines lie with the warp along X.</summary>
public static class PieceOutlines
{
    private const int QuarterParts = 16;

    /// <summary>A rectangle with a square cut out of each corner, its middle at the origin: an open box laid flat.</summary>
    /// <param name="along">Its whole length along X, more than nothing.</param>
    /// <param name="across">Its whole width along Y, more than nothing.</param>
    /// <param name="corner">Side of the squares, at least nothing and less than half of either.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static Outline Cross(Length along, Length across, Length corner)
    {
        double x = Guard.Positive(along.Meters, "m", nameof(along)) / 2;
        double y = Guard.Positive(across.Meters, "m", nameof(across)) / 2;
        double square = Guard.Between(corner.Meters, 0, Math.Min(x, y), "m", nameof(corner));
        (double a, double b) = (x - square, y - square);
        return square == 0 || a <= 0 || b <= 0
            ? Patch(along, across, Length.Zero)
            : new Outline([new(-a, -y), new(a, -y), new(a, -b), new(x, -b), new(x, b), new(a, b), new(a, y), new(-a, y), new(-a, b), new(-x, b), new(-x, -b), new(-a, -b)]);
    }

    /// <summary>A rectangular patch, its middle at the origin.</summary>
    /// <param name="along">Length along the warp, above 0.</param>
    /// <param name="across">Width across it, above 0.</param>
    /// <param name="cornerRadius">Radius of its corners, from 0 to half the shorter side; drawn with 64 sides to the circle.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static Outline Patch(Length along, Length across, Length cornerRadius)
    {
        double x = Guard.Positive(along.Meters, "m", nameof(along)) / 2;
        double y = Guard.Positive(across.Meters, "m", nameof(across)) / 2;
        double radius = Guard.Between(cornerRadius.Meters, 0, Math.Min(x, y), "m", nameof(cornerRadius));
        if (radius == 0)
        {
            return new Outline([new(-x, -y), new(x, -y), new(x, y), new(-x, y)]);
        }

        List<Point2> points = [];
        for (int corner = 0; corner < 4; corner++)
        {
            Point2 centre = new((corner is 0 or 3 ? 1 : -1) * (x - radius), (corner < 2 ? 1 : -1) * (y - radius));
            for (int k = 0; k <= QuarterParts; k++)
            {
                (double sine, double cosine) = Math.SinCos(Math.PI / 2 * (corner + (k / (double)QuarterParts)));
                points.Add(centre + new Point2(radius * cosine, radius * sine));
            }
        }

        return new Outline([.. OutlineShapes.WithoutStraights(points, 1e-12)]);
    }

    /// <summary>The outline with an allowance outside, to be trimmed off after cure.</summary>
    /// <param name="outline">The net outline.</param>
    /// <param name="trim">Width of the allowance, 0 or more.</param>
    /// <param name="roundCorners">Round corners, otherwise mitred ones, cut off where they would reach farther than five widths.</param>
    /// <returns>The outline with allowance; a bay narrower than twice the allowance closes, and a hole that would be left in it is filled.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The allowance is negative or not a number.</exception>
    public static Outline WithTrim(Outline outline, Length trim, bool roundCorners = false)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double width = Guard.NotNegative(trim.Meters, "m", nameof(trim));
        return width == 0 ? outline : OutlineShapes.Outsides(Offset(outline, width, roundCorners))[0];
    }

    /// <summary>The outline stepped in, as each ply of a ply drop-off is.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="inside">Distance inwards, 0 or more.</param>
    /// <returns>What is left, the largest first: several pieces where a waist parts, none where nothing is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or not a number.</exception>
    public static ImmutableArray<Outline> SteppedIn(Outline outline, Length inside)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double width = Guard.NotNegative(inside.Meters, "m", nameof(inside));
        return width == 0 ? [outline] : OutlineShapes.Outsides(Offset(outline, -width, roundCorners: false));
    }

    /// <summary>The outline with a wedge taken out.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="mouth">Where the dart opens, at or near the rim, m.</param>
    /// <param name="tip">Where it ends, inside, m.</param>
    /// <param name="opening">Width of the wedge at the mouth, above 0.</param>
    /// <returns>The largest piece that is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The opening is not above 0.</exception>
    /// <exception cref="ArgumentException">The dart has no length, or nothing is left of the piece.</exception>
    public static Outline WithDart(Outline outline, Point2 mouth, Point2 tip, Length opening)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double width = Guard.Positive(opening.Meters, "m", nameof(opening));
        Point2 way = mouth - tip;
        if (!way.IsFinite || way.Norm == 0)
        {
            throw new ArgumentException("A dart has a length.", nameof(tip));
        }

        // The sides run on past the rim, so that a curved rim leaves no slivers between them.
        double reach = 1 + (((outline.Along + outline.Across) / way.Norm) * 0.1);
        Point2 side = new Point2(-way.Y, way.X) * (width / 2 / way.Norm);
        Outline wedge = new([tip, tip + ((way - side) * reach), tip + ((way + side) * reach)]);
        ImmutableArray<Outline> left = OutlineShapes.Outsides(OutlineShapes.Shape(outline).Difference(OutlineShapes.Shape(wedge)));
        return left.IsEmpty ? throw new ArgumentException("The dart leaves nothing of the piece.", nameof(opening)) : left[0];
    }

    /// <summary>Where the warp axis and the cross axis through a point meet the rim: the first crossing outwards each way.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="origin">The point, inside the outline, m.</param>
    /// <returns>A notch at 0, 90, 180 and 270 degrees from the warp.</returns>
    /// <exception cref="ArgumentException">The point lies outside.</exception>
    public static ImmutableArray<PieceNotch> AxisNotches(Outline outline, Point2 origin)
    {
        ArgumentNullException.ThrowIfNull(outline);
        if (!OutlineShapes.Contains(outline, origin))
        {
            throw new ArgumentException("The axes start inside the outline.", nameof(origin));
        }

        Point2[] ways = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];
        return [.. ways.Select((way, quarter) => new PieceNotch(origin + (way * OutlineShapes.ToRim(outline, origin, way)), way * -1, 90 * quarter))];
    }

    /// <summary>The outline with small wedges cut in.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="notches">Where, and which way is inwards.</param>
    /// <param name="depth">Depth of each and its width at the rim, above 0. It belongs in the trim allowance, not in the part.</param>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above 0.</exception>
    /// <exception cref="ArgumentException">Nothing is left of the piece.</exception>
    public static Outline WithNotches(Outline outline, ImmutableArray<PieceNotch> notches, Length depth)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double metres = Guard.Positive(depth.Meters, "m", nameof(depth));
        Geometry shape = OutlineShapes.Shape(outline);
        foreach (PieceNotch notch in notches)
        {
            Point2 inward = notch.Inward * (metres / notch.Inward.Norm);
            Point2 side = new Point2(-inward.Y, inward.X) * 0.5;

            // Twice as far out as in, with sides of the same slope.
            Outline wedge = new([notch.At + inward, notch.At - (inward * 2) + (side * 3), notch.At - (inward * 2) - (side * 3)]);
            shape = shape.Difference(OutlineShapes.Shape(wedge));
        }

        ImmutableArray<Outline> left = OutlineShapes.Outsides(shape);
        return left.IsEmpty ? throw new ArgumentException("The notches leave nothing of the piece.", nameof(depth)) : left[0];
    }

    /// <summary>An arrow along the warp through the place of the label, with a tenth of the way to the rim left free at each end.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="warp">Direction of the warp, counter-clockwise from X.</param>
    /// <returns>Its tail and head, both inside, m.</returns>
    public static (Point2 Tail, Point2 Head) WarpArrow(Outline outline, Angle warp)
    {
        ArgumentNullException.ThrowIfNull(outline);
        Point2 at = LabelPlace.In(outline).At;
        (double sine, double cosine) = Math.SinCos(warp.Radians);
        Point2 way = new(cosine, sine);
        return (at - (way * (0.9 * OutlineShapes.ToRim(outline, at, way * -1))), at + (way * (0.9 * OutlineShapes.ToRim(outline, at, way))));
    }

    /// <summary>The outline with fewer points, none of its points farther from the new line than a tolerance.</summary>
    /// <remarks>Source: D. H. Douglas and T. K. Peucker, The Canadian Cartographer 10 (1973) 112.</remarks>
    /// <param name="outline">The outline.</param>
    /// <param name="tolerance">Greatest distance, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not a number.</exception>
    public static Outline Simplified(Outline outline, Length tolerance)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double metres = Guard.NotNegative(tolerance.Meters, "m", nameof(tolerance));
        ImmutableArray<Outline> simple = OutlineShapes.Outsides(DouglasPeuckerSimplifier.Simplify(OutlineShapes.Shape(outline), metres));
        return simple.IsEmpty ? outline : simple[0];
    }

    private static Geometry Offset(Outline outline, double distance, bool roundCorners)
    {
        BufferParameters how = new(QuarterParts, EndCapStyle.Round, roundCorners ? JoinStyle.Round : JoinStyle.Mitre, 5);
        return BufferOp.Buffer(OutlineShapes.Shape(outline), distance, how);
    }
}
