using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>The same recipes with a book whose figures nobody measured: what was an error for certain is then at most a warning.</summary>
public class AssumedTests
{
    private static readonly Book Assumed = Book.Bind(
        [SyntaxTree.Parse(new SourceText("book/assumed.recipe", TestBook.Text.Replace("source \"", "source assumed \"", StringComparison.Ordinal)))]);

    [Theory]
    [InlineData("RC2005")]
    [InlineData("RC4006")]
    [InlineData("RC7003")]
    [InlineData("RC7004")]
    [InlineData("RC7005")]
    [InlineData("RC7007")]
    public void An_error_that_rests_on_the_book_becomes_a_warning_when_the_book_assumes(string code)
    {
        var text = CheckCatalogue.Find(code)!.Descriptor.BadExample;
        Assert.Equal(Severity.Error, Found(code, text, TestBook.Book).Severity);
        var found = Found(code, text, Assumed);
        Assert.Equal(Severity.Warning, found.Severity);
        Assert.Contains("(assumed: ", found.Message, StringComparison.Ordinal);
    }

    public static TheoryData<string> Codes => [.. CheckCatalogue.All.Select(c => c.Descriptor.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void No_error_rests_on_a_default_or_an_assumed_figure(string code)
    {
        var d = CheckCatalogue.Find(code)!.Descriptor;
        foreach (var bench in new[] { d.BadExample, d.GoodExample }.SelectMany(t => new[] { Bench.Of(t), Bench.Of(t, book: Assumed) }))
        {
            foreach (var finding in bench.Report.Findings.Where(f => f.Message.Contains("(assumed: ", StringComparison.Ordinal)))
            {
                Assert.NotEqual(Severity.Error, finding.Severity);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void An_assumed_book_changes_what_is_certain_and_not_what_is_found(string code)
    {
        var d = CheckCatalogue.Find(code)!.Descriptor;
        Assert.Equal(Bench.Of(d.BadExample).Codes, Bench.Of(d.BadExample, book: Assumed).Codes);
    }

    private static Finding Found(string code, string text, Book book) => Bench.Of(text, book: book).Report.Findings.Single(f => f.Descriptor.Code == code);
}
