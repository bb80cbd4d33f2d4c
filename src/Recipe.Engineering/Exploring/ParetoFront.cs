using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>
/// The points of a set that no other point dominates (maxima of a set of vectors). Points with equal values do not dominate each other:
/// all of them stay. For one to three values the time grows with n log n (H. T. Kung, F. Luccio and F. P. Preparata, On finding the maxima
/// of a set of vectors, Journal of the ACM 22, 1975), for more with n times the size of the front.
/// </summary>
public static class ParetoFront
{
    /// <summary>The front, in order of the numbers of its points.</summary>
    /// <param name="points">The points, all with as many values; see <see cref="ParetoPoint"/>.</param>
    /// <exception cref="ArgumentException">The points have not as many values, have none, or one is not finite.</exception>
    public static ImmutableArray<ParetoPoint> Of(IReadOnlyCollection<ParetoPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count == 0)
        {
            return [];
        }

        ParetoPoint[] sorted = [.. points];
        Check(sorted);
        Array.Sort(sorted, Compare);
        List<ParetoPoint> front = sorted[0].Values.Length switch
        {
            1 => Least(sorted),
            2 => Stairs(sorted),
            3 => Terraces(sorted),
            _ => OneByOne(sorted),
        };
        front.Sort(static (a, b) => a.Index.CompareTo(b.Index));
        return [.. front];
    }

    private static void Check(ParetoPoint[] points)
    {
        int count = points[0].Values.IsDefault ? 0 : points[0].Values.Length;
        foreach (ParetoPoint point in points)
        {
            if (count == 0 || point.Values.IsDefault || point.Values.Length != count || !AllFinite(point.Values))
            {
                throw new ArgumentException("Every point must have as many values, at least one, all of them finite.", nameof(points));
            }
        }
    }

    private static bool AllFinite(ImmutableArray<double> values)
    {
        foreach (double value in values)
        {
            if (!double.IsFinite(value))
            {
                return false;
            }
        }

        return true;
    }

    // By the first value, then the second, and so on: nothing that comes later dominates what comes before.
    private static int Compare(ParetoPoint a, ParetoPoint b)
    {
        int order = a.Values.AsSpan().SequenceCompareTo(b.Values.AsSpan());
        return order != 0 ? order : a.Index.CompareTo(b.Index);
    }

    private static List<ParetoPoint> Least(ParetoPoint[] sorted) => [.. sorted.TakeWhile(point => point.Values[0] == sorted[0].Values[0])];

    private static List<ParetoPoint> Stairs(ParetoPoint[] sorted)
    {
        List<ParetoPoint> front = [];
        double lowest = double.PositiveInfinity;
        foreach (ParetoPoint point in sorted)
        {
            if (point.Values[1] < lowest || IsTwin(front, point))
            {
                front.Add(point);
                lowest = point.Values[1];
            }
        }

        return front;
    }

    // Going up the first value, a point stays when no step of the stairs of the other two lies under it.
    private static List<ParetoPoint> Terraces(ParetoPoint[] sorted)
    {
        List<ParetoPoint> front = [];
        List<(double Second, double Third)> stairs = [];
        foreach (ParetoPoint point in sorted)
        {
            if (IsTwin(front, point))
            {
                front.Add(point);
                continue;
            }

            (double second, double third) = (point.Values[1], point.Values[2]);
            int behind = FirstBehind(stairs, second);
            if (behind > 0 && stairs[behind - 1].Third <= third)
            {
                continue;
            }

            front.Add(point);
            int first = behind > 0 && stairs[behind - 1].Second == second ? behind - 1 : behind;
            int last = first;
            while (last < stairs.Count && stairs[last].Third >= third)
            {
                last++;
            }

            stairs.RemoveRange(first, last - first);
            stairs.Insert(first, (second, third));
        }

        return front;
    }

    // The first step whose second value is greater; the steps go up in the second value and down in the third.
    private static int FirstBehind(List<(double Second, double Third)> stairs, double second)
    {
        (int low, int high) = (0, stairs.Count);
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = stairs[middle].Second <= second ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private static List<ParetoPoint> OneByOne(ParetoPoint[] sorted)
    {
        List<ParetoPoint> front = [];
        foreach (ParetoPoint point in sorted)
        {
            if (!IsDominated(front, point))
            {
                front.Add(point);
            }
        }

        return front;
    }

    private static bool IsDominated(List<ParetoPoint> front, ParetoPoint point)
    {
        foreach (ParetoPoint member in front)
        {
            if (Dominance.Dominates(member.Values.AsSpan(), point.Values.AsSpan()))
            {
                return true;
            }
        }

        return false;
    }

    // Equal points lie side by side, and one that was left out left its equals out too.
    private static bool IsTwin(List<ParetoPoint> front, ParetoPoint point) => front.Count > 0 && front[^1].Values.AsSpan().SequenceEqual(point.Values.AsSpan());
}
