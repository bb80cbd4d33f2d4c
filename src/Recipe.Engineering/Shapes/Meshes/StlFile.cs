using System.Buffers.Binary;

namespace Recipe.Engineering;

/// <summary>Reads stereolithography files. The normals in them are not used: the order of the corners says which side is meant.</summary>
/// <remarks>Source of the form: the file of 80 bytes of header, a count and 50 bytes a triangle, and its form in words, as commonly published.</remarks>
internal static class StlFile
{
    private const int Head = 84;
    private const int Each = 50;

    /// <summary>Whether the count in the header and the length of the file say the same; then it is binary even if it begins with "solid".</summary>
    internal static bool IsBinary(ReadOnlySpan<byte> bytes) =>
        bytes.Length >= Head && Head + ((long)Each * BinaryPrimitives.ReadUInt32LittleEndian(bytes[80..])) == bytes.Length;

    /// <summary>Whether it begins as the form in words does.</summary>
    internal static bool IsWords(ReadOnlySpan<byte> bytes)
    {
        MeshWords words = new(bytes[..Math.Min(bytes.Length, 4096)]);
        if (!Is(words.Next(), "solid"u8))
        {
            return false;
        }

        words.RestOfLine();
        ReadOnlySpan<byte> next = words.Next();
        return next.IsEmpty || Is(next, "facet"u8) || Is(next, "endsolid"u8) || !bytes[..Math.Min(bytes.Length, 512)].ContainsAnyInRange((byte)0, (byte)8);
    }

    internal static MeshRefusal? ReadBinary(ReadOnlySpan<byte> bytes, MeshSoup soup)
    {
        if (bytes.Length < Head)
        {
            return new MeshRefusal(MeshRefusalReason.Truncated, Found: bytes.Length, Limit: Head, Offset: bytes.Length);
        }

        uint said = BinaryPrimitives.ReadUInt32LittleEndian(bytes[80..]);
        if (said > MeshReading.MaximumTriangles)
        {
            return new MeshRefusal(MeshRefusalReason.TooManyTriangles, Found: said, Limit: MeshReading.MaximumTriangles, Offset: 80);
        }

        long length = Head + ((long)Each * said);
        if (length > bytes.Length)
        {
            return new MeshRefusal(MeshRefusalReason.Truncated, Found: (bytes.Length - Head) / Each, Limit: said, Offset: bytes.Length);
        }

        int count = (int)said;
        soup.TrailingBytes = (int)(bytes.Length - length);
        soup.Triangles = new MeshTriangle[Math.Max(count, 1)];
        soup.Points = new Point3[Math.Max((count / 2) + 16, 16)];
        PointTable table = new((count / 2) + 16);
        Span<int> corners = stackalloc int[3];
        for (int i = 0; i < count; i++)
        {
            int at = Head + (Each * i) + 12;
            for (int k = 0; k < 3; k++, at += 12)
            {
                float x = BinaryPrimitives.ReadSingleLittleEndian(bytes[at..]);
                float y = BinaryPrimitives.ReadSingleLittleEndian(bytes[(at + 4)..]);
                float z = BinaryPrimitives.ReadSingleLittleEndian(bytes[(at + 8)..]);
                if (!float.IsFinite(x) || !float.IsFinite(y) || !float.IsFinite(z))
                {
                    return new MeshRefusal(MeshRefusalReason.NotANumber, Offset: at);
                }

                corners[k] = table.Find(soup, x, y, z);
            }

            soup.AddTriangle(corners[0], corners[1], corners[2]);
        }

        soup.MergedOnReading = (3 * count) - soup.PointCount;
        return null;
    }

    internal static MeshRefusal? ReadWords(ReadOnlySpan<byte> bytes, MeshSoup soup)
    {
        MeshWords words = new(bytes);
        PointTable table = new(512);
        Span<int> corners = stackalloc int[3];
        int have = -1;
        bool inSolid = false;
        while (true)
        {
            ReadOnlySpan<byte> word = words.Next();
            if (word.IsEmpty)
            {
                soup.MergedOnReading = (3 * soup.Count) - soup.PointCount;
                return inSolid || have >= 0 ? new MeshRefusal(MeshRefusalReason.Truncated, "endsolid", Line: words.Line) : null;
            }

            if (Is(word, "vertex"u8) && have is >= 0 and < 3)
            {
                if (MeshNumbers.Three(ref words, out double x, out double y, out double z) is { } refusal)
                {
                    return refusal;
                }

                corners[have++] = table.Find(soup, x, y, z);
            }
            else if (Is(word, "endfacet"u8) && have == 3)
            {
                if (soup.IsFull)
                {
                    return new MeshRefusal(MeshRefusalReason.TooManyTriangles, Limit: MeshReading.MaximumTriangles, Line: words.Line);
                }

                soup.AddTriangle(corners[0], corners[1], corners[2]);
                have = -1;
            }
            else if (Is(word, "facet"u8) && inSolid && have < 0)
            {
                have = 0;
            }
            else if (Is(word, "normal"u8) && have == 0)
            {
                for (int i = 0; i < 3; i++)
                {
                    words.NextInLine();
                }
            }
            else if ((Is(word, "outer"u8) || Is(word, "loop"u8) || Is(word, "endloop"u8)) && have >= 0)
            {
                // They say nothing that the corners do not.
            }
            else if (Is(word, "solid"u8) && !inSolid)
            {
                inSolid = true;
                soup.StartGroup(MeshWords.Text(words.RestOfLine()));
            }
            else if (Is(word, "endsolid"u8) && inSolid && have < 0)
            {
                inSolid = false;
                words.RestOfLine();
            }
            else
            {
                return new MeshRefusal(MeshRefusalReason.Malformed, MeshWords.Text(word), Line: words.Line);
            }
        }
    }

    private static bool Is(ReadOnlySpan<byte> word, ReadOnlySpan<byte> expected) =>
        word.Length == expected.Length && System.Text.Ascii.EqualsIgnoreCase(word, expected);
}
