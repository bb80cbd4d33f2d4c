using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A surface laid flat with least distortion, and how much it is distorted.</summary>
/// <param name="Parts">Its connected parts, in the order of the mesh.</param>
/// <param name="SurfaceArea">Area of the surface.</param>
/// <param name="FlatArea">Area of its triangles laid flat.</param>
/// <param name="GreatestEdgeChange">Greatest change of the length of an edge as a share of its length; 0 or more.</param>
/// <param name="MeanEdgeChange">Mean of the changes, longer edges counting for more; 0 or more.</param>
/// <param name="FoldOvers">Number of triangles that came out turned over; a pattern with any is not to be cut.</param>
public sealed record FlatPattern(
    ImmutableArray<FlatPart> Parts,
    Area SurfaceArea,
    Area FlatArea,
    Ratio GreatestEdgeChange,
    Ratio MeanEdgeChange,
    int FoldOvers)
{
    /// <summary>The rims, one a part.</summary>
    public ImmutableArray<Outline> Outlines => [.. Parts.Select(part => part.Outline)];

    /// <summary>Flat area less surface area, as a share of the surface area.</summary>
    public Ratio AreaChange => Ratio.FromDecimalFractions((FlatArea.SquareMeters / SurfaceArea.SquareMeters) - 1);
}
