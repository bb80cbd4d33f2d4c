using System.Buffers.Binary;
using Recipe.TestKit;

namespace Recipe.Benchmarks;

/// <summary>A recipe on a shallow bowl of so many triangles, as a binary STL file.</summary>
internal static class BowlFile
{
    private const double RadiusMm = 200;
    private const double DepthMm = 60;

    /// <summary>Writes both into a folder and returns the recipe.</summary>
    public static string Make(string folder, int triangles)
    {
        // Rings of quads, two triangles each, twice as many round as out.
        var rings = (int)Math.Sqrt(triangles / 4.0);
        var round = 2 * rings;
        var bytes = new byte[84 + (50 * 2 * rings * round)];
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), 2 * rings * round);
        var at = 84;
        for (var i = 0; i < rings; i++)
        {
            for (var j = 0; j < round; j++)
            {
                Write(bytes, ref at, Point(i, j), Point(i + 1, j), Point(i + 1, j + 1));
                Write(bytes, ref at, Point(i, j), Point(i + 1, j + 1), Point(i, j + 1));
            }
        }

        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, "bowl.stl"), bytes);
        File.Copy(Repository.PathOf("samples/shop.recipe"), Path.Combine(folder, "shop.recipe"));
        var path = Path.Combine(folder, "bowl.recipe");
        File.WriteAllText(path, Repository.Read("samples/shapes/seat-pan.recipe").Replace("../shop", "shop", StringComparison.Ordinal).Replace("seat-pan.stl", "bowl.stl", StringComparison.Ordinal));
        return path;

        // The inmost ring is a small hole, so that no triangle is without area.
        (double X, double Y, double Z) Point(int ring, int spoke)
        {
            var share = (ring + 0.5) / (rings + 0.5);
            var (sine, cosine) = Math.SinCos(2 * Math.PI * (spoke % round) / round);
            return (RadiusMm * share * cosine, RadiusMm * share * sine, -DepthMm * (1 - (share * share)));
        }
    }

    private static void Write(byte[] bytes, ref int at, params ReadOnlySpan<(double X, double Y, double Z)> corners)
    {
        at += 12;
        foreach (var (x, y, z) in corners)
        {
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at), (float)x);
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at + 4), (float)y);
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at + 8), (float)z);
            at += 12;
        }

        at += 2;
    }
}
