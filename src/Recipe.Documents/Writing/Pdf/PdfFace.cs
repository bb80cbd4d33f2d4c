using System.Globalization;
using System.Text;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using Recipe.Documents.Fonts;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>
/// A face of one PDF: it numbers the characters in the order in which they are first shown, and embeds their glyphs and what a reader
/// needs to find the text again (ISO 32000-1, 9.7 and 9.10.3).
/// </summary>
/// <param name="font">The font.</param>
/// <param name="name">Its PostScript name.</param>
/// <param name="tag">Six capitals that say the font is not whole.</param>
/// <param name="stem">Width of its upright strokes, thousandths of the size of type, for a reader that replaces the font.</param>
internal sealed class PdfFace(FontFile font, string name, string tag, int stem)
{
    // Height of capitals, thousandths of the size of type: the font's OS/2 table, 1493 of 2048.
    private const int CapHeight = 729;

    private readonly Dictionary<Rune, int> _numbers = [];
    private readonly List<Rune> _runes = [];

    /// <summary>The upright face and the bold one.</summary>
    public static (PdfFace Regular, PdfFace Bold) Both() =>
        (new PdfFace(FontFile.Regular, "DejaVuSansCondensed", "RECIPA", 90), new PdfFace(FontFile.Bold, "DejaVuSansCondensed-Bold", "RECIPB", 150));

    /// <summary>Writes a text as a string of the numbers of its characters.</summary>
    public void Write(PdfOperators to, string text)
    {
        to.Write("<"u8);
        foreach (var rune in text.EnumerateRunes())
        {
            if (!_numbers.TryGetValue(rune, out var number))
            {
                _runes.Add(rune);
                _numbers.Add(rune, number = _runes.Count);
            }

            to.Hex(number);
        }

        to.Write("> "u8);
    }

    /// <summary>Embeds what was used.</summary>
    public PdfReference AddTo(PdfDocument pdf)
    {
        var full = $"/{tag}+{name}";
        var file = FontSubset.Of(font, [0, .. _runes.Select(font.GlyphOf)]);
        var program = Stream(pdf, file);
        program.Elements.SetInteger("/Length1", file.Length);
        var descendant = Add(pdf, "/Font", "/CIDFontType2");
        descendant.Elements.SetName("/BaseFont", full);
        descendant.Elements["/CIDSystemInfo"] = new PdfLiteral("<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>");
        descendant.Elements.SetName("/CIDToGIDMap", "/Identity");
        descendant.Elements["/W"] = new PdfLiteral($"[1[{string.Join(' ', _runes.Select(rune => Thousandths(font.WidthOf(rune))))}]]");
        descendant.Elements["/FontDescriptor"] = Descriptor(pdf, full, program.Reference!);
        var face = Add(pdf, "/Font", "/Type0");
        face.Elements.SetName("/BaseFont", full);
        face.Elements.SetName("/Encoding", "/Identity-H");
        face.Elements["/DescendantFonts"] = new PdfArray(pdf, descendant.Reference!);
        face.Elements["/ToUnicode"] = Stream(pdf, Encoding.ASCII.GetBytes(ToUnicode())).Reference;
        return face.Reference!;
    }

    private PdfReference Descriptor(PdfDocument pdf, string full, PdfReference program)
    {
        const int nonsymbolic = 32;
        var measures = font.Measures;
        var descriptor = Add(pdf, "/FontDescriptor", null);
        descriptor.Elements.SetName("/FontName", full);
        descriptor.Elements.SetInteger("/Flags", nonsymbolic);
        descriptor.Elements["/FontBBox"] = new PdfLiteral($"[{string.Join(' ', measures.Box.Select(Thousandths))}]");
        descriptor.Elements.SetInteger("/ItalicAngle", 0);
        descriptor.Elements["/Ascent"] = new PdfLiteral(Thousandths(measures.Ascent));
        descriptor.Elements["/Descent"] = new PdfLiteral(Thousandths(measures.Descent));
        descriptor.Elements.SetInteger("/CapHeight", CapHeight);
        descriptor.Elements.SetInteger("/StemV", stem);
        descriptor.Elements["/FontFile2"] = program;
        return descriptor.Reference!;
    }

    // The text of each number, at most 100 in a list (Adobe technical note 5411).
    private string ToUnicode()
    {
        var map = new StringBuilder(
            "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n"
            + "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n");
        for (var first = 0; first < _runes.Count; first += 100)
        {
            var list = _runes.Skip(first).Take(100).ToList();
            map.Append(CultureInfo.InvariantCulture, $"{list.Count} beginbfchar\n");
            foreach (var (rune, i) in list.Select((rune, i) => (rune, i)))
            {
                map.Append(CultureInfo.InvariantCulture, $"<{first + i + 1:X4}> <{string.Concat(rune.ToString().Select(c => ((int)c).ToString("X4", CultureInfo.InvariantCulture)))}>\n");
            }

            map.Append("endbfchar\n");
        }

        return map.Append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n").ToString();
    }

    private static PdfDictionary Add(PdfDocument pdf, string type, string? subtype)
    {
        var dictionary = new PdfDictionary(pdf);
        dictionary.Elements.SetName("/Type", type);
        if (subtype is not null)
        {
            dictionary.Elements.SetName("/Subtype", subtype);
        }

        pdf.Internals.AddObject(dictionary);
        return dictionary;
    }

    private static PdfDictionary Stream(PdfDocument pdf, byte[] bytes)
    {
        var stream = new PdfDictionary(pdf);
        stream.CreateStream(PdfOperators.Compressed(bytes));
        stream.Elements.SetName("/Filter", "/FlateDecode");
        pdf.Internals.AddObject(stream);
        return stream;
    }

    private static string Thousandths(double ofSize) => Numbers.AtMost(1000 * ofSize, 3);
}
