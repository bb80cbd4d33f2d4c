using Recipe.Text.Findings;

namespace Recipe.Semantics.Tests;

/// <summary>
/// What people write who never read the language page: each is answered once, and the fix leads to what was meant. 3 1/2 is 3.5 by arithmetic;
/// the standard atmosphere is 101325 Pa (ISO 2533), 29.92 inHg and 1013 mbar.
/// </summary>
public sealed class SlipTests
{
    private const string Mould = "mould m {\n  surface disc diameter 200 mm\n}\n";

    [Theory]
    [InlineData("mould m {\n  surface flat 3 1/2 in x 5 1/4 in\n}\n", "mould m {\n  surface flat 3.5 in x 5.25 in\n}\n")]
    [InlineData("mould m {\n  surface flat 3 ft 4 1/2 in x 5 in\n}\n", "mould m {\n  surface flat 3 ft 4.5 in x 5 in\n}\n")]
    [InlineData("mould m {\n  surface disc diameter 8 in\n  flange 3 1/2 in\n}\n", "mould m {\n  surface disc diameter 8 in\n  flange 3.5 in\n}\n")]
    public void A_whole_number_and_a_fraction_are_one_length(string text, string meant)
    {
        var bound = Given.Bind(text);

        Assert.All(bound.Findings, finding => Assert.Equal("mixed-fraction", finding.Descriptor.Name));
        Assert.Equal(meant, TextEdit.Apply(bound.Tree.Source, bound.Findings.SelectMany(finding => finding.Fixes[0].Edits)));
        Given.Sound(meant);
    }

    [Theory]
    [InlineData("mm", "cm", "m", "in", "")]
    [InlineData("in", "mm", "cm", "m", "  radius 0.5 in\n")]
    [InlineData("cm", "mm", "m", "in", "  radius 1cm\n  draft 3 deg # 5 mm2 4 inHg\n")]
    public void A_number_without_a_unit_is_offered_those_of_its_file_first(string first, string second, string third, string fourth, string lines)
    {
        var finding = Given.Single($"mould m {{\n  surface disc diameter 200 ft\n  flange 3\n{lines}}}\n");

        Assert.Equal([first, second, third, fourth], finding.Fixes.Select(fix => fix.Title.Split(' ')[^1]));
    }

    [Theory]
    [InlineData("2x", "x2")]
    [InlineData("2 x", "x2")]
    public void A_count_with_its_sign_behind_is_answered_and_counted(string written, string meant)
    {
        var text = Part($"a my-twill +/-45 {written}");
        var finding = Given.Single(text);

        Assert.Equal(Part($"a my-twill +/-45 {meant}"), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Assert.Equal(2, Assert.Single(Given.Bind(text).Model.Parts.Single().Stack).Count);
    }

    [Theory]
    [InlineData("45 -45", "+/-45")]
    [InlineData("+45 -45", "+/-45")]
    [InlineData("0 90", "0/90")]
    public void Two_directions_are_offered_as_a_pair(string written, string meant)
    {
        var finding = Given.Single(Part($"a my-twill {written}"));

        Assert.Contains("two plies stand on two lines", finding.Message, StringComparison.Ordinal);
        Assert.Equal(FixSafety.NeedsALook, Assert.Single(finding.Fixes).Safety);
        Assert.Equal(Part($"a my-twill {meant}"), Given.Apply(finding.Where.Source, finding.Fixes[0]));
    }

    [Fact]
    public void A_new_name_of_two_words_is_offered_with_a_hyphen()
    {
        var finding = Given.Single("part winch pocket {\n  title \"x\"\n}\n");

        Assert.Equal("part winch-pocket {\n  title \"x\"\n}\n", Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
    }

    [Fact]
    public void A_known_name_whose_words_stand_apart_is_put_together()
    {
        var finding = Given.Single(Part("a my twill 0/90"));

        Assert.Equal(Part("a my-twill 0/90"), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
    }

    [Fact]
    public void A_word_of_another_block_is_sent_there_even_where_a_material_may_begin_a_line()
    {
        var finding = Given.Single("part p {\n  bag {\n    draw 25 inHg below ambient\n  }\n}\n");

        Assert.Equal("`draw` is not a word of `bag`; it belongs to `vacuum`.", finding.Message);
    }

    [Theory]
    [InlineData("29.2 inHg below ambient", "0.721 inHg absolute", "29.92 inHg")]
    [InlineData("990 mbar below ambient", "23.2 mbar absolute", "1013 mbar")]
    public void A_level_below_ambient_is_offered_as_the_absolute_pressure_it_leaves(string written, string meant, string ambient)
    {
        var finding = Given.Single(Shop(written));

        Assert.Contains(ambient, finding.Message, StringComparison.Ordinal);
        Assert.Equal(FixSafety.NeedsALook, Assert.Single(finding.Fixes).Safety);
        Assert.Equal(Shop(meant), Given.Apply(finding.Where.Source, finding.Fixes[0]));
    }

    [Fact]
    public void More_than_the_air_has_is_offered_as_nothing() => Assert.Empty(Given.Single(Shop("30 inHg below ambient")).Fixes);

    private static string Shop(string ultimate) => $"shop ours {{\n  pump 2.5 cfm ultimate {ultimate}\n}}\n";

    private static string Part(string ply) =>
        $"fibre my-glass {{\n  density 2.55 g/cm3\n}}\nfabric my-twill {{\n  fibre my-glass\n  areal-weight 163 g/m2\n}}\n{Mould}part p {{\n  mould m\n  plies {{\n    {ply}\n  }}\n}}\n";
}
