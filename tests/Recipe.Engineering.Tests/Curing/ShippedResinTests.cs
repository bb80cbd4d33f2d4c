using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.TestKit;
using static Recipe.Engineering.Tests.Cures;

namespace Recipe.Engineering.Tests;

/// <summary>Several tests here say what the slow laminating epoxy of the book does. They mean the figures that ship, or they say nothing of it.</summary>
public class ShippedResinTests
{
    private static readonly string Sheet = Block(Repository.Read("src/Recipe.Compiler/Book/resins.recipe"), "resin slow-laminating-epoxy {");

    [Theory]
    [InlineData("pot-life", "60 min at 23 degC in 100 g")]
    [InlineData("film-life", "150 min at 23 degC")]
    [InlineData("gel-time", "5 h at 23 degC")]
    [InlineData("demould", "24 h at 20 degC")]
    [InlineData("glass-transition", "45 degC after 20 degC for 24 h")]
    [InlineData("glass-transition-limit", "85 degC")]
    [InlineData("heat-of-reaction", "450 J/g")]
    public void The_sheet_says_what_these_tests_say_of_it(string word, string figure) => Assert.StartsWith(figure, Written(word), StringComparison.Ordinal);

    [Fact]
    public void Its_rate_is_that_of_these_tests()
    {
        var shipped = Kamal(Number("a1") / 60, Number("e1-over-r"), Number("a2") / 60, Number("e2-over-r"), Number("m"), Number("n"));
        foreach (double celsius in new double[] { 10, 23, 60, 120 })
        {
            Digits.Close(shipped.RateAt(Part(0.3), C(celsius)).Hertz, Slow.RateAt(Part(0.3), C(celsius)).Hertz);
        }
    }

    private static string Written(string word) => Assert.Single(Regex.Matches(Sheet, $@"^ +{word} +(.+)$", RegexOptions.Multiline)).Groups[1].Value;

    private static double Number(string word) => double.Parse(Regex.Match(Written(word), @"[0-9][0-9.e]*").Value, CultureInfo.InvariantCulture);

    private static string Block(string book, string head)
    {
        int start = book.IndexOf(head, StringComparison.Ordinal);
        return book[start..book.IndexOf("\n}\n", start, StringComparison.Ordinal)];
    }
}
