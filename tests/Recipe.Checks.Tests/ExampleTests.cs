using Recipe.Compiler;
using Recipe.Semantics;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>
/// The documentation of every check, run through all stages: with the small book of these tests, and with the book that ships, since
/// people copy examples.
/// </summary>
public class ExampleTests
{
    private const string Small = "small";
    private const string Shipped = "shipped";

    public static TheoryData<string, string> Cases
    {
        get
        {
            var cases = new TheoryData<string, string>();
            foreach (var code in CheckCatalogue.All.Select(c => c.Descriptor.Code))
            {
                cases.Add(code, Small);
                cases.Add(code, Shipped);
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_bad_example_earns_its_finding_once_and_no_other_warning_or_error(string code, string book)
    {
        var bench = Bad(code, book);
        Assert.True(bench.All.Count(f => f.Descriptor.Code == code) == 1, bench.Story());
        Assert.True(bench.All.Where(f => f.Severity != Severity.Advice).All(f => f.Descriptor.Code == code), bench.Story());
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_good_example_earns_no_finding(string code, string book)
    {
        var bench = Bench.Of(CheckCatalogue.Find(code)!.Descriptor.GoodExample, book: BookOf(book));
        Assert.True(!bench.All.Any(), bench.Story());
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_good_example_is_looked_at(string code, string book)
    {
        var bench = Bench.Of(CheckCatalogue.Find(code)!.Descriptor.GoodExample, book: BookOf(book));
        Assert.False(bench.Report.NotChecked.Any(n => n.Descriptor.Code == code), bench.Story());
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_fix_settles_the_finding_and_is_understood(string code, string book)
    {
        var bench = Bad(code, book);
        foreach (var fix in bench.Report.Findings.Where(f => f.Descriptor.Code == code).SelectMany(f => f.Fixes))
        {
            var text = TextEdit.Apply(bench.Source, fix.Edits);
            var after = Bench.Of(text, book: BookOf(book));
            Assert.True(after.Before.IsEmpty, $"{fix.Title}\n{after.Story()}");
            Assert.False(after.Codes.Contains(code), $"{fix.Title}\n{after.Story()}");
        }
    }

    public static TheoryData<string> Codes => [.. CheckCatalogue.All.Select(c => c.Descriptor.Code)];

    // What a fix adds comes out in inches and degrees Fahrenheit then, rounded, and must still be enough.
    [Theory]
    [MemberData(nameof(Codes))]
    public void Each_fix_settles_the_finding_in_a_shop_of_US_units(string code)
    {
        var example = CheckCatalogue.Find(code)!.Descriptor.BadExample;
        var text = example.Contains("shop ours {", StringComparison.Ordinal)
            ? example.Replace("shop ours {", "shop ours {\n  units us\n", StringComparison.Ordinal)
            : "shop ours {\n  units us\n}\n\n" + example;
        var bench = Bench.Of(text);
        foreach (var fix in bench.Report.Findings.Where(f => f.Descriptor.Code == code).SelectMany(f => f.Fixes))
        {
            var after = Bench.Of(TextEdit.Apply(bench.Source, fix.Edits));
            Assert.True(after.Before.IsEmpty, $"{fix.Title}\n{after.Story()}");
            Assert.False(after.Codes.Contains(code), $"{fix.Title}\n{after.Story()}");
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_message_is_one_plain_sentence(string code, string book)
    {
        foreach (var message in Bad(code, book).Report.Findings.Select(f => f.Message))
        {
            Assert.True(message.Length is > 10 and < 220, message);
            Assert.DoesNotContain('\n', message);
            Assert.DoesNotMatch(@"(\.$)|(^0 )|( 0 (layers|plies|coats|checks|tests|resins|holes|steps))|NaN|Infinity|E[+-]\d|  ", message);
        }
    }

    [Fact]
    public void Three_in_five_checks_offer_a_fix()
    {
        var offering = CheckCatalogue.All.Count(c =>
            Bad(c.Descriptor.Code, Small).Report.Findings.Any(f => f.Descriptor.Code == c.Descriptor.Code && !f.Fixes.IsEmpty));
        Assert.True(offering >= 0.6 * CheckCatalogue.All.Length, $"{offering} of {CheckCatalogue.All.Length}");
    }

    private static Bench Bad(string code, string book) => Bench.Of(CheckCatalogue.Find(code)!.Descriptor.BadExample, book: BookOf(book));

    private static Book BookOf(string name) => name == Small ? TestBook.Book : ShippedTexts.Book;
}
