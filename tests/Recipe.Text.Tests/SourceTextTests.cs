using CsCheck;

namespace Recipe.Text.Tests;

public sealed class SourceTextTests
{
    [Theory]
    [InlineData("", 1)]
    [InlineData("a", 1)]
    [InlineData("a\n", 2)]
    [InlineData("a\r\nb", 2)]
    [InlineData("a\rb\r\rc", 4)]
    [InlineData("a\u0085b\u2028c", 1)]
    public void Lines_end_with_lf_crlf_and_cr_only(string text, int lines) => Assert.Equal(lines, new SourceText("a.recipe", text).LineCount);

    [Theory]
    [InlineData(0, "1:1")]
    [InlineData(2, "1:3")]
    [InlineData(4, "2:1")]
    [InlineData(6, "3:1")]
    [InlineData(7, "3:2")]
    public void A_place_is_counted_from_one_when_shown(int offset, string place)
    {
        var source = new SourceText("a.recipe", "ab\r\nc\nd");

        Assert.Equal(place, source.PositionOf(offset).ToString());
        Assert.Equal($"a.recipe:{place}", new SourceSpan(source, new TextSpan(offset, 0)).ToString());
    }

    [Fact]
    public void An_offset_beyond_the_text_is_refused()
    {
        var source = new SourceText("a.recipe", "ab");

        Assert.Throws<ArgumentOutOfRangeException>(() => source.PositionOf(3));
        Assert.Throws<ArgumentOutOfRangeException>(() => source.PositionOf(-1));
    }

    [Fact]
    public void Place_and_offset_are_inverse_and_lines_hold_no_line_end() =>
        Gen.String[Gen.Char["a\n\r "], 0, 30].Sample(
            text =>
            {
                var source = new SourceText("a.recipe", text);
                for (var offset = 0; offset <= text.Length; offset++)
                {
                    var place = source.PositionOf(offset);
                    var line = source.LineSpan(place.Line);
                    if (line.Touches(offset))
                    {
                        Assert.Equal(offset, source.OffsetOf(place));
                    }

                    Assert.DoesNotContain('\n', source.Slice(line));
                }
            },
            iter: 2000);

    [Fact]
    public void A_column_past_the_line_is_its_end()
    {
        var source = new SourceText("a.recipe", "ab\ncd");

        Assert.Equal(2, source.OffsetOf(new LinePosition(0, 99)));
        Assert.Equal(5, source.OffsetOf(new LinePosition(99, 99)));
        Assert.Equal(0, source.OffsetOf(new LinePosition(-1, -1)));
    }

    [Fact]
    public void Spans_join_and_touch()
    {
        var span = TextSpan.FromBounds(2, 5);

        Assert.Equal(new TextSpan(2, 3), span);
        Assert.Equal(TextSpan.FromBounds(0, 5), span.Union(new TextSpan(0, 1)));
        Assert.True(span.Touches(5));
        Assert.False(span.Touches(6));
    }
}
