using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>Minutes as papers print them.</summary>
public class WholeMinutesTests
{
    /// <summary>Whoever takes the printed need from the printed limit finds the printed rest; arithmetic.</summary>
    [Theory]
    [InlineData(174.9, 62.1, 174, 63, 111)]
    [InlineData(174, 62, 174, 62, 112)]
    [InlineData(30, 45.5, 30, 46, -16)]
    [InlineData(59.99999999999, 10.00000000001, 60, 10, 50)]
    public void TheRestIsTheDifferenceOfWhatIsPrinted(double limit, double need, double printedLimit, double printedNeed, double left)
    {
        var (by, takes) = (Duration.FromMinutes(limit), Duration.FromMinutes(need));
        Assert.Equal(printedLimit, WholeMinutes.OfLimit(by).Minutes, 9);
        Assert.Equal(printedNeed, WholeMinutes.OfNeed(takes).Minutes, 9);
        Assert.Equal(left, WholeMinutes.Left(by, takes).Minutes, 9);
    }
}
