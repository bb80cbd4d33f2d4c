using CsCheck;
using Recipe.Text.Units;

namespace Recipe.Text.Tests;

public sealed class UnitTableTests
{
    private static readonly Unit[] Units = [.. UnitTable.All];

    [Fact]
    public void Conversion_there_and_back_gives_the_number_again() =>
        Gen.Select(Gen.Int[0, Units.Length - 1].Select(i => Units[i]), Gen.Double[-1e6, 1e6]).Sample(
            (unit, number) => Assert.Equal(number, unit.FromSi(unit.ToSi(number)), 1e-9 * (Math.Abs(number) + Math.Abs(unit.Offset / unit.Factor) + 1)),
            iter: 5000);

    [Fact]
    public void Conversion_by_way_of_another_unit_gives_the_number_again()
    {
        var pairs = (from one in Units from other in Units where one.Dimension == other.Dimension select (one, other)).ToArray();

        Gen.Select(Gen.Int[0, pairs.Length - 1].Select(i => pairs[i]), Gen.Double[0.001, 1e6]).Sample(
            (pair, number) =>
            {
                var back = pair.one.FromSi(pair.other.ToSi(pair.other.FromSi(pair.one.ToSi(number))));
                Assert.Equal(number, back, 1e-9 * (number + Math.Abs(pair.one.Offset / pair.one.Factor) + 1));
            },
            iter: 5000);
    }

    [Fact]
    public void A_quotient_of_units_is_worth_the_quotient() =>
        Gen.Select(Gen.Int[0, Units.Length - 1].Select(i => Units[i]), Gen.Int[0, Units.Length - 1].Select(i => Units[i])).Sample(
            (one, other) =>
            {
                var quotient = UnitTable.Get($"{one.Symbol}/{other.Symbol}");
                Assert.Equal(one.Factor / other.Factor, quotient.Factor, 1e-12 * one.Factor / other.Factor);
                Assert.Equal(one.Dimension / other.Dimension, quotient.Dimension);
                Assert.Equal(0, quotient.Offset);
                Assert.Equal($"{one.Symbol}/{other.Symbol}", quotient.Symbol);
            },
            iter: 2000);

    [Fact]
    public void Every_spelling_is_read_whole_and_has_one_canonical_spelling()
    {
        Assert.All(UnitTable.Spellings, spelling =>
        {
            Assert.True(UnitTable.TryParse(spelling, out var unit), spelling);
            Assert.True(UnitTable.TryParse(unit.Symbol, out var canonical));
            Assert.Equal(canonical, unit);
        });
        Assert.Equal(Units.Length, Units.Select(unit => unit.Symbol).Distinct().Count());
    }

    [Theory]
    [InlineData("m", "m")]
    [InlineData("mm x 3", "mm")]
    [InlineData("mPa.s at", "mPa.s")]
    [InlineData("mPa", "mPa")]
    [InlineData("MPa", "MPa")]
    [InlineData("min)", "min")]
    [InlineData("g/m2,", "g/m2")]
    [InlineData("gsm", "gsm")]
    [InlineData("oz/yd2", "oz/yd2")]
    [InlineData("degC/min to", "degC/min")]
    [InlineData("degC-diff", "degC-diff")]
    [InlineData("degC-5", "degC")]
    [InlineData("%x", "%")]
    [InlineData("mm-3", "mm")]
    [InlineData("EUR/m2", "EUR/m2")]
    [InlineData("g/foo", "g")]
    [InlineData("g / m", "g")]
    public void The_longest_unit_that_ends_a_word_is_read(string text, string symbol)
    {
        Assert.True(UnitTable.TryRead(text, out var length, out var unit));
        Assert.Equal(symbol, unit.Symbol);
        Assert.Equal(symbol.Length, length);
    }

    [Theory]
    [InlineData("")]
    [InlineData("metal")]
    [InlineData("m_2")]
    [InlineData("mm-long")]
    [InlineData("mold")]
    [InlineData("grit")]
    [InlineData("dayroom")]
    [InlineData("/m2")]
    [InlineData("2m")]
    public void A_word_that_only_begins_like_a_unit_is_none(string text)
    {
        Assert.False(UnitTable.TryRead(text, out var length, out var unit));
        Assert.Equal(0, length);
        Assert.Null(unit);
    }

    [Theory]
    [InlineData("°C", "degC")]
    [InlineData("ºC", "degC")]
    [InlineData("µm", "um")]
    [InlineData("μm", "um")]
    [InlineData("g/m²", "g/m2")]
    [InlineData("hours", "h")]
    [InlineData("ml", "mL")]
    [InlineData("kg·m", "kg.m")]
    public void Another_spelling_is_read_as_the_canonical_one(string spelling, string symbol) => Assert.Equal(symbol, UnitTable.Get(spelling).Symbol);

    [Theory]
    [InlineData("MBAR", "mbar")]
    [InlineData("inhg", "inHg")]
    [InlineData("Kg", "kg")]
    [InlineData("degc", "degC")]
    [InlineData("secnd", "s")]
    [InlineData("qqqqqq", null)]
    public void A_slip_is_answered_with_the_unit_that_was_meant(string spelling, string? symbol) => Assert.Equal(symbol, UnitTable.Nearest(spelling));

    [Fact]
    public void A_unit_that_does_not_exist_is_refused() => Assert.Throws<ArgumentException>(() => UnitTable.Get("furlong"));

    [Fact]
    public void Money_keeps_its_currency()
    {
        Assert.Equal("EUR", UnitTable.Get("EUR/kg").Currency);
        Assert.Null(UnitTable.Get("g/m2").Currency);
        Assert.Equal(DimensionNames.Money, UnitTable.Get("USD").Dimension);
    }

    [Fact]
    public void A_dimension_says_its_name_or_its_exponents()
    {
        Assert.Equal("kg.m2", new Dimension(1, 2, 0).Name);
        Assert.NotEqual(DimensionNames.Mass.Name, DimensionNames.ArealWeight.Name);
        Assert.Equal(DimensionNames.ArealWeight, UnitTable.Get("oz/yd2").Dimension);
        Assert.Equal(DimensionNames.Mass, UnitTable.Get("oz").Dimension);
        Assert.Equal(DimensionNames.Viscosity, UnitTable.Get("mPa.s").Dimension);
    }
}
