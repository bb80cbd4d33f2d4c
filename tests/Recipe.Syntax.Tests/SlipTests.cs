using Recipe.Text.Findings;

namespace Recipe.Syntax.Tests;

/// <summary>
/// What people write who never read the language page: each is answered once, with fixes that lead to a text that is read. Dates: ISO 8601;
/// codes of currencies: ISO 4217; marks of feet and inches, and the order of a date at home: common practice.
/// </summary>
public sealed class SlipTests
{
    [Theory]
    [InlineData("target 140 g +- 10 g", "target 140 g +/- 10 g")]
    [InlineData("body my-twill +-45", "body my-twill +/-45")]
    public void Plus_and_minus_without_the_slash_are_both_signs(string text, string meant)
    {
        var finding = Assert.Single(Read.Tree(text).Findings);

        Assert.Equal("RC1023", finding.Descriptor.Code);
        Assert.Equal(FixSafety.Safe, Assert.Single(finding.Fixes).Safety);
        Assert.Equal(meant, TextEdit.Apply(finding.Where.Source, finding.Fixes[0].Edits));
        Read.Clean(meant);
    }

    /// <summary>What somebody put on one line on purpose, braces and all, is no slip; two blocks on one line elsewhere are.</summary>
    [Theory]
    [InlineData("rule r {\n  bad { mould m { flange 5 mm } part p { mould m } }\n}\n", 0)]
    [InlineData("rule r {\n  bad { mould m { flange 5 mm } part p { mould m }\n}\n}\n", 1)]
    [InlineData("rule r {\n  bad { mould m { a 1 } part p { b 2 } } good { mould m { a 2 } part p { b 2 } }\n}\n", 1)]
    [InlineData("mould m { flange 5 mm } part p { mould m }\n", 1)]
    public void A_block_of_one_line_may_hold_several_blocks(string text, int slips) =>
        Assert.Equal(Enumerable.Repeat("RC1021", slips), Read.Codes(text));

    [Theory]
    [InlineData("let a = 3 mm +-2 mm")]
    [InlineData("a (3 mm +-2 mm)")]
    public void In_arithmetic_a_minus_behind_a_plus_stays_a_minus(string text) => Read.Clean(text);

    [Theory]
    [InlineData("surface flat 14\" x 5\"", "surface flat 14 in x 5 in")]
    [InlineData("surface flat 5'6\" x 4\u2033", "surface flat 5 ft 6 in x 4 in")]
    [InlineData("surface flat 14'' x 5\u201d", "surface flat 14 in x 5 in")]
    [InlineData("length 5\u2032 note \"14\" ", "length 5 ft note \"14\" ")]
    public void Marks_of_feet_and_inches_are_read_and_answered(string text, string meant)
    {
        var tree = Read.Tree(text);

        Assert.NotEmpty(tree.Findings);
        Assert.All(tree.Findings, finding => Assert.Equal("RC1024", finding.Descriptor.Code));
        Assert.Equal(meant, TextEdit.Apply(tree.Source, tree.Findings.SelectMany(finding => finding.Fixes[0].Edits)));
        Read.Clean(meant);
        Assert.IsType<EntrySyntax>(Assert.Single(tree.Root.Statements));
    }

    [Fact]
    public void Lines_with_such_slips_are_laid_out_as_they_stand_and_so_are_those_round_them() => Assert.Equal(
        "mould m {\n  surface  flat 14\" x 5 1/2\"\n  flange   3 in\n  mass     140 g +- 10 g\n  lay      +-45\n  day      10/01/2026\n  price    8.20 $/yd2\n}\n",
        Read.Format("mould m {\n surface flat 14\" x 5 1/2\"\n    flange 3in\n mass 140g+-10g\n lay   +-45\n day  10/01/2026\n price 8.20$/yd2\n}\n"));

    [Theory]
    [InlineData("10/01/2026", "2026-01-10", "2026-10-01")]
    [InlineData("10.01.2026", "2026-01-10", "2026-10-01")]
    [InlineData("10-1-2026", "2026-01-10", "2026-10-01")]
    [InlineData("10/1/26", "2026-01-10", "2026-10-01")]
    [InlineData("10/13/2026", "2026-10-13")]
    [InlineData("13.10.2026", "2026-10-13")]
    [InlineData("2026/10/13", "2026-10-13")]
    [InlineData("2026-1-5", "2026-01-05")]
    [InlineData("7/7/2026", "2026-07-07")]
    [InlineData("14/14/2026")]
    [InlineData("2026/13/01")]
    public void A_date_in_another_order_is_offered_as_each_day_that_it_can_be(string date, params string[] days)
    {
        var finding = Assert.Single(Read.Tree($"on {date} rest").Findings);

        Assert.Equal("RC1025", finding.Descriptor.Code);
        Assert.Equal(date, finding.Where.Text);
        Assert.Equal(days.Select(day => $"on {day} rest"), finding.Fixes.Select(fix => TextEdit.Apply(finding.Where.Source, fix.Edits)));
        Assert.All(finding.Fixes, fix => Assert.Equal(days.Length == 1 ? FixSafety.Safe : FixSafety.NeedsALook, fix.Safety));
    }

    [Theory]
    [InlineData("roll 1,250,000 mm", "roll 1250000 mm")]
    [InlineData("roll 1.250.000 mm", "roll 1250000 mm")]
    [InlineData("roll 1,250.5 mm", "roll 1250.5 mm")]
    [InlineData("roll 1.250,5 mm", "roll 1250.5 mm")]
    [InlineData("roll 1.25.5 mm", null)]
    [InlineData("roll 0,250.5 mm", null)]
    public void Thousands_in_threes_are_put_together(string text, string? meant)
    {
        var finding = Assert.Single(Read.Tree(text).Findings);

        Assert.Equal("RC1009", finding.Descriptor.Code);
        Assert.Equal(meant is null ? [] : [meant], finding.Fixes.Select(fix => TextEdit.Apply(finding.Where.Source, fix.Edits)));
    }

    [Theory]
    [InlineData("room 18\u201325 \u00b0C", "room 18 to 25 \u00b0C")]
    [InlineData("room 18 \u00b0C\u2013 25 \u00b0C", "room 18 \u00b0C to  25 \u00b0C")]
    [InlineData("night \u20135 \u00b0C", "night -5 \u00b0C")]
    [InlineData("lay cloth\u2013tape", "lay cloth-tape")]
    [InlineData("flange 3\u00bd in", "flange 3.5 in")]
    [InlineData("flange \u00be in", "flange 0.75 in")]
    public void What_a_data_sheet_prints_is_answered_with_what_is_read(string text, string meant)
    {
        var finding = Assert.Single(Read.Tree(text).Findings);

        Assert.Equal("RC1003", finding.Descriptor.Code);
        Assert.Equal(meant, TextEdit.Apply(finding.Where.Source, finding.Fixes[0].Edits));
        Read.Clean(meant);
    }

    [Fact]
    public void Of_a_text_only_what_cannot_be_seen_is_given_by_its_number() =>
        Assert.EndsWith("not with a character that cannot be seen (U+200B)", Assert.Single(Read.Tree("\"a\u200bb\" 5").Findings).Message, StringComparison.Ordinal);

    [Fact]
    public void A_year_of_two_figures_is_never_written_out_unseen()
    {
        var finding = Assert.Single(Read.Tree("on 13/10/26").Findings);

        Assert.Equal("RC1025", finding.Descriptor.Code);
        Assert.Equal(FixSafety.NeedsALook, Assert.Single(finding.Fixes).Safety);
    }

    [Theory]
    [InlineData("0/45/90")]
    [InlineData("45/0/45")]
    [InlineData("90/45/0")]
    [InlineData("0/45/90/45")]
    public void A_stack_on_one_line_is_no_date_and_no_arithmetic(string directions)
    {
        var finding = Assert.Single(Read.Tree($"body my-twill {directions}").Findings);

        Assert.Equal("RC1008", finding.Descriptor.Code);
        Assert.Equal("/", finding.Where.Text);
        Assert.StartsWith("a pair such as 0/90 has two numbers", finding.Message, StringComparison.Ordinal);
        Assert.Empty(finding.Fixes);
    }

    [Theory]
    [InlineData("(10/1/2026)")]
    [InlineData("1.5 0/90")]
    [InlineData("10 -1 -2026")]
    public void What_only_looks_like_a_date_is_none(string values) => Read.Clean("a " + values);

    [Theory]
    [InlineData("price $8.20/yd2", "price 8.20 USD/yd2")]
    [InlineData("price 8.20$/yd2", "price 8.20 USD/yd2")]
    [InlineData("price 8.20 $/yd2", "price 8.20 USD/yd2")]
    [InlineData("price \u20ac 20", "price 20 EUR")]
    [InlineData("price \u00a35.50/kg", "price 5.50 GBP/kg")]
    public void A_sign_for_money_is_answered_with_the_code(string text, string meant)
    {
        var finding = Assert.Single(Read.Tree(text).Findings);

        Assert.Equal("RC1026", finding.Descriptor.Code);
        Assert.Equal(meant, TextEdit.Apply(finding.Where.Source, finding.Fixes[0].Edits));
        Read.Clean(meant);
    }
}
