using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What can be measured on a mesh.</summary>
public sealed record MeshMeasures
{
    /// <summary>A turn between two faces of more than this is a sharp edge and no bend, degrees: our own limit.</summary>
    public const double SharpDegrees = 30;

    private MeshMeasures()
    {
    }

    /// <summary>Area of all triangles.</summary>
    public required Area Area { get; init; }

    /// <summary>Volume inside, less than zero when it is turned inside out; none when the mesh is not closed.</summary>
    /// <remarks>Source: the divergence theorem, exact for the triangles.</remarks>
    public required Volume? Volume { get; init; }

    /// <summary>Lines of open edges, the longest first.</summary>
    public required ImmutableArray<MeshBoundary> Boundaries { get; init; }

    /// <summary>Edges of one triangle only.</summary>
    public required int OpenEdges { get; init; }

    /// <summary>Edges of more than two triangles.</summary>
    public required int NonManifoldEdges { get; init; }

    /// <summary>Edges whose two triangles face different sides.</summary>
    public required int OpposedEdges { get; init; }

    /// <summary>Parts that hang together by edges.</summary>
    public required int Parts { get; init; }

    /// <summary>Smallest coordinates, m.</summary>
    public required Point3 Least { get; init; }

    /// <summary>Greatest coordinates, m.</summary>
    public required Point3 Most { get; init; }

    /// <summary>The longest boundary's plane; none for a closed mesh.</summary>
    public required MeshRim? Rim { get; init; }

    /// <summary>How the surface bends.</summary>
    public required MeshBends Bends { get; init; }

    /// <summary>How it lies to the pull; none when no pull is given.</summary>
    public required MeshDraft? Draft { get; init; }

    /// <summary>Whether every edge has its two triangles and they face one side.</summary>
    public bool IsClosed => OpenEdges == 0 && NonManifoldEdges == 0 && OpposedEdges == 0;

    /// <summary>Smallest radius of a bend that is hollow on the cloth side; zero at a sharp inside corner, none when nothing is hollow.</summary>
    public Length? SmallestInsideRadius => Bends.SmallestInsideRadius;

    /// <summary>Whether all of it lies in a plane.</summary>
    public bool IsFlat => Bends.Kind == Curvature.Flat;

    /// <summary>Whether it bends both ways.</summary>
    public bool IsDoublyCurved => Bends.Kind == Curvature.Double;

    /// <summary>Measures a mesh.</summary>
    /// <param name="mesh">The mesh, with at least one triangle.</param>
    /// <param name="pull">Direction in which the part leaves the mould, of any length but zero.</param>
    /// <exception cref="ArgumentException">There is no triangle, or the pull has no direction.</exception>
    public static MeshMeasures Of(TriangleMesh mesh, Point3? pull = null)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        if (mesh.Triangles.IsEmpty)
        {
            throw new ArgumentException("There is no triangle to measure.", nameof(mesh));
        }

        if (pull is { } direction && !(direction.IsFinite && double.IsFinite(direction.Norm) && direction.Norm > 0))
        {
            throw new ArgumentException("The pull has no direction.", nameof(pull));
        }

        MeshFaces faces = new(mesh);
        MeshEdges edges = MeshEdges.Of(mesh.Triangles.AsSpan(), mesh.Vertices.Length);
        MeshParts parts = MeshParts.Of(mesh.Triangles.AsSpan(), edges);
        int opposed = 0;
        for (int half = 0; half < edges.Across.Length; half++)
        {
            int across = edges.Across[half];
            opposed += across > half && faces.Corners[half] == faces.Corners[across] ? 1 : 0;
        }

        bool isClosed = edges.OpenCount == 0 && edges.CrowdedCount == 0 && opposed == 0;
        ImmutableArray<MeshBoundary> boundaries = MeshBoundaries.Of(faces, edges);
        return new MeshMeasures
        {
            Area = UnitsNet.Area.FromSquareMeters(faces.Area),
            Volume = isClosed ? UnitsNet.Volume.FromCubicMeters(faces.Volume()) : null,
            Boundaries = boundaries,
            OpenEdges = edges.OpenCount,
            NonManifoldEdges = edges.CrowdedCount,
            OpposedEdges = opposed,
            Parts = parts.Count,
            Least = faces.Least,
            Most = faces.Most,
            Rim = boundaries.IsEmpty ? null : RimPlane.Of(boundaries[0], faces),
            Bends = MeshBending.Of(faces, edges),
            Draft = pull is { } along ? DraftAngles.Of(faces, along.Unit()) : null,
        };
    }
}
