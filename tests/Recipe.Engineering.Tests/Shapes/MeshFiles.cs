using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Recipe.Engineering.Tests.Shapes;

/// <summary>Writes meshes in every form that is read, plainly, so that what is read can be compared with what was written.</summary>
internal static class MeshFiles
{
    internal static readonly string[] Forms = ["stl-binary", "stl-binary-solid", "stl-ascii", "obj", "ply-ascii", "ply-little", "ply-big", "3mf"];

    internal static byte[] Write(TriangleMesh mesh, string form) => form switch
    {
        "stl-binary" => StlBinary(mesh, "made by a test"),
        "stl-binary-solid" => StlBinary(mesh, "solid made by a test"),
        "stl-ascii" => StlAscii(mesh),
        "obj" => Obj(mesh),
        "ply-ascii" => Ply(mesh, "ascii"),
        "ply-little" => Ply(mesh, "binary_little_endian"),
        "ply-big" => Ply(mesh, "binary_big_endian"),
        "3mf" => ThreeMf(ThreeMfModel(mesh, "millimeter")),
        _ => throw new ArgumentException(form, nameof(form)),
    };

    internal static string NameOf(string form) => "mesh." + form.Split('-')[0];

    internal static byte[] StlBinary(TriangleMesh mesh, string header)
    {
        byte[] bytes = new byte[84 + (50 * mesh.Triangles.Length)];
        Encoding.ASCII.GetBytes(header, bytes);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), mesh.Triangles.Length);
        for (int i = 0; i < mesh.Triangles.Length; i++)
        {
            int at = 84 + (50 * i) + 12;
            foreach (Point3 point in Corners(mesh, i))
            {
                foreach (double value in Of(point))
                {
                    BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at), (float)value);
                    at += 4;
                }
            }
        }

        return bytes;
    }

    internal static byte[] StlAscii(TriangleMesh mesh)
    {
        StringBuilder text = new();
        (string Name, int First, int Count)[] solids = mesh.Groups.IsEmpty
            ? [("whole", 0, mesh.Triangles.Length)]
            : [.. mesh.Groups.Select(group => (group.Name, group.First, group.Count))];
        foreach ((string name, int first, int count) in solids)
        {
            text.Append(CultureInfo.InvariantCulture, $"solid {name}\n");
            for (int i = first; i < first + count; i++)
            {
                text.Append("  facet normal 0 0 0\n    outer loop\n");
                foreach (Point3 point in Corners(mesh, i))
                {
                    text.Append(CultureInfo.InvariantCulture, $"      vertex {Words(point)}\n");
                }

                text.Append("    endloop\n  endfacet\n");
            }

            text.Append(CultureInfo.InvariantCulture, $"endsolid {name}\n");
        }

        return Bytes(text);
    }

    internal static byte[] Obj(TriangleMesh mesh)
    {
        StringBuilder text = new("# a test\n");
        foreach (Point3 point in mesh.Vertices)
        {
            text.Append(CultureInfo.InvariantCulture, $"v {Words(point)}\n");
        }

        for (int i = 0; i < mesh.Triangles.Length; i++)
        {
            foreach (MeshGroup group in mesh.Groups.Where(group => group.First == i))
            {
                text.Append(CultureInfo.InvariantCulture, $"g {group.Name}\n");
            }

            (int a, int b, int c) = mesh.Triangles[i];
            text.Append(CultureInfo.InvariantCulture, $"f {a + 1}/1/1 {b + 1}//2 {c - mesh.Vertices.Length}\n");
        }

        return Bytes(text);
    }

    /// <summary>Properties stand in another order than usual, among others that say nothing of shape.</summary>
    internal static byte[] Ply(TriangleMesh mesh, string form)
    {
        using MemoryStream stream = new();
        stream.Write(Encoding.ASCII.GetBytes(string.Create(
            CultureInfo.InvariantCulture,
            $"ply\nformat {form} 1.0\ncomment a test\nelement vertex {mesh.Vertices.Length}\nproperty double z\nproperty uchar red\nproperty double x\nproperty double y\nelement face {mesh.Triangles.Length}\nproperty short flags\nproperty list uchar int vertex_indices\nend_header\n")));
        void Put(double value, int size, bool isFloat)
        {
            Span<byte> bytes = stackalloc byte[8];
            if (form == "ascii")
            {
                stream.Write(Encoding.ASCII.GetBytes(value.ToString("R", CultureInfo.InvariantCulture) + " "));
                return;
            }

            if (isFloat)
            {
                BinaryPrimitives.WriteDoubleLittleEndian(bytes, value);
            }
            else
            {
                BinaryPrimitives.WriteInt64LittleEndian(bytes, (long)value);
            }

            bytes = bytes[..size];
            if (form == "binary_big_endian")
            {
                bytes.Reverse();
            }

            stream.Write(bytes);
        }

        foreach (Point3 point in mesh.Vertices)
        {
            Put(point.Z, 8, true);
            Put(200, 1, false);
            Put(point.X, 8, true);
            Put(point.Y, 8, true);
        }

        foreach ((int a, int b, int c) in mesh.Triangles)
        {
            Put(-7, 2, false);
            Put(3, 1, false);
            Put(a, 4, false);
            Put(b, 4, false);
            Put(c, 4, false);
        }

        return stream.ToArray();
    }

    internal static string ThreeMfModel(TriangleMesh mesh, string unit, string build = "<item objectid=\"1\"/>", string more = "")
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"<?xml version=\"1.0\"?>\n<model unit=\"{unit}\" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\"><resources><object id=\"1\" name=\"bowl\"><mesh><vertices>");
        foreach (Point3 point in mesh.Vertices)
        {
            text.Append(CultureInfo.InvariantCulture, $"<vertex x=\"{point.X:R}\" y=\"{point.Y:R}\" z=\"{point.Z:R}\"/>\n");
        }

        text.Append("</vertices><triangles>");
        foreach ((int a, int b, int c) in mesh.Triangles)
        {
            text.Append(CultureInfo.InvariantCulture, $"<triangle v1=\"{a}\" v2=\"{b}\" v3=\"{c}\"/>\n");
        }

        return text.Append(CultureInfo.InvariantCulture, $"</triangles></mesh></object>{more}</resources><build>{build}</build></model>").ToString();
    }

    internal static byte[] ThreeMf(string model)
    {
        using MemoryStream stream = new();
        using (ZipArchive zip = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Entry(zip, "_rels/.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Target=\"/3D/part.model\" Id=\"r\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/></Relationships>");
            Entry(zip, "3D/part.model", model);
        }

        return stream.ToArray();
    }

    private static void Entry(ZipArchive zip, string name, string text)
    {
        using Stream entry = zip.CreateEntry(name).Open();
        entry.Write(Encoding.UTF8.GetBytes(text));
    }

    private static Point3[] Corners(TriangleMesh mesh, int i)
    {
        (int a, int b, int c) = mesh.Triangles[i];
        return [mesh.Vertices[a], mesh.Vertices[b], mesh.Vertices[c]];
    }

    private static double[] Of(Point3 point) => [point.X, point.Y, point.Z];

    private static string Words(Point3 point) => string.Create(CultureInfo.InvariantCulture, $"{point.X:R} {point.Y:R} {point.Z:R}");

    private static byte[] Bytes(StringBuilder text) => Encoding.UTF8.GetBytes(text.ToString());
}
