using System.Text;
using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests.Shapes;

public class MeshReadingTests
{
    private static readonly Length Millimetre = Length.FromMillimeters(1);

    /// <summary>A bowl in millimetres on whole 1/64 mm, which every form holds exactly.</summary>
    private static readonly TriangleMesh Bowl = Rounded(SurfaceMeshes.SphericalCap(Length.FromMillimeters(300), Length.FromMillimeters(90), Length.FromMillimeters(2)));

    public static TheoryData<string> Forms => [.. MeshFiles.Forms];

    [Theory]
    [MemberData(nameof(Forms))]
    public void Every_form_gives_the_same_mesh(string form)
    {
        MeshReading reading = Read(MeshFiles.Write(Bowl, form), MeshFiles.NameOf(form));
        Assert.Null(reading.Refusal);
        Assert.Equal(form == "3mf", reading.UnitFromFile);
        Assert.Equal(0.001, reading.Unit.Meters);
        Assert.Equal(Places(Bowl, 0.001), Places(reading.Mesh!, 1));
        Assert.DoesNotContain(reading.Repairs, repair => repair.Kind is not (MeshRepairKind.PointsMerged or MeshRepairKind.OpenEdgesLeft));
    }

    [Fact]
    public void A_form_without_a_unit_asks_for_it_and_3mf_says_its_own()
    {
        foreach (string form in MeshFiles.Forms.Where(form => form != "3mf"))
        {
            Assert.Equal(MeshRefusalReason.UnitNotSaid, MeshReading.Read(MeshFiles.Write(Bowl, form), MeshFiles.NameOf(form), null).Refusal?.Reason);
        }

        // ISO/IEC 25422: micron, millimeter, centimeter, inch, foot, meter.
        foreach ((string unit, double metres) in new[] { ("micron", 1e-6), ("millimeter", 1e-3), ("centimeter", 1e-2), ("inch", 0.0254), ("foot", 0.3048), ("meter", 1) })
        {
            MeshReading reading = MeshReading.Read(MeshFiles.ThreeMf(MeshFiles.ThreeMfModel(Bowl, unit)), "a.3mf", null);
            Digits.Close(metres, reading.Unit.Meters);
            Assert.True(reading.UnitFromFile);
            Digits.Close(MeshMeasures.Of(Bowl).Area.SquareMeters * metres * metres, MeshMeasures.Of(reading.Mesh!).Area.SquareMeters, 1e-9);
        }
    }

    [Fact]
    public void Several_solids_and_groups_keep_their_names()
    {
        int half = Bowl.Triangles.Length / 2;
        TriangleMesh named = new(Bowl.Vertices, Bowl.Triangles, [new("floor of it", 0, half), new("wall", half, Bowl.Triangles.Length - half)]);
        foreach (string form in new[] { "stl-ascii", "obj" })
        {
            Assert.Equal(named.Groups.ToArray(), Read(MeshFiles.Write(named, form), MeshFiles.NameOf(form)).Mesh!.Groups.ToArray());
        }
    }

    [Fact]
    public void A_polygon_becomes_a_fan()
    {
        const string square = "v 0 0 0\nv 100 0 0\nv 100 100 0\nv 0 100 0\nf -4 -3 \\\n -2 -1\n";
        TriangleMesh mesh = Read(Encoding.ASCII.GetBytes(square), "a.obj").Mesh!;
        Assert.Equal(2, mesh.Triangles.Length);
        Digits.Close(0.01, MeshMeasures.Of(mesh).Area.SquareMeters);

        const string ply = "ply\nformat ascii 1.0\nelement face 1\nproperty list uchar int vertex_index\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nend_header\n4 0 1 2 3\n0 0 0\n100 0 0\n100 100 0\n0 100 0\n";
        Digits.Close(0.01, MeshMeasures.Of(Read(Encoding.ASCII.GetBytes(ply), "a.ply").Mesh!).Area.SquareMeters);
    }

    [Fact]
    public void Components_and_items_of_3mf_are_put_in_their_places()
    {
        // Twice as large along X and mirrored, then moved; and two of the bowl side by side.
        string model = MeshFiles.ThreeMfModel(
            Bowl,
            "millimeter",
            "<item objectid=\"2\" transform=\"1 0 0 0 1 0 0 0 1 0 1000 0\"/>",
            "<object id=\"2\"><components><component objectid=\"1\"/><component objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 1000 0 0\"/></components></object>");
        MeshReading reading = MeshReading.Read(MeshFiles.ThreeMf(model), "a.3mf", null);
        MeshMeasures measures = MeshMeasures.Of(reading.Mesh!, new Point3(0, 0, 1));
        Assert.Equal(2, measures.Parts);
        Digits.Close(2e-6 * MeshMeasures.Of(Bowl).Area.SquareMeters, measures.Area.SquareMeters);
        Digits.Close(1.15, measures.Most.X, 1e-3);
        Digits.Close(1.15, measures.Most.Y, 1e-3);

        // The mirrored one still looks up.
        Assert.Equal(0, measures.Draft!.FacingAway.SquareMeters);
    }

    [Theory]
    [InlineData("", "a.stl", MeshRefusalReason.Empty)]
    [InlineData("hello", "a.stl", MeshRefusalReason.Truncated)]
    [InlineData("hello", "a.step", MeshRefusalReason.NotAMesh)]
    [InlineData("solid a\nendsolid a\n", "a.stl", MeshRefusalReason.NoTriangles)]
    [InlineData("solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\n", "a.stl", MeshRefusalReason.Truncated)]
    [InlineData("solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 zero\n", "a.stl", MeshRefusalReason.Malformed)]
    [InlineData("solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 NaN\n", "a.stl", MeshRefusalReason.NotANumber)]
    [InlineData("solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 1e999\n", "a.stl", MeshRefusalReason.NotANumber)]
    [InlineData("v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 4\n", "a.obj", MeshRefusalReason.NoSuchCorner)]
    [InlineData("v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 -4\n", "a.obj", MeshRefusalReason.NoSuchCorner)]
    [InlineData("v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2\n", "a.obj", MeshRefusalReason.Malformed)]
    [InlineData("v 0 0 0\nv 1 0 0\nv 0 1 0\nf a b c\n", "a.obj", MeshRefusalReason.Malformed)]
    [InlineData("v 0 0 0\nv 1 0 0\nv 2 0 0\nf 1 2 3\n", "a.obj", MeshRefusalReason.NoTriangles)]
    [InlineData("v 0 0 0\nv 1e9 0 0\nv 0 1 0\nf 1 2 3\n", "a.obj", MeshRefusalReason.TooLarge)]
    [InlineData("v 0 0 0\nv 1e-3 0 0\nv 0 1e-3 0\nf 1 2 3\n", "a.obj", MeshRefusalReason.TooSmall)]
    [InlineData("ply\nformat ascii 1.0\nelement vertex 3\n", "a.ply", MeshRefusalReason.Truncated)]
    [InlineData("ply\nformat ascii 1.0\nelement vertex 9000000000000\nproperty float x\nproperty float y\nproperty float z\nend_header\n0 0 0\n", "a.ply", MeshRefusalReason.Truncated)]
    [InlineData("ply\nformat strange 1.0\nend_header\n", "a.ply", MeshRefusalReason.Malformed)]
    [InlineData("ply\nformat ascii 1.0\nelement vertex 1\nproperty float x\nproperty float y\nend_header\n0 0\n", "a.ply", MeshRefusalReason.Malformed)]
    [InlineData("ply\nformat ascii 1.0\nelement face 1\nproperty list uchar int vertex_indices\nend_header\n3 0 1 2\n", "a.ply", MeshRefusalReason.NoSuchCorner)]
    [InlineData("ply\nformat ascii 1.0\nelement tristrips 1\nproperty list int int vertex_indices\nend_header\n3 0 1 2\n", "a.ply", MeshRefusalReason.NotSupported)]
    [InlineData("PK\u0003\u0004 and nothing that is a package", "a.3mf", MeshRefusalReason.Malformed)]
    public void Bad_files_are_refused_with_a_reason(string text, string name, MeshRefusalReason reason)
    {
        MeshReading reading = Read(Encoding.UTF8.GetBytes(text), name);
        Assert.Null(reading.Mesh);
        Assert.Equal(reason, reading.Refusal?.Reason);
    }

    [Fact]
    public void Refusals_say_where()
    {
        Assert.Equal(4, Read("solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 zero\n"u8.ToArray(), "a.stl").Refusal!.Line);
        byte[] stl = MeshFiles.Write(Bowl, "stl-binary");
        BitConverter.TryWriteBytes(stl.AsSpan(84 + 50 + 12 + 12), float.NaN);
        Assert.Equal((MeshRefusalReason.NotANumber, 84 + 50 + 12 + 12L), (Read(stl, "a.stl").Refusal!.Reason, Read(stl, "a.stl").Refusal!.Offset));

        stl = MeshFiles.Write(Bowl, "stl-binary");
        MeshRefusal cut = Read(stl[..^1], "a.stl").Refusal!;
        Assert.Equal((MeshRefusalReason.Truncated, Bowl.Triangles.Length - 1.0, (double)Bowl.Triangles.Length), (cut.Reason, cut.Found, cut.Limit));
        BitConverter.TryWriteBytes(stl.AsSpan(80), 5_000_000);
        Assert.Equal((MeshRefusalReason.TooManyTriangles, 5e6), (Read(stl, "a.stl").Refusal!.Reason, Read(stl, "a.stl").Refusal!.Found));
    }

    [Fact]
    public void A_package_that_unpacks_without_end_or_names_other_files_is_refused()
    {
        MeshRefusalReason? Reason(string model) => MeshReading.Read(MeshFiles.ThreeMf(model), "a.3mf", null).Refusal?.Reason;
        string whole = MeshFiles.ThreeMfModel(Bowl, "millimeter");
        Assert.Equal(MeshRefusalReason.TooMuchInside, Reason(whole.Replace("<build>", new string(' ', 36_000_000) + "<build>")));
        Assert.Equal(MeshRefusalReason.Malformed, Reason(whole.Replace("<model", "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///c\">]><model")));
        Assert.Equal(MeshRefusalReason.Malformed, Reason(whole[..^20]));
        Assert.Equal(MeshRefusalReason.NotSupported, Reason(whole.Replace("<item ", "<item xmlns:p=\"http://schemas.microsoft.com/3dmanufacturing/production/2015/06\" p:path=\"/3D/b.model\" ")));

        // Each object holds ten of the one before.
        StringBuilder nest = new();
        for (int i = 2; i < 20; i++)
        {
            nest.Append($"<object id=\"{i}\"><components>{string.Concat(Enumerable.Repeat($"<component objectid=\"{i - 1}\"/>", 10))}</components></object>");
        }

        Assert.Equal(MeshRefusalReason.TooManyTriangles, Reason(MeshFiles.ThreeMfModel(Bowl, "millimeter", "<item objectid=\"19\"/>", nest.ToString())));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Spoilt_files_give_a_mesh_or_a_refusal_and_never_an_error(string form)
    {
        byte[] whole = MeshFiles.Write(SurfaceMeshes.OtherSide(SurfaceMeshes.OpenBox(Length.FromMeters(300), Length.FromMeters(200), Length.FromMeters(90))), form);
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Int[0, whole.Length]).Array[1, 6].Sample(
            changes =>
            {
                byte[] bytes = [.. whole];
                foreach ((int at, byte value, int cut) in changes)
                {
                    if (at < bytes.Length)
                    {
                        bytes[at] = value;
                    }

                    // Now and then the file is cut, or a stretch of it doubled.
                    bytes = (value % 16) switch
                    {
                        0 => bytes[..Math.Min(cut, bytes.Length)],
                        1 => [.. bytes[..Math.Min(at, bytes.Length)], .. bytes[Math.Min(cut, bytes.Length)..]],
                        _ => bytes,
                    };
                }

                MeshReading reading = Read(bytes, MeshFiles.NameOf(form));
                Assert.True(reading.Mesh is null != reading.Refusal is null);
                return reading.Mesh is not { } mesh || MeshMeasures.Of(mesh, new Point3(0, 0, 1)).Area.SquareMeters >= 0;
            },
            iter: 1500);
    }

    [Fact]
    public void A_unit_without_length_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MeshReading.Read(new byte[3], "a.stl", Length.Zero));

    private static MeshReading Read(byte[] bytes, string name) => MeshReading.Read(bytes, name, Millimetre);

    private static string[] Places(TriangleMesh mesh, double metres) =>
    [
        .. mesh.Triangles
            .Select(t => string.Join(';', new[] { t.A, t.B, t.C }.Select(corner => mesh.Vertices[corner] * metres).Select(p => $"{p.X + 0.0:G12} {p.Y + 0.0:G12} {p.Z + 0.0:G12}"))),
    ];

    private static TriangleMesh Rounded(TriangleMesh mesh)
    {
        static double Round(double metres) => Math.Round(metres * 1000 * 64) / 64;
        return new([.. mesh.Vertices.Select(p => new Point3(Round(p.X), Round(p.Y), Round(p.Z)))], mesh.Triangles);
    }
}
