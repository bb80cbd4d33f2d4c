using System.Text;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>
/// Settles what the library fills with chance: the packet of metadata, whose ids are random and whose texts are not escaped. What
/// replaces it is as long, so that all places in the file stay where its table says.
/// </summary>
internal static class PdfBytes
{
    public static byte[] Settle(byte[] pdf, PdfAbout about)
    {
        Metadata(pdf, about);
        return pdf;
    }

    private static void Metadata(byte[] pdf, PdfAbout about)
    {
        var begin = IndexOf(pdf, "<?xpacket begin"u8, 0);
        while (begin >= 0)
        {
            var end = IndexOf(pdf, "<?xpacket end=\"w\"?>"u8, begin);
            if (end < 0)
            {
                return;
            }

            var packet = Encoding.UTF8.GetBytes(Packet(about));
            var room = pdf.AsSpan(begin, end - begin);
            room.Fill((byte)' ');
            packet.AsSpan(0, packet.Length <= room.Length ? packet.Length : 0).CopyTo(room);
            begin = IndexOf(pdf, "<?xpacket begin"u8, end);
        }
    }

    private static string Packet(PdfAbout about)
    {
        var date = about.Printed is { } day ? $"<xmp:CreateDate>{Numbers.Day(day)}</xmp:CreateDate>" : "";
        return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
            + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">"
            + "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:xmpMM=\"http://ns.adobe.com/xap/1.0/mm/\">"
            + $"<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{HtmlText.Escape(Short(about.Title))}</rdf:li></rdf:Alt></dc:title>"
            + $"<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">{HtmlText.Escape(Short(about.Subject))}</rdf:li></rdf:Alt></dc:description>"
            + $"<xmp:CreatorTool>Recipe</xmp:CreatorTool>{date}<xmpMM:DocumentID>uuid:{about.IdInHex}</xmpMM:DocumentID>"
            + "</rdf:Description></rdf:RDF></x:xmpmeta>\n";
    }

    private static string Short(string text) => PdfHead.Short(text, 60);

    private static int IndexOf(byte[] bytes, ReadOnlySpan<byte> wanted, int from)
    {
        var at = bytes.AsSpan(from).IndexOf(wanted);
        return at < 0 ? -1 : at + from;
    }
}
