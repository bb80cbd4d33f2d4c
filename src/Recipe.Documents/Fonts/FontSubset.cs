using System.Buffers.Binary;
using System.Text;

namespace Recipe.Documents.Fonts;

/// <summary>
/// A TrueType font with no more glyphs than a file needs, numbered from 0 in their order: what a PDF embeds (ISO 32000-1, 9.9; the tables
/// ISO/IEC 14496-22). Outlines and their instructions are those of the font, byte for byte but for the numbers of the parts of a composed
/// glyph.
/// </summary>
internal static class FontSubset
{
    private const int Version = 0x00010000;

    /// <summary>The font file.</summary>
    /// <param name="font">The whole font.</param>
    /// <param name="wanted">Glyphs by their numbers in it, the sign for a missing one, 0, first. One may stand there twice.</param>
    public static byte[] Of(FontFile font, IReadOnlyList<int> wanted)
    {
        using var stream = font.Open();
        var (glyphs, places, outlines) = Outlines(font, stream, wanted);
        var head = Table(font, stream, "head");
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(8), 0);
        BinaryPrimitives.WriteInt16BigEndian(head.AsSpan(50), 1);
        var hhea = Table(font, stream, "hhea");
        BinaryPrimitives.WriteUInt16BigEndian(hhea.AsSpan(34), (ushort)glyphs.Count);
        var maxp = Table(font, stream, "maxp");
        BinaryPrimitives.WriteUInt16BigEndian(maxp.AsSpan(4), (ushort)glyphs.Count);
        var loca = new byte[4 * places.Count];
        for (var i = 0; i < places.Count; i++)
        {
            BinaryPrimitives.WriteInt32BigEndian(loca.AsSpan(4 * i), places[i]);
        }

        // In the order of their names, as a font file has them.
        return File(
        [
            ("cvt ", Table(font, stream, "cvt ")), ("fpgm", Table(font, stream, "fpgm")), ("glyf", outlines), ("head", head), ("hhea", hhea),
            ("hmtx", Widths(font, stream, glyphs)), ("loca", loca), ("maxp", maxp), ("prep", Table(font, stream, "prep")),
        ]);
    }

    // The glyphs, the parts of composed ones after them; where each outline begins, and the end; the outlines.
    private static (List<int> Glyphs, List<int> Places, byte[] Outlines) Outlines(FontFile font, Stream stream, IReadOnlyList<int> wanted)
    {
        var glyphs = wanted.ToList();
        var numbers = new Dictionary<int, int>();
        for (var i = 0; i < glyphs.Count; i++)
        {
            numbers.TryAdd(glyphs[i], i);
        }

        var isLong = BinaryPrimitives.ReadInt16BigEndian(FontFile.Read(stream, font.Table("head").At + 50, 2)) != 0;
        var places = new List<int> { 0 };
        using var outlines = new MemoryStream();
        for (var i = 0; i < glyphs.Count; i++)
        {
            var outline = Outline(font, stream, glyphs[i], isLong);
            Renumber(outline, part =>
            {
                if (numbers.TryAdd(part, glyphs.Count))
                {
                    glyphs.Add(part);
                }

                return numbers[part];
            });
            outlines.Write(outline);
            while (outlines.Length % 4 != 0)
            {
                outlines.WriteByte(0);
            }

            places.Add((int)outlines.Length);
        }

        return (glyphs, places, outlines.ToArray());
    }

    private static byte[] Outline(FontFile font, Stream stream, int glyph, bool isLong)
    {
        var loca = font.Table("loca").At;
        var (from, to) = isLong
            ? (Int(FontFile.Read(stream, loca + (4 * glyph), 4)), Int(FontFile.Read(stream, loca + (4 * glyph) + 4, 4)))
            : (2 * Word(FontFile.Read(stream, loca + (2 * glyph), 2)), 2 * Word(FontFile.Read(stream, loca + (2 * glyph) + 2, 2)));
        return FontFile.Read(stream, font.Table("glyf").At + from, to - from);
    }

    // A glyph with less than no contours is put together of others.
    private static void Renumber(byte[] outline, Func<int, int> number)
    {
        const int words = 0x1, scale = 0x8, more = 0x20, twoScales = 0x40, matrix = 0x80;
        if (outline.Length < 10 || BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
        {
            return;
        }

        int flags;
        var at = 10;
        do
        {
            flags = Word(outline.AsSpan(at));
            var part = outline.AsSpan(at + 2);
            BinaryPrimitives.WriteUInt16BigEndian(part, (ushort)number(Word(part)));
            at += 4 + ((flags & words) != 0 ? 4 : 2) + ((flags & matrix) != 0 ? 8 : (flags & twoScales) != 0 ? 4 : (flags & scale) != 0 ? 2 : 0);
        }
        while ((flags & more) != 0);
    }

    private static byte[] Widths(FontFile font, Stream stream, List<int> glyphs)
    {
        var (table, count) = (font.Table("hmtx").At, font.Widths);
        var widths = new byte[4 * glyphs.Count];
        for (var i = 0; i < glyphs.Count; i++)
        {
            var (glyph, last) = (glyphs[i], Math.Min(glyphs[i], count - 1));
            FontFile.Read(stream, table + (4 * last), 4).CopyTo(widths, 4 * i);
            if (glyph > last)
            {
                FontFile.Read(stream, table + (4 * count) + (2 * (glyph - count)), 2).CopyTo(widths, (4 * i) + 2);
            }
        }

        return widths;
    }

    private static byte[] Table(FontFile font, Stream stream, string name)
    {
        var (at, length) = font.Table(name);
        return FontFile.Read(stream, at, length);
    }

    private static byte[] File((string Name, byte[] Bytes)[] tables)
    {
        const int headOfFile = 12, record = 16, adjustment = 8;
        var start = headOfFile + (record * tables.Length);
        var file = new byte[start + tables.Sum(table => Whole(table.Bytes.Length))];
        BinaryPrimitives.WriteInt32BigEndian(file, Version);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(4), (ushort)tables.Length);
        var power = (int)Math.Log2(tables.Length);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(6), (ushort)(record << power));
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(8), (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(10), (ushort)((record * tables.Length) - (record << power)));
        var (at, head) = (start, 0);
        for (var i = 0; i < tables.Length; i++)
        {
            var (name, bytes) = tables[i];
            bytes.CopyTo(file, at);
            var entry = file.AsSpan(headOfFile + (record * i));
            Encoding.ASCII.GetBytes(name, entry);
            BinaryPrimitives.WriteUInt32BigEndian(entry[4..], Sum(file.AsSpan(at, Whole(bytes.Length))));
            BinaryPrimitives.WriteInt32BigEndian(entry[8..], at);
            BinaryPrimitives.WriteInt32BigEndian(entry[12..], bytes.Length);
            head = name == "head" ? at : head;
            at += Whole(bytes.Length);
        }

        BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(head + adjustment), unchecked(0xB1B0AFBA - Sum(file)));
        return file;
    }

    private static int Whole(int length) => (length + 3) & ~3;

    private static uint Sum(ReadOnlySpan<byte> bytes)
    {
        var sum = 0u;
        for (var at = 0; at < bytes.Length; at += 4)
        {
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]));
        }

        return sum;
    }

    private static int Int(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadInt32BigEndian(bytes);

    private static int Word(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt16BigEndian(bytes);
}
