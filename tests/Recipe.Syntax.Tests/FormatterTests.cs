namespace Recipe.Syntax.Tests;

public sealed class FormatterTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("\n\n", "")]
    [InlineData("  # a  \n\n\n\n# b", "# a\n\n# b\n")]
    [InlineData("a;b;;c", "a\nb\nc\n")]
    [InlineData("use   \"shop.recipe\"", "use \"shop.recipe\"\n")]
    [InlineData("a 300mm x 40mm  -5 0/90  ±45", "a 300 mm x 40 mm -5 0/90 +/-45\n")]
    [InlineData("a 100 : 30  3 ×4  45 / - 45", "a 100:30 3 x 4 45/-45\n")]
    [InlineData("a 18  to  25degC  140g±10g", "a 18 to 25 degC 140 g +/- 10 g\n")]
    [InlineData("a ( 2*lap+15mm )mm", "a (2 * lap + 15 mm) mm\n")]
    [InlineData("a (2 *\n  lap)", "a (2 * lap)\n")]
    [InlineData("let  a=1/2mm*-(b)", "let a = 1/2 mm * -(b)\n")]
    [InlineData("a {b 1}", "a { b 1 }\n")]
    [InlineData("a {}", "a { }\n")]
    [InlineData("a {b 1;}", "a { b 1 }\n")]
    [InlineData("a {b 1;c 2}", "a {\n  b  1\n  c  2\n}\n")]
    [InlineData("a {\nb 1}", "a {\n  b  1\n}\n")]
    [InlineData("a {b {c 1}}", "a {\n  b  { c 1 }\n}\n")]
    [InlineData("a { b } c", "a { b }\nc\n")]
    [InlineData("a\n{\n\n\nb\n\n}\n\n\n\nc", "a {\n  b\n}\n\nc\n")]
    public void There_is_one_way_to_lay_a_text_out(string text, string laidOut) => Assert.Equal(laidOut, Read.Format(text));

    [Fact]
    public void Values_line_up_and_cells_are_parted_by_wide_gaps() =>
        Assert.Equal(
            """
            part lid {
              title    "Lid"
              target   mass 126 g +/- 9 g
              coat     epoxy-surface-coat   300 g/m2
              plies {
                outer  glass-plain-80    0/90
                veil   carbon-veil-8     random
                body   glass-twill-280   +/-45   overlap lap
                hinge  patch glass-tape-200   0/90   size 60 mm x 40 mm   x2
                weigh
              }
              service  45 degC              source "common practice"
            }

            """,
            Read.Format(
                """
                part lid {
                title "Lid"
                target mass 126g +/- 9g
                coat epoxy-surface-coat  300g/m2
                plies {
                outer glass-plain-80 0/90
                veil carbon-veil-8  random
                body glass-twill-280 +/-45 overlap lap
                hinge patch glass-tape-200 0/90 size 60mm x 40mm  x2
                weigh
                }
                service 45degC source "common practice"
                }
                """));

    [Fact]
    public void Equals_signs_line_up() => Assert.Equal("let a   = 1 mm\nlet bcd = 2 mm\n\nlet e = 3\n", Read.Format("let a=1mm\nlet bcd  =2mm\n\nlet e=3"));

    [Fact]
    public void Comments_behind_lines_share_a_column() =>
        Assert.Equal(
            "a {                                      # first\n"
            + "  b  1                                   # second\n"
            + "  c  \"a text that is longer than the column of comments\"\n"
            + "  # a line of its own\n"
            + "}                                        # last\n",
            Read.Format("a { # first\n b 1 # second\nc \"a text that is longer than the column of comments\"\n# a line of its own\n} # last"));

    [Fact]
    public void A_long_line_pushes_the_comments_of_its_run() =>
        Assert.Equal(
            "a {\n" + "  b  1".PadRight(53) + "# short\n" + "  c  \"a text that is longer than the column of it\"   # long\n}\n",
            Read.Format("a {\nb 1 # short\nc \"a text that is longer than the column of it\" # long\n}"));

    [Fact]
    public void Comments_between_a_line_and_its_brace_keep_their_order() =>
        Assert.Equal(
            "a {                                      # one\n  # two\n  # three\n  b\n}\n",
            Read.Format("a # one\n# two\n{ # three\nb\n}"));

    [Fact]
    public void A_comment_inside_parentheses_keeps_its_lines() =>
        Assert.Equal("let a = (1 + # one\n   2)\nb\n", Read.Format("  let a = (1 + # one\n   2)\n b"));

    [Fact]
    public void A_block_on_one_line_is_spread_out_when_it_is_too_long()
    {
        var text = new string('x', 90);

        Assert.Equal($"a {{ b \"{text}\" }}\n", Read.Format($"a {{b \"{text}\"}}"));
        Assert.Equal($"a {{\n  b  \"{text}x\"\n}}\n", Read.Format($"a {{b \"{text}x\"}}"));
    }

    [Theory]
    [InlineData("a 1\r\nb 2\n", "a 1\r\nb 2\r\n")]
    [InlineData("a 1\nb 2\r\n", "a 1\nb 2\n")]
    [InlineData("a 1\rb 2", "a 1\nb 2\n")]
    [InlineData("\ufeffa   1", "\ufeffa 1\n")]
    public void The_first_line_end_decides_and_a_byte_order_mark_stays(string text, string laidOut) => Assert.Equal(laidOut, Read.Format(text));

    [Fact]
    public void A_line_that_cannot_be_read_is_only_indented() =>
        Assert.Equal(
            "a {\n  b   =  1,5   !!\n  c  1\n  d =  2 {\n    e  1\n  }\n}\n",
            Read.Format("a {\nb   =  1,5   !!\n      c    1\nd =  2  {\n  e 1\n }\n}"));

    [Fact]
    public void A_forgotten_brace_is_not_added() => Assert.Equal("a {\n  b  1\nc 2\n", Read.Format("a {\n   b 1\nc   2\n"));

    [Fact]
    public void A_semicolon_stays_where_it_keeps_a_block_from_the_line_above() =>
        Assert.Equal("a 1\n; {\n  b  2\n}\n", Read.Format("a 1;\n{\nb 2\n}"));

    [Fact]
    public void Text_that_a_change_would_make_mean_something_else_stays_as_it_is()
    {
        const string text = "a   \"open\n{\nb\n}\n";

        Assert.Equal(text, Read.Format(text));
    }
}
