using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Areas, rims, depths and string lengths of doubly curved bowls and domes.
/// Lengths may be in any unit and must be greater than zero.
/// </summary>
/// <remarks>Source: exact geometry; the half ellipsoid through <see cref="EllipticIntegrals"/>.</remarks>
public static class BowlSurfaces
{
    /// <summary>
    /// A cap cut from a sphere: area <c>pi (a^2 + h^2)</c> with rim radius <c>a</c> and rise <c>h</c>.
    /// A rise above half the rim diameter gives a cap that is more than a hemisphere.
    /// </summary>
    /// <param name="rimDiameter">Diameter of the rim.</param>
    /// <param name="rise">Height of the cap above the plane of its rim.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static Surface SphericalCap(Length rimDiameter, Length rise)
    {
        double a = Guard.Positive(rimDiameter.Meters, "m", nameof(rimDiameter)) / 2;
        double h = Guard.Positive(rise.Meters, "m", nameof(rise));
        double sphereRadius = ((a * a) + (h * h)) / (2 * h);
        double overTheTop = 4 * sphereRadius * Math.Atan2(h, a);
        return new Surface(
            SurfaceKind.SphericalCap,
            Curvature.Double,
            Math.PI * ((a * a) + (h * h)),
            2 * Math.PI * a,
            h,
            overTheTop,
            overTheTop,
            Math.PI);
    }

    /// <summary>
    /// Half an ellipsoid on an elliptical footprint. The two footprint sizes are whole axes (edge to edge);
    /// the depth is the third half axis.
    /// </summary>
    /// <param name="length">Whole axis of the footprint in the first direction.</param>
    /// <param name="width">Whole axis of the footprint across it.</param>
    /// <param name="depth">Depth below the plane of the rim.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    /// <remarks>
    /// Source: NIST Digital Library of Mathematical Functions, 19.33.1 (area) and 19.30.5 (perimeter of an ellipse),
    /// evaluated to rounding, not one of the power-mean approximations.
    /// </remarks>
    public static Surface HalfEllipsoid(Length length, Length width, Length depth)
    {
        double a = Guard.Positive(length.Meters, "m", nameof(length)) / 2;
        double b = Guard.Positive(width.Meters, "m", nameof(width)) / 2;
        double c = Guard.Positive(depth.Meters, "m", nameof(depth));
        return new Surface(
            SurfaceKind.HalfEllipsoid,
            Curvature.Double,
            EllipticIntegrals.EllipsoidArea(a, b, c) / 2,
            EllipticIntegrals.EllipsePerimeter(a, b),
            c,
            EllipticIntegrals.EllipsePerimeter(a, c) / 2,
            EllipticIntegrals.EllipsePerimeter(b, c) / 2,
            Math.PI);
    }

    /// <summary>
    /// A paraboloid of revolution, such as a dish, from its vertex to its rim.
    /// </summary>
    /// <param name="rimDiameter">Diameter of the rim.</param>
    /// <param name="depth">Depth of the vertex below the plane of the rim.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    /// <remarks>
    /// Source: pi / (6 c^2) ((1 + 4 c^2 a^2)^1.5 - 1) for z = c r^2 and rim radius a, rearranged so that a shallow dish
    /// keeps all its digits; the string length is the arc of the parabola.
    /// </remarks>
    public static Surface Paraboloid(Length rimDiameter, Length depth)
    {
        double a = Guard.Positive(rimDiameter.Meters, "m", nameof(rimDiameter)) / 2;
        double h = Guard.Positive(depth.Meters, "m", nameof(depth));
        double slope = 2 * h / a;
        double root = double.Hypot(1, slope);
        double area = Math.PI * a * a * (2.0 / 3.0) * ((root * root) + root + 1) / (root + 1);
        double arc = a * (root + (Math.Asinh(slope) / slope));
        return new Surface(SurfaceKind.Paraboloid, Curvature.Double, area, 2 * Math.PI * a, h, arc, arc, Math.PI);
    }
}
