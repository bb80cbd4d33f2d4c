using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Follows open edges from point to point.</summary>
internal static class MeshBoundaries
{
    internal static ImmutableArray<MeshBoundary> Of(MeshFaces faces, MeshEdges edges)
    {
        if (edges.OpenCount == 0)
        {
            return [];
        }

        // Open half-edges that start at one point are a chain: where two holes touch there are two.
        ReadOnlySpan<int> corners = faces.Corners;
        int[] first = new int[faces.Mesh.Vertices.Length];
        first.AsSpan().Fill(-1);
        Dictionary<int, int> next = [];
        bool[] comesIn = new bool[first.Length];
        for (int half = corners.Length - 1; half >= 0; half--)
        {
            if (edges.Across[half] == MeshEdges.Open)
            {
                next[half] = first[corners[half]];
                first[corners[half]] = half;
                comesIn[corners[MeshEdges.Next(half)]] = true;
            }
        }

        List<MeshBoundary> lines = [];

        // Torn lines begin where none comes in; the others are closed and may begin anywhere.
        for (int round = 0; round < 2; round++)
        {
            for (int point = 0; point < first.Length; point++)
            {
                while (first[point] >= 0 && (round == 1 || !comesIn[point]))
                {
                    lines.Add(Follow(faces, first, next, point));
                }
            }
        }

        return [.. lines.OrderByDescending(line => line.Length.Meters)];
    }

    private static MeshBoundary Follow(MeshFaces faces, int[] first, Dictionary<int, int> next, int start)
    {
        ReadOnlySpan<int> corners = faces.Corners;
        var points = ImmutableArray.CreateBuilder<Point3>();
        double length = 0;
        int at = start;
        do
        {
            int half = first[at];
            first[at] = next[half];
            int to = corners[MeshEdges.Next(half)];
            points.Add(faces.Mesh.Vertices[at]);
            length += (faces.Mesh.Vertices[to] - faces.Mesh.Vertices[at]).Norm;
            at = to;
        }
        while (at != start && first[at] >= 0);
        if (at != start)
        {
            points.Add(faces.Mesh.Vertices[at]);
        }

        return new MeshBoundary(points.ToImmutable(), Length.FromMeters(length), at == start);
    }
}
