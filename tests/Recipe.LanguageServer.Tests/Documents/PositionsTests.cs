using CsCheck;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;
using Recipe.Text;

namespace Recipe.LanguageServer.Tests.Documents;

public sealed class PositionsTests
{
    private static readonly string[] Pieces = ["a", " ", "ä", "€", "𝛼", "\n", "\r\n", "\r", "\u2028", "\u0085", "e\u0301", "µ"];

    private static readonly Gen<string> Texts = Gen.Int[0, Pieces.Length - 1].Select(i => Pieces[i]).Array[0, 30].Select(pieces => string.Concat(pieces));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Every_place_has_a_position_that_leads_back_to_it(int unit)
    {
        var encoding = (PositionEncoding)unit;
        var positions = new Positions(encoding);
        Texts.Sample(
            characters =>
            {
                var text = new SourceText("t", characters);
                foreach (var offset in TextModel.Cursors(characters))
                {
                    var (line, column) = TextModel.Place(characters, offset, encoding);
                    var position = positions.Position(text, offset);
                    Assert.Equal(new Position(line, column), position);
                    Assert.Equal(offset, positions.Offset(text, position));
                }
            },
            iter: 2000);
    }

    [Fact]
    public void Only_lf_crlf_and_cr_end_a_line()
    {
        var text = new SourceText("t", "a\u2028b\u2029c\u0085d\ve\nf\r\ng\rh");
        Assert.Equal(new Position(3, 1), new Positions(PositionEncoding.Utf16).Position(text, text.Length));
    }

    [Fact]
    public void Columns_past_the_line_mean_its_end_and_lines_past_the_text_its_end()
    {
        var text = new SourceText("t", "ab\r\ncd");
        foreach (var positions in Enum.GetValues<PositionEncoding>().Select(e => new Positions(e)))
        {
            Assert.Equal(2, positions.Offset(text, new Position(0, 99)));
            Assert.Equal(6, positions.Offset(text, new Position(1, 99)));
            Assert.Equal(6, positions.Offset(text, new Position(2, 0)));
            Assert.Equal(0, positions.Offset(text, new Position(-1, -1)));
            Assert.Equal(4, positions.Offset(text, new Position(1, -1)));
        }
    }

    [Fact]
    public void A_column_inside_a_character_means_its_beginning()
    {
        var text = new SourceText("t", "a𝛼b");
        Assert.Equal(1, new Positions(PositionEncoding.Utf16).Offset(text, new Position(0, 2)));
        Assert.Equal(1, new Positions(PositionEncoding.Utf8).Offset(text, new Position(0, 3)));
        Assert.Equal(3, new Positions(PositionEncoding.Utf8).Offset(text, new Position(0, 5)));
        Assert.Equal(3, new Positions(PositionEncoding.Utf32).Offset(text, new Position(0, 2)));
    }
}
