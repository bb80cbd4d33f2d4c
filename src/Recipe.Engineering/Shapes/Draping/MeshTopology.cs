using System.Runtime.InteropServices;

namespace Recipe.Engineering;

/// <summary>Which triangle lies beyond which edge, and the normals. Half-edge 3 t + k of triangle t runs from its corner k to corner k + 1.</summary>
internal sealed class MeshTopology
{
    private const double SharpCosine = 0.86;
    private readonly int[] _corners;
    private readonly int[] _twins;
    private readonly Point3[] _faceNormals;
    private readonly int[] _starts;
    private readonly int[] _round;
    private readonly Point3[] _vertexNormals;
    private readonly bool[] _onRim;

    internal MeshTopology(TriangleMesh mesh)
        : this([.. mesh.Vertices], Corners(mesh))
    {
    }

    /// <summary>Takes corners three a triangle; a triangle without area is left out.</summary>
    internal MeshTopology(Point3[] places, int[] corners)
    {
        Places = places;
        _corners = WithArea(places, corners);
        _faceNormals = new Point3[Count];
        _twins = Twins(_corners, places.Length);
        _vertexNormals = new Point3[places.Length];
        _onRim = new bool[places.Length];
        for (int triangle = 0; triangle < Count; triangle++)
        {
            (Point3 a, Point3 b, Point3 c) = (At(triangle, 0), At(triangle, 1), At(triangle, 2));
            Point3 normal = Point3.Cross(b - a, c - a);
            Area += normal.Norm / 2;
            _faceNormals[triangle] = normal.Unit();
            for (int k = 0; k < 3; k++)
            {
                int half = (3 * triangle) + k;
                _vertexNormals[_corners[half]] += _faceNormals[triangle] * AngleAt(half);
                if (_twins[half] < 0)
                {
                    _onRim[_corners[half]] = true;
                    _onRim[_corners[Next(half)]] = true;
                }
            }
        }

        for (int vertex = 0; vertex < places.Length; vertex++)
        {
            _vertexNormals[vertex] = _vertexNormals[vertex].Unit();
        }

        (_starts, _round) = Rounds(_corners, places.Length);
    }

    internal Point3[] Places { get; }

    /// <summary>Number of triangles.</summary>
    internal int Count => _corners.Length / 3;

    /// <summary>Area of all, m2.</summary>
    internal double Area { get; }

    internal static int Next(int half) => MeshEdges.Next(half);

    internal static int Before(int half) => MeshEdges.Previous(half);

    /// <summary>The vertex at which a half-edge starts.</summary>
    internal int Vertex(int half) => _corners[half];

    internal Point3 At(int triangle, int corner) => Places[_corners[(3 * triangle) + corner]];

    internal Point3 From(int half) => Places[_corners[half]];

    internal Point3 To(int half) => Places[_corners[Next(half)]];

    /// <summary>The half-edge of the neighbour that runs the other way; -1 at the rim, where three triangles meet, and where the neighbour is turned over.</summary>
    internal int Twin(int half) => _twins[half];

    internal bool OnRim(int vertex) => _onRim[vertex];

    internal Point3 FaceNormal(int triangle) => _faceNormals[triangle];

    internal Point3 VertexNormal(int vertex) => _vertexNormals[vertex];

    /// <summary>The normal at a corner, shared with the triangles round it that are not beyond a sharp crease.</summary>
    internal Point3 CornerNormal(int half)
    {
        Point3 own = _faceNormals[half / 3];
        Point3 sum = default;
        int vertex = _corners[half];
        for (int i = _starts[vertex]; i < _starts[vertex + 1]; i++)
        {
            Point3 other = _faceNormals[_round[i] / 3];
            if (Point3.Dot(own, other) > SharpCosine)
            {
                sum += other;
            }
        }

        return sum.Unit();
    }

    /// <summary>Angle of the triangle at the start of a half-edge, rad.</summary>
    internal double AngleAt(int half)
    {
        Point3 at = From(half);
        Point3 a = To(half) - at;
        Point3 b = From(Before(half)) - at;
        return Math.Atan2(Point3.Cross(a, b).Norm, Point3.Dot(a, b));
    }

    /// <summary>The half-edges at the rim, loop by loop, each in the order of the triangles' corners.</summary>
    internal List<int[]> Rims()
    {
        List<int[]> rims = [];
        var seen = new bool[_corners.Length];
        for (int first = 0; first < _corners.Length; first++)
        {
            if (_twins[first] >= 0 || seen[first])
            {
                continue;
            }

            List<int> rim = [];
            for (int half = first; !seen[half]; half = NextOnRim(half))
            {
                seen[half] = true;
                rim.Add(half);
            }

            rims.Add([.. rim]);
        }

        return rims;
    }

    /// <summary>The number of the connected part that each triangle belongs to, from 0 in the order of the triangles.</summary>
    internal int[] Parts(out int parts)
    {
        var part = new int[Count];
        Array.Fill(part, -1);
        parts = 0;
        Stack<int> open = [];
        for (int first = 0; first < Count; first++)
        {
            if (part[first] >= 0)
            {
                continue;
            }

            part[first] = parts;
            open.Push(first);
            while (open.TryPop(out int triangle))
            {
                for (int k = 0; k < 3; k++)
                {
                    int twin = _twins[(3 * triangle) + k];
                    if (twin >= 0 && part[twin / 3] < 0)
                    {
                        part[twin / 3] = parts;
                        open.Push(twin / 3);
                    }
                }
            }

            parts++;
        }

        return part;
    }

    /// <summary>The triangles that are wanted, as a surface of its own with the same vertices.</summary>
    internal MeshTopology Only(Func<int, bool> wanted) =>
        new(Places, [.. Enumerable.Range(0, Count).Where(wanted).SelectMany(t => _corners.AsSpan(3 * t, 3).ToArray())]);

    private static int[] Corners(TriangleMesh mesh)
    {
        var corners = new int[3 * mesh.Triangles.Length];
        for (int i = 0; i < mesh.Triangles.Length; i++)
        {
            (corners[3 * i], corners[(3 * i) + 1], corners[(3 * i) + 2]) = mesh.Triangles[i];
        }

        return corners;
    }

    private static int[] WithArea(Point3[] places, int[] corners)
    {
        List<int> kept = new(corners.Length);
        for (int i = 0; i < corners.Length; i += 3)
        {
            (Point3 a, Point3 b, Point3 c) = (places[corners[i]], places[corners[i + 1]], places[corners[i + 2]]);
            double longest = Math.Max((b - a).Norm, Math.Max((c - b).Norm, (a - c).Norm));
            if (Point3.Cross(b - a, c - a).Norm > 1e-12 * longest * longest)
            {
                kept.AddRange(corners.AsSpan(i, 3));
            }
        }

        return [.. kept];
    }

    // Two triangles that run along their edge the same way face different sides: to the cloth, one does not follow on the other.
    private static int[] Twins(int[] corners, int places)
    {
        int[] across = MeshEdges.Of(MemoryMarshal.Cast<int, MeshTriangle>(corners), places).Across;
        for (int half = 0; half < across.Length; half++)
        {
            if (across[half] < 0 || corners[half] == corners[across[half]])
            {
                across[half] = -1;
            }
        }

        return across;
    }

    private int NextOnRim(int half)
    {
        int next = Next(half);
        while (_twins[next] >= 0)
        {
            next = Next(_twins[next]);
        }

        return next;
    }

    // The half-edges that leave each vertex, by counting.
    private static (int[] Starts, int[] Round) Rounds(int[] corners, int places)
    {
        var starts = new int[places + 1];
        foreach (int vertex in corners)
        {
            starts[vertex + 1]++;
        }

        for (int vertex = 0; vertex < places; vertex++)
        {
            starts[vertex + 1] += starts[vertex];
        }

        var fill = starts.AsSpan(0, places).ToArray();
        var round = new int[corners.Length];
        for (int half = 0; half < corners.Length; half++)
        {
            round[fill[corners[half]]++] = half;
        }

        return (starts, round);
    }
}
