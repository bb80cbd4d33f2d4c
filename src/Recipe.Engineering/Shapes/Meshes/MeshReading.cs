using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A mesh read from the bytes of a file and mended where that is safe, or the reason why there is none.</summary>
/// <param name="Format">The form of the file.</param>
/// <param name="Mesh">The mesh in metres; none when it is refused.</param>
/// <param name="Refusal">Why there is no mesh.</param>
/// <param name="Repairs">What was mended or seen, in the order of <see cref="MeshRepairKind"/>.</param>
/// <param name="Unit">Length of one unit of the file's coordinates; zero when it is not known.</param>
/// <param name="UnitFromFile">Whether the file says the unit itself; it then goes before a unit that is given.</param>
public sealed record MeshReading(
    MeshFormat Format,
    TriangleMesh? Mesh,
    MeshRefusal? Refusal,
    ImmutableArray<MeshRepair> Repairs,
    Length Unit,
    bool UnitFromFile)
{
    /// <summary>More triangles than this are refused before room is made for them: 4,000,000, our own limit.</summary>
    public const int MaximumTriangles = 4_000_000;

    /// <summary>A coordinate farther from the origin is refused, m: 10 km, our own limit.</summary>
    public const double FarthestMetres = 10_000;

    /// <summary>A mesh whose box has a shorter diagonal is refused, m: 0.1 mm, our own limit.</summary>
    public const double SmallestMetres = 1e-4;

    /// <summary>
    /// Reads STL (both forms), OBJ, PLY (all three forms) and 3MF. Whatever the bytes are, the answer is a mesh or a refusal. Polygons
    /// become fans from their first corner, which is right for convex ones.
    /// </summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="fileName">Its name: the ending is asked where the bytes leave a choice.</param>
    /// <param name="unit">Length of one unit of its coordinates, more than zero; without it only forms that say their unit are read.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not greater than zero.</exception>
    public static MeshReading Read(ReadOnlyMemory<byte> bytes, string fileName, Length? unit)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        if (unit is { } given)
        {
            Guard.Positive(given.Meters, "m", nameof(unit));
        }

        MeshSoup soup = new();
        MeshFormat format = FormatOf(bytes.Span, fileName);
        double? said = null;
        MeshRefusal? refusal = format switch
        {
            _ when bytes.IsEmpty => new MeshRefusal(MeshRefusalReason.Empty),
            MeshFormat.StlBinary => StlFile.ReadBinary(bytes.Span, soup),
            MeshFormat.StlAscii => StlFile.ReadWords(bytes.Span, soup),
            MeshFormat.Obj => ObjFile.Read(bytes.Span, soup),
            MeshFormat.Ply => PlyFile.Read(bytes.Span, soup),
            MeshFormat.ThreeMf => ThreeMfFile.Read(bytes, soup, out said),
            _ => new MeshRefusal(MeshRefusalReason.NotAMesh),
        };
        double metres = said ?? unit?.Meters ?? 0;
        refusal ??= soup.Count == 0 ? new MeshRefusal(MeshRefusalReason.NoTriangles) : null;
        refusal ??= metres == 0 ? new MeshRefusal(MeshRefusalReason.UnitNotSaid) : Scale(soup, metres);
        if (refusal is not null)
        {
            return new MeshReading(format, null, refusal, [], Length.FromMeters(metres), said is not null);
        }

        MeshMending mending = new(soup);
        TriangleMesh? mesh = mending.Mend();
        return new MeshReading(
            format,
            mesh,
            mesh is null ? new MeshRefusal(MeshRefusalReason.NoTriangles, Found: 0) : null,
            mending.Repairs(),
            Length.FromMeters(metres),
            said is not null);
    }

    private static MeshFormat FormatOf(ReadOnlySpan<byte> bytes, string fileName)
    {
        if (bytes.StartsWith("PK\u0003\u0004"u8))
        {
            return MeshFormat.ThreeMf;
        }

        if (StlFile.IsBinary(bytes))
        {
            return MeshFormat.StlBinary;
        }

        if (bytes.StartsWith("ply\n"u8) || bytes.StartsWith("ply\r"u8))
        {
            return MeshFormat.Ply;
        }

        if (StlFile.IsWords(bytes))
        {
            return MeshFormat.StlAscii;
        }

        if (fileName.EndsWith(".stl", StringComparison.OrdinalIgnoreCase))
        {
            return MeshFormat.StlBinary;
        }

        return ObjFile.Is(bytes) ? MeshFormat.Obj : MeshFormat.Unknown;
    }

    /// <summary>To metres, within the sizes of moulds.</summary>
    private static MeshRefusal? Scale(MeshSoup soup, double metres)
    {
        Point3 least = new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        Point3 most = least * -1;
        foreach (ref Point3 point in soup.Points.AsSpan(0, soup.PointCount))
        {
            point *= metres;
            double far = Math.Max(Math.Abs(point.X), Math.Max(Math.Abs(point.Y), Math.Abs(point.Z)));
            if (!(far <= FarthestMetres))
            {
                return new MeshRefusal(MeshRefusalReason.TooLarge, Found: far, Limit: FarthestMetres);
            }

            least = new Point3(Math.Min(least.X, point.X), Math.Min(least.Y, point.Y), Math.Min(least.Z, point.Z));
            most = new Point3(Math.Max(most.X, point.X), Math.Max(most.Y, point.Y), Math.Max(most.Z, point.Z));
        }

        double diagonal = (most - least).Norm;
        return diagonal < SmallestMetres ? new MeshRefusal(MeshRefusalReason.TooSmall, Found: diagonal, Limit: SmallestMetres) : null;
    }
}
