using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class DarcyTests
{
    // Worked case, computed from the formula of the textbooks (Rudd, Long, Kendall and Mangin 1997, from memory) t = phi mu L^2/(2 K dP): phi 0.5, 0.3 Pa s, 1e-10 m2, 95 kPa, 0.5 m.
    [Fact]
    public void A_line_fills_in_the_time_of_the_worked_case()
    {
        Digits.AsPrinted("1973.684", Darcy.FillTime(Glass, PaS(0.3), Pull, M(0.5)).Seconds);
        Digits.Close(0.5, Darcy.FrontAfter(Glass, PaS(0.3), Pull, Darcy.FillTime(Glass, PaS(0.3), Pull, M(0.5))).Meters);
    }

    // Worked case, computed from the textbook formula for a circle: the same data, port 5 mm, front 0.25 m.
    [Fact]
    public void A_circle_fills_in_the_time_of_the_worked_case()
    {
        Duration time = RadialFlow.FillTime(Glass, PaS(0.3), Pull, Mm(5), M(0.25));
        Digits.AsPrinted("1683.663", time.Seconds);
        Digits.Close(0.25, RadialFlow.FrontAfter(Glass, PaS(0.3), Pull, Mm(5), time).Meters);
    }

    [Fact]
    public void Half_the_length_takes_a_quarter_and_twice_the_viscosity_twice_the_time()
    {
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[0.01, 5]).Sample(
            (medium, mu, pull, length) =>
            {
                double time = Darcy.FillTime(medium, PaS(mu), Kpa(pull), M(length)).Seconds;
                Digits.Close(time / 4, Darcy.FillTime(medium, PaS(mu), Kpa(pull), M(length / 2)).Seconds);
                Digits.Close(time * 2, Darcy.FillTime(medium, PaS(2 * mu), Kpa(pull), M(length)).Seconds);
                Digits.Close(time * 2, Darcy.FillTime(medium, PaS(mu), Kpa(pull / 2), M(length)).Seconds);
                Digits.Close(length, Darcy.FrontAfter(medium, PaS(mu), Kpa(pull), S(time)).Meters);
            },
            iter: 1000);
    }

    [Fact]
    public void The_radius_after_the_fill_time_is_the_radius_filled()
    {
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[0.5, 10], Gen.Double[-9, 3]).Sample(
            (medium, mu, pull, port, power) =>
            {
                // From a front that has hardly left the port to one a thousand times as wide.
                double beyond = port * Math.Pow(10, power);
                Duration time = RadialFlow.FillTime(medium, PaS(mu), Kpa(pull), Mm(port), Mm(port + beyond));
                Length front = RadialFlow.FrontAfter(medium, PaS(mu), Kpa(pull), Mm(port), time);
                Digits.Close(port + beyond, front.Millimeters, 1e-12);
                Digits.Close(beyond, front.Millimeters - port, 1e-6);
            },
            iter: 3000);
    }

    // A front that has left the port by less than the digits that a double keeps beside the port's radius: u^2/4 is the whole bracket then, and
    // the sum of the rest of its series is known to any digit.
    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-6)]
    [InlineData(1e-7)]
    public void A_front_hardly_beyond_the_port_keeps_its_digits(double share)
    {
        double beyond = (0.005 * (1 + share)) - 0.005;
        double e = beyond / 0.005;
        double log = e - (e * e / 2) + (e * e * e / 3) - (e * e * e * e / 4);
        double u = 2 * log;
        double bracket = (u * u / 4) + (u * u * u / 6) + (u * u * u * u / 16);
        double expected = 0.5 * 0.3 * 0.005 * 0.005 / (2 * 1e-10 * 95e3) * bracket;
        Digits.Close(expected, RadialFlow.FillTime(Glass, PaS(0.3), Pull, M(0.005), M(0.005 * (1 + share))).Seconds, 1e-9);
    }

    [Fact]
    public void A_circle_with_a_port_of_its_own_size_fills_like_a_line()
    {
        // A thin ring is a strip: the curvature adds its third of the ring's relative width.
        double line = Darcy.FillTime(Glass, PaS(0.3), Pull, Mm(1)).Seconds;
        Digits.Close(line, RadialFlow.FillTime(Glass, PaS(0.3), Pull, M(10), M(10.001)).Seconds, 1e-4);
        Assert.Equal(Duration.Zero, RadialFlow.FillTime(Glass, PaS(0.3), Pull, M(1), M(1)));
        Digits.Close(1, RadialFlow.FrontAfter(Glass, PaS(0.3), Pull, M(1), Duration.Zero).Meters);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Refused("permeability", () => Medium(0, 0.5));
        Refused("porosity", () => Medium(1e-10, 0));
        Refused("porosity", () => Medium(1e-10, 1.01));
        Refused("fibreVolumeFraction", () => PorousMedium.OfFibre(M2(1e-10), Part(1)));
        Refused("viscosity", () => Darcy.FillTime(Glass, PaS(0), Pull, M(0.5)));
        Refused("drop", () => Darcy.FillTime(Glass, PaS(0.3), Kpa(0), M(0.5)));
        Refused("length", () => Darcy.FillTime(Glass, PaS(0.3), Pull, M(-1)));
        Refused("time", () => Darcy.FrontAfter(Glass, PaS(0.3), Pull, S(-1)));
        Refused("front", () => RadialFlow.FillTime(Glass, PaS(0.3), Pull, Mm(5), Mm(4)));
        Refused("port", () => RadialFlow.FrontAfter(Glass, PaS(0.3), Pull, Mm(0), S(1)));
        Refused("thickness", () => new PorousLayer(Mm(0), Glass));
    }
}
