using Recipe.Text.Units;

namespace Recipe.Syntax.Tests;

public sealed class ValueTests
{
    [Theory]
    [InlineData("300 mm", 300, "mm")]
    [InlineData("300mm", 300, "mm")]
    [InlineData("45 %", 45, "%")]
    [InlineData("5", 5, null)]
    [InlineData("1e-6 m", 1e-6, "m")]
    [InlineData("0.1 g", 0.1, "g")]
    [InlineData("123456789.123456789 g", 123456789.123456789, "g")]
    public void A_quantity_has_a_number_and_perhaps_a_unit(string text, double number, string? unit)
    {
        var quantity = Read.Value<QuantitySyntax>(text);

        Assert.Equal(number, quantity.Number);
        Assert.Equal(unit, quantity.Unit?.Symbol);
    }

    [Theory]
    [InlineData("1 h 30 min", "h", "min")]
    [InlineData("3 ft 4 in", "ft", "in")]
    [InlineData("1 d 2 h 3 min 4 s", "d", "h", "min", "s")]
    public void Smaller_and_smaller_units_of_one_dimension_add_up(string text, params string[] units) =>
        Assert.Equal(units, Read.Value<CompoundSyntax>(text).Parts.Select(part => part.Unit!.Symbol));

    [Theory]
    [InlineData("30 min 1 h")]
    [InlineData("1 h 30 mm")]
    [InlineData("1 h 2 h")]
    [InlineData("20 degC 5 degF")]
    [InlineData("45 % 3 ppm")]
    public void Other_quantities_in_a_row_are_two_values(string text) => Assert.Equal(2, Read.Values("a " + text).Count);

    [Theory]
    [InlineData("-30", true)]
    [InlineData("+45", false)]
    [InlineData("-0.9 bar", true)]
    public void A_sign_belongs_to_the_quantity_behind_it(string text, bool isNegative) =>
        Assert.Equal(isNegative, Read.Value<SignedSyntax>(text).Negative);

    [Theory]
    [InlineData("0/90", 0, 90, null)]
    [InlineData("45/-45", 45, -45, null)]
    [InlineData("+45/-45", 45, -45, null)]
    [InlineData("-45 / 45", -45, 45, null)]
    [InlineData("3/4 oz/yd2", 3, 4, "oz/yd2")]
    [InlineData("45/-45 deg", 45, -45, "deg")]
    public void A_slash_makes_a_pair(string text, double left, double right, string? unit)
    {
        var pair = Read.Value<PairSyntax>(text);

        Assert.Equal((left, right, unit), (pair.Left, pair.Right, pair.Unit?.Symbol));
    }

    [Theory]
    [InlineData("+/-45", 45)]
    [InlineData("±45", 45)]
    [InlineData("+/- 30 deg", 30)]
    public void Both_signs_open_a_value(string text, double number) => Assert.Equal(number, Read.Value<PlusMinusSyntax>(text).Quantity.Number);

    [Fact]
    public void Both_signs_after_an_orientation_open_a_second_one()
    {
        var values = Read.Values("a 0/90 +/-45 +/-30 deg +/-60");

        Assert.IsType<PairSyntax>(values[0]);
        Assert.All(values.Skip(1), value => Assert.IsType<PlusMinusSyntax>(value));
        Assert.Equal(4, values.Count);
    }

    [Theory]
    [InlineData("100:30", new double[] { 100, 30 })]
    [InlineData("14:05", new double[] { 14, 5 })]
    [InlineData("100 : 25 : 3", new double[] { 100, 25, 3 })]
    public void Colons_make_a_ratio(string text, double[] parts) => Assert.Equal(parts, Read.Value<RatioSyntax>(text).Parts.Select(part => part.Number));

    [Theory]
    [InlineData("140 g +/- 10 g")]
    [InlineData("45 % +/- 3 %")]
    [InlineData("1 h 30 min +/- 5 min")]
    [InlineData("140 ± 10")]
    public void A_tolerance_follows_a_value(string text) => Read.Value<ToleranceSyntax>(text);

    [Theory]
    [InlineData("18 to 25 degC")]
    [InlineData("60 min to 90 min")]
    [InlineData("1 h to 1 h 30 min")]
    [InlineData("-5 to 5 mm")]
    [InlineData("(a + b) to 5 mm")]
    public void To_joins_ends_of_one_unit(string text) => Read.Value<RangeSyntax>(text);

    [Fact]
    public void To_is_a_word_between_different_units()
    {
        var values = Read.Values("ramp 0.5 degC/min to 50 degC");

        Assert.Equal("to", Assert.IsType<WordSyntax>(values[1]).Text);
        Assert.Equal(3, values.Count);
        Assert.IsType<WordSyntax>(Read.Values("cool to 30 degC")[0]);
    }

    [Fact]
    public void A_text_has_its_escapes_resolved()
    {
        Assert.Equal("a \"b\" \\ # {", Read.Value<TextSyntax>("\"a \\\"b\\\" \\\\ # {\"").Text);
        Assert.Equal("", Read.Value<TextSyntax>("\"\"").Text);
    }

    [Fact]
    public void A_date_is_a_day() => Assert.Equal(new DateOnly(2028, 2, 29), Read.Value<DateSyntax>("2028-02-29").Date);

    [Theory]
    [InlineData("a + b * c", '+')]
    [InlineData("a * b + c", '+')]
    [InlineData("a - b - c", '-')]
    [InlineData("(a + b) * c", '*')]
    [InlineData("2 mm / 4", '/')]
    [InlineData("1 / 2 mm", '/')]
    [InlineData("20 mm + 5 mm", '+')]
    public void Arithmetic_binds_as_at_school(string text, char root) => Assert.Equal(root, Assert.IsType<BinarySyntax>(Read.Expression(text)).Operator);

    [Fact]
    public void Subtraction_goes_from_left_to_right()
    {
        var outer = Assert.IsType<BinarySyntax>(Read.Expression("9 - 3 - 2"));

        Assert.IsType<BinarySyntax>(outer.Left);
        Assert.Equal(2, Assert.IsType<QuantitySyntax>(outer.Right).Number);
    }

    [Fact]
    public void A_fraction_of_a_unit_has_no_blanks_round_its_slash_in_arithmetic()
    {
        Assert.Equal(UnitTable.Get("mm"), Assert.IsType<PairSyntax>(Read.Expression("1/2 mm")).Unit);
        Assert.IsType<BinarySyntax>(Read.Expression("1 / 2 mm"));
        Assert.IsType<PairSyntax>(Assert.Single(Read.Values("a 1 / 2 oz/yd2")));
    }

    [Fact]
    public void A_minus_before_a_number_is_its_sign_and_before_anything_else_arithmetic()
    {
        Assert.IsType<SignedSyntax>(Read.Expression("-5 mm"));
        Assert.IsType<NegateSyntax>(Read.Expression("-(a + b)"));
    }

    [Fact]
    public void Parentheses_stand_where_a_quantity_may_and_may_span_lines()
    {
        var sum = Read.Value<ParenthesisSyntax>("(2 * overlap +\n  15 mm)");
        Assert.Null(sum.Unit);

        Assert.Equal("mm", Read.Value<ParenthesisSyntax>("(2 + 3) mm").Unit!.Symbol);
    }
}
