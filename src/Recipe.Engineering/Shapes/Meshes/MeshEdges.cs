using System.Runtime.InteropServices;

namespace Recipe.Engineering;

/// <summary>
/// Which triangle lies across each edge. Half-edge 3 t + k runs from corner k of triangle t to its next corner. Edges are sorted into
/// stretches by their lower corner, in flat arrays: a mesh has millions of them.
/// </summary>
internal sealed class MeshEdges
{
    /// <summary>Nothing lies across.</summary>
    internal const int Open = -1;

    /// <summary>More than one triangle lies across.</summary>
    internal const int Crowded = -2;

    private MeshEdges(int halves) => Across = new int[halves];

    /// <summary>The half-edge across, or <see cref="Open"/> or <see cref="Crowded"/>.</summary>
    internal int[] Across { get; }

    internal int OpenCount { get; private set; }

    /// <summary>Edges, not half-edges, at which more than two triangles meet.</summary>
    internal int CrowdedCount { get; private set; }

    /// <summary>Whether two triangles may have the same corners: some share an edge and the corner across it.</summary>
    internal bool MayHaveDuplicates { get; private set; }

    internal static int Next(int half) => half % 3 == 2 ? half - 2 : half + 1;

    internal static int Previous(int half) => half % 3 == 0 ? half + 2 : half - 1;

    internal static MeshEdges Of(ReadOnlySpan<MeshTriangle> triangles, int pointCount)
    {
        ReadOnlySpan<int> corners = MemoryMarshal.Cast<MeshTriangle, int>(triangles);
        MeshEdges edges = new(corners.Length);
        int[] starts = new int[pointCount + 1];
        for (int half = 0; half < corners.Length; half++)
        {
            starts[Math.Min(corners[half], corners[Next(half)]) + 1]++;
        }

        for (int i = 0; i < pointCount; i++)
        {
            starts[i + 1] += starts[i];
        }

        ulong[] entries = new ulong[corners.Length];
        int[] fill = starts.AsSpan(0, pointCount).ToArray();
        for (int half = 0; half < corners.Length; half++)
        {
            (int a, int b) = (corners[half], corners[Next(half)]);
            entries[fill[Math.Min(a, b)]++] = ((ulong)(uint)Math.Max(a, b) << 32) | (uint)half;
        }

        for (int i = 0; i < pointCount; i++)
        {
            Span<ulong> bucket = entries.AsSpan(starts[i], starts[i + 1] - starts[i]);
            Sort(bucket);
            edges.Pair(bucket, corners);
        }

        return edges;
    }

    private static void Sort(Span<ulong> bucket)
    {
        if (bucket.Length > 24)
        {
            bucket.Sort();
            return;
        }

        for (int i = 1; i < bucket.Length; i++)
        {
            ulong entry = bucket[i];
            int at = i;
            for (; at > 0 && bucket[at - 1] > entry; at--)
            {
                bucket[at] = bucket[at - 1];
            }

            bucket[at] = entry;
        }
    }

    private void Pair(ReadOnlySpan<ulong> bucket, ReadOnlySpan<int> corners)
    {
        for (int from = 0; from < bucket.Length;)
        {
            int to = from + 1;
            while (to < bucket.Length && bucket[to] >> 32 == bucket[from] >> 32)
            {
                to++;
            }

            int first = (int)(uint)bucket[from];
            if (to - from == 2)
            {
                int second = (int)(uint)bucket[from + 1];
                Across[first] = second;
                Across[second] = first;
                MayHaveDuplicates |= corners[Previous(first)] == corners[Previous(second)];
            }
            else if (to - from == 1)
            {
                Across[first] = Open;
                OpenCount++;
            }
            else
            {
                CrowdedCount++;
                MayHaveDuplicates = true;
                for (int i = from; i < to; i++)
                {
                    Across[(int)(uint)bucket[i]] = Crowded;
                }
            }

            from = to;
        }
    }
}
