using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class AtmosphereTests
{
    private static Length M(double metres) => Length.FromMeters(metres);

    // ISO 2533 / ICAO Doc 7488 / US Standard Atmosphere 1976, geopotential height; pascals and inches of mercury as tabulated.
    [Theory]
    [InlineData(0, "101325", "29.9213")]
    [InlineData(500, "95460.8", "28.1896")]
    [InlineData(1000, "89874.6", "26.5399")]
    [InlineData(1500, "84556.0", "24.9694")]
    [InlineData(2000, "79495.2", "23.4749")]
    public void Standard_pressure_agrees_with_the_published_table(double metres, string pascals, string inches)
    {
        Pressure pressure = Atmosphere.AtAltitude(M(metres));
        Digits.AsPrinted(pascals, pressure.Pascals);
        Digits.AsPrinted(inches, pressure.InchesOfMercury);
    }

    [Fact]
    public void Sea_level_is_29_92126_inches_of_mercury() =>

        // Published layer table of the 1976 standard.
        Digits.AsPrinted("29.92126", Atmosphere.AtAltitude(Length.Zero).InchesOfMercury);

    [Fact]
    public void Feet_agree_with_the_published_tables()
    {
        // 5000 ft: 12.228 psi in one published table; another prints 12.230 and 10.108 at 10000 ft, rounded in its own way.
        Digits.AsPrinted("12.228", Atmosphere.AtAltitude(Length.FromFeet(5000)).PoundsForcePerSquareInch);
        Digits.Close(12.230, Atmosphere.AtAltitude(Length.FromFeet(5000)).PoundsForcePerSquareInch, 2e-4);
        Digits.Close(10.108, Atmosphere.AtAltitude(Length.FromFeet(10000)).PoundsForcePerSquareInch, 2e-4);
    }

    // The ceiling of a gauge by altitude as the trade reckons it (same standard, one decimal).
    [Theory]
    [InlineData(0, "29.9")]
    [InlineData(500, "28.2")]
    [InlineData(1000, "26.5")]
    [InlineData(1500, "25.0")]
    [InlineData(2000, "23.5")]
    [InlineData(3000, "20.7")]
    public void Most_vacuum_is_the_air_there_is(double metres, string inches) =>
        Digits.AsPrinted(inches, Atmosphere.AtAltitude(M(metres)).InchesOfMercury);

    [Fact]
    public void Pressure_falls_with_altitude()
    {
        Gen.Select(Gen.Double[-2000, 10999], Gen.Double[0.1, 1]).Sample(
            (height, step) => Atmosphere.AtAltitude(M(height + step)) < Atmosphere.AtAltitude(M(height)),
            iter: 1000);
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Atmosphere.AtAltitude(M(-2001)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Atmosphere.AtAltitude(M(12000)));
    }
}
