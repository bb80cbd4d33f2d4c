using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How much a woven cloth can be sheared on a bowl, laid down from its middle along its symmetry: an upper bound, without a net.</summary>
/// <remarks>
/// Source: J. N. Hazzidakis (1879): in a net of threads that keep their length, the shear of a mesh is the integral of the Gauss curvature
/// between its two threads and the first two. On a bowl of two symmetries that is at most a quarter of all its curvature, which is the area that
/// its normals fill on the unit sphere: 2 pi (1 - cos s) for a bowl of revolution whose rim slopes by s.
/// </remarks>
public static class BowlShear
{
    /// <summary>A bowl whose rim stands upright, as half an ellipsoid: its normals fill half the unit sphere.</summary>
    public static Angle OfUprightRim => Angle.FromRadians(Math.PI / 2);

    /// <summary>The cap of a sphere.</summary>
    /// <param name="rimDiameter">Diameter of its rim, above 0.</param>
    /// <param name="depth">Its depth, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static Angle OfSphericalCap(Length rimDiameter, Length depth) =>
        OfRimSlope(2 * Math.Atan2(Guard.Positive(depth.Meters, "m", nameof(depth)), Guard.Positive(rimDiameter.Meters, "m", nameof(rimDiameter)) / 2));

    /// <summary>A paraboloid of revolution.</summary>
    /// <param name="rimDiameter">Diameter of its rim, above 0.</param>
    /// <param name="depth">Its depth, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static Angle OfParaboloid(Length rimDiameter, Length depth) =>
        OfRimSlope(Math.Atan2(2 * Guard.Positive(depth.Meters, "m", nameof(depth)), Guard.Positive(rimDiameter.Meters, "m", nameof(rimDiameter)) / 2));

    private static Angle OfRimSlope(double slope) => Angle.FromRadians(Math.PI / 2 * (1 - Math.Cos(slope)));
}
