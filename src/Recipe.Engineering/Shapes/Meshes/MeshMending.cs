using System.Collections.Immutable;
using System.Runtime.InteropServices;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Mends what can be mended without guessing, in a fixed order, and counts it.</summary>
internal sealed class MeshMending(MeshSoup soup)
{
    /// <summary>Points of open edges this near are one, as a share of the diagonal of the box: the rounding of single precision.</summary>
    private const double Rounding = 1e-6;

    /// <summary>Gaps up to this share of the diagonal are closed (0.1 mm on a metre), but never more than a quarter of an edge beside them.</summary>
    private const double Gap = 1e-4;

    private readonly int[] _counts = new int[Enum.GetValues<MeshRepairKind>().Length];
    private readonly MeshGroups _groups = new(soup);
    private double _rounding;
    private double _gap;

    /// <summary>The mended mesh; none when no triangle is left.</summary>
    internal TriangleMesh? Mend()
    {
        _counts[(int)MeshRepairKind.TrailingBytesIgnored] = soup.TrailingBytes;
        _counts[(int)MeshRepairKind.PointsMerged] = soup.MergedOnReading;
        if (soup.MergedOnReading == 0)
        {
            MergeEqual();
        }

        double diagonal = Diagonal();
        (_rounding, _gap) = (Rounding * diagonal, Gap * diagonal);
        DropCollapsed();
        MeshEdges edges = Edges();
        if (edges.OpenCount > 0)
        {
            int[] to = MeshWelding.OpenPoints(soup, edges, _rounding, _gap, out int rounded, out int gaps);
            if (rounded + gaps > 0)
            {
                Replace(to);
                _counts[(int)MeshRepairKind.PointsWelded] += rounded;
                _counts[(int)MeshRepairKind.GapsClosed] += gaps;
                DropCollapsed();
                edges = Edges();
            }
        }

        if (MeshSlivers.Remove(soup, _groups, edges, out int dropped))
        {
            _counts[(int)MeshRepairKind.ZeroAreaDropped] += dropped;
            edges = Edges();
        }

        if (soup.Count == 0)
        {
            return null;
        }

        _counts[(int)MeshRepairKind.TrianglesTurned] = MeshTurning.Turn(soup, edges, out int opposed);
        _counts[(int)MeshRepairKind.OpposedEdgesLeft] = opposed;
        _counts[(int)MeshRepairKind.NonManifoldEdgesLeft] = edges.CrowdedCount;
        _counts[(int)MeshRepairKind.OpenEdgesLeft] = edges.OpenCount;
        DropUnusedPoints();
        return new TriangleMesh(
            ImmutableCollectionsMarshal.AsImmutableArray(Exactly(soup.Points, soup.PointCount)),
            ImmutableCollectionsMarshal.AsImmutableArray(Exactly(soup.Triangles, soup.Count)),
            _groups.Stretches());
    }

    internal ImmutableArray<MeshRepair> Repairs()
    {
        var repairs = ImmutableArray.CreateBuilder<MeshRepair>();
        for (int i = 0; i < _counts.Length; i++)
        {
            if (_counts[i] > 0)
            {
                var kind = (MeshRepairKind)i;
                Length? within = kind switch
                {
                    MeshRepairKind.PointsWelded => Length.FromMeters(_rounding),
                    MeshRepairKind.GapsClosed => Length.FromMeters(_gap),
                    _ => null,
                };
                repairs.Add(new MeshRepair(kind, _counts[i], within));
            }
        }

        return repairs.ToImmutable();
    }

    private static T[] Exactly<T>(T[] array, int count) => array.Length == count ? array : array.AsSpan(0, count).ToArray();

    private double Diagonal()
    {
        (Point3 least, Point3 most) = MeshBox.Of(soup.Points.AsSpan(0, soup.PointCount));
        return (most - least).Norm;
    }

    private MeshEdges Edges()
    {
        MeshEdges edges = MeshEdges.Of(soup.Triangles.AsSpan(0, soup.Count), soup.PointCount);
        if (!edges.MayHaveDuplicates)
        {
            return edges;
        }

        int dropped = MeshDuplicates.Drop(soup, _groups);
        _counts[(int)MeshRepairKind.DuplicatesDropped] += dropped;
        return dropped == 0 ? edges : MeshEdges.Of(soup.Triangles.AsSpan(0, soup.Count), soup.PointCount);
    }

    private void MergeEqual()
    {
        MeshSoup once = new();
        PointTable table = new(soup.PointCount);
        int[] to = new int[soup.PointCount];
        for (int i = 0; i < to.Length; i++)
        {
            Point3 point = soup.Points[i];
            to[i] = table.Find(once, point.X, point.Y, point.Z);
        }

        _counts[(int)MeshRepairKind.PointsMerged] = soup.PointCount - once.PointCount;
        (soup.Points, soup.PointCount) = (once.Points, once.PointCount);
        Replace(to);
    }

    private void Replace(int[] to)
    {
        foreach (ref int corner in MemoryMarshal.Cast<MeshTriangle, int>(soup.Triangles.AsSpan(0, soup.Count)))
        {
            corner = to[corner];
        }
    }

    /// <summary>Triangles two corners of which are one point.</summary>
    private void DropCollapsed() => _counts[(int)MeshRepairKind.ZeroAreaDropped] +=
        _groups.Keep(i => soup.Triangles[i] is var t && t.A != t.B && t.B != t.C && t.C != t.A);

    private void DropUnusedPoints()
    {
        int[] to = new int[soup.PointCount];
        foreach (int corner in MemoryMarshal.Cast<MeshTriangle, int>(soup.Triangles.AsSpan(0, soup.Count)))
        {
            to[corner] = 1;
        }

        int kept = 0;
        for (int i = 0; i < to.Length; i++)
        {
            if (to[i] != 0)
            {
                soup.Points[kept] = soup.Points[i];
                to[i] = kept++;
            }
        }

        if (kept < soup.PointCount)
        {
            // Points that went into others are counted as such.
            _counts[(int)MeshRepairKind.UnusedPointsDropped] = Math.Max(
                0,
                soup.PointCount - kept - _counts[(int)MeshRepairKind.PointsWelded] - _counts[(int)MeshRepairKind.GapsClosed]);
            soup.PointCount = kept;
            Replace(to);
        }
    }
}
