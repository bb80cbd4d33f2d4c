namespace Recipe.Syntax.Merging;

/// <summary>Keeps the accounts of a merge: no line may get lost.</summary>
internal static class Ledger
{
    /// <summary>
    /// Whether every line is there as often as it must be at the least. Of b lines alike in the base one side may have taken out x and
    /// the other y, and put in others: max(0, b - x - y) + max(ours - b + x, theirs - b + y) remain, least where x + y = b. Blanks
    /// do not count.
    /// </summary>
    public static bool IsWhole(SyntaxTree before, SyntaxTree ours, SyntaxTree theirs, SyntaxTree merged) =>
        IsWhole(PieceReader.Sayings(before), PieceReader.Sayings(ours), PieceReader.Sayings(theirs), PieceReader.Sayings(merged));

    /// <summary>The same of lines.</summary>
    public static bool IsWhole(IEnumerable<string> before, IEnumerable<string> ours, IEnumerable<string> theirs, IEnumerable<string> merged)
    {
        var (b, o, t, m) = (Counts(before), Counts(ours), Counts(theirs), Counts(merged));
        return b.Keys.Union(o.Keys).Union(t.Keys).All(line =>
        {
            var (was, mine, other) = (b.GetValueOrDefault(line), o.GetValueOrDefault(line), t.GetValueOrDefault(line));
            var needed = Math.Max(Math.Max(mine, other) - was, (mine + other - was + 1) / 2);
            return m.GetValueOrDefault(line) >= needed;
        });
    }

    private static Dictionary<string, int> Counts(IEnumerable<string> lines) =>
        lines.Where(line => line.Length > 0).CountBy(line => line, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
}
