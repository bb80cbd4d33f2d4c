using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class LeadLagTests
{
    private static readonly Gen<(double H1, double K1, double Phi1, double H2, double Kz, double Phi2)> AnyPair = Gen.Select(
        Gen.Double[0.5, 2], Gen.Double[-9, -8], Gen.Double[0.6, 0.95], Gen.Double[0.5, 10], Gen.Double[-13, -10.5], Gen.Double[0.35, 0.7])
        .Select((h1, k1, phi1, h2, kz, phi2) => (h1 / 1000, Math.Pow(10, k1), phi1, h2 / 1000, Math.Pow(10, kz), phi2));

    [Fact]
    public void The_lead_is_what_the_equations_of_the_front_give_step_by_step()
    {
        // At unit speed and viscosity, from the tip of the front backwards: along the medium K1 h1 dp/dx = phi1 h1 + phi2 z, down
        // through the laminate phi2 z dz/dx = Kz p. Runge-Kutta over the depth z from close to the tip, where p = k z.
        AnyPair.Sample(
            c =>
            {
                (double Pressure, double Distance) Rate(double z, double p)
                {
                    double distance = c.Phi2 * z / (c.Kz * p);
                    return (((c.Phi1 * c.H1) + (c.Phi2 * z)) / (c.K1 * c.H1) * distance, distance);
                }

                const int steps = 400;
                double z0 = c.H2 * 1e-6;
                double p = z0 * Math.Sqrt(c.Phi1 * c.Phi2 / (c.K1 * c.Kz));
                double x = z0 * c.Phi2 * z0 / (c.Kz * p);
                double dz = (c.H2 - z0) / steps;
                for (int i = 0; i < steps; i++)
                {
                    double z = z0 + (i * dz);
                    (double Pressure, double Distance) a = Rate(z, p);
                    (double Pressure, double Distance) b = Rate(z + (dz / 2), p + (dz / 2 * a.Pressure));
                    (double Pressure, double Distance) d = Rate(z + (dz / 2), p + (dz / 2 * b.Pressure));
                    (double Pressure, double Distance) e = Rate(z + dz, p + (dz * d.Pressure));
                    p += dz / 6 * (a.Pressure + (2 * b.Pressure) + (2 * d.Pressure) + e.Pressure);
                    x += dz / 6 * (a.Distance + (2 * b.Distance) + (2 * d.Distance) + e.Distance);
                }

                PorousLayer medium = LayerOf(c.H1 * 1000, c.K1, c.Phi1);
                PorousLayer laminate = LayerOf(c.H2 * 1000, 1e-14, c.Phi2);
                Digits.Close(x, LeadLag.Lead(medium, laminate, M2(c.Kz)).Meters, 2e-3);

                // The pressure at the back of the lead is what the fill time charges for each unit of length, beyond the first moment.
                double Time(double length) =>
                    LeadLag.FillTime(medium, laminate, M2(c.Kz), PaS(1), Pressure.FromPascals(1000), M(length)).Seconds
                    - Darcy.FillTime(PorousStack.Layered([medium, laminate]), PaS(1), Pressure.FromPascals(1000), M(length)).Seconds;
                Digits.Close(p / 1000, (Time(2) - Time(1)) / 1, 2e-3);
            },
            iter: 50);
    }

    // A thin laminate on a good medium, one that passes resin easily, and a thick tight one; from less than a lead to several leads long.
    [Theory]
    [InlineData(3, 1e-10, 1e-12, 0.1)]
    [InlineData(3, 1e-10, 1e-12, 1)]
    [InlineData(3, 1e-10, 1e-11, 0.3)]
    [InlineData(6, 1e-12, 1e-12, 0.1)]
    [InlineData(6, 1e-12, 1e-12, 0.3)]
    public void The_fill_time_is_that_of_the_infusion_solved_step_by_step(double thickness, double along, double through, double length)
    {
        PorousLayer medium = LayerOf(1, 5e-9, 0.9);
        PorousLayer laminate = LayerOf(thickness, along, 0.5);
        double lead = LeadLag.Lead(medium, laminate, M2(through)).Meters;
        FrontSimulation simulation = new(0.001, 5e-9, 0.9, thickness / 1000, along, through, 0.5);
        double stepped = simulation.FillTime(0.3, 95e3, length, 2.5 * lead, 150);
        Digits.Close(stepped, LeadLag.FillTime(medium, laminate, M2(through), PaS(0.3), Pull, M(length)).Seconds, 0.04);
    }

    [Fact]
    public void The_layered_time_is_the_least()
    {
        Gen.Select(AnyPair, Gen.Double[0.05, 3]).Sample(
            (c, length) =>
            {
                PorousLayer medium = LayerOf(c.H1 * 1000, c.K1, c.Phi1);
                PorousLayer laminate = LayerOf(c.H2 * 1000, 1e-11, c.Phi2);
                double layered = Darcy.FillTime(PorousStack.Layered([medium, laminate]), PaS(0.3), Pull, M(length)).Seconds;
                double Lagged(double kz) => LeadLag.FillTime(medium, laminate, M2(kz), PaS(0.3), Pull, M(length)).Seconds;
                Assert.True(Lagged(c.Kz) > layered);
                Assert.True(Lagged(c.Kz / 2) > Lagged(c.Kz));

                // Resin that passes freely through the thickness leaves the layered time; the lead goes with the inverse root.
                Digits.Close(layered, Lagged(1e-3), 0.05);
                Digits.Close(
                    2 * LeadLag.Lead(medium, laminate, M2(c.Kz)).Meters, LeadLag.Lead(medium, laminate, M2(c.Kz / 4)).Meters);
            },
            iter: 500);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Refused("throughThickness", () => LeadLag.Lead(LayerOf(1, 5e-9, 0.9), LayerOf(3, 1e-10, 0.5), M2(0)));
        Refused("length", () => LeadLag.FillTime(LayerOf(1, 5e-9, 0.9), LayerOf(3, 1e-10, 0.5), M2(1e-12), PaS(0.3), Pull, M(0)));
    }
}
