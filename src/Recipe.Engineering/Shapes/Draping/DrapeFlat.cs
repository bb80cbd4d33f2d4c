using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>The rim of the covered region in the cloth's plane.</summary>
internal sealed class DrapeFlat
{
    internal DrapeFlat(MeshTopology mesh, DrapeCells cells, double step)
    {
        if (!FollowRim(mesh, cells, step))
        {
            FollowCells(cells, step);
        }
    }

    internal Outline? Outer { get; private set; }

    internal ImmutableArray<Outline> Holes { get; private set; } = [];

    internal bool FollowsRim { get; private set; }

    private bool FollowRim(MeshTopology mesh, DrapeCells cells, double step)
    {
        List<Outline> outlines = [];
        foreach (int[] rim in mesh.Rims())
        {
            List<Point2> points = [];
            Point2? last = null;
            foreach (int half in rim)
            {
                (Point3 from, Point3 to) = (mesh.From(half), mesh.To(half));
                int parts = (int)Math.Ceiling((to - from).Norm / (step / 2));
                for (int k = 0; k < parts; k++)
                {
                    Point2? flat = cells.Flat(from + ((to - from) * (k / (double)parts)), last);

                    // A leap is cloth that meets itself, as where it has gone round a tube.
                    if (flat is not { } found || (last is { } before && (found - before).Norm > 3))
                    {
                        return false;
                    }

                    last = found;
                    points.Add(found * step);
                }
            }

            if (points.Count < 3 || (points[0] - points[^1]).Norm > 3 * step)
            {
                return false;
            }

            if (OutlineShapes.Ring(OutlineShapes.WithoutStraights(points, 1e-6 * step)) is not { } ring)
            {
                return false;
            }

            outlines.Add(ring);
        }

        if (outlines.Count == 0)
        {
            return false;
        }

        Outer = outlines.MaxBy(outline => outline.SquareMetres)!;
        Holes = [.. outlines.Where(outline => outline != Outer)];
        return FollowsRim = OutlineShapes.HoldsAll(Outer, Holes);
    }

    // The cells that lie on the surface by half at least, as squares.
    private void FollowCells(DrapeCells cells, double step)
    {
        (Outer, Holes, FollowsRim) = (null, [], false);
        double square = step * step;
        HashSet<(int I, int J)> kept = [.. cells.Cells.Where(cell => cell.IsWhole || cell.SquareMetres > Math.Cos(cell.Shear) * square / 2).Select(cell => (cell.I, cell.J))];
        Dictionary<(int I, int J, int Way), bool> edges = [];
        foreach ((int i, int j) in kept.Order())
        {
            Mark(!kept.Contains((i, j - 1)), i, j, 0);
            Mark(!kept.Contains((i + 1, j)), i + 1, j, 1);
            Mark(!kept.Contains((i, j + 1)), i + 1, j + 1, 2);
            Mark(!kept.Contains((i - 1, j)), i, j + 1, 3);
        }

        List<(double Twice, Outline Ring)> rings = [];
        foreach (var first in edges.Keys.Order().ToArray())
        {
            List<Point2> points = [];
            double twice = 0;
            for (var at = first; edges.Remove(at);)
            {
                Point2 here = new(at.I * step, at.J * step);
                twice += points.Count > 0 ? Point2.Cross(points[^1], here) : 0;
                points.Add(here);
                (int i, int j) = at.Way switch { 0 => (at.I + 1, at.J), 1 => (at.I, at.J + 1), 2 => (at.I - 1, at.J), _ => (at.I, at.J - 1) };

                // To the left first: cells that touch at a corner alone are parted.
                int turn = Enumerable.Range(0, 4).Select(k => (at.Way + 1 + (3 * k)) % 4).FirstOrDefault(way => edges.ContainsKey((i, j, way)), -1);
                at = (i, j, turn);
            }

            if (points.Count > 3)
            {
                twice += Point2.Cross(points[^1], points[0]);
                rings.Add((twice, new Outline([.. OutlineShapes.WithoutStraights(points, 1e-6 * step)])));
            }
        }

        if (rings.Count > 0)
        {
            Outer = rings.MaxBy(ring => ring.Twice).Ring;
            Holes = [.. rings.Where(ring => ring.Twice < 0 && OutlineShapes.HoldsAll(Outer, [ring.Ring])).Select(ring => ring.Ring)];
        }

        void Mark(bool free, int i, int j, int way)
        {
            if (free)
            {
                edges.Add((i, j, way), true);
            }
        }
    }
}
