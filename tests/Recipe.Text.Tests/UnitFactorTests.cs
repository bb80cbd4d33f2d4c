using System.Globalization;
using Recipe.Text.Units;

namespace Recipe.Text.Tests;

/// <summary>
/// The factors against NIST Special Publication 811 (2008), appendix B, "Conversion Factors": exact where the inch (25.4 mm), the pound
/// (0.453 592 37 kg), the US gallon (231 in3) and standard gravity (9.806 65 m/s2) make them so, else to the digits printed there.
/// </summary>
public sealed class UnitFactorTests
{
    [Theory]
    [InlineData("oz/yd2", "g/m2", "33.90574747")]
    [InlineData("oz/ft2", "g/m2", "305.1517273")]
    [InlineData("psi", "Pa", "6894.75729")]
    [InlineData("psi", "kPa", "6.89475729")]
    [InlineData("inHg", "Pa", "3386.389")]
    [InlineData("mmHg", "Pa", "133.3224")]
    [InlineData("torr", "Pa", "133.322368")]
    [InlineData("atm", "Pa", "101325")]
    [InlineData("lbf", "N", "4.448221615")]
    [InlineData("lbf/in", "N/m", "175.126835")]
    [InlineData("lbf/ft", "N/m", "14.59390294")]
    [InlineData("N/mm", "kN/m", "1")]
    [InlineData("ft2", "m2", "0.09290304")]
    [InlineData("yd2", "m2", "0.83612736")]
    [InlineData("in2", "m2", "0.00064516")]
    [InlineData("floz", "mL", "29.5735296")]
    [InlineData("gal", "L", "3.78541178")]
    [InlineData("cfm", "L/min", "28.3168466")]
    [InlineData("cfm", "m3/s", "0.000471947443")]
    [InlineData("lb", "g", "453.59237")]
    [InlineData("oz", "g", "28.349523125")]
    [InlineData("mil", "um", "25.4")]
    [InlineData("cP", "Pa.s", "0.001")]
    [InlineData("lb/gal", "kg/m3", "119.826427")]
    [InlineData("lb/in3", "g/cm3", "27.6799047")]
    [InlineData("lb/ft3", "kg/m3", "16.0184634")]
    public void A_factor_is_that_of_nist_sp_811(string from, string to, string printed)
    {
        var (source, target) = (UnitTable.Get(from), UnitTable.Get(to));

        Assert.Equal(source.Dimension, target.Dimension);
        AsPrinted(printed, target.FromSi(source.ToSi(1)));
    }

    // The same table as printed in SP 811, four to seven figures, from memory of the page.
    [Theory]
    [InlineData("oz/yd2", "kg/m2", "0.03390575")]
    [InlineData("cfm", "m3/s", "0.0004719474")]
    [InlineData("floz", "m3", "0.00002957353")]
    [InlineData("inHg", "kPa", "3.386389")]
    public void A_factor_rounds_to_the_printed_one(string from, string to, string printed) =>
        AsPrinted(printed, UnitTable.Get(to).FromSi(UnitTable.Get(from).ToSi(1)));

    // SP 811 section B.8: t/degC = (t/degF - 32)/1.8.
    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    [InlineData(77, 25)]
    public void A_temperature_converts_with_its_zero(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, UnitTable.Get("degC").FromSi(UnitTable.Get("degF").ToSi(fahrenheit)), 1e-9);

    [Fact]
    public void A_temperature_difference_has_no_zero()
    {
        // SP 811: 1 degF of difference is 0.555 555 6 K; a rate of 5 degF/min is 2.778 K/min and not -15 degC/min.
        AsPrinted("0.5555556", UnitTable.Get("degF-diff").ToSi(1));
        AsPrinted("0.5555556", UnitTable.Get("degF").DifferenceToSi(1));
        AsPrinted("2.778", UnitTable.Get("K/min").FromSi(UnitTable.Get("degF/min").ToSi(5)));
    }

    [Fact]
    public void The_ounce_of_a_mat_is_not_the_ounce_of_a_cloth()
    {
        // Common practice: a mat is sold by the ounce per square foot, a cloth by the ounce per square yard. Derived from SP 811.
        AsPrinted("457.7", UnitTable.Get("g/m2").FromSi(UnitTable.Get("oz/ft2").ToSi(1.5)));
        AsPrinted("50.86", UnitTable.Get("g/m2").FromSi(UnitTable.Get("oz/yd2").ToSi(1.5)));
    }

    /// <summary>Equal to as many digits as are printed.</summary>
    private static void AsPrinted(string printed, double value)
    {
        var decimals = printed.Contains('.') ? printed.Length - printed.IndexOf('.') - 1 : 0;
        var expected = double.Parse(printed, CultureInfo.InvariantCulture);
        Assert.InRange(value, expected - (0.5001 * Math.Pow(10, -decimals)), expected + (0.5001 * Math.Pow(10, -decimals)));
    }
}
