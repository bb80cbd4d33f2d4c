using System.Globalization;
using System.Text;
using CsCheck;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Tests;

/// <summary>Numbers as text, held against the formatting of the platform, which goes by all digits of a number (IEEE 754).</summary>
public sealed class NumberTests
{
    [Fact]
    public void A_number_is_rounded_as_the_platform_rounds_it()
    {
        var numbers = Gen.OneOf(Gen.Double[-1e3, 1e3], Gen.Double[-1e12, 1e12], Gen.Int[-4000, 4000].Select(n => n / 16.0), Gen.Int[-40000, 40000].Select(n => n / 2000.0), Gen.Double);
        Gen.Select(numbers, Gen.Int[0, 7]).Sample(
            (number, decimals) =>
            {
                if (Math.Abs(number) < 1e15)
                {
                    var expected = number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
                    expected = expected.StartsWith('-') && expected.All(c => c is '-' or '0' or '.') ? expected[1..] : expected;
                    Assert.Equal(expected, Numbers.Fixed(number, decimals));
                }

                Assert.Equal(Numbers.AtMost(number, decimals), new StringBuilder().AppendAtMost(number, decimals).ToString());
            },
            iter: 20_000);
    }

    [Theory]
    [InlineData(0, 3, "0")]
    [InlineData(-0.0004, 3, "0")]
    [InlineData(1200, 3, "1200")]
    [InlineData(-1.5, 3, "-1.5")]
    [InlineData(0.0626, 3, "0.063")]
    [InlineData(99.9996, 3, "100")]
    public void Zeros_at_the_end_are_dropped(double number, int decimals, string expected) => Assert.Equal(expected, Numbers.AtMost(number, decimals));
}
