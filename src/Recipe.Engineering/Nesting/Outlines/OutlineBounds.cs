namespace Recipe.Engineering;

/// <summary>What no layout undercuts.</summary>
internal static class OutlineBounds
{
    /// <summary>The greater of area over width and the longest piece, m; a piece counts in its shortest position that the roll holds.</summary>
    internal static double Least(OutlineWork work, int roll, IEnumerable<int> items)
    {
        (double area, double longest) = (0, 0);
        foreach (int item in items)
        {
            area += work.Items.Area[item];
            longest = Math.Max(longest, work.Items.Allowed[item].Where(pose => work.Rolls[roll].Holds(pose.Position)).Min(pose => pose.Position.Along));
        }

        return Math.Max(area / work.Rolls[roll].Width, longest);
    }
}
