namespace Recipe.Syntax.Tests;

public sealed class StatementTests
{
    [Fact]
    public void A_file_is_a_list_of_entries_and_named_values()
    {
        var file = Read.Clean("language 1\nlet lap = 20 mm\n\nshop ours {\n  altitude 250 m\n}\n").Root;

        Assert.Equal("language", Assert.IsType<EntrySyntax>(file.Statements[0]).Head.Text);
        Assert.Equal("lap", Assert.IsType<LetSyntax>(file.Statements[1]).Name.Text);
        var shop = Assert.IsType<EntrySyntax>(file.Statements[2]);
        Assert.Equal("altitude", Assert.Single(shop.Block!.Entries).Head.Text);
        Assert.NotNull(shop.Block.CloseBrace);
    }

    [Theory]
    [InlineData("a { b 1 }")]
    [InlineData("a { b 1; }")]
    [InlineData("a {\n b 1 }")]
    [InlineData("a { b 1\n}")]
    [InlineData("a {; b 1 ;\n; }")]
    public void A_block_ends_at_its_brace_wherever_that_stands(string text)
    {
        var entry = Assert.IsType<EntrySyntax>(Assert.Single(Read.Clean(text).Root.Statements));

        Assert.Equal("b", Assert.Single(entry.Block!.Entries).Head.Text);
    }

    [Fact]
    public void A_semicolon_ends_an_entry() => Assert.Equal(3, Read.Clean("a 1; b 2; c").Root.Statements.Length);

    [Fact]
    public void Let_is_a_keyword_only_where_a_line_begins()
    {
        Assert.IsType<WordSyntax>(Assert.Single(Read.Values("a let")));
        Assert.IsType<LetSyntax>(Assert.IsType<EntrySyntax>(Read.Clean("a { let b = 1 }").Root.Statements[0]).Block!.Statements[0]);
    }

    [Fact]
    public void A_brace_on_its_own_line_belongs_to_the_line_above()
    {
        var tree = Read.Tree("a 1 # why\n\n{\n  b 2\n}\n");

        Assert.Equal(["RC1013"], tree.Findings.Select(finding => finding.Descriptor.Code));
        Assert.Single(Assert.IsType<EntrySyntax>(Assert.Single(tree.Root.Statements)).Block!.Entries);
    }

    [Fact]
    public void Spans_run_from_the_first_to_the_last_token()
    {
        const string text = "  a  1 mm {\n  b\n} # c\n";
        var entry = Assert.IsType<EntrySyntax>(Assert.Single(Read.Clean(text).Root.Statements));

        Assert.Equal("a  1 mm {\n  b\n}", text.Substring(entry.Span.Start, entry.Span.Length));
        Assert.Equal("a  1 mm", text.Substring(entry.LineSpan.Start, entry.LineSpan.Length));
    }

    [Fact]
    public void A_bad_line_is_one_error_and_its_neighbours_are_read()
    {
        var tree = Read.Tree("shop ours {\n  altitude 250 m\n  night = 14 degC\n  room 20 degC\n}\n");
        var block = Assert.IsType<EntrySyntax>(Assert.Single(tree.Root.Statements)).Block!;

        Assert.Equal(["RC1019"], tree.Findings.Select(finding => finding.Descriptor.Code));
        Assert.IsType<ErrorSyntax>(block.Statements[1]);
        Assert.Equal(["altitude", "night", "room"], block.Entries.Select(entry => entry.Head.Text));
    }

    [Fact]
    public void The_block_of_a_bad_line_is_read()
    {
        var tree = Read.Tree("shop = ours {\n  altitude 250 m\n}\n");
        var error = Assert.IsType<ErrorSyntax>(Assert.Single(tree.Root.Statements));

        Assert.Equal("altitude", Assert.Single(error.Block!.Entries).Head.Text);
        Assert.Single(tree.Findings);
    }

    [Fact]
    public void A_missing_brace_is_found_by_the_indentation()
    {
        var tree = Read.Tree("shop ours {\n  altitude 250 m\n\npart lid {\n  plies {\n    body a\n  }\n}\n");

        Assert.Equal(["shop", "part"], tree.Root.Statements.OfType<EntrySyntax>().Select(entry => entry.Head.Text));
        var finding = Assert.Single(tree.Findings);
        Assert.Equal("RC1006", finding.Descriptor.Code);
        Assert.Equal("1:11", finding.Where.Start.ToString());
        Assert.Equal("2:17", Assert.Single(finding.Labels).Where.Start.ToString());
    }

    [Fact]
    public void The_indentation_counts_from_the_byte_order_mark_on()
    {
        var tree = Read.Tree("\ufeffshop ours {\n}\npart lid {\n");

        Assert.Equal("3:10", Assert.Single(tree.Findings).Where.Start.ToString());
    }

    [Fact]
    public void A_stray_brace_is_one_error()
    {
        var tree = Read.Tree("shop ours {\n  altitude 250 m\n  }\n}\nlet lap = 20 mm\n");

        Assert.Single(tree.Findings);
        Assert.IsType<LetSyntax>(tree.Root.Statements[^1]);
    }

    [Fact]
    public void An_open_parenthesis_does_not_swallow_the_lines_that_follow()
    {
        var tree = Read.Tree("let a = (1 mm\nlet b = 2 mm\nshop ours {\n}\n");

        Assert.Equal(["RC1016"], tree.Findings.Select(finding => finding.Descriptor.Code));
        Assert.Equal(3, tree.Root.Statements.Length);
    }

    [Fact]
    public void The_printed_tree_shows_kinds_and_places() =>
        Assert.Equal(
            "File  1:1-2:1\n  Entry a  1:1-1:13\n    Quantity 5 mm  1:3-1:7\n    Block  1:8-1:13\n      Entry b  1:10-1:11\n",
            TreePrinter.Print(Read.Tree("a 5 mm { b }\n")));
}
