using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

public class EditsTests
{
    private const string Part = """
        part lid {   # the lid
          bag {
            peel-ply   # from the part outwards
            bag-film
          }
          vacuum { draw 25 inHg below ambient }
          cure {}
        }
        """;

    private static readonly SourceText Source = new("lid.recipe", Part);

    [Fact]
    public void A_line_goes_in_before_another_with_its_indent()
    {
        var edit = Edits.Before(Place.Of(Source, "bag-film"), "breather");
        Assert.Contains("\n    breather\n    bag-film\n", Place.After(Source, edit), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_lines_go_in_before_another_in_their_order()
    {
        var edit = Edits.Before(Place.Of(Source, "bag-film"), "breather", "flow-medium");
        Assert.Contains("\n    breather\n    flow-medium\n    bag-film\n", Place.After(Source, edit), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_goes_in_after_another_and_after_its_comment()
    {
        var edit = Edits.After(Place.Of(Source, "peel-ply"), "breather");
        Assert.Contains("peel-ply   # from the part outwards\n    breather\n    bag-film", Place.After(Source, edit), StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_block_on_one_line_a_semicolon_parts_the_entries()
    {
        var draw = Place.Of(Source, "draw 25 inHg below ambient");
        Assert.Contains("{ settle 3 min; draw 25 inHg below ambient }", Place.After(Source, Edits.Before(draw, "settle 3 min")), StringComparison.Ordinal);
        Assert.Contains("{ draw 25 inHg below ambient; settle 3 min }", Place.After(Source, Edits.After(draw, "settle 3 min")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_goes_last_into_a_block()
    {
        var edit = Edits.Last(Place.Of(Source, "bag"), "breather");
        Assert.Contains("bag-film\n    breather\n  }", Place.After(Source, edit), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_goes_last_into_a_block_on_one_line()
    {
        var edit = Edits.Last(Place.Of(Source, "vacuum"), "settle 3 min");
        Assert.Contains("vacuum { draw 25 inHg below ambient; settle 3 min }", Place.After(Source, edit), StringComparison.Ordinal);
    }

    [Fact]
    public void A_block_goes_last_into_a_part()
    {
        var edit = Edits.Last(Place.Of(Source, "lid"), "join {", "  overlap 20 mm", "}");
        Assert.EndsWith("cure {}\n  join {\n    overlap 20 mm\n  }\n}", Place.After(Source, edit), StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_block_takes_one_line_and_several()
    {
        Assert.Contains("cure { demould }", Place.After(Source, Edits.Last(Place.Of(Source, "cure"), "demould")), StringComparison.Ordinal);
        Assert.Contains(
            "cure {\n    hold 20 degC for 24 h\n    demould\n  }",
            Place.After(Source, Edits.Last(Place.Of(Source, "cure"), "hold 20 degC for 24 h", "demould")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_goes_into_a_block_that_is_not_there()
    {
        Assert.Null(Edits.Last(Place.Of(Source, "peel-ply"), "breather"));
        Assert.Null(Edits.Last(Place.Of(new SourceText("a", "part lid {"), "lid"), "breather"));
    }

    [Fact]
    public void Braces_in_quotes_and_comments_are_no_block()
    {
        var source = new SourceText("a", "part lid { # }\n  title \"} \\\" {\"\n}\npart b { }\n");
        Assert.Equal("part lid { # }\n  title \"} \\\" {\"\n  trim 5 mm\n}\npart b { }\n", Place.After(source, Edits.Last(Place.Of(source, "lid"), "trim 5 mm")));
    }

    [Fact]
    public void The_line_ends_of_the_file_are_kept()
    {
        var source = new SourceText("a", "part lid {\r\n  quantity 2\r\n}\r\n");
        Assert.Equal("part lid {\r\n  quantity 2\r\n  trim 5 mm\r\n}\r\n", Place.After(source, Edits.Last(Place.Of(source, "lid"), "trim 5 mm")));
        Assert.Equal("part lid {\r\n}\r\n", Place.After(source, Edits.Remove(Place.Of(source, "quantity 2"))));
    }

    [Fact]
    public void An_entry_is_taken_away_with_its_line_and_comment() =>
        Assert.DoesNotContain("from the part", Place.After(Source, Edits.Remove(Place.Of(Source, "peel-ply"))), StringComparison.Ordinal);

    [Fact]
    public void An_entry_is_taken_out_of_a_line_that_holds_more()
    {
        var source = new SourceText("a", "vacuum { settle 3 min; draw 1 bar below ambient }");
        Assert.Equal("vacuum { draw 1 bar below ambient }", Place.After(source, Edits.Remove(Place.Of(source, "settle 3 min"))));
    }

    [Fact]
    public void A_figure_is_rewritten_only_where_it_is_written_out()
    {
        var where = Place.Of(Source, "25 inHg below ambient");
        Assert.NotNull(FigureEdits.Rewrite(new Figure<int>(0, Basis.Stated, "25 inHg below ambient", where), "x"));
        Assert.Null(FigureEdits.Rewrite(new Figure<int>(0, Basis.Stated, "level", where), "x"));
        Assert.Null(FigureEdits.Rewrite(new Figure<int>(0, Basis.Book, "25 inHg below ambient", where), "x"));
        Assert.Null(FigureEdits.Rewrite(new Figure<int>(0, Basis.Assumed, "25 inHg below ambient"), "x"));
        Assert.Null(FigureEdits.Rewrite<int>(null, "x"));
    }
}
