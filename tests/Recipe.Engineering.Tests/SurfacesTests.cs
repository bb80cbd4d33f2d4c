using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class SurfacesTests
{
    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Length M(double value) => Length.FromMeters(value);

    [Fact]
    public void Rectangle_and_disc_have_the_textbook_areas_and_rims()
    {
        Surface rectangle = Surfaces.FlatRectangle(M(0.6), M(0.25));
        Digits.Close(0.15, rectangle.Area.SquareMeters);
        Digits.Close(1.7, rectangle.RimLength.Meters);
        Assert.True(rectangle.IsFlat);
        Assert.False(rectangle.IsDoublyCurved);

        Surface disc = Surfaces.FlatDisc(M(0.4));
        Digits.Close(Math.PI * 0.04, disc.Area.SquareMeters);
        Digits.Close(Math.PI * 0.4, disc.RimLength.Meters);
        Assert.Equal(0, disc.Depth.Meters);
    }

    [Fact]
    public void Frustum_area_agrees_with_the_printed_value()
    {
        // Lateral area pi (r1 + r2) s; r1 0.3, r2 0.1, height 0.4: 0.5619852 (table of exact areas, any mensuration handbook).
        Surface frustum = Surfaces.Frustum(M(0.6), M(0.2), M(0.4));
        Digits.AsPrinted("0.5619852", frustum.Area.SquareMeters);
        Digits.Close(2 * Math.PI * 0.4, frustum.RimLength.Meters);
        Assert.True(frustum.IsClosedTube);
    }

    [Fact]
    public void Cone_is_pi_r_s_and_has_one_rim()
    {
        // The 3-4-5 triangle: r 0.3, height 0.4, slant 0.5.
        Surface cone = Surfaces.Frustum(M(0.6), M(0), M(0.4));
        Digits.Close(Math.PI * 0.3 * 0.5, cone.Area.SquareMeters);
        Digits.Close(Math.PI * 0.6, cone.RimLength.Meters);
        Assert.Equal(cone, Surfaces.Frustum(M(0), M(0.6), M(0.4)));
    }

    [Fact]
    public void Cone_rolls_out_to_a_sector_that_just_fits_its_rectangle()
    {
        // A cone with slant twice its base radius rolls out to half a disc of radius s: 2s by s.
        double r = 0.2;
        Surface cone = Surfaces.Frustum(M(2 * r), M(0), M(Math.Sqrt(3) * r));
        Digits.Close(2 * r, cone.DevelopedLength.Meters);
        Digits.Close(4 * r, cone.DevelopedWidth.Meters);
        Digits.Close(Math.PI * 4 * r * r / 2, cone.Area.SquareMeters);

        // A nearly flat cone rolls out to nearly the whole disc.
        Surface flat = Surfaces.Frustum(M(1), M(0), M(1e-6));
        Digits.Close(1, flat.DevelopedLength.Meters, 1e-6);
        Digits.Close(1, flat.DevelopedWidth.Meters, 1e-6);
    }

    [Fact]
    public void Frustum_tends_to_the_cylinder()
    {
        Surface tube = Surfaces.Cylinder(M(0.1), M(0.7));
        Surface nearly = Surfaces.Frustum(M(0.1), M(0.1 - 1e-10), M(0.7));
        Digits.Close(tube.Area.SquareMeters, nearly.Area.SquareMeters, 1e-8);
        Digits.Close(tube.DevelopedLength.Meters, nearly.DevelopedLength.Meters, 1e-8);
        Digits.Close(tube.DevelopedWidth.Meters, nearly.DevelopedWidth.Meters, 1e-8);
        Digits.Close(
            tube.Area.SquareMeters, Surfaces.Frustum(M(0.1), M(0.1), M(0.7)).Area.SquareMeters);
    }

    [Fact]
    public void Box_counts_five_faces()
    {
        Surface box = Surfaces.OpenBox(M(0.3), M(0.2), M(0.1));
        Digits.Close(0.06 + (2 * 0.03) + (2 * 0.02), box.Area.SquareMeters);
        Digits.Close(1.0, box.RimLength.Meters);
        Digits.Close(0.5, box.DevelopedLength.Meters);
        Digits.Close(0.4, box.DevelopedWidth.Meters);
        Assert.Equal(Curvature.Faceted, box.Curvature);
    }

    [Fact]
    public void A_given_area_takes_a_square_for_what_is_not_given()
    {
        Surface shaped = Surfaces.ShapedArea(Area.FromSquareMeters(0.25), depth: Mm(60));
        Digits.Close(2, shaped.RimLength.Meters);
        Digits.Close(0.5, shaped.DevelopedWidth.Meters);
        Assert.True(shaped.IsDoublyCurved);
        Digits.Close(0.06, shaped.Depth.Meters);

        Surface known = Surfaces.ShapedArea(
            Area.FromSquareMeters(0.25), M(2.1), Mm(60), M(0.7), M(0.4), Curvature.Single);
        Digits.Close(0.4, known.DevelopedWidth.Meters);
        Digits.Close(2.1, known.RimLength.Meters);
    }

    [Fact]
    public void Border_of_a_shape_is_the_larger_shape()
    {
        Length border = Mm(15);
        Digits.Close(
            0.63 * 0.28, Surfaces.FlatRectangle(M(0.6), M(0.25)).AreaWithBorder(border).SquareMeters);
        Digits.Close(
            Math.PI * 0.215 * 0.215, Surfaces.FlatDisc(M(0.4)).AreaWithBorder(border).SquareMeters);
        Digits.Close(
            Math.PI * 0.1 * 0.73, Surfaces.Cylinder(M(0.1), M(0.7)).AreaWithBorder(border).SquareMeters);

        // A cone drawn out along its slant by t has slant s + t and base radius r (s + t) / s.
        double r = 0.3 * 0.515 / 0.5;
        Digits.Close(
            Math.PI * r * 0.515, Surfaces.Frustum(M(0.6), M(0), M(0.4)).AreaWithBorder(border).SquareMeters);
        Digits.Close(
            Math.PI * 0.43, Surfaces.FlatDisc(M(0.4)).RimAtDistance(border).Meters);
    }

    [Fact]
    public void Areas_grow_with_the_square_of_the_size()
    {
        Gen.Select(Gen.Double[0.05, 5], Gen.Double[0.05, 5], Gen.Double[0.05, 5], Gen.Double[0.1, 20]).Sample(
            (a, b, c, k) =>
            {
                foreach ((Surface one, Surface scaled) in Pairs(a, b, c, k))
                {
                    Digits.Close(k * k * one.Area.SquareMeters, scaled.Area.SquareMeters);
                    Digits.Close(k * one.RimLength.Meters, scaled.RimLength.Meters);
                    Digits.Close(k * one.DevelopedLength.Meters, scaled.DevelopedLength.Meters);
                    Digits.Close(k * one.DevelopedWidth.Meters, scaled.DevelopedWidth.Meters);
                }
            },
            iter: 1000);
    }

    [Fact]
    public void Sizes_that_cannot_be_are_refused_with_a_reason()
    {
        ArgumentOutOfRangeException refusal =
            Assert.Throws<ArgumentOutOfRangeException>(() => Surfaces.FlatDisc(Mm(-100)));
        Assert.Contains("'diameter' must be greater than 0 m; it is -0.1 m.", refusal.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Surfaces.Frustum(M(0), M(0), M(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Surfaces.OpenBox(M(1), M(1), M(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Surfaces.ShapedArea(Area.Zero));
    }

    private static IEnumerable<(Surface One, Surface Scaled)> Pairs(double a, double b, double c, double k)
    {
        foreach (Func<double, Surface> shape in new Func<double, Surface>[]
        {
            f => Surfaces.FlatRectangle(M(f * a), M(f * b)),
            f => Surfaces.FlatDisc(M(f * a)),
            f => Surfaces.Cylinder(M(f * a), M(f * b)),
            f => Surfaces.Frustum(M(f * a), M(f * b), M(f * c)),
            f => Surfaces.OpenBox(M(f * a), M(f * b), M(f * c)),
            f => BowlSurfaces.SphericalCap(M(f * a), M(f * b)),
            f => BowlSurfaces.HalfEllipsoid(M(f * a), M(f * b), M(f * c)),
            f => BowlSurfaces.Paraboloid(M(f * a), M(f * b)),
        })
        {
            yield return (shape(1), shape(k));
        }
    }
}
