using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

public class WaiverTests
{
    private static readonly DateOnly Today = new(2026, 5, 14);
    private static readonly SomeCheck Fires = new("RC7777", c => c.Report(c.Part.Where, "2 is more than 1"));
    private static readonly SomeCheck Burns = new("RC7778", c => c.Report(c.Part.Where, "3 is more than 1"), canBeAccepted: false);
    private static readonly SomeCheck Quiet = new("RC7779", _ => { });
    private static readonly SomeCheck Blind = new("RC7780", c => c.NotChecked("no eyes"));

    [Theory]
    [InlineData("RC7777")]
    [InlineData("some-7777")]
    public void A_reason_silences_the_finding_and_both_are_kept(string named)
    {
        var report = Run(Today, Bare.Waiver(named, "small bag"));
        Assert.Empty(report.Findings);
        var accepted = Assert.Single(report.Accepted);
        Assert.Equal("small bag", accepted.AcceptedBecause);
        Assert.Equal("2 is more than 1", accepted.Message);
        Assert.False(report.HasErrors);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(" ")]
    public void A_waiver_without_a_reason_counts_for_nothing_and_is_left_to_the_binder(string? because) =>
        Assert.Equal("RC7777", Assert.Single(Run(Today, Bare.Waiver("RC7777", because)).Findings).Descriptor.Code);

    [Fact]
    public void A_lapsed_waiver_counts_for_nothing_and_is_reported()
    {
        var report = Run(Today, Bare.Waiver("RC7777", until: Today.AddDays(-1)));
        Assert.Equal(["RC7777", "RC9003"], report.Findings.Select(f => f.Descriptor.Code));
        Assert.Contains("2026-05-13", report.Findings[1].Message, StringComparison.Ordinal);
        Assert.Contains("2026-05-14", report.Findings[1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_waiver_holds_on_its_last_day_and_for_ever_when_no_day_is_given()
    {
        Assert.Empty(Run(Today, Bare.Waiver("RC7777", until: Today)).Findings);
        Assert.Empty(Run(null, Bare.Waiver("RC7777", until: Today.AddDays(-1))).Findings);
    }

    [Fact]
    public void What_can_hurt_somebody_is_not_accepted()
    {
        var report = Run([Burns], Today, Bare.Waiver("some-7778"));
        Assert.Equal(["RC7778", "RC9004"], report.Findings.Select(f => f.Descriptor.Code));
        Assert.Empty(report.Accepted);
    }

    [Fact]
    public void What_is_found_in_the_text_is_not_accepted() =>
        Assert.Equal(["RC7777", "RC9004"], Run(Today, Bare.Waiver("decimal-comma")).Findings.Select(f => f.Descriptor.Code));

    [Fact]
    public void A_waiver_of_nothing_is_reported_with_the_nearest_code()
    {
        var found = Run(Today, Bare.Waiver("some-777")).Findings.Single(f => f.Descriptor.Code == "RC9001");
        Assert.Contains("some-7777", found.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Warning, found.Severity);
        Assert.Contains("RC9001", Run(Today, Bare.Waiver("qqqqqqqq")).Findings.Select(f => f.Descriptor.Code));
    }

    [Fact]
    public void An_unused_waiver_is_advice()
    {
        var found = Assert.Single(Run([Quiet], Today, Bare.Waiver("RC7779")).Findings);
        Assert.Equal("RC9002", found.Descriptor.Code);
        Assert.Equal(Severity.Advice, found.Severity);
    }

    [Fact]
    public void A_waiver_of_a_check_that_could_not_look_is_not_called_unused() =>
        Assert.Empty(Run([Blind], Today, Bare.Waiver("RC7780")).Findings);

    [Fact]
    public void A_waiver_of_the_file_holds_for_every_part_and_is_used_when_one_needs_it()
    {
        var model = Bare.Model(Bare.Part("a"), Bare.Part("b")) with { Waivers = [Bare.Waiver("RC7777")] };
        var onlyB = new SomeCheck("RC7777", c =>
        {
            if (c.Part.Name == "b")
            {
                c.Report(c.Part.Where, "2 is more than 1");
            }
        });
        var plans = model.Parts.Select(p => Bare.Plan(p)).ToList();
        Assert.Empty(CheckRunner.Run(plans, model, Today, [onlyB, .. Waivers]).Findings);

        // Alone, part a does not need it; but nobody can say so before b was examined.
        Assert.Empty(CheckRunner.Run([plans[0]], model, Today, [onlyB, .. Waivers]).Findings);
    }

    [Fact]
    public void A_waiver_that_a_variant_inherits_is_unused_only_when_neither_needs_it()
    {
        var shared = Bare.Waiver("RC7779");
        var model = Bare.Model(Bare.Part("a", shared), Bare.Part("b", shared));
        var plans = model.Parts.Select(p => Bare.Plan(p)).ToList();
        Assert.Empty(CheckRunner.Run([plans[1]], model, Today, [Quiet, .. Waivers]).Findings);
        Assert.Equal("RC9002", Assert.Single(CheckRunner.Run(plans, model, Today, [Quiet, .. Waivers]).Findings).Descriptor.Code);
    }

    private static IEnumerable<Check> Waivers => CheckCatalogue.All.Where(c => c is WaiverCheck);

    private static CheckReport Run(DateOnly? today, Waiver waiver) => Run([Fires], today, waiver);

    private static CheckReport Run(Check[] checks, DateOnly? today, Waiver waiver)
    {
        var part = Bare.Part("lid", waiver);
        return CheckRunner.Run([Bare.Plan(part)], Bare.Model(part), today, [.. checks, .. Waivers]);
    }
}
