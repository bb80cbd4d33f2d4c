namespace Recipe.Engineering;

/// <summary>What lies on one side of a plane; triangles across it are cut.</summary>
/// <param name="At">A point of the plane, m.</param>
/// <param name="Normal">Towards the side that is kept, of any length but zero.</param>
public sealed record HalfSpaceRegion(Point3 At, Point3 Normal) : MeshRegion;
