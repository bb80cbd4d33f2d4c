using Recipe.Semantics.Schema;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Tests;

/// <summary>
/// Words of the trade that the language writes otherwise: each is answered once, in a sentence that says how. The words are common practice;
/// 5.9 oz/yd2 is 200 g/m2 (NIST SP 811, appendix B: 1 oz/yd2 is 33.90575 g/m2), an ounce mat is sold by the square foot, nine times as heavy.
/// </summary>
public sealed class BenchWordTests
{
    [Theory]
    [InlineData("lamp", "oven \"heat lamp\"")]
    [InlineData("heat lamp", "oven \"heat lamp\"")]
    [InlineData("Heat-Lamp", "oven \"heat lamp\"")]
    [InlineData("heater", "oven \"heater\"")]
    [InlineData("bag-off", "debag")]
    public void What_is_said_in_a_cure_is_offered_as_it_is_written(string said, string written)
    {
        var finding = Given.Single(Cure(said));

        Assert.Equal("unknown-word", finding.Descriptor.Name);
        Assert.Equal(Cure(written), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Given.Sound(Cure(written));
    }

    [Theory]
    [InlineData("post-cure 50 degC for 8 h", "a post-cure is a `ramp` and a `hold`")]
    [InlineData("heat 50 degC", "getting warm is a `ramp`, staying warm a `hold`")]
    [InlineData("wait 12 h", "`hold room for 12 h`")]
    public void What_takes_more_than_a_word_is_told(string said, string answer)
    {
        var finding = Given.Single(Cure(said));

        Assert.Contains(answer, finding.Message, StringComparison.Ordinal);
        Assert.Empty(finding.Fixes);
    }

    [Theory]
    [InlineData("infusion", "infused")]
    [InlineData("vacuum-bag", "bagged")]
    [InlineData("wet-lay-up", "hand")]
    public void A_process_is_understood_by_its_other_names(string said, string written)
    {
        var finding = Given.Single($"part p {{\n  process {said}\n}}\n");

        Assert.Equal("regional-word", finding.Descriptor.Name);
        Assert.Equal($"part p {{\n  process {written}\n}}\n", Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
    }

    [Theory]
    [InlineData("vacuum bag", "bag-film")]
    [InlineData("bagging-film", "bag-film")]
    [InlineData("infusion mesh", "flow-medium")]
    [InlineData("mesh smaller 40 mm", "flow-medium smaller 40 mm")]
    [InlineData("putty", "sealant-tape")]
    public void What_lies_in_a_bag_is_offered_as_it_is_written(string said, string written)
    {
        var finding = Given.Single(Bag(said));

        Assert.Equal(Bag(written), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Given.Sound(Bag(written));
    }

    [Theory]
    [InlineData("infuse { spiral tube 420 mm }", "`feed-line length 420 mm diameter 8 mm`")]
    [InlineData("infuse { outlet \"at the far end\" }", "`vent \"along the far edge\"`")]
    [InlineData("infuse { clamp \"when full\" }", "`clamp-feed \"at full wet\"`")]
    [InlineData("infuse { mesh 40 mm }", "`flow-medium smaller 40 mm`")]
    [InlineData("bag { spiral 420 mm }", "`feed-line length 420 mm`")]
    [InlineData("vacuum { within 15 min }", "`draw 40 mbar absolute within 15 min`")]
    [InlineData("vacuum { level 40 mbar absolute }", "`draw 800 mbar below ambient`")]
    [InlineData("gel-coat white-gel-coat 500 g/m2", "`coat white-gel-coat 500 g/m2 wait 90 min`")]
    public void What_is_said_of_an_infusion_is_told(string said, string answer)
    {
        var finding = Given.Single($"part p {{\n  {said}\n}}\n");

        Assert.Equal("unknown-word", finding.Descriptor.Name);
        Assert.Contains(answer, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a glass-twill-163 bias", "a glass-twill-163 +/-45")]
    [InlineData("a glass-twill-163 crosswise", "a glass-twill-163 90")]
    public void How_cloth_lies_is_an_angle(string said, string written)
    {
        var finding = Given.Single(Plies(said));

        Assert.Equal(Plies(written), Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Given.Sound(Plies(written));
    }

    [Fact]
    public void A_ply_may_be_called_by_a_word_of_the_bench() => Given.Sound(Plies("bias glass-twill-163 +/-45"));

    [Fact]
    public void How_a_core_is_slit_is_said_where_the_core_is_declared()
    {
        var finding = Given.Single(Plies("heart core pvc-foam-75 thickness 10 mm kerfed"));

        Assert.Contains("`core my-core like pvc-foam-75 { cut slit }`", finding.Message, StringComparison.Ordinal);
        Given.Sound($"core my-core like pvc-foam-75 {{ cut slit }}\n{Plies("heart core my-core thickness 10 mm")}");
    }

    [Theory]
    [InlineData("made-of epoxy-glass-tooling tube", "made-of epoxy-glass-tooling")]
    [InlineData("surface tube diameter 104 mm length 500 mm", "surface cylinder diameter 104 mm length 500 mm")]
    public void A_tube_is_a_surface_and_no_stuff(string said, string written)
    {
        var bound = Given.Bind($"mould m {{\n  {said}\n}}\n");
        var finding = bound.Findings[0];

        Assert.Equal("unknown-word", finding.Descriptor.Name);
        Assert.Equal($"mould m {{\n  {written}\n}}\n", Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
    }

    [Theory]
    [InlineData("bag {\n    shrink-tape polyester x2\n  }")]
    [InlineData("bag {\n    shrink tape polyester x2\n  }")]
    [InlineData("plies {\n    a shrink-tape x2\n  }")]
    public void What_the_language_cannot_say_is_told(string lines)
    {
        var finding = Given.Single($"part p {{\n  {lines}\n}}\n");

        Assert.Contains("the language has no word for a tape, tube or film that shrinks", finding.Message, StringComparison.Ordinal);
        Assert.Empty(finding.Fixes);
    }

    [Theory]
    [InlineData("ramp 0.2 degC per min to 50 degC", "ramp 0.2 degC/min to 50 degC")]
    [InlineData("ramp 10 degC an hour to 50 degC", "ramp 10 degC/h to 50 degC")]
    public void A_unit_that_is_spelt_out_is_written_with_a_stroke(string said, string written)
    {
        var finding = Given.Single(Cure(said));

        var fix = Assert.Single(finding.Fixes);
        Assert.Equal((FixSafety.Safe, Cure(written)), (fix.Safety, Given.Apply(finding.Where.Source, fix)));
        Given.Sound(Cure(written));
    }

    [Fact]
    public void A_word_for_a_time_is_answered_with_a_number_and_its_unit()
    {
        var finding = Given.Single(Cure("hold 30 degC for overnight under vacuum"));

        Assert.Equal("not-understood", finding.Descriptor.Name);
        Assert.Contains("`for` takes a time, a number and its unit, as in `hold 20 degC for 12 h under vacuum`; overnight is none", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_whose_word_is_missing_is_one_slip_and_is_counted()
    {
        var text = "part p {\n  target 170 g +/- 20 g\n}\n";
        var finding = Given.Single(text);

        Assert.Equal("missing-value", finding.Descriptor.Name);
        Assert.Equal("part p {\n  target mass 170 g +/- 20 g\n}\n", Given.Apply(finding.Where.Source, Assert.Single(finding.Fixes)));
        Assert.Equal(170, Given.Bind(text).Model.Parts.Single().TargetMass!.Value.Grams, 6);
    }

    [Theory]
    [InlineData("slow epoxy 100:30", "The mix, 100:30, is said in the block of the resin")]
    [InlineData("slow epoxy", "A name is one word with hyphens")]
    [InlineData("epoxy slow with fast", "A name is one word with hyphens")]
    public void A_resin_called_by_some_of_its_words_is_offered_by_its_name(string said, string answer)
    {
        var finding = Given.Bind($"part p {{\n  resin {said}\n}}\n").Findings[0];

        Assert.Contains(answer, finding.Message, StringComparison.Ordinal);
        Assert.Equal(["Write slow-laminating-epoxy"], finding.Fixes.Select(fix => fix.Title));
    }

    [Theory]
    [InlineData("5.9 oz carbon twill", "carbon-twill-200")]
    [InlineData("200 g/m2 carbon twill", "carbon-twill-200")]
    [InlineData("200 g twill carbon", "carbon-twill-200")]
    [InlineData("1.5 oz mat", "")]
    public void A_cloth_asked_for_by_its_weight_is_offered_by_its_name(string said, string name)
    {
        var text = $"mat glass-mat-450 {{ areal-weight 450 g/m2 }}\nfabric carbon-twill-200 {{ areal-weight 200 g/m2 }}\n{Plies($"a {said} 0/90")}";
        var finding = Given.Single(text);

        Assert.Equal("unknown-name", finding.Descriptor.Name);
        Assert.Equal(name.Length == 0 ? "Write glass-mat-450" : $"Write {name}", Assert.Single(finding.Fixes).Title);
    }

    [Fact]
    public void A_weight_that_no_cloth_has_is_told() =>
        Assert.Contains("is none that is in scope", Given.Single(Plies("a 20 oz kraft 0/90")).Message, StringComparison.Ordinal);

    /// <summary>A short list of words stands in quotes, a long one gives way to an example.</summary>
    [Fact]
    public void A_stray_word_is_answered_with_what_may_stand_there()
    {
        Assert.Contains("which may go on with `with`.", Given.Single("part p {\n  resin slow-laminating-epoxy thick\n}\n").Message, StringComparison.Ordinal);
        Assert.Contains("such a line is written `body glass-twill-163 +/-45 overlap 15 mm`.", Given.Single(Plies("a glass-twill-163 0/90 nicely")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_block_says_where_its_words_are_listed() => Assert.Equal(
        "`harz` is not a word of `mould` or `pattern`; `recipe explain mould` lists its words.",
        Given.Single("mould m {\n  harz slow-laminating-epoxy\n}\n").Message);

    /// <summary>The table answers only where the language has nothing, and sends nobody to a block that is none.</summary>
    [Fact]
    public void No_word_of_the_table_is_a_word_of_the_language_where_it_is_meant()
    {
        foreach (var word in BenchWords.All)
        {
            foreach (var name in word.Blocks)
            {
                var block = RecipeSchema.Blocks.Single(b => b.Name == name);
                Assert.True(word.Line is null ? block.Find(word.Said) is null && block.FindRegional(word.Said) is null : block.Find(word.Line) is not null, $"{word.Said} in {name}");
            }
        }
    }

    [Fact]
    public void No_word_is_meant_in_two_ways_in_one_place() =>
        Assert.Empty(BenchWords.All
            .SelectMany(word => word.Blocks.DefaultIfEmpty(""), (word, block) => (word.Said, block, word.Line))
            .GroupBy(key => key)
            .Where(group => group.Count() > 1)
            .Select(group => group.Key));

    private static string Cure(string line) => $"part p {{\n  cure {{\n    {line}\n  }}\n}}\n";

    private static string Bag(string line) => $"part p {{\n  bag {{\n    {line}\n  }}\n}}\n";

    private static string Plies(string line) => $"part p {{\n  plies {{\n    {line}\n  }}\n}}\n";
}
