using System.Collections.Immutable;

namespace Recipe.Text;

/// <summary>Lays two sequences side by side.</summary>
public static class Alignment
{
    // Beyond so many comparisons only what occurs once on each side is matched.
    private const long MostCells = 16_000_000;

    /// <summary>
    /// Pairs of positions of equal elements, rising on both sides and as many as can be: a longest common subsequence (Wagner and
    /// Fischer 1974). Of several the one that pairs the earliest elements of the left is taken. Two very long sequences that differ all over are
    /// paired by the elements that occur once on each side, the longest rising run of them.
    /// </summary>
    public static ImmutableArray<(int Left, int Right)> Of<T>(IReadOnlyList<T> left, IReadOnlyList<T> right, IEqualityComparer<T>? comparer = null)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        var same = comparer ?? EqualityComparer<T>.Default;
        var start = 0;
        while (start < left.Count && start < right.Count && same.Equals(left[start], right[start]))
        {
            start++;
        }

        var end = 0;
        while (end < left.Count - start && end < right.Count - start && same.Equals(left[left.Count - 1 - end], right[right.Count - 1 - end]))
        {
            end++;
        }

        var (rows, columns) = (left.Count - start - end, right.Count - start - end);
        return
        [
            .. Enumerable.Range(0, start).Select(i => (i, i)),
            .. (long)rows * columns <= MostCells
                ? Common(left, right, start, rows, columns, same)
                : Once(left, right, start, rows, columns, same),
            .. Enumerable.Range(0, end).Select(i => (left.Count - end + i, right.Count - end + i)),
        ];
    }

    private static List<(int, int)> Common<T>(IReadOnlyList<T> left, IReadOnlyList<T> right, int start, int rows, int columns, IEqualityComparer<T> same)
    {
        // length[i, j]: of the longest common subsequence of what begins at i and at j.
        var length = new int[rows + 1, columns + 1];
        for (var i = rows - 1; i >= 0; i--)
        {
            for (var j = columns - 1; j >= 0; j--)
            {
                length[i, j] = same.Equals(left[start + i], right[start + j]) ? length[i + 1, j + 1] + 1 : Math.Max(length[i + 1, j], length[i, j + 1]);
            }
        }

        var pairs = new List<(int, int)>();
        for (int i = 0, j = 0; i < rows && j < columns;)
        {
            if (same.Equals(left[start + i], right[start + j]))
            {
                pairs.Add((start + i++, start + j++));
            }
            else if (length[i, j + 1] >= length[i + 1, j])
            {
                j++;
            }
            else
            {
                i++;
            }
        }

        return pairs;
    }

    private static List<(int, int)> Once<T>(IReadOnlyList<T> left, IReadOnlyList<T> right, int start, int rows, int columns, IEqualityComparer<T> same)
        where T : notnull
    {
        var (there, here) = (Places(left, start, rows, same), Places(right, start, columns, same));
        var pairs = there.Where(place => place.Value >= 0 && here.TryGetValue(place.Key, out var at) && at >= 0)
            .Select(place => (Left: place.Value, Right: here[place.Key]))
            .OrderBy(pair => pair.Left)
            .ToList();

        // Patience: each pair goes on the first pile whose top is not lower, and remembers the top of the pile before.
        var tops = new List<int>();
        var before = new int[pairs.Count];
        for (var i = 0; i < pairs.Count; i++)
        {
            var pile = tops.FindIndex(top => pairs[top].Right > pairs[i].Right);
            pile = pile < 0 ? tops.Count : pile;
            before[i] = pile > 0 ? tops[pile - 1] : -1;
            if (pile == tops.Count)
            {
                tops.Add(i);
            }
            else
            {
                tops[pile] = i;
            }
        }

        var run = new List<(int, int)>();
        for (var i = tops.Count > 0 ? tops[^1] : -1; i >= 0; i = before[i])
        {
            run.Add(pairs[i]);
        }

        run.Reverse();
        return run;
    }

    // Where an element stands; -1 when it occurs twice.
    private static Dictionary<T, int> Places<T>(IReadOnlyList<T> items, int start, int count, IEqualityComparer<T> same)
        where T : notnull
    {
        var places = new Dictionary<T, int>(same);
        for (var i = start; i < start + count; i++)
        {
            places[items[i]] = places.ContainsKey(items[i]) ? -1 : i;
        }

        return places;
    }
}
