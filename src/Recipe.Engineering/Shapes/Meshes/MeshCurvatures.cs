using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>Curvature at each point of a mesh.</summary>
/// <param name="Gauss">Gauss curvature, 1/m2; not a number at boundaries, where it is not defined.</param>
/// <param name="Mean">Mean curvature, 1/m, more than zero where hollow on the cloth side; not a number at boundaries.</param>
/// <remarks>
/// Source: M. Meyer, M. Desbrun, P. Schroeder and A. H. Barr, Discrete differential-geometry operators for triangulated 2-manifolds
/// (2003): angle deficit and cotangent formula over the mixed area.
/// </remarks>
public sealed record MeshCurvatures(ImmutableArray<double> Gauss, ImmutableArray<double> Mean)
{
    /// <summary>Works out the curvature at each point.</summary>
    /// <param name="mesh">The mesh, turned to one side.</param>
    public static MeshCurvatures Of(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ReadOnlySpan<Point3> points = mesh.Vertices.AsSpan();
        MeshFaces faces = new(mesh);
        MeshEdges edges = MeshEdges.Of(mesh.Triangles.AsSpan(), points.Length);
        ReadOnlySpan<int> corners = faces.Corners;
        double[] angle = new double[points.Length];
        double[] area = new double[points.Length];
        Point3[] bend = new Point3[points.Length];
        Point3[] normal = new Point3[points.Length];
        bool[] inner = new bool[points.Length];
        foreach (int corner in corners)
        {
            inner[corner] = true;
        }

        for (int half = 0; half < corners.Length; half++)
        {
            (int p, int q, int r) = (corners[half], corners[MeshEdges.Next(half)], corners[MeshEdges.Previous(half)]);
            (Point3 pq, Point3 pr, Point3 qr) = (points[q] - points[p], points[r] - points[p], points[r] - points[q]);
            double twice = 2 * faces.Areas[half / 3];
            double turn = Math.Atan2(twice, Point3.Dot(pq, pr));
            angle[p] += turn;
            normal[p] += faces.Normals[half / 3] * turn;
            if (edges.Across[half] < 0)
            {
                inner[p] = inner[q] = false;
            }

            if (twice <= 0)
            {
                continue;
            }

            // The cotangents at q and r belong to the sides across them, p-r and p-q.
            double cotQ = -Point3.Dot(pq, qr) / twice;
            double cotR = Point3.Dot(pr, qr) / twice;
            bend[p] += (pq * cotR) + (pr * cotQ);
            double mixed = (Point3.Dot(pq, pq) * cotR) + (Point3.Dot(pr, pr) * cotQ);
            bool isObtuse = Point3.Dot(pq, pr) < 0 || cotQ < 0 || cotR < 0;
            area[p] += !isObtuse ? mixed / 8 : Point3.Dot(pq, pr) < 0 ? twice / 4 : twice / 8;
        }

        var gauss = ImmutableArray.CreateBuilder<double>(points.Length);
        var mean = ImmutableArray.CreateBuilder<double>(points.Length);
        for (int i = 0; i < points.Length; i++)
        {
            bool known = inner[i] && area[i] > 0;
            gauss.Add(known ? ((2 * Math.PI) - angle[i]) / area[i] : double.NaN);
            mean.Add(known ? Math.CopySign(bend[i].Norm / (4 * area[i]), Point3.Dot(bend[i], normal[i])) : double.NaN);
        }

        return new MeshCurvatures(gauss.MoveToImmutable(), mean.MoveToImmutable());
    }
}
