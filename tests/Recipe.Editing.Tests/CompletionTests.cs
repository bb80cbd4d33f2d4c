namespace Recipe.Editing.Tests;

/// <summary>What is proposed where, and what is not.</summary>
public class CompletionTests
{
    [Fact]
    public void At_the_top_words_and_whole_blocks_are_proposed()
    {
        var found = Labels(Desk.Of("$0"));
        Assert.Contains("mould", found);
        Assert.Contains("part", found);
        Assert.Contains("part, bagged", found);
        Assert.DoesNotContain("peel-ply perforated", found);
    }

    [Fact]
    public void In_a_part_what_stands_there_already_is_not_proposed_again()
    {
        var found = Labels(Desk.With("  resin slow-laminating-epoxy", "  resin slow-laminating-epoxy\n  $0"));
        Assert.Contains("wet-out", found);
        Assert.Contains("mix", found);
        Assert.DoesNotContain("resin", found);
        Assert.DoesNotContain("cure", found);
    }

    [Theory]
    [InlineData("must $0", "mass", "bag")]
    [InlineData("must $0", "every", "areal-weight")]
    [InlineData("must ro$0", "room", "at-least")]
    [InlineData("must every $0", "ply", "mass")]
    [InlineData("must room $0", "at-least", "is")]
    [InlineData("must room at-least 20 $0", "degC", "mm")]
    [InlineData("must process $0", "is", "at-least")]
    [InlineData("must process is $0", "bagged", "glass-twill-163")]
    [InlineData("must outdoors is $0", "yes", "bagged")]
    [InlineData("must sum ply $0", "areal-weight", "material")]
    [InlineData("must every ply { $0 }", "areal-weight", "mould")]
    [InlineData("must every ply { where form is $0 }", "veil", "up")]
    [InlineData("must every ply { fibre is $0 }", "e-glass", "glass-twill-163")]
    [InlineData("must every ply { areal-weight at-most 300 $0 }", "g/m2", "degC")]
    [InlineData("$0", "must", "mass")]
    [InlineData("bad { $0 }", "mould", "must")]
    public void In_a_rule_the_facts_are_proposed(string line, string offered, string left)
    {
        var found = Labels(Desk.Of($"rule a {{\n  {line}\n}}\n"));
        Assert.Contains(offered, found);
        Assert.DoesNotContain(left, found);
    }

    [Fact]
    public void A_fact_of_a_rule_says_what_it_is()
    {
        var desk = Desk.Of("rule a {\n  must every ply { areal-$0weight at-most 300 g/m2 }\n}\n");
        Assert.Equal("**areal-weight**: dry mass for each area (g/m2)", Hovers.At(desk.File, desk.Cursor)!.Markdown);
    }

    [Fact]
    public void In_a_bag_the_next_layer_comes_first()
    {
        Assert.Equal("release-film", Labels(Desk.With("    release-film perforated\n    breather\n    bag-film", "    $0"))[0]);
        Assert.Equal("bag-film", Labels(Desk.With("    breather\n    bag-film", "    breather\n    $0"))[0]);
    }

    [Fact]
    public void A_ply_is_cut_from_cloth_and_each_cloth_says_what_it_weighs()
    {
        var desk = Desk.With("outer glass-twill-163 0/90", "outer glass-tw$0");
        var cloth = Completion.At(desk.File, desk.Cursor).Single(i => i.Label == "glass-twill-163");
        Assert.Equal(CompletionKind.Material, cloth.Kind);
        Assert.Contains("163 g/m2", cloth.Detail, StringComparison.Ordinal);
        Assert.Equal("glass-tw", desk.File.Source.Slice(cloth.Replaces));
        Assert.Contains("source", Completion.Doc(desk.File, cloth.DocKey!), StringComparison.Ordinal);
        Assert.DoesNotContain("slow-laminating-epoxy", Labels(desk));
    }

    [Theory]
    [InlineData("  resin slow-laminating-epoxy", "  resin $0", "infusion-epoxy", "glass-twill-163")]
    [InlineData("  mould tray-mould\n", "  mould $0\n", "tray-mould", "tray")]
    [InlineData("inner glass-twill-163 0/90", "inner glass-twill-163 $0", "+/-45", "mm")]
    [InlineData("release-film perforated", "release-film $0", "perforated", "peel-ply")]
    [InlineData("hold 20 degC for 48 h under vacuum", "hold 20 $0", "degC", "mm")]
    [InlineData("hold 20 degC for 48 h under vacuum", "hold 20 degC for 48 $0", "h", "degC")]
    [InlineData("hold 20 degC for 48 h under vacuum", "hold 20 degC for 48 h $0", "under vacuum", "for")]
    [InlineData("draw 25 inHg below ambient within 10 min", "draw 25 inHg $0", "below ambient", "isolated")]
    [InlineData("surface flat 400 mm x 300 mm", "surface $0", "spherical-cap", "flat 400")]
    [InlineData("carnauba-wax coats 5 wait 30 min", "carnauba-wax $0", "coats", "glass-twill-163")]
    [InlineData("made-of epoxy-glass-tooling", "state $0", "seasoned", "epoxy-glass-tooling")]
    public void What_fits_is_proposed_and_what_does_not_is_left_out(string words, string by, string offered, string left)
    {
        var found = Labels(Desk.With(words, by));
        Assert.Contains(offered, found);
        Assert.DoesNotContain(left, found);
    }

    [Theory]
    [InlineData("mould tray-mould {", "# mou$0\nmould tray-mould {")]
    [InlineData("  resin slow-laminating-epoxy", "  title \"a pa$0rt\"\n  resin slow-laminating-epoxy")]
    public void Comments_and_texts_are_left_alone(string words, string by) => Assert.Empty(Labels(Desk.With(words, by)));

    [Fact]
    public void Every_snippet_is_sound_once_its_places_hold_what_they_propose()
    {
        var desk = Desk.Of("$0");
        foreach (var snippet in Completion.At(desk.File, desk.Cursor).Where(i => i.Kind == CompletionKind.Snippet && i.Label.StartsWith("part", StringComparison.Ordinal)))
        {
            var text = System.Text.RegularExpressions.Regex.Replace(snippet.NewText, @"\$\{\d+:([^}]*)\}", "$1").Replace("$0", "", StringComparison.Ordinal);
            var mould = Desk.Tray[..Desk.Tray.IndexOf("part tray", StringComparison.Ordinal)].Replace("tray-mould", "mould", StringComparison.Ordinal);
            var file = Desk.Of(mould.Replace("mould mould", "mould the-mould", StringComparison.Ordinal) + text.Replace("mould  mould", "mould  the-mould", StringComparison.Ordinal).Replace("mould    mould", "mould    the-mould", StringComparison.Ordinal)).File;
            Assert.Empty(file.Findings.Where(f => f.Severity != Text.Findings.Severity.Advice).Select(f => $"{snippet.Label}: {f.Descriptor.Name} {f.Message}"));
        }
    }

    private static List<string> Labels(Desk desk) => [.. Completion.At(desk.File, desk.Cursor).Select(i => i.Label)];
}
