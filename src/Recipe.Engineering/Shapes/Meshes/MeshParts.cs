using System.Runtime.InteropServices;

namespace Recipe.Engineering;

/// <summary>Parts of a mesh that hang together by edges, and which of their triangles face the other side than the first.</summary>
internal sealed class MeshParts
{
    private MeshParts(int triangles) => (PartOf, Flip) = (new int[triangles], new bool[triangles]);

    internal int[] PartOf { get; }

    /// <summary>Whether a triangle would have to be turned to face the side of the first of its part.</summary>
    internal bool[] Flip { get; }

    /// <summary>For each part: whether it has no edge that is open, crowded or opposed.</summary>
    internal List<bool> IsClosed { get; } = [];

    internal int Count => IsClosed.Count;

    /// <summary>Edges at which both triangles cannot face one side.</summary>
    internal int OpposedEdges { get; private set; }

    internal static MeshParts Of(ReadOnlySpan<MeshTriangle> triangles, MeshEdges edges)
    {
        ReadOnlySpan<int> corners = MemoryMarshal.Cast<MeshTriangle, int>(triangles);
        MeshParts parts = new(triangles.Length);
        parts.PartOf.AsSpan().Fill(-1);
        int[] stack = new int[triangles.Length];
        int opposedTwice = 0;
        for (int seed = 0; seed < triangles.Length; seed++)
        {
            if (parts.PartOf[seed] >= 0)
            {
                continue;
            }

            int part = parts.Count;
            bool closed = true;
            int depth = 0;
            stack[depth++] = seed;
            parts.PartOf[seed] = part;
            while (depth > 0)
            {
                int triangle = stack[--depth];
                for (int half = 3 * triangle; half < (3 * triangle) + 3; half++)
                {
                    int across = edges.Across[half];
                    if (across < 0)
                    {
                        closed = false;
                        continue;
                    }

                    // Neighbours that face one side run along their edge in opposite directions.
                    int other = across / 3;
                    bool flip = parts.Flip[triangle] ^ (corners[half] == corners[across]);
                    if (parts.PartOf[other] < 0)
                    {
                        parts.PartOf[other] = part;
                        parts.Flip[other] = flip;
                        stack[depth++] = other;
                    }
                    else if (parts.Flip[other] != flip)
                    {
                        opposedTwice++;
                        closed = false;
                    }
                }
            }

            parts.IsClosed.Add(closed);
        }

        parts.OpposedEdges = opposedTwice / 2;
        return parts;
    }
}
