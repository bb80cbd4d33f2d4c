using System.Buffers.Binary;

namespace Recipe.Documents.Writing;

/// <summary>Settles the times of writing in a ZIP file (APPNOTE 4.3): the first moment the format knows, 1980-01-01 00:00.</summary>
internal static class ZipDates
{
    private const ushort FirstDay = (1 << 5) | 1;
    private const int EndLength = 22;

    public static byte[] Settle(byte[] zip)
    {
        var end = zip.AsSpan().LastIndexOf("PK\u0005\u0006"u8);
        if (end < 0 || zip.Length - end < EndLength)
        {
            throw new ArgumentException("That is no ZIP file.", nameof(zip));
        }

        var count = BinaryPrimitives.ReadUInt16LittleEndian(zip.AsSpan(end + 10));
        var at = (int)BinaryPrimitives.ReadUInt32LittleEndian(zip.AsSpan(end + 16));
        for (var i = 0; i < count; i++)
        {
            Set(zip, at + 12);
            Set(zip, (int)BinaryPrimitives.ReadUInt32LittleEndian(zip.AsSpan(at + 42)) + 10);
            at += 46 + BinaryPrimitives.ReadUInt16LittleEndian(zip.AsSpan(at + 28)) + BinaryPrimitives.ReadUInt16LittleEndian(zip.AsSpan(at + 30))
                + BinaryPrimitives.ReadUInt16LittleEndian(zip.AsSpan(at + 32));
        }

        return zip;
    }

    private static void Set(byte[] zip, int at)
    {
        BinaryPrimitives.WriteUInt16LittleEndian(zip.AsSpan(at), 0);
        BinaryPrimitives.WriteUInt16LittleEndian(zip.AsSpan(at + 2), FirstDay);
    }
}
