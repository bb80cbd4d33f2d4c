using UnitsNet;

namespace Recipe.Checks.Tests;

public class SayTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(25, "25")]
    [InlineData(24.9694, "24.97")]
    [InlineData(845.56, "845.6")]
    [InlineData(1013.25, "1013")]
    [InlineData(28345.7, "28346")]
    [InlineData(0.00123456, "0.001235")]
    [InlineData(-3.5, "-3.5")]
    public void Numbers_have_four_significant_digits_and_no_exponent(double value, string said) => Assert.Equal(said, Say.Number(value));

    [Theory]
    [InlineData(0.5, "30 s")]
    [InlineData(38.66, "38.7 min")]
    [InlineData(119, "119 min")]
    [InlineData(120, "2 h")]
    [InlineData(155, "2 h 35 min")]
    [InlineData(1440, "24 h")]
    [InlineData(2880, "48 h")]
    [InlineData(10080, "7 d")]
    public void Times_are_said_as_a_bench_says_them(double minutes, string said) => Assert.Equal(said, Say.Of(Duration.FromMinutes(minutes)));

    // NIST SP 811 (2008) appendix B: the conventional inch of mercury is 3386.389 Pa; 1 psi is 6894.757 Pa; degF = 9/5 degC + 32.
    [Fact]
    public void Quantities_follow_the_unit_of_the_author()
    {
        Assert.Equal("25 inHg", Say.Of(Pressure.FromPascals(25 * 3386.389), "28 inHg below ambient"));
        Assert.Equal("10 psi", Say.Of(Pressure.FromPascals(68947.57), "12 psi"));
        Assert.Equal("850 mbar", Say.Of(Pressure.FromPascals(85000)));
        Assert.Equal("140 degF", Say.Of(Temperature.FromDegreesCelsius(60), "180 degF"));
        Assert.Equal("60 degC", Say.Of(Temperature.FromDegreesCelsius(60), "room"));
        Assert.Equal("4 oz", Say.Of(Mass.FromGrams(113.398), "5 oz"));
        Assert.Equal("1.5 kg", Say.Of(Mass.FromGrams(1500)));
    }

    [Theory]
    [InlineData("(2 * lap)", "mm")]
    [InlineData("18 to 22 in", "in")]
    [InlineData("3 ft 4 in", "ft")]
    [InlineData("5 g", "mm")]
    [InlineData(null, "mm")]
    public void A_unit_of_another_kind_is_not_followed(string? written, string unit) => Assert.Equal(unit, Say.UnitLike(written, "mm").Symbol);

    [Fact]
    public void A_difference_is_not_a_temperature() => Assert.Equal("degC", Say.UnitLike("5 K", "degC").Symbol);

    // Rounded down, so that a fix never asks for more than there is.
    [Theory]
    [InlineData(80328, "1500 mbar absolute", "800 mbar below ambient")]
    [InlineData(80328, "25 inHg below ambient", "23 inHg below ambient")]
    [InlineData(80328, "0.9 bar below ambient", "0.8 bar below ambient")]
    public void Levels_are_rounded_down(double pascals, string like, string said) =>
        Assert.Equal(said, VacuumWords.Below(Pressure.FromPascals(pascals), like));

    /// <summary>A degree Celsius of difference is 1.8 degrees Fahrenheit (exact, NIST SP 811); the scales' offset has no part in it.</summary>
    [Theory]
    [InlineData(15, "150 degF", "27 degF")]
    [InlineData(15, "65 degC", "15 degC")]
    [InlineData(3, null, "3 degC")]
    [InlineData(10.4, "room", "10 degC")]
    public void How_far_temperatures_lie_apart_is_no_temperature(double kelvins, string? like, string said) => Assert.Equal(said, Say.Apart(kelvins, like));
}
