namespace Recipe.Engineering;

/// <summary>What lies nearest to a point.</summary>
/// <param name="Foot">The nearest point of the surface, m.</param>
/// <param name="Triangle">Its triangle.</param>
/// <param name="Normal">Normal of the surface there.</param>
/// <param name="Height">How far the point lies above the surface, or above its continuation past the rim; below is negative, m.</param>
/// <param name="PastRim">How far past the rim the point lies along that continuation; 0 over the surface, m.</param>
internal readonly record struct SurfacePlace(Point3 Foot, int Triangle, Point3 Normal, double Height, double PastRim);
