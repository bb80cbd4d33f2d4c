using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Cures;
using static Recipe.Engineering.Tests.Heats;

namespace Recipe.Engineering.Tests;

public class RadiantHeatTests
{
    private static readonly RadiantFace Dark = new();

    private static Irradiance Sun(double watts) => Irradiance.FromWattsPerSquareMeter(watts);

    // abs G = eps sigma (Ts^4 - Ta^4) + h (Ts - Ta), sigma by CODATA; absorptivity and emissivity 0.9, h 10 W/(m2 K), 20 degC; solved by
    // an independent program.
    [Theory]
    [InlineData(1000, "73.7685")]
    [InlineData(600, "53.5513")]
    public void A_face_under_a_lamp_settles_where_the_balance_has_it(double watts, string celsius) =>
        Digits.AsPrinted(celsius, RadiantHeat.SteadyTemperature(Sun(watts), C(20), Dark).DegreesCelsius);

    [Fact]
    public void The_lamp_that_holds_a_temperature_holds_it() =>
        Gen.Select(Gen.Double[0, 1e5], Gen.Double[-30, 60], Gen.Double[0.05, 1], Gen.Double[0.05, 1], Gen.Double[0, 100]).Sample(
            (watts, ambient, taken, emitted, h) =>
            {
                RadiantFace face = new() { Absorptivity = Part(taken), Emissivity = Part(emitted), Convection = Transfer(h) };
                Temperature there = RadiantHeat.SteadyTemperature(Sun(watts), C(ambient), face);
                if (there < C(1500))
                {
                    Within(watts, RadiantHeat.ToHold(there, C(ambient), face).WattsPerSquareMeter, 1e-6 * (watts + 1));
                }

                Assert.True(there >= C(ambient - 1e-6));
            },
            iter: 2000);

    [Fact]
    public void The_band_holds_the_corners_of_what_is_unsure()
    {
        TemperatureBand band = RadiantHeat.Band(Sun(1000), C(20), Dark, Part(0.1), Part(0.5));
        Digits.AsPrinted("73.7685", band.Expected.DegreesCelsius);
        Within(
            RadiantHeat.SteadyTemperature(Sun(1000), C(20), Dark with { Absorptivity = Part(0.8), Convection = Transfer(15) }).Kelvins,
            band.Low.Kelvins,
            1e-6);
        Within(
            RadiantHeat.SteadyTemperature(Sun(1000), C(20), Dark with { Absorptivity = Part(1), Convection = Transfer(5) }).Kelvins,
            band.High.Kelvins,
            1e-6);
        Assert.True(band.High.Kelvins - band.Low.Kelvins > 25);
        TemperatureBand sure = RadiantHeat.Band(Sun(1000), C(20), Dark, Part(0), Part(0));
        Digits.Close(sure.Low.Kelvins, sure.High.Kelvins);
    }

    [Fact]
    public void Figures_beyond_reason_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RadiantHeat.SteadyTemperature(Sun(-1), C(20), Dark));
        Assert.Throws<ArgumentOutOfRangeException>(() => RadiantHeat.SteadyTemperature(Sun(100), C(-100), Dark));
        Assert.Throws<ArgumentOutOfRangeException>(() => RadiantHeat.ToHold(C(10), C(20), Dark));
        Assert.Throws<ArgumentOutOfRangeException>(() => RadiantHeat.SteadyTemperature(Sun(100), C(20), Dark with { Emissivity = Part(0) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => RadiantHeat.Band(Sun(100), C(20), Dark, Part(0.1), Part(1)));
    }
}
