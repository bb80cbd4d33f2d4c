using UnitsNet;
using static Recipe.Engineering.Tests.Cures;
using static Recipe.Engineering.Tests.Heats;

namespace Recipe.Engineering.Tests;

public class ExothermTests
{
    // Properties as Loos and Springer, J. Compos. Mater. 17 (1983) 135 (from memory): resin 473.6 J/g and 1.26 J/(g K), carbon
    // 0.712 J/(g K). The rises follow by calculator.
    [Theory]
    [InlineData(0, 0, "375.87")]
    [InlineData(0, 0.60, "203.44")]
    [InlineData(0.5, 0.60, "101.72")]
    public void The_adiabatic_rise_is_the_balance_of_heat(double from, double fibre, string kelvins) =>
        Digits.AsPrinted(
            kelvins,
            Exotherm.AdiabaticRise(LeeLoosSpringer.HeatOfReaction, PerGramKelvin(1.26), Part(from), Part(1), Part(fibre), PerGramKelvin(0.712)).Kelvins);

    [Fact]
    public void A_rise_without_sense_is_refused()
    {
        TemperatureDelta Rise(double from, double to, double fibre, SpecificEntropy? heat) =>
            Exotherm.AdiabaticRise(JoulesPerGram(450), PerGramKelvin(1.9), Part(from), Part(to), Part(fibre), heat);
        Assert.Equal(0, Rise(0.4, 0.4, 0, null).Kelvins);
        Assert.Throws<ArgumentOutOfRangeException>(() => Rise(0.5, 0.4, 0, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rise(0, 1.1, 0, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rise(0, 1, 1, PerGramKelvin(0.8)));
        Assert.Throws<ArgumentException>(() => Rise(0, 1, 0.5, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rise(0, 1, 0.5, PerGramKelvin(0)));
    }

    // Lee, Loos and Springer, J. Compos. Mater. 16 (1982) 510, constants from memory; viscosities by calculator, Pa s.
    [Theory]
    [InlineData(100, 0.05, "0.82483")]
    [InlineData(120, 0.10, "0.37664")]
    [InlineData(120, 0.20, "1.5427")]
    public void The_viscosity_of_a_hot_prepreg_agrees(double celsius, double degree, string pascalSeconds) =>
        Digits.AsPrinted(pascalSeconds, ExponentialViscosity.LeeLoosSpringer.At(Part(degree), C(celsius)).PascalSeconds);

    [Fact]
    public void Viscosity_without_bound_at_gel_is_never_told()
    {
        // Castro and Macosko: at half of the gel degree, with A 2 and B 0, four times the uncured viscosity.
        CastroMacoskoViscosity model = new(DynamicViscosity.FromPascalSeconds(1e-9), K(6000), GelPoint.Usual, 2, 0);
        double uncured = 1e-9 * Math.Exp(6000 / 293.15);
        double gel = GelPoint.Usual.DecimalFractions;
        Digits.Close(uncured, model.At(Part(0), C(20)).PascalSeconds);
        Digits.Close(4 * uncured, model.At(Part(gel / 2), C(20)).PascalSeconds);
        CastroMacoskoViscosity bent = new(DynamicViscosity.FromPascalSeconds(1e-9), K(6000), GelPoint.Usual, 2, -1);
        Digits.Close(uncured * Math.Pow(2, 2 - (gel / 2)), bent.At(Part(gel / 2), C(20)).PascalSeconds);
        Assert.True(model.At(Part(gel - 1e-6), C(20)).PascalSeconds > 1e9 * uncured);
        Assert.Throws<ArgumentOutOfRangeException>(() => model.At(Part(gel), C(20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => model.At(Part(0.9), C(20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExponentialViscosity.LeeLoosSpringer.At(Part(0.5), C(120)));
        Assert.Throws<ArgumentOutOfRangeException>(() => model.At(Part(0.1), C(600)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CastroMacoskoViscosity(DynamicViscosity.FromPascalSeconds(0), K(6000), GelPoint.Usual, 2, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CastroMacoskoViscosity(DynamicViscosity.FromPascalSeconds(1), K(6000), GelPoint.Usual, 1, -2));
    }
}
