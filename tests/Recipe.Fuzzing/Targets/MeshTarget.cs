using Recipe.Engineering;
using UnitsNet;

namespace Recipe.Fuzzing.Targets;

/// <summary>
/// Files of shapes: any bytes are a refusal or a mesh whose triangles have corners that are there and whose coordinates are numbers, that can be
/// measured, and that took no more memory than its file can account for.
/// </summary>
internal sealed class MeshTarget : IFuzzTarget
{
    // What a reader may take whatever the size of the file (a package is unpacked through buffers), and for each of its bytes.
    private const long MemoryForAny = 4L << 20;
    private const long MemoryForEachByte = 400;

    // A package of text packs about tenfold, and our own limit on what it unpacks to begins at 32 MB.
    private const long MemoryForAPackage = 512L << 20;

    public string Name => "mesh";

    public IEnumerable<string> Words =>
    [
        "solid", "endsolid", "facet normal", "outer loop", "vertex", "endloop", "endfacet", "ply\n", "format ascii 1.0\n", "format binary_little_endian 1.0\n", "format binary_big_endian 1.0\n",
        "element vertex ", "element face ", "property float x\n", "property list uchar int vertex_indices\n", "end_header\n", "v ", "f ", "g ", "o ", "usemtl ", "nan", "inf", "1e999", "-0", "4294967295", "PK\u0003\u0004",
    ];

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() => SeedFiles.In("tests/corpus/fuzz/mesh", "seed-*");

    public void Run(byte[] bytes)
    {
        foreach (var (name, unit) in ((string, Length?)[])[("fuzzed.stl", Length.FromMillimeters(1)), ("fuzzed.obj", null)])
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var reading = MeshReading.Read(bytes, name, unit);
            var took = GC.GetAllocatedBytesForCurrentThread() - before;
            var may = reading.Format == MeshFormat.ThreeMf ? MemoryForAPackage : MemoryForAny + (MemoryForEachByte * bytes.Length);
            BrokenPropertyException.ThrowUnless(took <= may, $"{took} bytes of memory for {bytes.Length} bytes of file.");
            BrokenPropertyException.ThrowUnless(reading.Mesh is null != reading.Refusal is null, "Neither a mesh nor a refusal, or both.");
            if (reading.Mesh is { } mesh)
            {
                Hold(mesh, bytes.Length);
            }
        }
    }

    private static void Hold(TriangleMesh mesh, int size)
    {
        BrokenPropertyException.ThrowUnless(mesh.Triangles.Length > 0, "A mesh without a triangle.");
        BrokenPropertyException.ThrowUnless(mesh.Triangles.All(triangle => IsIn(mesh, triangle.A) && IsIn(mesh, triangle.B) && IsIn(mesh, triangle.C)), "A triangle has a corner that is not there.");
        BrokenPropertyException.ThrowUnless(mesh.Vertices.All(vertex => vertex.IsFinite), "A coordinate is no number.");
        var measures = MeshMeasures.Of(mesh, new Point3(0, 0, 1));
        BrokenPropertyException.ThrowUnless(double.IsFinite(measures.Area.SquareMeters) && measures.Area.SquareMeters >= 0, $"An area of {measures.Area} from a file of {size} bytes.");
        BrokenPropertyException.ThrowUnless(measures.Volume is not { } volume || double.IsFinite(volume.CubicMeters), "A volume that is no number.");
    }

    private static bool IsIn(TriangleMesh mesh, int corner) => corner >= 0 && corner < mesh.Vertices.Length;
}
