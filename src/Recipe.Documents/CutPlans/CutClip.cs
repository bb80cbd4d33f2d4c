using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;

namespace Recipe.Documents.CutPlans;

/// <summary>The part of a line that lies in a rectangle.</summary>
/// <remarks>Source: Liang, Barsky, "A new concept and method for line clipping", ACM Trans. Graphics 3 (1984) 1-22.</remarks>
internal static class CutClip
{
    /// <summary>The stretches of a line, or of the edge of a closed figure, inside a rectangle.</summary>
    public static IEnumerable<PathShape> To(PathShape path, Box box)
    {
        var stretch = ImmutableArray.CreateBuilder<Spot>();
        var edges = path.Points.Length - (path.Closed ? 0 : 1);
        for (var i = 0; i < edges; i++)
        {
            if (Part(path.Points[i], path.Points[(i + 1) % path.Points.Length], box) is not var (from, to))
            {
                continue;
            }

            if (stretch.Count > 0 && stretch[^1] != from)
            {
                yield return new PathShape(stretch.ToImmutable(), path.Pen);
                stretch.Clear();
            }

            if (stretch.Count == 0)
            {
                stretch.Add(from);
            }

            stretch.Add(to);
        }

        if (stretch.Count > 0)
        {
            yield return new PathShape(stretch.ToImmutable(), path.Pen);
        }
    }

    private static (Spot From, Spot To)? Part(Spot from, Spot to, Box box)
    {
        var (first, last) = (0.0, 1.0);
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        foreach (var (step, room) in (ReadOnlySpan<(double, double)>)
            [(-dx, from.X - box.X), (dx, box.X + box.Width - from.X), (-dy, from.Y - box.Y), (dy, box.Y + box.Height - from.Y)])
        {
            if (step == 0)
            {
                if (room < 0)
                {
                    return null;
                }
            }
            else if (step < 0)
            {
                first = Math.Max(first, room / step);
            }
            else
            {
                last = Math.Min(last, room / step);
            }
        }

        return first >= last
            ? null
            : (first == 0 ? from : new(from.X + (first * dx), from.Y + (first * dy)), last == 1 ? to : new(from.X + (last * dx), from.Y + (last * dy)));
    }
}
