using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Lays a surface flat with least distortion, for mats and veils and for surfaces that bend one way only.</summary>
/// <remarks>
/// A surface that unfolds exactly (cylinder, cone, prism, box) is unfolded triangle by triangle. Any other is laid flat so that each
/// triangle keeps its shape as nearly as it can. Source: L. Liu, L. Zhang, Y. Xu, C. Gotsman and S. Gortler, A local/global approach to mesh
/// parameterization, Computer Graphics Forum 27 (2008) 1495, from a start after W. T. Tutte, How to draw a graph, 1963. A woven cloth does
/// not deform so: see <see cref="Draping"/>.
/// </remarks>
public static class Flattening
{
    private const int MostTriangles = 200_000;

    /// <summary>Lays a surface flat.</summary>
    /// <param name="mesh">
    /// The surface. A tube is cut along its shortest seam, and a corner where the triangles leave out more than 0.3 rad is cut to the rim by the
    /// shortest way along edges, 64 corners at most.
    /// </param>
    /// <exception cref="ArgumentException">The mesh has no area, or a part of it has no rim: a closed surface lies flat only once it is cut.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It has more than 200,000 triangles.</exception>
    public static FlatPattern Of(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        if (mesh.Triangles.Length > MostTriangles)
        {
            throw Guard.Refuse(mesh.Triangles.Length, "triangles", nameof(mesh), "must have at most 200000");
        }

        MeshTopology whole = new(mesh);
        if (whole.Count == 0)
        {
            throw new ArgumentException("The mesh has no area.", nameof(mesh));
        }

        int[] part = whole.Parts(out int count);
        var triangles = new List<int>[count];
        for (int triangle = 0; triangle < whole.Count; triangle++)
        {
            (triangles[part[triangle]] ??= []).Add(triangle);
        }

        FlatSheet[] sheets = [.. triangles.Select(list => Best(MeshCuts.Cut(whole, list, [])))];
        double length = sheets.Sum(sheet => sheet.EdgeLength);
        return new FlatPattern(
            [.. sheets.Select(sheet => sheet.ToPart())],
            Area.FromSquareMeters(sheets.Sum(sheet => sheet.Mesh.Area)),
            Area.FromSquareMeters(sheets.Sum(sheet => sheet.Area)),
            Ratio.FromDecimalFractions(sheets.Max(sheet => sheet.GreatestChange)),
            Ratio.FromDecimalFractions(sheets.Sum(sheet => sheet.SumOfChanges) / length),
            sheets.Sum(sheet => sheet.FoldOvers));
    }

    private static FlatSheet Best(MeshTopology mesh)
    {
        if (mesh.Rims().Count == 0)
        {
            throw new ArgumentException("A part of the mesh has no rim: a closed surface lies flat only once it is cut.", nameof(mesh));
        }

        List<int> corners = MeshCuts.ToCorners(mesh);
        if (corners.Count > 0)
        {
            MeshTopology cut = MeshCuts.Cut(mesh, Enumerable.Range(0, mesh.Count), corners);
            FlatSheet unfolded = new(cut, HingeUnfolding.Of(cut, out double torn), MeshCuts.Lines(mesh, corners));
            if (torn < 1e-7 && !unfolded.Overlaps)
            {
                return unfolded;
            }
        }

        Point2[] hinged = HingeUnfolding.Of(mesh, out double gap);
        FlatSheet exact = new(mesh, hinged, []);
        if (gap < 1e-7 && !exact.Overlaps)
        {
            return exact;
        }

        List<int> seam = MeshCuts.BetweenRims(mesh);
        if (seam.Count == 0)
        {
            return new FlatSheet(mesh, RigidMap.Of(mesh, hinged), []);
        }

        // A tube is opened; a sheet with a hole, which lies nearly as flat without, is left whole.
        MeshTopology open = MeshCuts.Cut(mesh, Enumerable.Range(0, mesh.Count), seam);
        Point2[] opened = HingeUnfolding.Of(open, out double left);
        FlatSheet tube = new(open, left < 1e-7 ? opened : RigidMap.Of(open, opened), MeshCuts.Lines(mesh, seam));
        if (left < 1e-7 && !tube.Overlaps)
        {
            return tube;
        }

        FlatSheet uncut = new(mesh, RigidMap.Of(mesh, hinged), []);
        bool better = uncut.FoldOvers > tube.FoldOvers || (uncut.MeanChange > 0.005 && tube.MeanChange < uncut.MeanChange / 2);
        return better && !tube.Overlaps ? tube : uncut;
    }
}
