namespace Recipe.Editing;

/// <summary>
/// Which lines of one text become which lines of another. Formatting changes lines where they stand and moves none, so common beginnings and
/// ends are cut off and the rest is matched greedily by the next line that both have. It is not <see cref="Recipe.Text.Alignment"/>, which says of a run of
/// changed lines only that it became another run: here each line becomes one, so that laying out a range touches no line outside it.
/// </summary>
internal static class LineChanges
{
    /// <summary>The changes, in order: so many lines from a line on become so many lines of the other text.</summary>
    public static IEnumerable<(int From, int Count, (int From, int Count) With)> Of(List<string> before, List<string> after)
    {
        var (i, j) = (0, 0);
        while (i < before.Count || j < after.Count)
        {
            if (i < before.Count && j < after.Count && before[i] == after[j])
            {
                i++;
                j++;
                continue;
            }

            var (di, dj) = NextCommon(before, after, i, j);
            yield return (i, di, (j, dj));
            i += di;
            j += dj;
        }
    }

    // A small window: where formatting adds or takes lines it is a few blank ones.
    private static (int Before, int After) NextCommon(List<string> before, List<string> after, int i, int j)
    {
        const int window = 50;
        for (var sum = 1; sum <= window; sum++)
        {
            for (var di = 0; di <= sum; di++)
            {
                var dj = sum - di;
                if (i + di < before.Count && j + dj < after.Count && before[i + di] == after[j + dj] && before[i + di].Trim().Length > 1)
                {
                    return (di, dj);
                }
            }
        }

        // Nothing in common nearby: one line for one line, as far as there are any; then what is left on either side.
        return i + 1 >= before.Count || j + 1 >= after.Count ? (before.Count - i, after.Count - j) : (1, 1);
    }
}
