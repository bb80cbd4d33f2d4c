using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class PotLifeTests
{
    private static Temperature C(double degrees) => Temperature.FromDegreesCelsius(degrees);

    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static PotLifeReference Sheet(double minutes, double celsius, double grams = 100) =>
        new(Duration.FromMinutes(minutes), C(celsius), G(grams));

    // Common practice, from memory: life halves for each 10 K; 40 min at 25 degC.
    [Theory]
    [InlineData(25, "40")]
    [InlineData(35, "20")]
    [InlineData(30, "28.28")]
    [InlineData(15, "80")]
    public void Life_halves_for_each_ten_degrees(double celsius, string minutes) =>
        Digits.AsPrinted(minutes, PotLife.At(Sheet(40, 25), C(celsius), G(100)).Life.Minutes);

    // Common practice: factors on a life given at 23 degC.
    [Theory]
    [InlineData(10, "2.5")]
    [InlineData(18, "1.4")]
    [InlineData(20, "1.2")]
    [InlineData(23, "1")]
    [InlineData(28, "0.7")]
    [InlineData(30, "0.6")]
    [InlineData(35, "0.44")]
    public void Temperature_factors_agree_with_the_common_table(double celsius, string factor) =>
        Digits.AsPrinted(factor, PotLife.At(Sheet(60, 23), C(celsius), G(100)).TemperatureFactor);

    [Fact]
    public void Factor_two_is_the_size_that_an_epoxy_cure_asks_for()
    {
        // Arrhenius with 55 kJ/mol, in the middle of published activation energies of amine cure (44 to 57 kJ/mol): 2.055.
        double arrhenius = Math.Exp(55000 / 8.314462618 * ((1 / 298.15) - (1 / 308.15)));
        double rule = PotLife.At(Sheet(60, 25), C(25), G(100)).Life / PotLife.At(Sheet(60, 25), C(35), G(100)).Life;
        Digits.Close(arrhenius, rule, 0.03);
    }

    [Fact]
    public void Above_ninety_Fahrenheit_the_life_is_at_most_half()
    {
        // US Army TM 1-1500-204-23-11: above 90 degF (32.2 degC) halve the maker's pot life.
        PotLifeEstimate hot = PotLife.At(Sheet(40, 25), C(33), G(100));
        Digits.Close(20, hot.Life.Minutes);
        Assert.True(hot.Assumptions.HasFlag(PotLifeAssumptions.HalvedWhenHot));

        PotLifeEstimate below = PotLife.At(Sheet(40, 25), Temperature.FromDegreesFahrenheit(90), G(100));
        Digits.Close(40 * Math.Pow(2, -((290 / 9.0) - 25) / 10), below.Life.Minutes);
        Assert.False(below.Assumptions.HasFlag(PotLifeAssumptions.HalvedWhenHot));

        // A life that the sheet gives for hot resin is not halved again.
        PotLifeEstimate hotSheet = PotLife.At(Sheet(15, 35), C(36), G(100));
        Assert.False(hotSheet.Assumptions.HasFlag(PotLifeAssumptions.HalvedWhenHot));
        Digits.Close(15 * Math.Pow(2, -0.1), hotSheet.Life.Minutes);
    }

    // Common practice, from memory: factors against a pot of 100 to 150 g; 500 g 0.55 to 0.65, 1 kg 0.35 to 0.5, deep cup.
    [Theory]
    [InlineData(100, 1, 1)]
    [InlineData(150, 1, 1)]
    [InlineData(300, 0.75, 0.75)]
    [InlineData(500, 0.55, 0.65)]
    [InlineData(1000, 0.35, 0.5)]
    public void Larger_pots_live_shorter(double grams, double low, double high)
    {
        double factor = PotLife.At(Sheet(60, 23), C(23), G(grams)).MassFactor;
        Assert.InRange(factor, low - 1e-9, high + 1e-9);
    }

    [Fact]
    public void A_gallon_goes_off_in_minutes()
    {
        // Common practice: a gallon of an hour's resin is gone in minutes. 3.8 L is about 4.2 kg.
        Assert.InRange(PotLife.At(Sheet(60, 23), C(23), G(4200)).Life.Minutes, 2, 15);
        Assert.True(PotLife.At(Sheet(60, 23), C(23), G(4200)).Assumptions.HasFlag(PotLifeAssumptions.MassBeyondCurve));
    }

    [Fact]
    public void Mass_counts_against_the_mass_of_the_data_sheet()
    {
        // A life measured in 500 g is the life of 500 g, and a small pot lives longer than that.
        PotLifeEstimate same = PotLife.At(Sheet(30, 23, 500), C(23), G(500));
        Digits.Close(30, same.Life.Minutes);
        Assert.Equal(PotLifeAssumptions.None, same.Assumptions);
        Digits.Close(50, PotLife.At(Sheet(30, 23, 500), C(23), G(100)).Life.Minutes);
    }

    [Fact]
    public void Trays_and_films_live_longer()
    {
        // Common practice, from memory: tray of at most 10 mm 1.5 to 2.5 times, film 2 to 3 times a small pot.
        PotLifeEstimate tray = PotLife.At(Sheet(60, 23), C(23), G(100), PotShape.ShallowTray);
        Assert.InRange(tray.Life.Minutes, 90, 150);
        Assert.True(tray.Assumptions.HasFlag(PotLifeAssumptions.ShallowTray));

        PotLifeEstimate film = PotLife.InFilm(Sheet(60, 23), C(23));
        Assert.InRange(film.Life.Minutes, 120, 180);
        Assert.True(film.Assumptions.HasFlag(PotLifeAssumptions.ThinFilm));
        Digits.Close(film.Life.Minutes, 2 * PotLife.At(Sheet(60, 23), C(23), PotLife.SmallPot).Life.Minutes);

        // Where the sheet gives the film life, only the temperature changes it.
        PotLifeEstimate given = PotLife.InFilm(Duration.FromMinutes(150), C(23), C(13));
        Digits.Close(300, given.Life.Minutes);
        Assert.Equal(PotLifeAssumptions.HalvesPerTenKelvin, given.Assumptions);
    }

    [Fact]
    public void Life_falls_with_temperature_and_mass()
    {
        Gen.Select(Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[1, 20000], Gen.Double[1, 20000], Gen.Double[15, 40]).Sample(
            (t1, t2, m1, m2, sheet) =>
            {
                PotLifeReference reference = Sheet(60, sheet);
                double easy = PotLife.At(reference, C(Math.Min(t1, t2)), G(Math.Min(m1, m2))).Life.Minutes;
                double hard = PotLife.At(reference, C(Math.Max(t1, t2)), G(Math.Max(m1, m2))).Life.Minutes;
                return hard <= easy * (1 + 1e-12);
            },
            iter: 5000);
    }

    [Fact]
    public void Beyond_a_small_pot_life_falls_strictly_and_without_jumps()
    {
        Gen.Select(Gen.Double[151, 20000], Gen.Double[1.0001, 1.01]).Sample(
            (mass, step) =>
            {
                double here = PotLife.At(Sheet(60, 23), C(23), G(mass)).MassFactor;
                double next = PotLife.At(Sheet(60, 23), C(23), G(mass * step)).MassFactor;
                return next < here && next > here * (1 - (0.6 * (step - 1)));
            },
            iter: 2000);
    }

    [Fact]
    public void At_the_conditions_of_the_sheet_nothing_is_assumed()
    {
        PotLifeEstimate same = PotLife.At(Sheet(60, 23), C(23), G(100));
        Digits.Close(60, same.Life.Minutes);
        Assert.Equal(PotLifeAssumptions.None, same.Assumptions);
        Assert.Equal(
            PotLifeAssumptions.HalvesPerTenKelvin | PotLifeAssumptions.TemperatureBeyondRule,
            PotLife.At(Sheet(60, 23), C(5), G(100)).Assumptions);
        Assert.Equal(PotLifeAssumptions.BatchMassCurve, PotLife.At(Sheet(60, 23), C(23), G(400)).Assumptions);
    }

    [Fact]
    public void Conditions_beyond_reason_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PotLife.At(Sheet(60, 23), C(-5), G(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotLife.At(Sheet(60, 23), C(80), G(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotLife.At(Sheet(60, 23), C(23), Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sheet(0, 23));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sheet(60, 90));
    }
}
