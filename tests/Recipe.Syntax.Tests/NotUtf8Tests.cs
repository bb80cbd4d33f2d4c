using System.Text;

namespace Recipe.Syntax.Tests;

/// <summary>A file in another encoding is answered once, where the first character is lost. Latin-1 (ISO 8859-1) has one byte for a letter that UTF-8 has two for (RFC 3629).</summary>
public sealed class NotUtf8Tests
{
    [Theory]
    [InlineData("part p {\n  title \"R\u00e9sine\"\n}\n", 1, 10)]
    [InlineData("# f\u00fcr den Deckel\npart p {\n}\n", 0, 3)]
    [InlineData("part p {\n  room 20 \u00b0C\n  heat 50 \u00b0C\n  title \"\u00fcber\"\n}\n", 1, 10)]
    [InlineData("shop \u00e9t\u00e9 {\n}\n", 0, 5)]
    public void The_first_character_that_is_lost_is_shown_and_nothing_else(string text, int line, int column)
    {
        var tree = Read.Tree(Encoding.UTF8.GetString(Encoding.Latin1.GetBytes(text)));

        var finding = Assert.Single(tree.Findings);
        Assert.Equal("RC1027", finding.Descriptor.Code);
        Assert.Equal((line, column), (finding.Where.Start.Line, finding.Where.Start.Column));
        Assert.DoesNotContain("RC1027", Read.Codes(text));
    }

    [Fact]
    public void Another_stray_character_beside_it_is_still_found() =>
        Assert.Equal(["RC1027", "RC1003"], Read.Codes("let a = 1 mm # \uFFFD\nlet b = 2 mm !\n"));
}
