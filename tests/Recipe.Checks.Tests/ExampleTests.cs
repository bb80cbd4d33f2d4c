using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>The documentation of every check, run through all stages.</summary>
public class ExampleTests
{
    public static TheoryData<string> Codes => [.. CheckCatalogue.All.Select(c => c.Descriptor.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_bad_example_earns_its_finding_and_no_other_warning_or_error(string code)
    {
        var bench = Bench.Of(CheckCatalogue.Find(code)!.Descriptor.BadExample);
        Assert.True(bench.Codes.Contains(code), bench.Story());
        Assert.True(bench.All.Where(f => f.Severity != Severity.Advice).All(f => f.Descriptor.Code == code), bench.Story());
        Assert.True(bench.All.Count(f => f.Descriptor.Code == code) == 1, bench.Story());
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_good_example_earns_no_finding(string code)
    {
        var bench = Bench.Of(CheckCatalogue.Find(code)!.Descriptor.GoodExample);
        Assert.True(!bench.All.Any(), bench.Story());
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Each_fix_settles_the_finding(string code)
    {
        var bench = Bench.Of(CheckCatalogue.Find(code)!.Descriptor.BadExample);
        foreach (var fix in bench.Report.Findings.Where(f => f.Descriptor.Code == code).SelectMany(f => f.Fixes))
        {
            var text = TextEdit.Apply(bench.Source, fix.Edits);
            var after = Bench.Of(text);
            Assert.True(after.Before.IsEmpty, $"{fix.Title}\n{after.Story()}");
            Assert.False(after.Codes.Contains(code), $"{fix.Title}\n{after.Story()}");
        }
    }

    [Fact]
    public void Three_in_five_checks_offer_a_fix()
    {
        var offering = CheckCatalogue.All.Count(c => Bench.Of(c.Descriptor.BadExample).Report.Findings.Any(f => f.Descriptor.Code == c.Descriptor.Code && !f.Fixes.IsEmpty));
        Assert.True(offering >= 0.6 * CheckCatalogue.All.Length, $"{offering} of {CheckCatalogue.All.Length}");
    }
}
