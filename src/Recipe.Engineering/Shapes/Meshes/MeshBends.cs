using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How a surface bends, measured from triangle to triangle.</summary>
/// <param name="Kind">
/// Flat when no point is farther from one plane than a ten-thousandth of its size; double when its points take up more than 0.01 rad
/// of angle (a cap of depth 1/80 of its width); single when it bends otherwise; faceted when plane faces meet at sharp edges.
/// </param>
/// <param name="SmallestInsideRadius">
/// Smallest radius that is hollow on the cloth side: zero at a sharp edge of more than <see cref="MeshMeasures.SharpDegrees"/>, none
/// when nothing is hollow. The few sharpest edges, up to a millionth of the area, are passed over as noise.
/// </param>
/// <param name="SmallestInsideAt">Where it is, m.</param>
/// <param name="SmallestOutsideRadius">The same for bends that stand out on the cloth side.</param>
/// <param name="GreatestCurvature">The inverse of the smaller radius of bends on either side, sharp edges left out.</param>
/// <param name="SharpInside">Length of sharp edges that are hollow on the cloth side.</param>
/// <param name="SharpOutside">Length of sharp edges that stand out on the cloth side.</param>
/// <param name="AngleTakenUp">Sum, without sign, of the angle that each inner point lacks or has too much of, points on sharp edges left out, rad.</param>
/// <remarks>
/// Source: integral Gauss curvature by the angle deficit (Gauss-Bonnet), after M. Meyer, M. Desbrun, P. Schroeder and A. H. Barr,
/// Discrete differential-geometry operators for triangulated 2-manifolds (2003). Radius across an edge: the turn between two chords of
/// a circle is half the angle over both; the chords' middles are taken at the circumcentres, between a quarter and three quarters of the height.
/// A fillet needs at least four faces for a right angle, or its edges count as sharp.
/// </remarks>
public sealed record MeshBends(
    Curvature Kind,
    Length? SmallestInsideRadius,
    Point3? SmallestInsideAt,
    Length? SmallestOutsideRadius,
    ReciprocalLength GreatestCurvature,
    Length SharpInside,
    Length SharpOutside,
    Angle AngleTakenUp);
