using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Xml;

namespace Recipe.Engineering;

/// <summary>
/// Reads the model of a 3MF package: meshes, components and build items with their transforms. Models in several parts, and what
/// extensions add, are refused or passed over as the core specification wants.
/// </summary>
/// <remarks>Source: 3MF Core Specification 1.x (ISO/IEC 25422), chapters 2 (package), 3 (model, units, transforms), 4 (meshes, components).</remarks>
internal static class ThreeMfFile
{
    private const string ModelType = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
    private const int MaximumEntries = 10_000;

    internal static MeshRefusal? Read(ReadOnlyMemory<byte> bytes, MeshSoup soup, out double? metres)
    {
        // Text of coordinates packs about tenfold; what packs far better is no mesh.
        long limit = Math.Min(512L << 20, (32L << 20) + (40L * bytes.Length));
        metres = null;
        CountedStream? counted = null;
        ThreeMfModel model = new(soup);
        try
        {
            using Stream stream = MemoryMarshal.TryGetArray(bytes, out ArraySegment<byte> segment)
                ? new MemoryStream(segment.Array!, segment.Offset, segment.Count, writable: false)
                : new MemoryStream(bytes.ToArray(), writable: false);
            using ZipArchive zip = new(stream, ZipArchiveMode.Read);
            if (zip.Entries.Count > MaximumEntries)
            {
                return new MeshRefusal(MeshRefusalReason.TooMuchInside, Found: zip.Entries.Count, Limit: MaximumEntries);
            }

            string name = ModelName(zip) ?? "3D/3dmodel.model";
            ZipArchiveEntry? entry = Find(zip, name);
            if (entry is null)
            {
                return new MeshRefusal(MeshRefusalReason.NotAMesh, name);
            }

            using (counted = new CountedStream(entry.Open(), limit))
            using (XmlReader xml = Xml(counted, limit))
            {
                return model.Read(xml, out metres);
            }
        }
        catch (XmlException broken)
        {
            return counted is { IsSpent: true }
                ? new MeshRefusal(MeshRefusalReason.TooMuchInside, Limit: limit)
                : new MeshRefusal(MeshRefusalReason.Malformed, "XML", Line: broken.LineNumber);
        }
        catch (Exception broken) when (broken is InvalidDataException or IOException or NotSupportedException or ArgumentException
            or InvalidOperationException or OverflowException or FormatException)
        {
            return counted is { IsSpent: true }
                ? new MeshRefusal(MeshRefusalReason.TooMuchInside, Limit: limit)
                : new MeshRefusal(MeshRefusalReason.Malformed, "zip");
        }
    }

    private static XmlReader Xml(Stream stream, long limit) => XmlReader.Create(
        stream,
        new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = limit,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
        });

    private static ZipArchiveEntry? Find(ZipArchive zip, string name) =>
        zip.Entries.FirstOrDefault(entry => string.Equals(entry.FullName.TrimStart('/'), name.TrimStart('/'), StringComparison.OrdinalIgnoreCase));

    /// <summary>The package says in its relationships which part is the model.</summary>
    private static string? ModelName(ZipArchive zip)
    {
        if (Find(zip, "_rels/.rels") is not { } entry)
        {
            return null;
        }

        const long limit = 1 << 20;
        using CountedStream counted = new(entry.Open(), limit);
        using XmlReader xml = Xml(counted, limit);
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "Relationship" && xml.GetAttribute("Type") == ModelType)
            {
                return xml.GetAttribute("Target");
            }
        }

        return null;
    }
}
