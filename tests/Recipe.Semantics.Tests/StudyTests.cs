using CsCheck;
using Recipe.Model;

namespace Recipe.Semantics.Tests;

/// <summary><c>explore</c>: what its lines mean, what each mistake earns, and that a choice does what a variant would.</summary>
public class StudyTests
{
    private const string Lid =
        """
        fibre glass {
          density 2.55 g/cm3
        }
        fabric thin {
          fibre glass
          areal-weight 100 g/m2
        }
        fabric thick {
          fibre glass
          areal-weight 300 g/m2
        }
        veil tissue {
          areal-weight 30 g/m2
        }
        core foam {
          density 75 kg/m3
          thickness 5 mm
        }
        core balsa {
          density 150 kg/m3
          thickness 9 mm
        }
        resin slow {
          chemistry epoxy
        }
        resin quick {
          chemistry epoxy
        }
        resin two-ways {
          hardener hot { mix 100:30 by weight }
          hardener cold { mix 100:25 by weight }
        }
        part lid {
          process hand
          resin slow
          plies {
            outer thin 0/90
            veil tissue random
            stiff core foam
            inner thick +/-45 x2
            pad patch thick 0/90 size 60 mm x 40 mm after outer
          }
          wet-out { room 20 degC; resin-content 45 % by weight }
        }

        """;

    [Fact]
    public void Options_follow_the_lines()
    {
        var study = Of(
            """
            title "Lighter"
            choose material inner thin thick
            choose orientation outer 0/90 +/-45 30
            choose repeats veil 0 1 3
            choose thickness stiff 3 to 8 mm steps 6
            choose insert more thick 0/90 x2 after outer
            choose resin slow quick
            choose resin-content 40 to 48 % by weight steps 5
            choose laminators 1 2
            choose room 18 degC 75 degF
            limit mass at-least 10 g at-most 3 oz
            limit bending-along at-least 0.6 N.m2/m
            limit cost at-most 40 EUR
            want least mass
            want most bending-along
            """);
        Assert.Equal(("Lighter", true, 2L * 3 * 3 * 6 * 2 * 2 * 5 * 2 * 2), (study.Label, study.IsWhole, study.Candidates));
        Assert.Equal(["3 mm", "4 mm", "5 mm", "6 mm", "7 mm", "8 mm"], study.Choices[3].Options.Select(option => option.Written));
        Assert.Equal(["40 % by weight", "42 % by weight", "44 % by weight", "46 % by weight", "48 % by weight"], study.Choices[6].Options.Select(option => option.Written));
        Assert.Equal([(0.01, 3 * 0.45359237 / 16), (0.6, null), (null, 40)], study.Limits.Select(limit => (limit.AtLeast, limit.AtMost)));
        Assert.Equal([(PartFigure.Mass, true), (PartFigure.BendingAlong, false)], study.Wants.Select(want => (want.Figure, want.Least)));
        Assert.Equal((PartFigure[])[PartFigure.Mass, PartFigure.BendingAlong, PartFigure.Cost], study.Figures);
    }

    [Fact]
    public void Values_of_a_range_stand_in_its_unit_whether_a_blank_is_before_it_or_not()
    {
        var study = Of("choose room 18 to 22degC steps 3\nchoose thickness stiff 3 to 8mm steps 2\nwant least mass");
        Assert.Equal(["18 degC", "20 degC", "22 degC"], study.Choices[0].Options.Select(option => option.Written));
        Assert.Equal(["3 mm", "8 mm"], study.Choices[1].Options.Select(option => option.Written));
    }

    [Fact]
    public void Every_figure_has_a_word_that_can_be_limited_and_wanted()
    {
        string Limit(PartFigure figure) => figure switch
        {
            PartFigure.Mass or PartFigure.Resin => "1 kg",
            PartFigure.Thickness => "1 mm",
            PartFigure.ResinContent => "40 %",
            PartFigure.BendingAlong or PartFigure.BendingAcross => "1 N.m",
            PartFigure.ModulusAlong or PartFigure.ModulusAcross => "1 Msi",
            PartFigure.TimesOver => "1.5",
            PartFigure.Pots => "2",
            PartFigure.Hottest or PartFigure.SoftensAt => "60 degC",
            PartFigure.Cost => "10 EUR",
            _ => "1 h",
        };
        foreach (var figure in Enum.GetValues<PartFigure>())
        {
            var study = Of($"choose repeats veil 0 1\nlimit {figure.Word()} at-most {Limit(figure)}\nwant most {figure.Word()}");
            Assert.True(study.IsWhole);
            Assert.Equal((figure, figure), (study.Wants[0].Figure, study.Limits[0].Figure));
        }
    }

    [Theory]
    [InlineData("choose repeats veil 0 1", "missing-value")] // no want
    [InlineData("want least mass", "missing-value")] // no choose
    [InlineData("choose\nwant least mass", "missing-value")]
    [InlineData("choose colour red blue\nwant least mass", "not-understood")]
    [InlineData("choose material vale thin\nwant least mass", "unknown-ply")]
    [InlineData("choose material veil\nwant least mass", "missing-value")]
    [InlineData("choose material veil thinn thick\nwant least mass", "unknown-name")]
    [InlineData("choose material veil foam\nwant least mass", "wrong-kind-of-name")]
    [InlineData("choose material stiff thin\nwant least mass", "wrong-kind-of-name")]
    [InlineData("choose material veil thin thick thin\nwant least mass", "said-twice")]
    [InlineData("choose repeats veil 0 1\nchoose repeats veil 2 3\nwant least mass", "said-twice")]
    [InlineData("choose orientation stiff 0/90\nwant least mass", "not-understood")]
    [InlineData("choose orientation outer 100\nwant least mass", "out-of-range")]
    [InlineData("choose thickness outer 1 mm\nwant least mass", "not-understood")]
    [InlineData("choose thickness stiff 1 g 2 g\nwant least mass", "wrong-kind-of-unit", "wrong-kind-of-unit")]
    [InlineData("choose thickness stiff 3 mm 3 mm\nwant least mass", "said-twice")]
    [InlineData("choose thickness stiff 3 to 8 mm\nwant least mass", "missing-value")]
    [InlineData("choose thickness stiff 8 to 3 mm steps 3\nwant least mass", "out-of-range")]
    [InlineData("choose thickness stiff 3 mm steps 3\nwant least mass", "not-understood")]
    [InlineData("choose thickness stiff 3 to 8 mm steps 1\nwant least mass", "out-of-range")]
    [InlineData("choose thickness stiff 3 to 8 mm 9 mm steps 3\nwant least mass", "extra-value")]
    [InlineData("choose repeats outer 0 1\nwant least mass", "unknown-ply")] // pad lies on it
    [InlineData("choose repeats veil 1.5\nwant least mass", "not-understood")]
    [InlineData("choose repeats veil 1 1001\nwant least mass", "out-of-range")] // as for x1001
    [InlineData("choose insert veil thin 0/90\nwant least mass", "duplicate-name")]
    [InlineData("choose insert more thin 0/90 after nothing\nwant least mass", "unknown-ply")]
    [InlineData("choose repeats veil 0 1\nchoose insert more thin 0/90 after veil\nwant least mass", "unknown-ply")]
    [InlineData("choose resin two-ways\nwant least mass", "not-understood")]
    [InlineData("choose hardener hot\nwant least mass", "unknown-name")] // the part's resin has none
    [InlineData("choose resin-content 40 to 48 % steps 3\nwant least mass", "percent-of-what")]
    [InlineData("choose resin-content 48 to 40 % by weight steps 3\nwant least mass", "out-of-range")]
    [InlineData("choose resin-content 40 to 48 % by weight\nwant least mass", "missing-value")]
    [InlineData("choose resin-content 40 to 140 % by weight steps 3\nwant least mass", "out-of-range")]
    [InlineData("choose laminators 0 1\nwant least mass", "out-of-range")]
    [InlineData("choose room 20 g\nwant least mass", "wrong-kind-of-unit")]
    [InlineData("choose part lidd\nwant least mass", "unknown-name")]
    [InlineData("choose repeats veil 0 1\nlimit mass at-most 1 mm\nwant least mass", "wrong-kind-of-unit")]
    [InlineData("choose repeats veil 0 1\nlimit mass at-most 100\nwant least mass", "bare-number")]
    [InlineData("choose repeats veil 0 1\nlimit bending-along at-least 12 GPa\nwant least mass", "wrong-kind-of-unit")]
    [InlineData("choose repeats veil 0 1\nlimit mass\nwant least mass", "missing-value")]
    [InlineData("choose repeats veil 0 1\nlimit mas at-most 1 kg\nwant least mass", "not-understood")]
    [InlineData("choose repeats veil 0 1\nlimit mass at-least 2 kg at-most 1 kg\nwant least mass", "out-of-range")]
    [InlineData("choose repeats veil 0 1\nlimit cost at-most 4 EUR/kg\nwant least mass", "wrong-kind-of-unit")]
    [InlineData("choose repeats veil 0 1\nwant least weight", "not-understood")]
    [InlineData("choose repeats veil 0 1\nwant best mass", "not-understood")]
    [InlineData("choose repeats veil 0 1\nwant least mass\nwant most mass", "said-twice")]
    [InlineData("choose room 1 to 99 degC steps 100000\nchoose resin-content 1 to 99 % by weight steps 101\nwant least mass", "too-many-candidates")]
    public void Each_mistake_earns_its_finding(string lines, params string[] expected)
    {
        var bound = Given.Bind($"{Lid}explore study of lid {{\n{lines}\n}}\n");
        Assert.Empty(bound.Tree.Findings);
        Assert.Equal(expected, bound.Findings.Select(finding => finding.Descriptor.Name));
        Assert.False(Assert.Single(bound.Model.Studies).IsWhole);
        Assert.All(bound.Findings, finding => Assert.InRange(finding.Where.Span.Start, Lid.Length, int.MaxValue));
    }

    [Theory]
    [InlineData("explore study { choose repeats veil 0 1; want least mass }", "missing-value")]
    [InlineData("explore study of lit { choose repeats veil 0 1; want least mass }", "unknown-name")]
    [InlineData("explore study of lid", "missing-value")]
    [InlineData("explore study of lid { choose repeats veil 0 1; want least mass }\nexplore study of lid { choose repeats veil 0 1; want least mass }", "duplicate-name")]
    public void A_study_names_itself_and_its_part(string text, string expected) => Assert.Equal([expected], Given.Codes(Lid + text + "\n"));

    [Fact]
    public void Too_many_say_how_many_and_where_to_save()
    {
        var finding = Given.Single($"{Lid}explore study of lid {{\n  choose room 1 to 99 degC steps 100000\n  choose resin-content 1 to 99 % by weight steps 101\n  want least mass\n}}\n");
        Assert.Equal("There are 100000 x 101 = 10100000 candidates, and at most 10000000 are tried; `room` alone has 100000 options.", finding.Message);
    }

    [Fact]
    public void A_number_is_the_options_read_as_its_digits()
    {
        var study = Of("choose repeats veil 0 1 2\nchoose laminators 1 2\nchoose room 18 to 24 degC steps 7\nwant least mass");
        Assert.Equal((int[])[0, 0, 1], study.OptionsOf(1));
        Assert.Equal((int[])[1, 0, 0], study.OptionsOf(14));
        Gen.Long[0, study.Candidates - 1].Sample(candidate => Assert.Equal(candidate, study.OptionsOf(candidate).Zip(study.Choices).Aggregate(0L, (number, digit) => (number * digit.Second.Options.Length) + digit.First)));
        Assert.Equal(study.Candidates, Enumerable.Range(0, (int)study.Candidates).Select(i => string.Join(' ', study.OptionsOf(i))).Distinct(StringComparer.Ordinal).Count());
        Assert.Throws<ArgumentOutOfRangeException>(() => study.OptionsOf(study.Candidates));
        Assert.Throws<ArgumentOutOfRangeException>(() => study.OptionsOf(-1));
    }

    [Theory]
    [InlineData("choose material inner thin", "plies { replace inner thin +/-45 x2 }")]
    [InlineData("choose material stiff balsa", "plies { replace stiff core balsa }")]
    [InlineData("choose orientation outer +/-45", "plies { replace outer thin +/-45 }")]
    [InlineData("choose repeats veil 0", "plies { remove veil }")]
    [InlineData("choose repeats veil 3", "plies { replace veil tissue random x3 }")]
    [InlineData("choose thickness stiff 8 mm", "plies { replace stiff core foam thickness 8 mm }")]
    [InlineData("choose resin quick", "resin quick")]
    [InlineData("choose resin-content 42 % by weight", "wet-out { resin-content 42 % by weight }")]
    [InlineData("choose laminators 2", "wet-out { laminators 2 }")]
    [InlineData("choose room 24 degC", "wet-out { room 24 degC }")]
    [InlineData("choose insert more thick 0/90 x2 after outer", "plies { insert more thick 0/90 x2 after outer }", 1)]
    [InlineData("choose insert more thick 0/90", "plies { insert more thick 0/90 }", 1)]
    public void A_choice_does_what_a_variant_would(string choice, string change, int option = 0)
    {
        var model = Given.Sound($"{Lid}variant changed of lid {{\n  {change}\n}}\nexplore study of lid {{\n  {choice}\n  want least mass\n}}\n").Model;
        var (variant, candidate) = (model.Parts[1], model.Studies[0].PartOf([option]));
        Assert.Equal(Said(variant), Said(candidate));
        Assert.NotEqual(Said(model.Parts[0]), Said(candidate));
    }

    [Fact]
    public void It_may_start_from_variants()
    {
        var model = Given.Sound($"{Lid}variant bare of lid {{\n  plies {{ remove veil }}\n}}\nexplore study of lid {{\n  choose laminators 1 2\n  choose part lid bare\n  want least mass\n}}\n").Model;
        var candidate = model.Studies[0].PartOf([1, 1]);
        Assert.Equal(("bare", 2), (candidate.Name, candidate.WetOut!.Laminators!.Value));
    }

    [Fact]
    public void A_choice_in_a_line_that_is_left_out_is_a_repetition()
    {
        var study = Of("choose material veil thin thick\nchoose repeats veil 0 1\nchoose insert more thin 0/90\nchoose orientation more 0/90 +/-45\nwant least mass");
        var kept = Enumerable.Range(0, (int)study.Candidates).Select(i => study.OptionsOf(i)).Where(options => !study.IsRepeated(options)).ToList();

        // One without the veil and two with it, times one without more and two with it.
        Assert.Equal(9, kept.Count);
        Assert.Equal(9, kept.Select(options => Said(study.PartOf(options))).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_hardener_is_one_of_the_part()
    {
        var study = Given.Sound($"{Lid.Replace("resin slow\n", "resin two-ways with hot\n", StringComparison.Ordinal)}explore study of lid {{\n  choose hardener hot cold\n  want least mass\n}}\n").Model.Studies[0];
        Assert.Equal(["hot", "cold"], Enumerable.Range(0, 2).Select(i => study.PartOf([i]).Resin!.Hardener));
    }

    private static Study Of(string lines) => Given.Sound($"{Lid}explore study of lid {{\n{lines}\n}}\n").Model.Studies.Single();

    // What counts of a part, without the places where it is written.
    private static string Said(Part part) => string.Join('\n', part.Stack.Select(Said).Append($"{part.Resin?.Name} {part.WetOut?.Content?.Value} {part.WetOut?.Laminators?.Value} {part.WetOut?.Room?.Value} {part.WetOut?.RoomHigh?.Value}"));

    private static string Said(StackItem item) => item switch
    {
        PlyItem ply => $"{item.Name} {ply.Material.Name} {ply.Orientation?.Value} x{item.Count} {ply.IsPatch} {item.After}",
        CoreItem core => $"{item.Name} {core.Material.Name} {core.Thickness?.Value} x{item.Count}",
        _ => item.Name,
    };
}
