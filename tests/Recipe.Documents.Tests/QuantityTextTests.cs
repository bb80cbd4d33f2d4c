using Recipe.Documents.Quantities;
using Recipe.Model;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>Quantities as they are read at the bench.</summary>
public sealed class QuantityTextTests
{
    private static readonly QuantityText Metric = new(null);
    private static readonly QuantityText Us = new(Of(Model.UnitSystem.Us));
    private static readonly QuantityText Both = new(Of(Model.UnitSystem.Both));

    // 1 in = 25.4 mm, 1 lb = 453.592 37 g: NIST Special Publication 811, appendix B.
    [Theory]
    [InlineData(495.3, "495 mm", "19 1/2 in")]
    [InlineData(494.6, "495 mm", "19 1/2 in")]
    [InlineData(25.4, "25 mm", "1 in")]
    [InlineData(19.05, "19 mm", "3/4 in")]
    [InlineData(4.7625, "5 mm", "3/16 in")]
    [InlineData(0.3, "0 mm", "0 in")]
    [InlineData(25.2, "25 mm", "1 in")]
    public void A_size_to_cut_is_read_off_the_tape(double millimetres, string metric, string us)
    {
        Assert.Equal(metric, Plain(Metric.Size(Mm(millimetres)).Main));
        Assert.Equal(us, Plain(Us.Size(Mm(millimetres)).Main));
        Assert.Equal(us, Plain(Both.Size(Mm(millimetres)).Beside!));
    }

    // 1 degC of difference is 1.8 degF (NIST SP 811, B.9): an oven in degrees Fahrenheit is set in its own degrees.
    [Theory]
    [InlineData(0.5, "0.5 °C/min", "0.9 °F/min")]
    [InlineData(1 / 6.0, "10 °C/h", "18 °F/h")]
    public void A_rate_is_said_in_the_degrees_of_the_shop(double celsiusPerMinute, string metric, string us)
    {
        var rate = TemperatureChangeRate.FromDegreesCelsiusPerMinute(celsiusPerMinute);
        Assert.Equal(metric, Plain(Metric.Rate(rate).ToString()));
        Assert.Equal(us, Plain(Us.Rate(rate).ToString()));
        Assert.Equal($"{metric} ({us})", Plain(Both.Rate(rate).ToString()));
        Assert.Equal($"1 degree a minute ({us})", Plain(Us.Written(Stated(rate, "1 degree a minute"), Us.Rate).ToString()));
    }

    [Fact]
    public void What_a_model_gives_is_said_to_two_figures_or_whole_digits_in_the_units_of_the_shop()
    {
        // NIST SP 811 (2008), B.9: 1 psi is 6.894757 E+03 Pa, so that 10.342 GPa are 1.5 million psi; 1 oz is 28.34952 g.
        var modulus = Pressure.FromPascals(1.5e6 * 6.894757e3);
        var mass = Mass.FromGrams(5.5 * 28.34952);
        Assert.Equal("10 GPa", Plain(Metric.Modulus(modulus).ToString()));
        Assert.Equal("1.5 Msi", Plain(Us.Modulus(modulus).ToString()));
        Assert.Equal("10 GPa", Plain(Both.Modulus(modulus).Main));
        Assert.Equal("1.5 Msi", Plain(Both.Modulus(modulus).Beside!));
        Assert.Equal("156 g", Plain(Both.Roughly(mass).Main));
        Assert.Equal("5.5 oz", Plain(Both.Roughly(mass).Beside!));
    }

    [Fact]
    public void What_an_author_wrote_stands_first_and_in_the_author_s_digits()
    {
        var written = Stated(AreaDensity.FromGramsPerSquareMeter(196.65), "5.8 oz/yd2");
        Assert.Equal("5.8 oz/yd² (197 g/m²)", Plain(Metric.Written(written, value => Metric.ArealWeight(value)).ToString()));
        Assert.Equal("5.8 oz/yd²", Plain(Us.Written(written, value => Us.ArealWeight(value)).ToString()));
    }

    [Fact]
    public void What_the_book_wrote_stands_in_the_units_of_the_shop_first()
    {
        var book = new Figure<Temperature>(C(200), Basis.Book, "200 degC");
        Assert.Equal("200 °C", Plain(Metric.Written(book, value => Metric.Temperature(value)).ToString()));
        Assert.Equal("392 °F (200 °C)", Plain(Us.Written(book, value => Us.Temperature(value)).ToString()));
    }

    [Theory]
    [InlineData("Glass cloth, 80 g/m2 (2.4 oz/yd2)", "Glass cloth, 80 g/m² (2.4 oz/yd²)")]
    [InlineData("Bag film, nylon, 50 um", "Bag film, nylon, 50 µm")]
    [InlineData("Foam, 75 kg/m3", "Foam, 75 kg/m³")]
    [InlineData("waste of cloth cut at +/-45", "waste of cloth cut at ±45")]
    [InlineData("M3 nut, type m2", "M3 nut, type m2")]
    [InlineData("Grade 2 x 3", "Grade 2 x 3")]
    public void A_title_keeps_everything_but_its_units(string title, string read) => Assert.Equal(read, Plain(WrittenText.InTitle(title)));

    [Fact]
    public void No_number_in_a_title_is_parted_from_its_unit()
    {
        Assert.Equal("Glass tape, 50\u00A0mm wide, 200\u00A0g/m²", WrittenText.InTitle("Glass tape, 50 mm wide, 200 g/m2"));
    }

    [Fact]
    public void A_limit_is_rounded_down_and_a_need_up()
    {
        Assert.Equal("29 min", Plain(QuantityText.Minutes(Min(29.9), Rounding.Down)));
        Assert.Equal("30 min", Plain(QuantityText.Minutes(Min(29.1), Rounding.Up)));
        Assert.Equal("30 min", Plain(QuantityText.Minutes(Min(29.9999999999), Rounding.Down)));
    }

    private static Shop Of(Model.UnitSystem units) => new() { Name = "ours", Where = Here, Units = units };

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
