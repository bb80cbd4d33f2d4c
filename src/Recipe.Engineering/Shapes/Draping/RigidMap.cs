namespace Recipe.Engineering;

/// <summary>
/// Lays a surface flat so that each triangle is as nearly rigid as it can be: turn every triangle to fit, then fit all places to the
/// turned triangles, again and again.
/// </summary>
internal sealed class RigidMap
{
    private const int MostRounds = 200;
    private readonly MeshTopology _mesh;
    private readonly int[] _from;
    private readonly int[] _to;
    private readonly double[] _weights;
    private readonly Point2[] _shape;

    private RigidMap(MeshTopology mesh)
    {
        int count = 3 * mesh.Count;
        (_mesh, _from, _to, _weights, _shape) = (mesh, new int[count], new int[count], new double[count], new Point2[count]);
        for (int half = 0; half < count; half++)
        {
            (_from[half], _to[half]) = (mesh.Vertex(half), mesh.Vertex(MeshTopology.Next(half)));

            // Half the cotangent of the angle opposite.
            _weights[half] = 0.5 / Math.Tan(mesh.AngleAt(MeshTopology.Before(half)));
            int triangle = half / 3;
            Point3 along = (mesh.At(triangle, 1) - mesh.At(triangle, 0)).Unit();
            Point3 left = Point3.Cross(mesh.FaceNormal(triangle), along);
            Point3 edge = mesh.To(half) - mesh.From(half);
            _shape[half] = new Point2(Point3.Dot(edge, along), Point3.Dot(edge, left));
        }
    }

    /// <summary>Lays it flat from the better of a given start and one without fold-overs.</summary>
    internal static Point2[] Of(MeshTopology mesh, Point2[] start)
    {
        RigidMap map = new(mesh);
        var right = new Point2[start.Length];
        Point2[] spread = Spread(mesh);
        Point2[] at = map.Turn(start, right) <= map.Turn(spread, right) ? [.. start] : spread;
        PlaneLaplacian laplacian = new(at.Length, map._from, map._to, map._weights);
        double before = map.Turn(at, right);
        for (int round = 0; round < MostRounds; round++)
        {
            laplacian.Solve(at, right, null, 1e-9, 60);
            double energy = map.Turn(at, right);
            if (before - energy <= 1e-5 * energy || energy <= 1e-24 * mesh.Area)
            {
                break;
            }

            before = energy;
        }

        return at;
    }

    // The longest rim round a circle, and each other vertex in the middle of its neighbours.
    private static Point2[] Spread(MeshTopology mesh)
    {
        int[] rim = mesh.Rims().MaxBy(loop => loop.Sum(half => (mesh.To(half) - mesh.From(half)).Norm))!;
        double round = rim.Sum(half => (mesh.To(half) - mesh.From(half)).Norm);
        double radius = Math.Sqrt(mesh.Area / Math.PI);
        var at = new Point2[mesh.Places.Length];
        var held = new bool[at.Length];
        double along = 0;
        foreach (int half in rim)
        {
            (double sine, double cosine) = Math.SinCos(2 * Math.PI * along / round);
            (at[mesh.Vertex(half)], held[mesh.Vertex(half)]) = (new Point2(radius * cosine, radius * sine), true);
            along += (mesh.To(half) - mesh.From(half)).Norm;
        }

        int[] halves = [.. Enumerable.Range(0, 3 * mesh.Count).Where(half => mesh.Twin(half) < half)];
        PlaneLaplacian even = new(at.Length, [.. halves.Select(mesh.Vertex)], [.. halves.Select(half => mesh.Vertex(MeshTopology.Next(half)))], [.. halves.Select(_ => 1.0)]);

        // The right side is zero: the share is measured against the pull of the rim instead.
        var right = new Point2[at.Length];
        even.Solve(at, right, held, 0, 600);
        return at;
    }

    // Turns each triangle to fit the places, gives the right side of the fit, and the energy, m2.
    private double Turn(Point2[] at, Point2[] right)
    {
        Array.Clear(right);
        double energy = 0;
        for (int triangle = 0; triangle < _mesh.Count; triangle++)
        {
            (double dot, double cross) = (0, 0);
            for (int half = 3 * triangle; half < (3 * triangle) + 3; half++)
            {
                Point2 edge = at[_to[half]] - at[_from[half]];
                dot += _weights[half] * Point2.Dot(_shape[half], edge);
                cross += _weights[half] * Point2.Cross(_shape[half], edge);
            }

            double norm = Math.Sqrt((dot * dot) + (cross * cross));
            (double cosine, double sine) = norm > 0 ? (dot / norm, cross / norm) : (1, 0);
            for (int half = 3 * triangle; half < (3 * triangle) + 3; half++)
            {
                Point2 shape = _shape[half];
                Point2 turned = new((cosine * shape.X) - (sine * shape.Y), (sine * shape.X) + (cosine * shape.Y));
                Point2 off = at[_to[half]] - at[_from[half]] - turned;
                energy += _weights[half] * Point2.Dot(off, off);
                right[_to[half]] += turned * _weights[half];
                right[_from[half]] -= turned * _weights[half];
            }
        }

        return energy;
    }
}
