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
    public void A_constant_flow_fills_the_pores()
    {
        // By hand: half of 300 mm by 3 mm by 0.5 m is 225 mL, at 1 mL/s.
        Digits.Close(225, Darcy.ConstantFlowTime(Part(0.5), M2(0.3 * 0.003), M(0.5), VolumeFlow.FromMillilitersPerSecond(1)).Seconds);
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
    public void Flow_at_the_front_is_what_fills_the_pores_behind_it()
    {
        // The two formulas of the flow agree, the flow falls with the root of the time, and its integral, twice flow times
        // time, is the resin in the stack.
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[1, 1e5]).Sample(
            (medium, mu, pull, time) =>
            {
                Area section = M2(0.001);
                Length front = Darcy.FrontAfter(medium, PaS(mu), Kpa(pull), S(time));
                double flow = Darcy.FlowAfter(medium, PaS(mu), Kpa(pull), section, S(time)).CubicMetersPerSecond;
                Digits.Close(flow, Darcy.FlowAt(medium, PaS(mu), Kpa(pull), section, front).CubicMetersPerSecond);
                Digits.Close(flow / 2, Darcy.FlowAfter(medium, PaS(mu), Kpa(pull), section, S(4 * time)).CubicMetersPerSecond);
                Digits.Close(medium.Porosity.DecimalFractions * 0.001 * front.Meters, 2 * flow * time);
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
    public void A_circle_grows_as_fast_as_its_flow_fills_it()
    {
        // The speed of the front by differences, against the flow that Darcy's law gives for the ring.
        PorousLayer stack = new(Mm(3), Glass);
        double before = RadialFlow.FillTime(Glass, PaS(0.3), Pull, Mm(5), M(0.1999)).Seconds;
        double after = RadialFlow.FillTime(Glass, PaS(0.3), Pull, Mm(5), M(0.2001)).Seconds;
        double volume = 0.5 * 0.003 * Math.PI * ((0.2001 * 0.2001) - (0.1999 * 0.1999));
        Digits.Close(
            volume / (after - before), RadialFlow.FlowAt(stack, PaS(0.3), Pull, Mm(5), M(0.2)).CubicMetersPerSecond, 1e-6);
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
        Refused("time", () => Darcy.FlowAfter(Glass, PaS(0.3), Pull, M2(1), S(0)));
        Refused("section", () => Darcy.FlowAt(Glass, PaS(0.3), Pull, M2(0), M(1)));
        Refused("flow", () => Darcy.ConstantFlowTime(Part(0.5), M2(1), M(1), VolumeFlow.Zero));
        Refused("front", () => RadialFlow.FillTime(Glass, PaS(0.3), Pull, Mm(5), Mm(4)));
        Refused("front", () => RadialFlow.FlowAt(new PorousLayer(Mm(3), Glass), PaS(0.3), Pull, Mm(5), Mm(5)));
        Refused("port", () => RadialFlow.FrontAfter(Glass, PaS(0.3), Pull, Mm(0), S(1)));
        Refused("thickness", () => new PorousLayer(Mm(0), Glass));
    }
}
