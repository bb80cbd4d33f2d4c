using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Areas, rims, depths and developed sizes of flat, singly curved and faceted moulded surfaces.
/// Lengths may be in any unit; every size must be greater than zero unless its text says otherwise.
/// </summary>
/// <remarks>
/// Source: exact mensuration. Bowls are in <see cref="BowlSurfaces"/>.
/// </remarks>
public static class Surfaces
{
    /// <summary>A flat rectangle.</summary>
    /// <param name="length">Size in the first direction.</param>
    /// <param name="width">Size across it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static Surface FlatRectangle(Length length, Length width)
    {
        double a = Guard.Positive(length.Meters, "m", nameof(length));
        double b = Guard.Positive(width.Meters, "m", nameof(width));
        return new Surface(SurfaceKind.FlatRectangle, Curvature.Flat, a * b, 2 * (a + b), 0, a, b, 4);
    }

    /// <summary>A flat disc.</summary>
    /// <param name="diameter">Diameter of the disc.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not greater than zero.</exception>
    public static Surface FlatDisc(Length diameter)
    {
        double d = Guard.Positive(diameter.Meters, "m", nameof(diameter));
        return new Surface(SurfaceKind.FlatDisc, Curvature.Flat, Math.PI * d * d / 4, Math.PI * d, 0, d, d, Math.PI);
    }

    /// <summary>The lateral face of a whole cylinder: a tube without its ends.</summary>
    /// <param name="diameter">Diameter of the face that the cloth lies on.</param>
    /// <param name="length">Length along the axis; the developed length.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static Surface Cylinder(Length diameter, Length length)
    {
        double d = Guard.Positive(diameter.Meters, "m", nameof(diameter));
        double l = Guard.Positive(length.Meters, "m", nameof(length));
        double girth = Math.PI * d;
        return new Surface(SurfaceKind.Cylinder, Curvature.Single, girth * l, 2 * girth, 0, l, girth, 0);
    }

    /// <summary>
    /// The lateral face of a frustum, or of a cone when one diameter is zero, without its ends. The developed sizes are
    /// those of the rectangle round the flat ring sector that it rolls out to.
    /// </summary>
    /// <param name="firstDiameter">Diameter at one end; zero or more.</param>
    /// <param name="secondDiameter">Diameter at the other end; zero or more, and not zero at both.</param>
    /// <param name="height">Distance between the ends along the axis; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of range.</exception>
    /// <remarks>
    /// Source: lateral area pi (r1 + r2) s with slant s; the flat pattern is a ring sector of angle 2 pi |r1 - r2| / s.
    /// </remarks>
    public static Surface Frustum(Length firstDiameter, Length secondDiameter, Length height)
    {
        double first = Guard.NotNegative(firstDiameter.Meters, "m", nameof(firstDiameter)) / 2;
        double second = Guard.NotNegative(secondDiameter.Meters, "m", nameof(secondDiameter)) / 2;
        double h = Guard.Positive(height.Meters, "m", nameof(height));
        double big = Guard.Positive(Math.Max(first, second), "m", nameof(firstDiameter));
        double small = Math.Min(first, second);
        double slant = double.Hypot(h, big - small);
        (double along, double across) = RingSectorBox(big, small, slant);
        double corner = small > 0 ? 0 : Math.PI * big / slant;
        return new Surface(
            SurfaceKind.Frustum,
            Curvature.Single,
            Math.PI * (big + small) * slant,
            2 * Math.PI * (big + small),
            0,
            along,
            across,
            corner);
    }

    /// <summary>An open box: the bottom and four upright walls.</summary>
    /// <param name="length">Length of the bottom.</param>
    /// <param name="width">Width of the bottom.</param>
    /// <param name="height">Height of the walls.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static Surface OpenBox(Length length, Length width, Length height)
    {
        double a = Guard.Positive(length.Meters, "m", nameof(length));
        double b = Guard.Positive(width.Meters, "m", nameof(width));
        double h = Guard.Positive(height.Meters, "m", nameof(height));
        double area = (a * b) + (2 * h * (a + b));
        return new Surface(
            SurfaceKind.OpenBox, Curvature.Faceted, area, 2 * (a + b), h, a + (2 * h), b + (2 * h), 4);
    }

    /// <summary>
    /// A shaped surface of which the area is known, as from a drawing or a model. What is not given is taken from a square
    /// of that area.
    /// </summary>
    /// <param name="area">Area measured on the surface; greater than zero.</param>
    /// <param name="rimLength">Length of its free edge, if known; greater than zero.</param>
    /// <param name="depth">Depth below the plane of the rim, if known; zero or more.</param>
    /// <param name="developedLength">String length over the surface, if known; greater than zero.</param>
    /// <param name="developedWidth">String length across it, if known; greater than zero.</param>
    /// <param name="curvature">How it bends; double unless the caller knows better.</param>
    /// <exception cref="ArgumentOutOfRangeException">A given size is out of range.</exception>
    public static Surface ShapedArea(
        Area area,
        Length? rimLength = null,
        Length? depth = null,
        Length? developedLength = null,
        Length? developedWidth = null,
        Curvature curvature = Curvature.Double)
    {
        double s = Guard.Positive(area.SquareMeters, "m2", nameof(area));
        double side = Math.Sqrt(s);
        double rim = Given(rimLength, 4 * side, nameof(rimLength));
        double along = Given(developedLength, side, nameof(developedLength));
        double across = Given(developedWidth, side, nameof(developedWidth));
        double deep = depth is { } d ? Guard.NotNegative(d.Meters, "m", nameof(depth)) : 0;
        return new Surface(SurfaceKind.ShapedArea, curvature, s, rim, deep, along, across, 4);
    }

    private static double Given(Length? length, double otherwise, string parameter) =>
        length is { } known ? Guard.Positive(known.Meters, "m", parameter) : otherwise;

    // Written with sines of half angles so that a nearly straight tube, whose pattern radius grows without bound,
    // keeps all its digits.
    private static (double Along, double Across) RingSectorBox(double big, double small, double slant)
    {
        double taper = big - small;
        if (taper <= 0)
        {
            return (slant, 2 * Math.PI * big);
        }

        double half = Math.PI * taper / slant;
        double outer = big * slant / taper;
        double inner = small * slant / taper;
        double sine = Math.Sin(half / 2);
        return half <= Math.PI / 2
            ? (slant + (2 * inner * sine * sine), 2 * outer * Math.Sin(half))
            : (2 * outer * sine * sine, 2 * outer);
    }
}
