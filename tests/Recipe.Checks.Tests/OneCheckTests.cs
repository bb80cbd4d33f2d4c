using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>
/// Every check run by itself on its own examples: what it finds does not rest on another check having run before. Together with the tests of limits these are
/// what <c>.ci/mutants Checks</c> holds a fault in a check against; all checks at once (<see cref="ExampleTests"/>) would take days there.
/// </summary>
public class OneCheckTests
{
    public static TheoryData<string> Codes => [.. CheckCatalogue.All.Select(c => c.Descriptor.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_check_alone_finds_its_bad_example_once_and_its_fixes_settle_it(string code)
    {
        var text = CheckCatalogue.Find(code)!.Descriptor.BadExample;
        var alone = Assert.Single(Bench.Of(text, checks: Bench.Only(code)).Report.Findings, f => f.Descriptor.Code == code);
        Assert.True(alone.Message.Length > 10, alone.Message);
        foreach (var fix in alone.Fixes)
        {
            var after = Bench.Of(TextEdit.Apply(alone.Where.Source, fix.Edits), checks: Bench.Only(code));
            Assert.DoesNotContain(after.Report.Findings, f => f.Descriptor.Code == code);
        }
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_check_alone_says_nothing_about_its_good_example_and_looked_at_it(string code)
    {
        var report = Bench.Of(CheckCatalogue.Find(code)!.Descriptor.GoodExample, checks: Bench.Only(code)).Report;
        Assert.DoesNotContain(report.Findings, f => f.Descriptor.Code == code);
        Assert.DoesNotContain(report.NotChecked, n => n.Descriptor.Code == code);
    }
}
