using UnitsNet;

namespace Recipe.Engineering.Tests;

/// <summary>Dew points against the figures that heating and building handbooks print (common tables, from memory to 0.1 degC; DIN 4108-3 has the same).</summary>
public class DewPointTests
{
    [Theory]
    [InlineData(20, 0.50, 9.3)]
    [InlineData(20, 0.70, 14.4)]
    [InlineData(25, 0.60, 16.7)]
    [InlineData(30, 0.80, 26.2)]
    [InlineData(18, 0.40, 4.2)]
    [InlineData(22, 0.65, 15.1)]
    public void Dew_points_are_those_of_the_tables(double air, double humidity, double expected) =>
        Assert.Equal(expected, DewPoint.Of(Temperature.FromDegreesCelsius(air), humidity).DegreesCelsius, 0.1);

    [Theory]
    [InlineData(5)]
    [InlineData(40)]
    public void Air_full_of_water_is_at_its_dew_point(double air) =>
        Assert.Equal(air, DewPoint.Of(Temperature.FromDegreesCelsius(air), 1).DegreesCelsius, 9);

    [Theory]
    [InlineData(70, 0.5)]
    [InlineData(-41, 0.5)]
    [InlineData(20, 0)]
    [InlineData(20, 1.01)]
    [InlineData(20, double.NaN)]
    public void What_the_formula_does_not_cover_is_refused(double air, double humidity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DewPoint.Of(Temperature.FromDegreesCelsius(air), humidity));
}
