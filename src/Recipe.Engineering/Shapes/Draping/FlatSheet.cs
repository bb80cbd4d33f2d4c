using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>A connected surface with its places in the plane, measured.</summary>
internal sealed class FlatSheet
{
    private readonly Point2[] _flat;
    private readonly ImmutableArray<ImmutableArray<Point3>> _seams;
    private readonly List<List<Point2>> _rims = [];

    internal FlatSheet(MeshTopology mesh, Point2[] flat, ImmutableArray<ImmutableArray<Point3>> seams)
    {
        (Mesh, _flat, _seams) = (mesh, flat, seams);
        for (int half = 0; half < 3 * mesh.Count; half++)
        {
            if (mesh.Twin(half) < half)
            {
                double length = (mesh.To(half) - mesh.From(half)).Norm;
                double change = Math.Abs((At(MeshTopology.Next(half)) - At(half)).Norm - length);
                EdgeLength += length;
                SumOfChanges += change;
                GreatestChange = Math.Max(GreatestChange, change / length);
            }

            if (half % 3 == 0)
            {
                double twice = Point2.Cross(At(half + 1) - At(half), At(half + 2) - At(half));
                Area += Math.Abs(twice) / 2;
                FoldOvers += twice > 0 ? 0 : 1;
            }
        }

        foreach (int[] rim in mesh.Rims())
        {
            _rims.Add([.. rim.Select(At)]);
        }

        _rims = [.. _rims.OrderByDescending(rim => Math.Abs(Twice(rim)))];
        Overlaps = OutlineShapes.Ring(_rims[0]) is null;
    }

    internal MeshTopology Mesh { get; }

    internal double Area { get; }

    internal double EdgeLength { get; }

    internal double SumOfChanges { get; }

    internal double MeanChange => SumOfChanges / EdgeLength;

    internal double GreatestChange { get; }

    internal int FoldOvers { get; }

    internal bool Overlaps { get; }

    internal FlatPart ToPart()
    {
        // The long side of the least rectangle goes along X.
        (Point2 along, Point2 least) = OutlineShapes.LeastRectangle(_rims[0]);
        Point2 Laid(Point2 at) => new Point2(Point2.Dot(at, along), Point2.Cross(along, at)) - least;
        double tolerance = 1e-9 * Math.Sqrt(Mesh.Area);
        Outline[] rings =
        [
            .. _rims.Where(rim => Twice(rim) != 0)
                .Select(rim => new Outline([.. OutlineShapes.WithoutStraights([.. rim.Select(Laid)], tolerance)])),
        ];
        int[] halves = [.. Enumerable.Range(0, 3 * Mesh.Count)];
        return new FlatPart(
            rings[0],
            [.. rings.Skip(1)],
            [.. halves.Select(half => Laid(At(half)))],
            [.. halves.Select(Mesh.From)],
            _seams,
            Overlaps);
    }

    private static double Twice(List<Point2> rim)
    {
        double twice = 0;
        for (int i = 0; i < rim.Count; i++)
        {
            twice += Point2.Cross(rim[i] - rim[0], rim[(i + 1) % rim.Count] - rim[0]);
        }

        return twice;
    }

    private Point2 At(int half) => _flat[Mesh.Vertex(half)];
}
