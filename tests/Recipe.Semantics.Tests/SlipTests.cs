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
    [InlineData("x 2", "x2")]
    [InlineData("×2", "x2")]
    [InlineData("× 2", "x2")]
    public void A_count_with_its_sign_behind_is_answered_and_counted(string written, string meant)
    {
        var text = Part($"a my-twill +/-45 {written}");
        var finding = Given.Single(text);

        Assert.Equal(Part($"a my-twill +/-45 {meant}"), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Assert.Equal(2, Assert.Single(Given.Bind(text).Model.Parts.Single().Stack).Count);
    }

    /// <summary>The clock of twelve hours: 12 am is midnight, 12 pm is noon (US Naval Observatory).</summary>
    [Theory]
    [InlineData("6 pm", "18:00")]
    [InlineData("6pm", "18:00")]
    [InlineData("8:30 am", "08:30")]
    [InlineData("12 am", "00:00")]
    [InlineData("12:15 PM", "12:15")]
    public void The_half_of_the_day_is_read_and_answered(string written, string meant)
    {
        var text = $"shop s {{\n  closes {written}\n}}\n";
        var finding = Given.Single(text);

        Assert.Equal($"shop s {{\n  closes {meant}\n}}\n", Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Assert.Equal(TimeOnly.Parse(meant, System.Globalization.CultureInfo.InvariantCulture), Given.Bind(text).Model.Shop!.Closes!.Value);
    }

    [Theory]
    [InlineData("room 18-25 degC", "room 18 to 25 degC")]
    [InlineData("room 68degF-77degF", "room 68degF to 77degF")]
    [InlineData("room 20° C", "room 20 degC")]
    [InlineData("room 68 ° F", "room 68 degF")]
    public void Temperatures_of_a_data_sheet_are_answered_once(string written, string meant)
    {
        var finding = Given.Single($"shop s {{\n  {written}\n}}\n");

        Assert.Equal($"shop s {{\n  {meant}\n}}\n", Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Given.Sound($"shop s {{\n  {meant}\n}}\n");
    }

    [Fact]
    public void A_small_block_says_what_it_takes()
    {
        var finding = Given.Single("shop s {\n  safety {\n    eyes \"goggles\"\n  }\n}\n");

        Assert.Contains("which takes gloves, respirator, ventilation, dust,", finding.Message, StringComparison.Ordinal);
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

    // ISO 2533: 1013.25 mbar at the sea, 898.75 at 1000 m, 845.56 at 1500 m, 701.09 at 3000 m.
    [Theory]
    [InlineData("", "900 mbar", "900 mbar below ambient leaves 113 mbar of air at sea level, 900 mbar absolute leaves 900 mbar", "below ambient, absolute")]
    [InlineData("altitude 1500 m", "900 mbar", "900 mbar below ambient is more than a pump can draw of the 846 mbar at 1500 m, 900 mbar absolute is no vacuum at all", "760 mbar below ambient")]
    [InlineData("altitude 1500 m", "828 mbar", "828 mbar below ambient leaves 18 mbar of air at 1500 m, 828 mbar absolute leaves 828 mbar", "below ambient, absolute")]
    [InlineData("altitude 1500 m", "829 mbar", "829 mbar below ambient is more than a pump can draw of the 846 mbar at 1500 m, 829 mbar absolute leaves 829 mbar", "760 mbar below ambient, absolute")]
    [InlineData("altitude 1000 m", "60 mbar", "60 mbar below ambient leaves 839 mbar of air at 1000 m, 60 mbar absolute leaves 60 mbar", "below ambient, absolute")]
    [InlineData("altitude 3000 m", "20 inHg", "20 inHg below ambient leaves 24 mbar of air at 3000 m, 20 inHg absolute leaves 677 mbar", "below ambient, absolute")]
    public void A_level_that_does_not_say_how_it_is_counted_is_offered_what_the_shop_can_draw(string shop, string written, string said, string offered)
    {
        var text = $"shop s {{\n  humidity 50 %\n  {shop}\n}}\npart lid {{\n  vacuum {{\n    draw {written}\n  }}\n}}\n";
        var finding = Given.Single(text);

        Assert.Equal($"{written} does not say how it is counted: {said}.", finding.Message);
        Assert.Equal(offered, string.Join(", ", finding.Fixes.Select(fix => Assert.Single(fix.Edits).NewText.Trim())));
        Assert.All(finding.Fixes, fix => Given.Sound(Given.Apply(finding.Where.Source, fix)));
    }

    // 846 - 800 = 45.6 (the shop's gauge), 1013 - 800 = 213 (the maker's sheet).
    [Theory]
    [InlineData("pump 2.5 cfm ultimate 800 mbar below ambient", "213 mbar")]
    [InlineData("altitude 0 m\n  pump 2.5 cfm ultimate 800 mbar below ambient", "213 mbar")]
    [InlineData("altitude 1500 m\n  pump 2.5 cfm ultimate 800 mbar below ambient", "45.6 mbar; 213 mbar")]
    [InlineData("pump 2.5 cfm ultimate 800 mbar below ambient\n  altitude 1500 m", "45.6 mbar; 213 mbar")]
    [InlineData("altitude 1500 m\n  pump 2.5 cfm ultimate 900 mbar below ambient", "113 mbar")]
    [InlineData("altitude 1500 m\n  pump 2.5 cfm ultimate 1020 mbar below ambient", "")]
    public void The_ultimate_pressure_of_a_pump_is_counted_from_the_air_of_the_shop_and_from_that_of_a_data_sheet(string shop, string offered)
    {
        var finding = Given.Single($"shop s {{\n  {shop}\n}}\n");

        Assert.Equal("not-understood", finding.Descriptor.Name);
        Assert.Equal(offered, string.Join("; ", finding.Fixes.Select(fix => Assert.Single(fix.Edits).NewText.Replace(" absolute", "", StringComparison.Ordinal))));
        Assert.All(finding.Fixes, fix => Given.Sound(Given.Apply(finding.Where.Source, fix)));
    }

    [Fact]
    public void The_height_of_the_shop_may_stand_in_a_file_that_a_used_file_uses()
    {
        var bound = Given.BindFiles(
            ("this.recipe", "use \"base.recipe\"\npart lid {\n  vacuum {\n    draw 900 mbar\n  }\n}\n"),
            ("base.recipe", "use \"shop.recipe\"\nuse \"this.recipe\"\n"),
            ("shop.recipe", "shop s {\n  altitude 1500 m\n}\n"));

        // It uses this file again, which is said too and must not be followed for ever.
        Assert.Contains(bound.Findings, finding => finding.Message.Contains("846 mbar at 1500 m", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("left left", "left right")]
    [InlineData("right right", "right left")]
    [InlineData("fore fore", null)]
    public void Halves_have_names_of_their_own(string halves, string? meant)
    {
        static string Halved(string halves) => $"mould m {{\n  surface disc diameter 200 mm\n  halves {halves}\n}}\n";
        var finding = Given.Single(Halved(halves));

        Assert.Equal("duplicate-name", finding.Descriptor.Name);
        Assert.Equal(meant is null ? [] : [Halved(meant)], finding.Fixes.Select(fix => Given.Apply(finding.Where.Source, fix)));
        Given.Sound(Halved(meant ?? "fore aft"));
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

    // A sign says below ambient: 1013 - 900 = 113 mbar are left. As an absolute pressure it would be a pump that draws nearly nothing.
    [Fact]
    public void An_ultimate_pressure_with_a_sign_is_none_that_the_plan_may_reckon_with()
    {
        var bound = Given.Bind(Shop("-900 mbar"));
        var finding = Assert.Single(bound.Findings);

        Assert.Equal(("not-understood", Severity.Error), (finding.Descriptor.Name, finding.Severity));
        Assert.Equal(Shop("113 mbar absolute"), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Assert.Null(bound.Model.Shop!.PumpUltimate);
    }

    // 29.92 - 29 = 0.921 inHg, 1013 - 20 = 993 mbar: a pump is bought for the one that leaves less.
    [Theory]
    [InlineData("29 inHg", "0.921 inHg absolute", "29 inHg absolute")]
    [InlineData("20 mbar", "20 mbar absolute", "993 mbar absolute")]
    public void A_bare_ultimate_pressure_is_offered_both_ways_the_likelier_first(string written, string first, string second)
    {
        var finding = Given.Single(Shop(written));

        Assert.Equal([Shop(first), Shop(second)], finding.Fixes.Select(fix => Given.Apply(finding.Where.Source, fix)));
    }

    [Theory]
    [InlineData("surface cone diameter 120 mm length 200 mm", "missing-value")]
    [InlineData("surface cone diameter 0 mm to 0 mm length 200 mm", "out-of-range")]
    [InlineData("surface flat 300 mm x 200 mm\n  region between x 10 mm", "missing-value")]
    public void A_surface_that_could_not_be_laid_on_is_told(string lines, string expected) =>
        Assert.Equal(expected, Given.Single($"mould m {{\n  {lines}\n}}\n").Descriptor.Name);

    [Fact]
    public void Points_that_are_too_many_are_told_and_not_left_out_in_silence()
    {
        var points = string.Concat(Enumerable.Range(0, 2001).Select(i => $"    point radius {i} mm height 0 mm\n"));
        var bound = Given.Bind($"mould m {{\n  surface revolved {{\n{points}  }}\n}}\n");

        Assert.Contains("2001 points; 2000 is the most", Assert.Single(bound.Findings).Message, StringComparison.Ordinal);
        Assert.Equal(2000, Assert.IsType<Model.RevolvedShape>(bound.Model.Moulds["m"].Surface!.Value).Profile.Length);
    }

    [Fact]
    public void Both_ends_of_a_range_below_zero_are_written_with_their_unit()
    {
        var shop = Given.Sound("shop s {\n  store -25 to -18 degC\n}\n").Model.Shop!;

        Assert.Equal(("-25 degC", "-18 degC"), (shop.StoreTemperature!.Written, shop.StoreTemperatureHigh!.Written));
    }

    // A biaxial cloth is often called 45/45; read as it stands it would be one with all its fibres at 45 degrees.
    [Theory]
    [InlineData("45/45", "+/-45")]
    [InlineData("-30/-30", "+/-30")]
    [InlineData("0/0", "0/90")]
    [InlineData("90/-90", "0/90")]
    [InlineData("+/-90", "0/90")]
    public void A_pair_that_is_one_direction_twice_is_no_cloth(string written, string meant)
    {
        var finding = Given.Single(Part($"a my-twill {written}"));

        Assert.Equal(("not-understood", FixSafety.NeedsALook), (finding.Descriptor.Name, Assert.Single(finding.Fixes).Safety));
        Assert.Equal(Part($"a my-twill {meant}"), Given.Apply(finding.Where.Source, finding.Fixes[0]));
        Given.Sound(Part($"a my-twill {meant}"));
    }

    [Fact]
    public void An_x_that_touches_the_second_side_of_a_size_is_answered()
    {
        var finding = Given.Single(Part("a patch my-twill 0/90 size 60 mm x40 mm"));

        Assert.Equal(Part("a patch my-twill 0/90 size 60 mm x 40 mm"), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Given.Sound(Part("a patch my-twill 0/90 size 60 mm x 40 mm x2"));
    }

    [Theory]
    [InlineData("part p {\n  cure {\n    ramp 2 degC to 50 degC\n  }\n}\n", "not-understood")]
    [InlineData("part p {\n  cure {\n    ramp 2 degC/min\n  }\n}\n", "missing-value")]
    [InlineData("part p {\n  wet-out {\n    pots 3\n    pot 100 g\n    pot 80 g\n  }\n}\n", "said-twice")]
    public void One_slip_earns_one_finding(string text, string expected) => Assert.Equal(expected, Given.Single(text).Descriptor.Name);

    [Fact]
    public void A_currency_in_small_letters_is_offered_in_capitals()
    {
        var finding = Given.Single("shop s {\n  currency eur\n}\n");

        Assert.Equal("shop s {\n  currency EUR\n}\n", Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
    }

    [Theory]
    [InlineData("mass 148 g; mass __ g", 148)]
    [InlineData("mass __ g; mass 148 g", 148)]
    [InlineData("mass 140 g; mass 148 g", 148)]
    public void A_line_that_is_still_blank_takes_back_nothing(string lines, double grams)
    {
        var build = Assert.Single(Given.Sound($"part lid {{\n  trim 3 mm\n}}\nbuild lid no 1 {{ {lines} }}\n").Model.Builds);

        Assert.Equal(grams, build.Mass!.Value.Grams, 9);
    }

    [Theory]
    [InlineData("let a = (8 EUR / 2 USD)\n", "dimension-clash")]
    [InlineData("resin r {\n  kinetics kamal-sourour { order 1.5; order 2 }\n}\n", "said-twice")]
    [InlineData("findings {\n  cold-night advice\n  cold-night error\n}\n", "said-twice")]
    public void What_can_be_meant_only_once_is_told(string text, string expected) => Assert.Equal(expected, Given.Single(text).Descriptor.Name);

    [Fact]
    public void More_than_the_air_has_is_offered_as_nothing() => Assert.Empty(Given.Single(Shop("30 inHg below ambient")).Fixes);

    private static string Shop(string ultimate) => $"shop ours {{\n  pump 2.5 cfm ultimate {ultimate}\n}}\n";

    private static string Part(string ply) =>
        $"fibre my-glass {{\n  density 2.55 g/cm3\n}}\nfabric my-twill {{\n  fibre my-glass\n  areal-weight 163 g/m2\n}}\n{Mould}part p {{\n  mould m\n  plies {{\n    {ply}\n  }}\n}}\n";
}
