using NetTopologySuite.Algorithm.Construct;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Where a label has most room.</summary>
/// <param name="At">The point inside that is farthest from the rim, to 1 % of the outline's size, m.</param>
/// <param name="Clearance">Its distance from the rim.</param>
public sealed record LabelPlace(Point2 At, Length Clearance)
{
    /// <summary>The place in an outline.</summary>
    /// <param name="outline">The outline.</param>
    /// <remarks>Source: the centre of the largest inscribed circle, found by branch and bound on a grid.</remarks>
    public static LabelPlace In(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        MaximumInscribedCircle circle = new(OutlineShapes.Shape(outline), 0.01 * Math.Sqrt(outline.SquareMetres));
        var centre = circle.GetCenter();
        return new LabelPlace(new Point2(centre.X, centre.Y), Length.FromMeters(circle.GetRadiusLine().Length));
    }
}
