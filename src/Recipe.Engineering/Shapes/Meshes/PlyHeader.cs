using System.Globalization;

namespace Recipe.Engineering;

/// <summary>What the head of a polygon file announces.</summary>
internal sealed class PlyHeader
{
    internal List<Element> Elements { get; } = [];

    /// <summary>Whether the figures are words.</summary>
    internal bool IsWords { get; private set; }

    internal bool IsBigEndian { get; private set; }

    /// <summary>First byte after the head.</summary>
    internal int Body { get; private set; }

    /// <summary>First line after the head, from 1.</summary>
    internal int BodyLine { get; private set; }

    internal static MeshRefusal? Read(ReadOnlySpan<byte> bytes, out PlyHeader header)
    {
        header = new PlyHeader();
        MeshWords words = new(bytes);
        words.RestOfLine();
        bool hasForm = false;
        while (!words.IsAtEnd)
        {
            int line = words.Line;
            ReadOnlySpan<byte> word = words.NextInLine();
            bool understood = true;
            if (word.SequenceEqual("end_header"u8))
            {
                words.RestOfLine();
                (header.Body, header.BodyLine) = (words.Position, words.Line);
                return hasForm ? null : new MeshRefusal(MeshRefusalReason.Malformed, "format", Line: line);
            }

            if (word.SequenceEqual("format"u8))
            {
                ReadOnlySpan<byte> form = words.NextInLine();
                header.IsWords = form.SequenceEqual("ascii"u8);
                header.IsBigEndian = form.SequenceEqual("binary_big_endian"u8);
                understood = hasForm = header.IsWords || header.IsBigEndian || form.SequenceEqual("binary_little_endian"u8);
            }
            else if (word.SequenceEqual("element"u8))
            {
                string name = MeshWords.Text(words.NextInLine());
                understood = long.TryParse(words.NextInLine(), NumberStyles.None, CultureInfo.InvariantCulture, out long count);
                header.Elements.Add(new Element(name, count));
            }
            else if (word.SequenceEqual("property"u8))
            {
                understood = header.Elements.Count > 0 && Property(ref words, header.Elements[^1]);
            }
            else if (!word.SequenceEqual("comment"u8) && !word.SequenceEqual("obj_info"u8) && !word.IsEmpty)
            {
                understood = false;
            }

            if (!understood)
            {
                return new MeshRefusal(MeshRefusalReason.Malformed, MeshWords.Text(word), Line: line);
            }

            words.RestOfLine();
        }

        return new MeshRefusal(MeshRefusalReason.Truncated, "end_header", Line: words.Line);
    }

    private static bool Property(ref MeshWords words, Element element)
    {
        ReadOnlySpan<byte> word = words.NextInLine();
        PlyType length = PlyType.None;
        if (word.SequenceEqual("list"u8))
        {
            length = Type(words.NextInLine());
            if (length is PlyType.None or PlyType.Float or PlyType.Double)
            {
                return false;
            }

            word = words.NextInLine();
        }

        PlyType type = Type(word);
        element.Fields.Add(new Field(MeshWords.Text(words.NextInLine()), type, length));
        return type != PlyType.None;
    }

    private static PlyType Type(ReadOnlySpan<byte> word) => MeshWords.Text(word) switch
    {
        "char" or "int8" => PlyType.Int8,
        "uchar" or "uint8" => PlyType.UInt8,
        "short" or "int16" => PlyType.Int16,
        "ushort" or "uint16" => PlyType.UInt16,
        "int" or "int32" => PlyType.Int32,
        "uint" or "uint32" => PlyType.UInt32,
        "float" or "float32" => PlyType.Float,
        "double" or "float64" => PlyType.Double,
        _ => PlyType.None,
    };

    /// <summary>A kind of record, and how many are announced.</summary>
    internal sealed record Element(string Name, long Count)
    {
        internal List<Field> Fields { get; } = [];
    }

    /// <summary>A figure of a record, or a list of them with a figure before it that says how many.</summary>
    internal sealed record Field(string Name, PlyType Type, PlyType LengthType);
}
