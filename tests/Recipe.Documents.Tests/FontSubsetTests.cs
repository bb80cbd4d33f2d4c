using System.Buffers.Binary;
using System.Text;
using Recipe.Documents.Fonts;

namespace Recipe.Documents.Tests;

/// <summary>The font that a PDF embeds, read back by the tables of ISO/IEC 14496-22.</summary>
public sealed class FontSubsetTests
{
    // Plain letters, a letter put together of two glyphs, one twice.
    private static readonly Rune[] Letters = [.. "Ag\u00E9\u00DF\u00B5\u2265A".EnumerateRunes()];

    [Fact]
    public void All_words_of_the_file_add_up_to_the_number_of_the_standard()
    {
        foreach (var font in (FontFile[])[FontFile.Regular, FontFile.Bold])
        {
            var file = Subset(font);
            var sum = 0u;
            for (var at = 0; at < file.Length; at += 4)
            {
                sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at)));
            }

            // checkSumAdjustment of the table head.
            Assert.Equal(0xB1B0AFBAu, sum);
        }
    }

    [Fact]
    public void Each_glyph_has_its_width_and_its_outline_and_parts_are_glyphs_of_the_file()
    {
        foreach (var font in (FontFile[])[FontFile.Regular, FontFile.Bold])
        {
            var file = Subset(font);
            var tables = Tables(file);
            var count = Word(file, tables["maxp"] + 4);
            var em = Word(file, tables["head"] + 18);
            Assert.True(count > Letters.Length + 1, "the parts of a composed letter are there too");
            using var whole = font.Open();
            for (var i = 0; i < Letters.Length; i++)
            {
                Assert.Equal(font.WidthOf(Letters[i]), Word(file, tables["hmtx"] + (4 * (i + 1))) / (double)em, 1e-9);
                var (at, length) = Place(file, tables, i + 1);
                var original = FontFile.Read(whole, font.Table("glyf").At + Original(whole, font, Letters[i]), 10);
                Assert.True(length >= 10);
                Assert.Equal(original, file.AsSpan(at, 10).ToArray());
                if (BinaryPrimitives.ReadInt16BigEndian(file.AsSpan(at)) < 0)
                {
                    Assert.InRange(Word(file, at + 12), 1, count - 1);
                }
            }
        }
    }

    private static byte[] Subset(FontFile font) => FontSubset.Of(font, [0, .. Letters.Select(font.GlyphOf)]);

    private static int Original(Stream whole, FontFile font, Rune letter) =>
        BinaryPrimitives.ReadInt32BigEndian(FontFile.Read(whole, font.Table("loca").At + (4 * font.GlyphOf(letter)), 4));

    private static (int At, int Length) Place(byte[] file, Dictionary<string, int> tables, int glyph)
    {
        var loca = file.AsSpan(tables["loca"] + (4 * glyph));
        var from = BinaryPrimitives.ReadInt32BigEndian(loca);
        return (tables["glyf"] + from, BinaryPrimitives.ReadInt32BigEndian(loca[4..]) - from);
    }

    private static Dictionary<string, int> Tables(byte[] file) => Enumerable.Range(0, Word(file, 4)).ToDictionary(
        i => Encoding.ASCII.GetString(file, 12 + (16 * i), 4),
        i => BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(12 + (16 * i) + 8)),
        StringComparer.Ordinal);

    private static int Word(byte[] file, int at) => BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(at));
}
