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
        Assert.Equal("2 is more than 1 (assumed: plies run past the trim line by: 15 mm)", found.Message);
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
    public void Two_assumptions_are_named_and_more_figures_are_counted()
    {
        Assert.Equal("m (assumed: a; b)", Message(Grounds.Sure.AndThat("a").AndThat("b").AndThat("a")));
        Assert.Equal("m (assumed: a; key)", Message(Grounds.Sure.AndThat("a").And<int>(new Computed<int>(1, ["key"]))));
        Assert.Equal("m (assumed: a; b; 1 figure, listed on the papers)", Message(Grounds.Sure.AndThat("a").AndThat("b").And<int>(new Computed<int>(1, ["key"]))));
        Assert.Equal("m (assumed: 3 figures, listed on the papers)", Message(Grounds.Sure.And<int>(new Computed<int>(1, ["k1", "k2", "k3"]))));

        static string Message(Grounds grounds) => Single(c => c.Report(c.Part.Where, "m", grounds)).Message;
    }

    [Fact]
    public void A_figure_of_a_material_is_said_as_its_line_is_written()
    {
        var hose = new Assumption("book.pvc-hose.heat-limit", "heat-limit of Vacuum hose", "60 degC", "memory", "measure it");
        var check = new SomeCheck("RC7777", c => c.Report(c.Part.Where, "m", Grounds.Sure.And<int>(new Computed<int>(1, [hose.Key]))));
        var part = Bare.Part("lid");
        var found = Assert.Single(CheckRunner.Run([Bare.Plan(part, hose)], Bare.Model(part), null, [check]).Findings);
        Assert.Equal("m (assumed: heat-limit 60 degC of Vacuum hose)", found.Message);
    }

    [Fact]
    public void An_assumption_that_the_finding_does_not_depend_on_can_be_left_out()
    {
        var both = new Computed<int>(1, ["default.overlap", "default.trim"]);
        Assert.True(Grounds.Sure.And<int>(both, except: "default.overlap").IsAssumed);
        Assert.False(Grounds.Sure.And<int>(new Computed<int>(1, ["default.overlap"]), except: "default.overlap").IsAssumed);
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
    public void Findings_come_in_the_order_of_the_day_then_of_the_text_whatever_the_order_of_the_checks()
    {
        var late = new SomeCheck("RC2002", c => c.Report(Place.Of(Bare.Source, "two"), "release, below"));
        var early = new SomeCheck("RC2001", c => c.Report(Place.Of(Bare.Source, "one"), "release, above"));
        var join = new SomeCheck("RC8001", c => c.Report(Place.Of(Bare.Source, "one"), "join"));
        var part = Bare.Part("lid");
        var one = CheckRunner.Run([Bare.Plan(part)], Bare.Model(part), null, [join, late, early]);
        var other = CheckRunner.Run([Bare.Plan(part)], Bare.Model(part), null, [early, late, join]);
        Assert.Equal(["release, above", "release, below", "join"], one.Findings.Select(f => f.Message));
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
