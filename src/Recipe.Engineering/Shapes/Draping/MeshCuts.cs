using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>Cuts a surface along edges.</summary>
internal static class MeshCuts
{
    private const double SharpCorner = 0.3;
    private const int MostCorners = 64;

    /// <summary>Some triangles of a surface, parted along half-edges; what hangs together at a point alone is parted too.</summary>
    internal static MeshTopology Cut(MeshTopology mesh, IEnumerable<int> triangles, List<int> along)
    {
        int[] wanted = [.. triangles];
        var number = new int[mesh.Count];
        Array.Fill(number, -1);
        for (int i = 0; i < wanted.Length; i++)
        {
            number[wanted[i]] = i;
        }

        HashSet<int> cut = [.. along, .. along.Select(mesh.Twin)];
        var group = new int[3 * wanted.Length];
        for (int i = 0; i < group.Length; i++)
        {
            group[i] = i;
        }

        for (int i = 0; i < group.Length; i++)
        {
            int half = (3 * wanted[i / 3]) + (i % 3);
            int twin = mesh.Twin(half);
            if (twin >= 0 && number[twin / 3] >= 0 && !cut.Contains(half))
            {
                int other = (3 * number[twin / 3]) + (twin % 3);
                Join(i, MeshTopology.Next(other));
                Join(MeshTopology.Next(i), other);
            }
        }

        List<Point3> places = [];
        var corners = new int[group.Length];
        var vertex = new int[group.Length];
        Array.Fill(vertex, -1);
        for (int i = 0; i < group.Length; i++)
        {
            int root = Root(i);
            if (vertex[root] < 0)
            {
                vertex[root] = places.Count;
                places.Add(mesh.From((3 * wanted[i / 3]) + (i % 3)));
            }

            corners[i] = vertex[root];
        }

        return new MeshTopology([.. places], corners);

        void Join(int a, int b)
        {
            (a, b) = (Root(a), Root(b));
            group[Math.Max(a, b)] = Math.Min(a, b);
        }

        int Root(int at)
        {
            while (group[at] != at)
            {
                at = group[at] = group[group[at]];
            }

            return at;
        }
    }

    /// <summary>The half-edges from corners that leave out, or have too much, angle to the rim; none when there are too many.</summary>
    internal static List<int> ToCorners(MeshTopology mesh)
    {
        var sum = new double[mesh.Places.Length];
        for (int half = 0; half < 3 * mesh.Count; half++)
        {
            sum[mesh.Vertex(half)] += mesh.AngleAt(half);
        }

        int[] sharp = [.. Enumerable.Range(0, sum.Length).Where(v => !mesh.OnRim(v) && sum[v] > 0 && Math.Abs((2 * Math.PI) - sum[v]) > SharpCorner)];
        if (sharp.Length is 0 or > MostCorners)
        {
            return [];
        }

        HashSet<int> reached = [.. Enumerable.Range(0, sum.Length).Where(mesh.OnRim)];
        HashSet<int> ends = [.. sharp];
        List<int> cut = [];
        while (ends.Count > 0)
        {
            List<int> path = Shortest(mesh, reached, ends);
            if (path.Count == 0)
            {
                return [];
            }

            foreach (int half in path)
            {
                foreach (int vertex in new[] { mesh.Vertex(half), mesh.Vertex(MeshTopology.Next(half)) })
                {
                    reached.Add(vertex);
                    ends.Remove(vertex);
                }
            }

            cut.AddRange(path);
        }

        return cut;
    }

    /// <summary>The shortest way along edges between the two longest rims; none when there is one rim.</summary>
    internal static List<int> BetweenRims(MeshTopology mesh)
    {
        var rims = mesh.Rims().OrderByDescending(rim => rim.Sum(half => (mesh.To(half) - mesh.From(half)).Norm)).ToArray();
        return rims.Length < 2 ? [] : Shortest(mesh, [.. rims[0].Select(mesh.Vertex)], [.. rims[1].Select(mesh.Vertex)]);
    }

    /// <summary>The cuts as lines, one an edge.</summary>
    internal static ImmutableArray<ImmutableArray<Point3>> Lines(MeshTopology mesh, List<int> cut)
    {
        List<List<Point3>> lines = [];
        foreach (int half in cut)
        {
            if (lines.Count > 0 && lines[^1][^1] == mesh.From(half))
            {
                lines[^1].Add(mesh.To(half));
            }
            else
            {
                lines.Add([mesh.From(half), mesh.To(half)]);
            }
        }

        return [.. lines.Select(line => line.ToImmutableArray())];
    }

    // E. W. Dijkstra (1959) over the edges that have a triangle on both sides.
    private static List<int> Shortest(MeshTopology mesh, HashSet<int> from, HashSet<int> to)
    {
        var leaving = new List<int>?[mesh.Places.Length];
        for (int half = 0; half < 3 * mesh.Count; half++)
        {
            if (mesh.Twin(half) >= 0)
            {
                (leaving[mesh.Vertex(half)] ??= []).Add(half);
            }
        }

        var distance = new double[mesh.Places.Length];
        var arrival = new int[mesh.Places.Length];
        Array.Fill(distance, double.PositiveInfinity);
        Array.Fill(arrival, -1);
        PriorityQueue<int, (double, int)> open = new();
        foreach (int vertex in from.Order())
        {
            distance[vertex] = 0;
            open.Enqueue(vertex, (0, vertex));
        }

        while (open.TryDequeue(out int vertex, out (double Distance, int Vertex) at))
        {
            if (at.Distance > distance[vertex])
            {
                continue;
            }

            if (to.Contains(vertex))
            {
                List<int> path = [];
                for (int half = arrival[vertex]; half >= 0; half = arrival[mesh.Vertex(half)])
                {
                    path.Add(half);
                }

                path.Reverse();
                return path;
            }

            foreach (int half in leaving[vertex] ?? [])
            {
                int next = mesh.Vertex(MeshTopology.Next(half));
                double length = at.Distance + (mesh.To(half) - mesh.From(half)).Norm;
                if (length < distance[next])
                {
                    (distance[next], arrival[next]) = (length, half);
                    open.Enqueue(next, (length, next));
                }
            }
        }

        return [];
    }
}
