using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class PinholeTests
{
    private static readonly Pressure Sea = Mbar(1013.25);

    [Fact]
    public void A_choked_hole_passes_20_litres_a_second_and_square_centimetre()
    {
        // Vacuum handbooks: 20 L/s for each cm2 of a choked opening, air at 20 degC, all of the ideal flow (from memory).
        Length oneSquareCentimetre = Length.FromCentimeters(Math.Sqrt(4 / Math.PI));
        LeakRate leak = Pinhole.Leak(oneSquareCentimetre, Sea, Pressure.Zero, 1);
        Digits.AsPrinted("20", leak.FreeAir(Sea).LitersPerSecond);
        Digits.Close(leak.FreeAir(Sea).LitersPerSecond * 1013.25, leak.MillibarLitresPerSecond);
    }

    [Fact]
    public void Mass_flow_of_a_choked_hole_is_that_of_the_textbook()
    {
        // Gas-dynamics textbooks: 0.0404 kg/s K^0.5 times p A/sqrt(T) for air when choked (from memory).
        double mass = Pinhole.Leak(Mm(1), Pressure.FromPascals(1e5), Pressure.Zero, 1).PascalCubicMetresPerSecond / (287.05287 * 293.15);
        Digits.AsPrinted("0.0404", mass * Math.Sqrt(293.15) / (1e5 * Math.PI * 1e-6 / 4));
    }

    [Fact]
    public void The_flow_is_choked_below_0_528_of_the_air()
    {
        // Gas-dynamics textbooks: the critical ratio of air is 0.528 (from memory). Below it the bag's pressure no longer tells.
        double choked = Pinhole.Leak(Mm(1), Sea, Pressure.Zero).MillibarLitresPerSecond;
        Digits.Close(choked, Pinhole.Leak(Mm(1), Sea, Sea * 0.528).MillibarLitresPerSecond);
        Digits.Close(choked, Pinhole.Leak(Mm(1), Sea, Sea * 0.5284).MillibarLitresPerSecond, 1e-6);
        Assert.True(Pinhole.Leak(Mm(1), Sea, Sea * 0.6).MillibarLitresPerSecond < choked * 0.995);
        Assert.Equal(0, Pinhole.Leak(Mm(1), Sea, Sea).MillibarLitresPerSecond);

        // Near balance it is Torricelli's law for a thin gas: sqrt(2 dp/rho) at the density of the air.
        double speed = Math.Sqrt(2 * 0.001 * 287.05287 * 293.15);
        Digits.Close(
            speed * 1e-6 * Math.PI / 4, Pinhole.Leak(Mm(1), Sea, Sea * 0.999, 1).FreeAir(Sea).CubicMetersPerSecond, 1e-3);
    }

    [Fact]
    public void The_leak_of_the_worked_bag_is_a_hole_of_a_third_of_a_millimetre()
    {
        // The worked case, computed: a 20 L bag that rises 1 inHg in 60 s leaks 11.288 mbar L/s. By hand with 198.6 m/s and 0.85:
        // 1.1288/(0.85 x 198.6 x 101325) m2 = 0.0660 mm2, 0.290 mm wide.
        LeakRate leak = LeakRate.FromRise(Litres(20), Pressure.FromInchesOfMercury(1), S(60));
        Digits.AsPrinted("11.288", leak.MillibarLitresPerSecond);
        Digits.AsPrinted("0.290", Pinhole.DiameterFor(leak, Sea, Mbar(100)).Millimeters);
    }

    // Common practice: 1 inHg in 5 min is 13 mL a minute of the shop's air at 2 L of free volume, 67 at 10 L.
    [Theory]
    [InlineData(2, "13")]
    [InlineData(10, "67")]
    public void A_drop_test_in_millilitres_a_minute(double litres, string printed)
    {
        LeakRate leak = LeakRate.FromRise(Litres(litres), Pressure.FromInchesOfMercury(1), Duration.FromMinutes(5));
        Digits.AsPrinted(printed, leak.FreeAir(Sea).MillilitersPerMinute);
    }

    [Fact]
    public void Diameter_and_leak_are_inverse()
    {
        Gen.Select(Gen.Double[-3.5, 1], Gen.Double[700, 1030], Gen.Double[0, 0.999], Gen.Double[0.1, 1]).Sample(
            (power, ambient, share, discharge) =>
            {
                double diameter = Math.Pow(10, power);
                LeakRate leak = Pinhole.Leak(Mm(diameter), Mbar(ambient), Mbar(ambient * share), discharge);
                Digits.Close(diameter, Pinhole.DiameterFor(leak, Mbar(ambient), Mbar(ambient * share), discharge).Millimeters);
                Digits.Close(
                    4 * leak.MillibarLitresPerSecond,
                    Pinhole.Leak(Mm(2 * diameter), Mbar(ambient), Mbar(ambient * share), discharge).MillibarLitresPerSecond);
            },
            iter: 1000);
        Assert.Equal(Length.Zero, Pinhole.DiameterFor(default, Sea, Pressure.Zero));
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Refused("diameter", () => Pinhole.Leak(Mm(0), Sea, Pressure.Zero));
        Refused("bag", () => Pinhole.Leak(Mm(1), Sea, Sea * 1.01));
        Refused("ambient", () => Pinhole.Leak(Mm(1), Pressure.Zero, Pressure.Zero));
        Refused("discharge", () => Pinhole.Leak(Mm(1), Sea, Pressure.Zero, 1.1));
        Refused("bag", () => Pinhole.DiameterFor(LeakRate.FromMillibarLitresPerSecond(1), Sea, Sea));
        Refused("rate", () => LeakRate.FromPascalCubicMetresPerSecond(-1));
        Refused("ambient", () => default(LeakRate).FreeAir(Pressure.Zero));
    }
}
