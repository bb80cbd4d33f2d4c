using System.Buffers.Binary;

namespace Recipe.Engineering;

/// <summary>The figures of the body of a polygon file, whether in words or in bytes.</summary>
internal ref struct PlyFigures(ReadOnlySpan<byte> bytes, PlyHeader header)
{
    private readonly ReadOnlySpan<byte> _bytes = bytes;
    private readonly bool _isWords = header.IsWords;
    private readonly bool _isBigEndian = header.IsBigEndian;
    private MeshWords _words = new(bytes, header.Body, header.BodyLine);
    private int _at = header.Body;

    /// <summary>Bytes that are left: no record can be shorter than one.</summary>
    internal readonly int Left => _bytes.Length - (_isWords ? _words.Position : _at);

    /// <summary>The next figure, or what is wrong.</summary>
    internal MeshRefusal? Next(PlyType type, out double figure)
    {
        figure = 0;
        if (_isWords)
        {
            ReadOnlySpan<byte> word = _words.Next();
            return word.IsEmpty ? Refuse(MeshRefusalReason.Truncated)
                : MeshWords.TryNumber(word, out figure) ? null
                : Refuse(MeshRefusalReason.Malformed, MeshWords.Text(word));
        }

        int size = type switch
        {
            PlyType.Int8 or PlyType.UInt8 => 1,
            PlyType.Int16 or PlyType.UInt16 => 2,
            PlyType.Double => 8,
            _ => 4,
        };
        if (_bytes.Length - _at < size)
        {
            return Refuse(MeshRefusalReason.Truncated);
        }

        ReadOnlySpan<byte> here = _bytes.Slice(_at, size);
        _at += size;
        figure = type switch
        {
            PlyType.Int8 => (sbyte)here[0],
            PlyType.UInt8 => here[0],
            PlyType.Int16 => _isBigEndian ? BinaryPrimitives.ReadInt16BigEndian(here) : BinaryPrimitives.ReadInt16LittleEndian(here),
            PlyType.UInt16 => _isBigEndian ? BinaryPrimitives.ReadUInt16BigEndian(here) : BinaryPrimitives.ReadUInt16LittleEndian(here),
            PlyType.Int32 => _isBigEndian ? BinaryPrimitives.ReadInt32BigEndian(here) : BinaryPrimitives.ReadInt32LittleEndian(here),
            PlyType.UInt32 => _isBigEndian ? BinaryPrimitives.ReadUInt32BigEndian(here) : BinaryPrimitives.ReadUInt32LittleEndian(here),
            PlyType.Float => _isBigEndian ? BinaryPrimitives.ReadSingleBigEndian(here) : BinaryPrimitives.ReadSingleLittleEndian(here),
            _ => _isBigEndian ? BinaryPrimitives.ReadDoubleBigEndian(here) : BinaryPrimitives.ReadDoubleLittleEndian(here),
        };
        return null;
    }

    /// <summary>A refusal with the place where it stands.</summary>
    internal readonly MeshRefusal Refuse(MeshRefusalReason reason, string? word = null, double? found = null, double? limit = null) =>
        _isWords ? new MeshRefusal(reason, word, found, limit, Line: _words.Line) : new MeshRefusal(reason, word, found, limit, Offset: _at);
}
