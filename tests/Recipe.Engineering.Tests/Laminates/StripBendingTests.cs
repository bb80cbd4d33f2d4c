using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

public class StripBendingTests
{
    private static readonly Gen<(double D, double U, double F, double L, double B)> Strip = Gen.Select(
        Gen.Double[0.1, 1e4], Gen.Double[1e3, 1e6], Gen.Double[0.1, 500], Gen.Double[0.05, 2], Gen.Double[0.01, 0.5]);

    // The unit-load theorem, integrated by Simpson's rule, which is exact for these polynomials: w = int M m/(D b) + V v/(U b).
    [Fact]
    public void Three_point_bend_follows_from_the_unit_load() => Strip.Sample(s =>
    {
        double half = Integral(0, s.L / 2, x => (s.F * x / 2 * x / 2 / (s.D * s.B)) + (s.F / 4 / (s.U * s.B)));
        Length computed = StripBending.ThreePointDeflection(Stiff(s.D), Force.FromNewtons(s.F), M(s.L), M(s.B), NewtonPerMetre(s.U));
        Digits.Close(2 * half, computed.Meters);
    });

    [Fact]
    public void Sandwich_shear_is_the_closed_form()
    {
        // G d^2/c (Allen 1969, from memory): 20 MPa, 10 mm core, faces 1 and 2 mm: d = 11.5 mm, 264 500 N/m.
        Digits.Close(264_500, StripBending.SandwichShear(Pressure.FromMegapascals(20), Mm(10), Mm(1), Mm(2)).NewtonsPerMeter);
    }

    [Fact]
    public void Sizes_that_are_none_are_refused()
    {
        Force newton = Force.FromNewtons(1);
        Assert.Throws<ArgumentOutOfRangeException>(() => StripBending.ThreePointDeflection(Stiff(0), newton, M(1), M(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripBending.ThreePointDeflection(Stiff(1), newton, M(1e300), M(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripBending.ThreePointDeflection(Stiff(1), newton, M(1), M(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripBending.ThreePointDeflection(Stiff(1), newton, M(1), M(1), NewtonPerMetre(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripBending.SandwichShear(Pressure.FromPascals(0), Mm(1), Mm(1), Mm(1)));
    }

    private static double Integral(double from, double to, Func<double, double> f) =>
        (to - from) / 6 * (f(from) + (4 * f((from + to) / 2)) + f(to));

    private static Torque Stiff(double value) => Torque.FromNewtonMeters(value);

    private static Length M(double value) => Length.FromMeters(value);
}
