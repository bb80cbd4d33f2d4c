using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The face round a point, as far as edges that turn by more than an angle, and open edges.</summary>
/// <param name="Seed">The triangle nearest to this point is in it, m.</param>
/// <param name="Sharp">Turn from face to face that bounds it, more than 0 and less than 180 degrees.</param>
public sealed record PatchRegion(Point3 Seed, Angle Sharp) : MeshRegion;
