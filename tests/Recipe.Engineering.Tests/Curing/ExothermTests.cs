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
}
