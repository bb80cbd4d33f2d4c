namespace Recipe.Engineering;

/// <summary>What lies in a box along the axes; triangles across its sides are cut.</summary>
/// <param name="Least">Smallest coordinates, m.</param>
/// <param name="Most">Greatest coordinates, m, each greater than the smallest.</param>
public sealed record BoxRegion(Point3 Least, Point3 Most) : MeshRegion;
