using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>
/// Fixes speak the units of whoever wrote the recipe. Values: NIST SP 811 (2008) appendix B: 1 in is 25.4 mm, 1 lb is 453.59237 g, 1 inHg is 3386.389 Pa;
/// degF = 9/5 degC + 32.
/// </summary>
public class AuthorUnitsTests
{
    private static readonly SourceText Us = new("us.recipe", "shop ours { room 68 degF; scale 0.5 oz }\nmould m { surface flat 16 in x 12 in }\ntrim 0.1 in\n");

    [Theory]
    [InlineData("0.1 in", "15 mm", "0.6 in")] // 0.5906 in, and a least is rounded up
    [InlineData("16 in", "300 mm", "11 in")] // 11.81 in, and a most is rounded down
    [InlineData("68 degF", "22 degC", "71.6 degF")]
    [InlineData("68 degF", "-18 degC", "-0.4 degF")]
    [InlineData("68 degF", "18 to 25 degC", "64.4 to 77 degF")]
    [InlineData("0.5 oz", "140 g", "4.94 oz")] // 4.938 oz
    [InlineData("0.5 oz", "2 h 35 min", "2 h 35 min")]
    public void A_figure_that_is_replaced_keeps_its_unit(string old, string written, string said)
    {
        var fix = AuthorUnits.Apply(new Fix($"Write {written} there", FixSafety.NeedsALook, new TextEdit(Place.Of(Us, old), written)), null);

        Assert.Equal(said, fix.Edits[0].NewText);
        Assert.Equal($"Write {said} there", fix.Title);
    }

    [Theory]
    [InlineData("size 50 mm x 50 mm", "size 2 in x 2 in")] // 1.969 in
    [InlineData("ramp 20 degC/h to 60 degC", "ramp 36 degF/h to 140 degF")]
    [InlineData("step \"no dry spot over 3 mm\"", "step \"no dry spot over 3 mm\"")]
    [InlineData("flow-medium smaller 40 mm", "flow-medium smaller 1.6 in")] // 1.575 in
    [InlineData("wait 30 min x2 100:30", "wait 30 min x2 100:30")]
    [InlineData("rise at-most 30 mbar", "rise at-most 30 mbar")]
    public void A_new_line_is_written_as_the_file_measures_such_things(string written, string said) =>
        Assert.Equal(said, AuthorUnits.Apply(New(Us, written), null).Edits[0].NewText);

    [Fact]
    public void Where_the_file_says_nothing_the_shop_decides()
    {
        var shop = new Shop { Name = "ours", Where = new SourceSpan(Us, new TextSpan(5, 4)), Units = UnitSystem.Us };

        Assert.Equal("rise at-most 0.886 inHg", AuthorUnits.Apply(New(Us, "rise at-most 30 mbar"), shop).Edits[0].NewText);
    }

    [Fact]
    public void Who_measures_in_metric_units_too_is_answered_in_them()
    {
        var both = new SourceText("both.recipe", "flange 2 in; trim 15 mm; pot 3 oz # 5 g\n");

        Assert.Equal("overlap 20 mm", AuthorUnits.Apply(New(both, "overlap 20 mm"), null).Edits[0].NewText);
        Assert.Equal("pot 3.53 oz", AuthorUnits.Apply(New(both, "pot 100 g"), null).Edits[0].NewText);
    }

    [Fact]
    public void Words_of_the_author_that_are_only_moved_stay()
    {
        var source = new SourceText("moved.recipe", "shop s { units us }\nhold 50 degC for 3 h\n");
        var shop = new Shop { Name = "s", Where = new SourceSpan(source, new TextSpan(5, 1)), Units = UnitSystem.Us };

        Assert.Equal("hold 50 degC for 3 h", AuthorUnits.Apply(New(source, "hold 50 degC for 3 h"), shop).Edits[0].NewText);
    }

    [Fact]
    public void Every_check_that_speaks_of_a_us_recipe_offers_us_units()
    {
        var bench = Bench.Of(
            """
            shop ours {
              units us
              scale 0.5 oz
            }
            mould m {
              surface flat 16 in x 12 in
              made-of epoxy-glass-tooling
            }
            part p {
              mould m
              resin slow-laminating-epoxy
              trim 0.1 in
              target mass 14 oz
              plies {
                a glass-twill-163 +/-45
                b glass-twill-163 +/-45
              }
              wet-out {
                room 65 degF
                resin-temperature 50 degF
                pot 4 oz
              }
              bag {
                peel-ply
                bag-film
              }
              cure {
                hold 66 degF for 12 h
                ramp 18 degF/min to 120 degF
                hold 120 degF for 6 h
                demould
              }
            }

            """);
        var fixes = bench.Report.Findings.SelectMany(f => f.Fixes).ToArray();

        Assert.Contains("Warm the resin to 71.6 degF", fixes.Select(f => f.Title));
        Assert.Contains("Aim for 2.46 oz", fixes.Select(f => f.Title));
        Assert.All(fixes, fix => Assert.All(
            fix.Edits.Select(edit => edit.NewText).Append(fix.Title),
            text => Assert.DoesNotMatch("[0-9] (degC|mm|cm|g|kg|mbar|bar)\\b", text)));
    }

    private static Fix New(SourceText source, string line) => new("Add a line", FixSafety.NeedsALook, new TextEdit(new SourceSpan(source, new TextSpan(source.Length, 0)), line));
}
