namespace Recipe.Text;

/// <summary>Finds the word that was probably meant.</summary>
public static class Spelling
{
    /// <summary>
    /// The candidate nearest to <paramref name="word"/> by optimal string alignment distance (Damerau 1964: insertion, deletion,
    /// substitution and swap of neighbours each cost 1), or null when none is near enough: at most 1 slip for words of up to
    /// 4 letters, 2 for up to 9, 3 beyond. Ties go to the first in ordinal order, so the answer never depends on the order given.
    /// </summary>
    public static string? Nearest(string word, IEnumerable<string> candidates)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(candidates);
        var limit = word.Length <= 4 ? 1 : word.Length <= 9 ? 2 : 3;
        string? best = null;
        var bestDistance = limit + 1;
        foreach (var candidate in candidates)
        {
            if (Math.Abs(candidate.Length - word.Length) > limit)
            {
                continue;
            }

            var distance = Distance(word, candidate);
            if (distance < bestDistance
                || (distance == bestDistance && best is not null && string.CompareOrdinal(candidate, best) < 0))
            {
                best = candidate;
                bestDistance = distance;
            }
        }

        return bestDistance <= limit ? best : null;
    }

    /// <summary>Optimal string alignment distance, letters compared without case.</summary>
    public static int Distance(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var before = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var now = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = Same(a[i - 1], b[j - 1]) ? 0 : 1;
                now[j] = Math.Min(Math.Min(now[j - 1] + 1, last[j] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]))
                {
                    now[j] = Math.Min(now[j], before[j - 2] + 1);
                }
            }

            (before, last, now) = (last, now, before);
        }

        return last[b.Length];
    }

    private static bool Same(char x, char y) => char.ToLowerInvariant(x) == char.ToLowerInvariant(y);
}
