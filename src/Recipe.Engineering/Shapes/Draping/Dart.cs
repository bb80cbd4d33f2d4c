using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A slit from the rim to where the cloth begins to lock. Its edges are lapped or a wedge is taken out.</summary>
/// <param name="Mouth">Where it opens, at the rim in the cloth's plane, m.</param>
/// <param name="Tip">Where it ends, in the cloth's plane, m.</param>
/// <param name="MouthPlace">Its mouth on the surface, m; null when the rim was not reached there.</param>
/// <param name="TipPlace">Its tip on the surface, m.</param>
/// <param name="Depth">From mouth to tip in the cloth's plane.</param>
/// <param name="Direction">From mouth to tip, counter-clockwise from the warp; -180 to 180 degrees.</param>
/// <param name="LockedArea">Area of the cells beyond the locking angle that it serves.</param>
public sealed record Dart(Point2 Mouth, Point2 Tip, Point3? MouthPlace, Point3? TipPlace, Length Depth, Angle Direction, Area LockedArea);
