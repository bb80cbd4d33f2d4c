using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class BowlSurfacesTests
{
    private static Length M(double value) => Length.FromMeters(value);

    [Fact]
    public void Cap_area_agrees_with_the_printed_value()
    {
        // 2 pi R h; R 0.5, h 0.2: 0.6283185. Its rim radius is sqrt(2 R h - h^2) = 0.4.
        Surface cap = BowlSurfaces.SphericalCap(M(0.8), M(0.2));
        Digits.AsPrinted("0.6283185", cap.Area.SquareMeters);
        Digits.Close(2 * Math.PI * 0.5 * 0.2, cap.Area.SquareMeters);

        // The string over the top is the arc of the great circle: 2 R acos((R - h) / R).
        Digits.Close(2 * 0.5 * Math.Acos(0.6), cap.DevelopedLength.Meters);
        Assert.True(cap.IsDoublyCurved);
    }

    [Fact]
    public void Hemisphere_is_two_pi_r_squared()
    {
        Surface half = BowlSurfaces.SphericalCap(M(1), M(0.5));
        Digits.Close(2 * Math.PI * 0.25, half.Area.SquareMeters);
        Digits.Close(Math.PI * 0.5, half.DevelopedWidth.Meters);
        Digits.Close(Math.PI, half.RimLength.Meters);
    }

    [Fact]
    public void Paraboloid_area_agrees_with_the_printed_value()
    {
        // pi / (6 c^2) ((1 + 4 c^2 a^2)^1.5 - 1); rim radius 0.5, depth 0.25: 0.9573622.
        Surface dish = BowlSurfaces.Paraboloid(M(1), M(0.25));
        Digits.AsPrinted("0.9573622", dish.Area.SquareMeters);
        Digits.Close(Math.PI / 6 * (Math.Pow(2, 1.5) - 1), dish.Area.SquareMeters);

        // Arc of y = x^2 from -1/2 to 1/2: (sqrt 2 + asinh 1) / 2.
        Digits.Close((Math.Sqrt(2) + Math.Asinh(1)) / 2, dish.DevelopedLength.Meters);
    }

    [Fact]
    public void A_shallow_dish_or_cap_tends_to_the_disc()
    {
        double disc = Math.PI / 4;
        Digits.Close(disc, BowlSurfaces.Paraboloid(M(1), M(1e-7)).Area.SquareMeters);
        Digits.Close(disc, BowlSurfaces.SphericalCap(M(1), M(1e-7)).Area.SquareMeters);
        Digits.Close(1, BowlSurfaces.Paraboloid(M(1), M(1e-7)).DevelopedLength.Meters);
        Digits.Close(1, BowlSurfaces.SphericalCap(M(1), M(1e-7)).DevelopedLength.Meters);
    }

    [Fact]
    public void Half_ellipsoid_agrees_with_the_published_exact_value()
    {
        // Half axes 300, 200 and 80 mm: exact 228502.1 mm2 (quadrature), where the power-mean approximation of
        // K. Thomsen (2004) gives 229267.9 mm2. The footprint here is given in whole axes, 600 by 400 mm.
        Surface bowl = BowlSurfaces.HalfEllipsoid(M(0.6), M(0.4), M(0.08));
        Digits.AsPrinted("228502.1", bowl.Area.SquareMillimeters);
        Digits.AsPrinted("229267.9", Thomsen(300, 200, 80) / 2);
    }

    [Fact]
    public void Ellipsoid_3_4_5_agrees_with_the_exact_value_and_not_with_the_approximation()
    {
        // Exact 199.455059 (quadrature); Thomsen's approximation 199.501704 (published).
        Surface half = BowlSurfaces.HalfEllipsoid(M(6), M(8), M(5));
        Digits.AsPrinted("199.455059", 2 * half.Area.SquareMeters);
        Digits.AsPrinted("199.501704", Thomsen(3, 4, 5));
    }

    [Fact]
    public void Half_ellipsoid_agrees_with_the_closed_form_of_the_spheroids()
    {
        // Oblate, a = b > c, e^2 = 1 - c^2/a^2: 2 pi a^2 (1 + (1 - e^2)/e atanh e), any mensuration handbook.
        double a = 0.35;
        double c = 0.11;
        double e = Math.Sqrt(1 - (c * c / (a * a)));
        double oblate = Math.PI * a * a * (1 + ((1 - (e * e)) / e * Math.Atanh(e)));
        Digits.Close(oblate, BowlSurfaces.HalfEllipsoid(M(2 * a), M(2 * a), M(c)).Area.SquareMeters);

        // Prolate about its long depth axis, c > a = b: 2 pi a^2 (1 + c/(a e) asin e).
        c = 1.7;
        e = Math.Sqrt(1 - (a * a / (c * c)));
        double prolate = Math.PI * a * a * (1 + (c / (a * e) * Math.Asin(e)));
        Digits.Close(prolate, BowlSurfaces.HalfEllipsoid(M(2 * a), M(2 * a), M(c)).Area.SquareMeters);
    }

    [Fact]
    public void Half_ellipsoid_agrees_with_quadrature()
    {
        Gen.Select(Gen.Double[0.3, 1], Gen.Double[0.3, 1], Gen.Double[0.3, 1]).Sample(
            (a, b, c) => Digits.Close(
                HalfAreaByQuadrature(a, b, c),
                BowlSurfaces.HalfEllipsoid(M(2 * a), M(2 * b), M(c)).Area.SquareMeters),
            iter: 200);
    }

    [Fact]
    public void Half_ellipsoid_with_equal_half_axes_is_the_hemisphere()
    {
        Gen.Double[1e-3, 1e3].Sample(
            r =>
            {
                Surface bowl = BowlSurfaces.HalfEllipsoid(M(2 * r), M(2 * r), M(r));
                Digits.Close(2 * Math.PI * r * r, bowl.Area.SquareMeters);
                Digits.Close(2 * Math.PI * r, bowl.RimLength.Meters);
                Digits.Close(Math.PI * r, bowl.DevelopedLength.Meters);
            },
            iter: 1000);
    }

    [Fact]
    public void A_very_shallow_half_ellipsoid_tends_to_its_footprint()
    {
        Surface plate = BowlSurfaces.HalfEllipsoid(M(0.6), M(0.4), M(1e-7));
        Digits.Close(Math.PI * 0.3 * 0.2, plate.Area.SquareMeters);
        Digits.Close(0.6, plate.DevelopedLength.Meters);
    }

    [Fact]
    public void Rim_of_the_half_ellipsoid_agrees_with_the_series_for_an_ellipse()
    {
        // Gauss-Kummer: pi (a + b) sum of (binomial(1/2, n))^2 h^n, h = ((a - b)/(a + b))^2 (DLMF 19.9, any handbook).
        double a = 0.3;
        double b = 0.2;
        double h = Math.Pow((a - b) / (a + b), 2);
        double sum = 0;
        double term = 1;
        for (int n = 0; n < 60; n++)
        {
            sum += term * term * Math.Pow(h, n);
            term *= (0.5 - n) / (n + 1);
        }

        Digits.Close(Math.PI * (a + b) * sum, BowlSurfaces.HalfEllipsoid(M(0.6), M(0.4), M(0.1)).RimLength.Meters);
    }

    [Fact]
    public void A_bowl_is_larger_than_its_footprint_and_grows_with_depth()
    {
        Gen.Select(Gen.Double[0.05, 2], Gen.Double[0.05, 2], Gen.Double[0.01, 1], Gen.Double[1.001, 3]).Sample(
            (a, b, c, k) =>
            {
                double footprint = Math.PI * a * b / 4;
                double shallow = BowlSurfaces.HalfEllipsoid(M(a), M(b), M(c)).Area.SquareMeters;
                double deep = BowlSurfaces.HalfEllipsoid(M(a), M(b), M(c * k)).Area.SquareMeters;
                return footprint < shallow && shallow < deep;
            },
            iter: 1000);
    }

    private static double Thomsen(double a, double b, double c)
    {
        const double power = 1.6075;
        double mean = (Math.Pow(a * b, power) + Math.Pow(a * c, power) + Math.Pow(b * c, power)) / 3;
        return 4 * Math.PI * Math.Pow(mean, 1 / power);
    }

    // The surface integral over the unit sphere: Gauss-Legendre in the height, equal steps round the axis,
    // both of which converge geometrically for this smooth integrand.
    private static double HalfAreaByQuadrature(double a, double b, double c)
    {
        const int around = 128;
        (double[] nodes, double[] weights) = GaussLegendre(64);
        double sum = 0;
        for (int i = 0; i < nodes.Length; i++)
        {
            double u = (nodes[i] + 1) / 2;
            double ring = 0;
            for (int j = 0; j < around; j++)
            {
                (double sine, double cosine) = Math.SinCos(2 * Math.PI * j / around);
                double x = b * c * cosine;
                double y = a * c * sine;
                double z = a * b * u;
                ring += Math.Sqrt(((1 - (u * u)) * ((x * x) + (y * y))) + (z * z));
            }

            sum += weights[i] / 2 * ring * 2 * Math.PI / around;
        }

        return sum;
    }

    private static (double[] Nodes, double[] Weights) GaussLegendre(int n)
    {
        double[] nodes = new double[n];
        double[] weights = new double[n];
        for (int i = 0; i < n; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (n + 0.5));
            double slope = 0;
            for (int step = 0; step < 50; step++)
            {
                double before = 1;
                double here = x;
                for (int k = 2; k <= n; k++)
                {
                    (before, here) = (here, (((2 * k) - 1) * x * here / k) - ((k - 1) * before / k));
                }

                slope = n * ((x * here) - before) / ((x * x) - 1);
                x -= here / slope;
            }

            nodes[i] = x;
            weights[i] = 2 / ((1 - (x * x)) * slope * slope);
        }

        return (nodes, weights);
    }
}
