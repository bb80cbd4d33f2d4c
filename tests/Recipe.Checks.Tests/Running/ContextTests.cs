using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks.Tests;

public class ContextTests
{
    private static readonly Assumption Trim = new("default.trim", "plies run past the trim line by", "15 mm", "common practice", "write `trim 15 mm`");

    [Fact]
    public void A_finding_that_rests_on_a_default_is_at_most_a_warning_and_names_it()
    {
        var length = new Computed<Length>(Length.FromMillimeters(15), ["default.trim"]);
        var found = Single(c => c.Report(c.Part.Where, "2 is more than 1", Grounds.Sure.And<Length>(length)));
        Assert.Equal(Severity.Warning, found.Severity);
        Assert.Equal("2 is more than 1 (assumed: plies run past the trim line by 15 mm)", found.Message);
    }

    [Fact]
    public void A_finding_that_rests_on_an_assumed_figure_is_at_most_a_warning_and_names_it()
    {
        var figure = new Figure<int>(60, Basis.Assumed, "60 degC");
        var found = Single(c => c.Report(c.Part.Where, "2 is more than 1", Grounds.Sure.And("limit of the hose", figure)));
        Assert.Equal(Severity.Warning, found.Severity);
        Assert.EndsWith("(assumed: limit of the hose 60 degC)", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Basis.Stated)]
    [InlineData(Basis.Book)]
    public void What_is_stated_or_in_the_book_makes_an_error(Basis basis)
    {
        var found = Single(c => c.Report(c.Part.Where, "2 is more than 1", Grounds.Sure.And("limit", new Figure<int>(60, basis, "60 degC"))));
        Assert.Equal(Severity.Error, found.Severity);
        Assert.Equal("2 is more than 1", found.Message);
    }

    [Fact]
    public void Two_assumptions_are_named_and_the_others_counted()
    {
        var grounds = Grounds.Sure.AndThat("a").AndThat("b").AndThat("a").AndThat("c").And<int>(new Computed<int>(1, ["key"]));
        Assert.EndsWith("(assumed: a; b; +2 more)", Single(c => c.Report(c.Part.Where, "m", grounds)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_that_cannot_look_says_so_once_and_not_at_all_when_it_found_something()
    {
        var twice = new SomeCheck("RC7777", c =>
        {
            c.NotChecked("no pot life");
            c.NotChecked("no film life");
        });
        Assert.Equal("no pot life", Assert.Single(Run(twice).NotChecked).Missing);

        var both = new SomeCheck("RC7777", c =>
        {
            c.NotChecked("no pot life");
            c.Report(c.Part.Where, "2 is more than 1");
        });
        Assert.Empty(Run(both).NotChecked);
        Assert.Single(Run(both).Findings);
    }

    [Fact]
    public void What_two_parts_share_is_reported_once()
    {
        var check = new SomeCheck("RC7777", c => c.Report(Bare.Name, "2 is more than 1"));
        var model = Bare.Model(Bare.Part("a"), Bare.Part("b"));
        Assert.Single(CheckRunner.Run([.. model.Parts.Select(p => Bare.Plan(p))], model, null, [check]).Findings);
    }

    [Fact]
    public void Findings_come_in_the_order_of_the_text_whatever_the_order_of_the_checks()
    {
        var late = new SomeCheck("RC2001", c => c.Report(Place.Of(Bare.Source, "two"), "late"));
        var early = new SomeCheck("RC8001", c => c.Report(Place.Of(Bare.Source, "one"), "early"));
        var part = Bare.Part("lid");
        var one = CheckRunner.Run([Bare.Plan(part)], Bare.Model(part), null, [late, early]);
        var other = CheckRunner.Run([Bare.Plan(part)], Bare.Model(part), null, [early, late]);
        Assert.Equal(["early", "late"], one.Findings.Select(f => f.Message));
        Assert.Equal(one.Findings.Select(f => f.Message), other.Findings.Select(f => f.Message));
    }

    [Fact]
    public void Nothing_to_examine_gives_an_empty_report()
    {
        var report = CheckRunner.Run([], Bare.Model(), null);
        Assert.Empty(report.Findings);
        Assert.Empty(report.Accepted);
        Assert.Empty(report.NotChecked);
    }

    private static Finding Single(Action<CheckContext> examine) => Assert.Single(Run(new SomeCheck("RC7777", examine)).Findings);

    private static CheckReport Run(SomeCheck check)
    {
        var part = Bare.Part("lid");
        return CheckRunner.Run([Bare.Plan(part, Trim)], Bare.Model(part), null, [check]);
    }
}
