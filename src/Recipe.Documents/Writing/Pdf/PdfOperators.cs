using System.IO.Compression;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>
/// What is drawn on a page, as the operators of a content stream (ISO 32000-1, 8 and 9). The room for it is used again from page to page.
/// </summary>
internal sealed class PdfOperators
{
    // Thousandths of a point: a third of a thousandth of a millimetre.
    private const int Decimals = 3;
    private const double Thousand = 1000;

    // No page is so large: a number beyond is a mistake of the layout that must not make a file which nobody can open.
    private const double Largest = 1e9;

    // From 1 to 2 a file loses a third of its size; from 2 to 9 a sixth more, in three times the time.
    private static readonly ZLibCompressionOptions Packing = new() { CompressionLevel = 2 };

    private byte[] _bytes = new byte[32 * 1024];
    private int _count;

    /// <summary>A number, followed by a space.</summary>
    public PdfOperators Number(double value)
    {
        Span<byte> backwards = stackalloc byte[24];
        var scaled = double.IsFinite(value) ? (long)Math.Round(Math.Clamp(value, -Largest, Largest) * Thousand, MidpointRounding.AwayFromZero) : 0;
        var (count, rest) = (0, Math.Abs(scaled));
        for (var place = 0; place <= Decimals || rest > 0; place++)
        {
            if (place == Decimals && count > 0)
            {
                backwards[count++] = (byte)'.';
            }

            // Zeros at the end of the fraction are left out.
            if (count > 0 || place >= Decimals || rest % 10 != 0)
            {
                backwards[count++] = (byte)('0' + (rest % 10));
            }

            rest /= 10;
        }

        Room(count + 2);
        if (scaled < 0)
        {
            _bytes[_count++] = (byte)'-';
        }

        while (count > 0)
        {
            _bytes[_count++] = backwards[--count];
        }

        _bytes[_count++] = (byte)' ';
        return this;
    }

    /// <summary>Anything as it stands: the name of an operator with what ends it.</summary>
    public PdfOperators Write(ReadOnlySpan<byte> text)
    {
        Room(text.Length);
        text.CopyTo(_bytes.AsSpan(_count));
        _count += text.Length;
        return this;
    }

    /// <summary>A number of 16 bits as four hexadecimal digits.</summary>
    public void Hex(int number)
    {
        Room(4);
        for (var shift = 12; shift >= 0; shift -= 4)
        {
            var digit = (number >> shift) & 0xF;
            _bytes[_count++] = (byte)(digit < 10 ? '0' + digit : 'A' + digit - 10);
        }
    }

    /// <summary>All that was written, compressed (RFC 1950); what comes after begins anew.</summary>
    public byte[] Take()
    {
        var taken = Compressed(_bytes.AsSpan(0, _count));
        _count = 0;
        return taken;
    }

    /// <summary>Some bytes, compressed (RFC 1950).</summary>
    public static byte[] Compressed(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream((bytes.Length / 3) + 64);
        using (var stream = new ZLibStream(packed, Packing, leaveOpen: true))
        {
            stream.Write(bytes);
        }

        return packed.ToArray();
    }

    private void Room(int more)
    {
        if (_count + more > _bytes.Length)
        {
            Array.Resize(ref _bytes, Math.Max(2 * _bytes.Length, _count + more));
        }
    }
}
