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
        Digits.AsPrinted(inches, Atmosphere.MostVacuum(M(metres)).InchesOfMercury);

    [Fact]
    public void A_pump_leaves_its_ultimate_pressure_behind()
    {
        Digits.Close(100325, Atmosphere.MostVacuum(Length.Zero, Pressure.FromMillibars(10)).Pascals);
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Atmosphere.MostVacuum(Length.Zero, Pressure.FromBars(2)));
    }

    // Common practice: a high glass is 2 % above the standard.
    [Fact]
    public void Weather_lifts_the_limit_by_two_percent() =>
        Digits.Close(1.02 * 101325, Atmosphere.MostVacuumInAnyWeather(Length.Zero).Pascals);

    [Fact]
    public void Below_ambient_and_absolute_are_inverse()
    {
        Gen.Select(Gen.Double[20000, 110000], Gen.Double[0, 1]).Sample(
            (air, share) =>
            {
                Pressure ambient = Pressure.FromPascals(air);
                Pressure vacuum = Pressure.FromPascals(air * share);
                Pressure absolute = Atmosphere.ToAbsolute(vacuum, ambient);
                double back = Atmosphere.ToBelowAmbient(absolute, ambient).Pascals;
                return Math.Abs(back - vacuum.Pascals) <= 1e-9 * air && absolute.Pascals >= 0;
            },
            iter: 2000);
    }

    [Fact]
    public void Nine_tenths_of_a_bar_of_vacuum_at_sea_level_is_113_millibar_absolute()
    {
        Pressure ambient = Atmosphere.AtAltitude(Length.Zero);
        Digits.Close(113.25, Atmosphere.ToAbsolute(Pressure.FromBars(0.9), ambient).Millibars);
    }

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
        Pressure ambient = Pressure.FromPascals(84556);
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Atmosphere.ToAbsolute(Pressure.FromInchesOfMercury(27), ambient));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Atmosphere.ToBelowAmbient(Pressure.FromPascals(90000), ambient));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Atmosphere.ToAbsolute(Pressure.FromPascals(-1), ambient));
    }
}
