using System.Buffers.Binary;
using System.Text;

namespace Recipe.Documents.Fonts;

/// <summary>
/// A TrueType font that lies in this assembly: what its glyphs are wide and which characters it has. Only the tables that say so are
/// read (<c>cmap</c> format 12, <c>hmtx</c>, <c>hhea</c>, <c>head</c>; ISO/IEC 14496-22), the outlines only by <see cref="FontSubset"/>.
/// </summary>
internal sealed class FontFile
{
    private static readonly Lazy<FontFile> LazyRegular = new(() => new FontFile("DejaVuSansCondensed.ttf"));
    private static readonly Lazy<FontFile> LazyBold = new(() => new FontFile("DejaVuSansCondensed-Bold.ttf"));

    private readonly string _resource;
    private readonly Dictionary<string, (int At, int Length)> _tables;
    private readonly (int First, int Last, int Glyph)[] _groups;
    private readonly ushort[] _advances;
    private readonly double _unitsPerEm;

    // Nearly every character of a paper is below this; their widths are found without a search.
    private readonly double[] _common = new double[0x180];

    private FontFile(string resource)
    {
        _resource = resource;
        using var stream = Open();
        var tables = _tables = TablesOf(stream);
        _unitsPerEm = BinaryPrimitives.ReadUInt16BigEndian(Read(stream, tables["head"].At + 18, 2));
        var count = BinaryPrimitives.ReadUInt16BigEndian(Read(stream, tables["hhea"].At + 34, 2));
        var metrics = Read(stream, tables["hmtx"].At, 4 * count);
        _advances = [.. Enumerable.Range(0, count).Select(i => BinaryPrimitives.ReadUInt16BigEndian(metrics.AsSpan(4 * i)))];
        _groups = GroupsOf(stream, tables["cmap"].At);
        for (var c = 0; c < _common.Length; c++)
        {
            _common[c] = Search(c) is { } glyph ? WidthOf(glyph) : -1;
        }
    }

    /// <summary>The upright face of medium weight.</summary>
    public static FontFile Regular => LazyRegular.Value;

    /// <summary>The bold face.</summary>
    public static FontFile Bold => LazyBold.Value;

    /// <summary>The face for a text.</summary>
    public static FontFile Of(bool strong) => strong ? Bold : Regular;

    /// <summary>Whether the font has a glyph for a character.</summary>
    public bool Has(Rune rune) => rune.Value < _common.Length ? _common[rune.Value] >= 0 : Search(rune.Value) is not null;

    /// <summary>Width of a text set in size 1, without kerning.</summary>
    public double WidthOf(ReadOnlySpan<char> text)
    {
        var width = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            width += WidthOf(rune);
        }

        return width;
    }

    /// <summary>Width of a character set in size 1; of the sign for a missing one when the font has none.</summary>
    public double WidthOf(Rune rune)
    {
        var width = rune.Value < _common.Length ? _common[rune.Value] : Search(rune.Value) is { } glyph ? WidthOf(glyph) : -1;
        return width >= 0 ? width : WidthOf(0);
    }

    /// <summary>The number of the glyph of a character; 0, the sign for a missing one, when the font has none.</summary>
    public int GlyphOf(Rune rune) => Search(rune.Value) ?? 0;

    /// <summary>How far letters reach above and below the base line in size 1, and the box about all of them: left, bottom, right, top.</summary>
    public (double Ascent, double Descent, double[] Box) Measures
    {
        get
        {
            using var stream = Open();
            var head = Read(stream, _tables["head"].At + 36, 8);
            var hhea = Read(stream, _tables["hhea"].At + 4, 4);
            double At(byte[] bytes, int at) => BinaryPrimitives.ReadInt16BigEndian(bytes.AsSpan(at)) / _unitsPerEm;
            return (At(hhea, 0), At(hhea, 2), [At(head, 0), At(head, 2), At(head, 4), At(head, 6)]);
        }
    }

    /// <summary>Where a table lies in the file and how long it is, bytes.</summary>
    public (int At, int Length) Table(string name) => _tables[name];

    /// <summary>How many glyphs have a width of their own; those after them are as wide as the last of them.</summary>
    public int Widths => _advances.Length;

    /// <summary>The whole font file.</summary>
    public Stream Open() =>
        typeof(FontFile).Assembly.GetManifestResourceStream(_resource) ?? throw new InvalidOperationException($"The font {_resource} is missing.");

    /// <summary>Some bytes of an open font file.</summary>
    public static byte[] Read(Stream stream, int at, int count)
    {
        var bytes = new byte[count];
        stream.Position = at;
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static Dictionary<string, (int At, int Length)> TablesOf(Stream stream)
    {
        var count = BinaryPrimitives.ReadUInt16BigEndian(Read(stream, 4, 2));
        var records = Read(stream, 12, 16 * count);
        return Enumerable.Range(0, count).ToDictionary(
            i => Encoding.ASCII.GetString(records, 16 * i, 4),
            i => (Int(records, (16 * i) + 8), Int(records, (16 * i) + 12)),
            StringComparer.Ordinal);
    }

    private static (int First, int Last, int Glyph)[] GroupsOf(Stream stream, int cmap)
    {
        const int windows = 3, fullUnicode = 10;
        var count = BinaryPrimitives.ReadUInt16BigEndian(Read(stream, cmap + 2, 2));
        for (var i = 0; i < count; i++)
        {
            var record = Read(stream, cmap + 4 + (8 * i), 8);
            if (BinaryPrimitives.ReadUInt16BigEndian(record) == windows && BinaryPrimitives.ReadUInt16BigEndian(record.AsSpan(2)) == fullUnicode)
            {
                var at = cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(record.AsSpan(4));
                var groups = (int)BinaryPrimitives.ReadUInt32BigEndian(Read(stream, at + 12, 4));
                var bytes = Read(stream, at + 16, 12 * groups);
                return [.. Enumerable.Range(0, groups).Select(group => (Int(bytes, 12 * group), Int(bytes, (12 * group) + 4), Int(bytes, (12 * group) + 8)))];
            }
        }

        throw new InvalidOperationException("The font has no table of all its characters.");
    }

    private static int Int(byte[] bytes, int at) => (int)BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));

    private double WidthOf(int glyph) => _advances[Math.Min(glyph, _advances.Length - 1)] / _unitsPerEm;

    private int? Search(int character)
    {
        var (low, high) = (0, _groups.Length - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var (first, last, glyph) = _groups[middle];
            if (character < first)
            {
                high = middle - 1;
            }
            else if (character > last)
            {
                low = middle + 1;
            }
            else
            {
                return glyph + character - first;
            }
        }

        return null;
    }
}
